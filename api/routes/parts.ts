import { createRoute, z } from '@hono/zod-openapi';
import { dutyAnswer, id } from '../answers/common.ts';
import { dutyRequest } from '../answers/model.ts';
import { interchange, part } from '../answers/part.ts';
import { answerDuty } from '../duty/answer-duty.ts';
import { interchangeOf } from '../parts/interchange.ts';
import { partPage } from '../parts/part-page.ts';
import { partRefs } from '../parts/part-refs.ts';
import { notFound } from '../refusal.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const params = z.object({ part: id });

/** Parts, and what could replace them. */
export const partRoutes = ({ store }: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/parts/{part}',
        request: { params },
        responses: {
          200: jsonAnswer(part, 'The part: its evidence, lines, supersession, assembly and duty.'),
        },
      }),
      async c => {
        const { part: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => partPage(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/parts/{part}/interchange',
        request: { params },
        responses: {
          200: jsonAnswer(interchange, 'What could replace it, each with a verdict and its reasons.'),
        },
      }),
      async c => {
        const { part: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => interchangeOf(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'put',
        path: '/api/parts/{part}/duty',
        request: { params, body: jsonBody(dutyRequest) },
        responses: { 200: jsonAnswer(dutyAnswer, 'What counts now. "not-stated" takes an answer back.') },
      }),
      async c => {
        const { part: asked } = c.req.valid('param');
        const { duty } = c.req.valid('json');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          if (!(await partRefs(tx, [asked])).has(asked)) throw notFound('part', asked);
          return answerDuty(tx, { part: asked }, duty);
        });
        return c.json(answer, 200);
      },
    );
