import { createRoute, z } from '@hono/zod-openapi';
import { id } from '../answers/common.ts';
import { diagramRow, newCorrection } from '../answers/diagram.ts';
import { correctRow, undoCorrection } from '../diagrams/correct-row.ts';
import { doOnce } from '../edge/once.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const path = '/api/diagrams/{diagram}/rows/{row}/correction';
const params = z.object({ diagram: id, row: id });

/** A person's word on a row, and taking it back. */
export const correctionRoutes = (service: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'post',
        path,
        request: { params, body: jsonBody(newCorrection) },
        responses: { 200: jsonAnswer(diagramRow, 'The row as it counts now.') },
      }),
      async c => {
        const { diagram, row } = c.req.valid('param');
        const said = c.req.valid('json');
        return c.json(await doOnce(service, c, said, tx => correctRow(tx, diagram, row, said)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path,
        request: { params },
        responses: { 200: jsonAnswer(diagramRow, 'The row as it was read.') },
      }),
      async c => {
        const { diagram, row } = c.req.valid('param');
        const answer = await service.store.inWorkshop(c.get('workshop'), tx =>
          undoCorrection(tx, diagram, row),
        );
        return c.json(answer, 200);
      },
    );
