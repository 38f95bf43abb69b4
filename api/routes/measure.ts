import { createRoute } from '@hono/zod-openapi';
import { fit } from '../../indexer/fit.ts';
import { type CategoryName, categoryNames } from '../../indexer/index.ts';
import { BadMeasurement, type KnownSize, measure } from '../../indexer/measure.ts';
import { fitAnswer, fitRequest, measureAnswer, measureRequest, sizesKnown } from '../answers/measure.ts';
import { sizesHere } from '../finding/sizes-here.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

/** Round parts that could serve as a pin. */
const pins: readonly CategoryName[] = ['pin', 'shaft', 'ball'];

/** Naming a part from measurements, and fitting a bearing to its seats. Nothing is stored: the workshop's sizes are looked at alone. */
export const measureRoutes = ({ store }: Service) => {
  const knownTo = (
    workshop: string,
    given: readonly KnownSize[] | undefined,
    ...categories: CategoryName[]
  ) => given ?? store.inWorkshop(workshop, tx => sizesHere(tx, [...new Set(categories)]));
  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/sizes',
        responses: { 200: jsonAnswer(sizesKnown, 'The sizes known here, with how many parts have each.') },
      }),
      async c => {
        const sizes = await store.inWorkshop(c.get('workshop'), tx => sizesHere(tx, categoryNames));
        return c.json({ sizes }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/measure',
        request: { body: jsonBody(measureRequest) },
        responses: { 200: jsonAnswer(measureAnswer, 'What the part can be, and what would settle it.') },
      }),
      async c => {
        const asked = c.req.valid('json');
        const known = await knownTo(c.get('workshop'), asked.known, asked.category, ...pins);
        return c.json(
          refusingBad(() => measure({ ...asked, known })),
          200,
        );
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/fit',
        request: { body: jsonBody(fitRequest) },
        responses: { 200: jsonAnswer(fitAnswer, 'Which bearings sit on these seats, and how.') },
      }),
      async c => {
        const asked = c.req.valid('json');
        const known = await knownTo(c.get('workshop'), asked.known, 'bearing');
        return c.json(
          refusingBad(() => fit({ ...asked, known })),
          200,
        );
      },
    );
};

/** A measurement that cannot be is the asker's to correct. */
function refusingBad<Answer>(work: () => Answer): Answer {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof BadMeasurement)) throw error;
    throw refuse('bad-request', { place: error.place, message: error.message, remedy: error.remedy });
  }
}
