import { createRoute, z } from '@hono/zod-openapi';
import { id } from '../answers/common.ts';
import { balloonChange, balloonChanged, drawing, newBalloon, writtenFound } from '../answers/drawing.ts';
import { changeBalloon, placeBalloon, removeBalloon, takeBalloonBack } from '../diagrams/correct-balloon.ts';
import { drawingOf } from '../diagrams/drawing-of.ts';
import { findWritten } from '../diagrams/find-written.ts';
import { pictureOfPage } from '../diagrams/page-picture.ts';
import { doOnce } from '../edge/once.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const params = z.object({ diagram: id });
const ofBalloon = z.object({ diagram: id, balloon: id });
const changed = { 200: jsonAnswer(balloonChanged, 'The drawing as it counts now, and the way back.') };

/** A diagram's drawing: its pages, the balloons on them, and a person's word on those. */
export const drawingRoutes = (service: Service) => {
  const { store } = service;
  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/drawing',
        request: { params },
        responses: { 200: jsonAnswer(drawing, 'Pages and balloons; both empty for a list alone.') },
      }),
      async c => {
        const { diagram } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => drawingOf(tx, diagram)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/written',
        request: { params, query: z.object({ find: z.string().max(200) }) },
        responses: {
          200: jsonAnswer(writtenFound, 'Where the pages say so; what is hidden on them is not found.'),
        },
      }),
      async c => {
        const { diagram } = c.req.valid('param');
        const { find } = c.req.valid('query');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => findWritten(tx, diagram, find)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/pages/{page}/picture',
        request: {
          params: z.object({ diagram: id, page: z.string().regex(/^[1-9]\d{0,3}$/) }),
          query: z.object({ width: z.string().regex(/^[1-9]\d{0,4}$/) }),
        },
        responses: {
          200: {
            description:
              'The page at least so many pixels wide, or as wide as there is; drawn once, then kept.',
            content: { 'image/webp': { schema: z.string().openapi({ format: 'binary' }) } },
          },
        },
      }),
      async c => {
        const { diagram, page } = c.req.valid('param');
        const { width } = c.req.valid('query');
        const asked = { diagram, page: Number(page), width: Number(width) };
        const bytes = await pictureOfPage(store, service.drawPage, c.get('workshop'), asked);
        return c.body(new Uint8Array(bytes), 200, { 'Content-Type': 'image/webp' });
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams/{diagram}/balloons',
        request: { params, body: jsonBody(newBalloon) },
        responses: changed,
      }),
      async c => {
        const { diagram } = c.req.valid('param');
        const spot = c.req.valid('json');
        const answer = await doOnce(service, c, spot, async tx => ({
          correction: await placeBalloon(tx, diagram, spot),
          drawing: await drawingOf(tx, diagram),
        }));
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'patch',
        path: '/api/diagrams/{diagram}/balloons/{balloon}',
        request: { params: ofBalloon, body: jsonBody(balloonChange) },
        responses: changed,
      }),
      async c => {
        const { diagram, balloon } = c.req.valid('param');
        const change = c.req.valid('json');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => ({
          correction: await changeBalloon(tx, diagram, balloon, change),
          drawing: await drawingOf(tx, diagram),
        }));
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/diagrams/{diagram}/balloons/{balloon}',
        request: { params: ofBalloon },
        responses: changed,
      }),
      async c => {
        const { diagram, balloon } = c.req.valid('param');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => ({
          correction: await removeBalloon(tx, diagram, balloon),
          drawing: await drawingOf(tx, diagram),
        }));
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/diagrams/{diagram}/balloon-corrections/{correction}',
        request: { params: z.object({ diagram: id, correction: id }) },
        responses: { 200: jsonAnswer(drawing, 'The drawing as it stood before.') },
      }),
      async c => {
        const { diagram, correction } = c.req.valid('param');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          await takeBalloonBack(tx, diagram, correction);
          return drawingOf(tx, diagram);
        });
        return c.json(answer, 200);
      },
    );
};
