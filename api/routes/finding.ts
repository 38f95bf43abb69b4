import { createRoute, z } from '@hono/zod-openapi';
import { found, size } from '../answers/find.ts';
import { find } from '../finding/find.ts';
import { sizePage } from '../finding/size-page.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, router } from '../valid.ts';

/** Finding: anything a repairer types, and the page of a size. */
export const findingRoutes = ({ store, engine }: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/find',
        request: { query: z.object({ q: z.string().trim().min(1).max(400) }) },
        responses: { 200: jsonAnswer(found, 'What was understood, and what was found.') },
      }),
      async c => {
        const { q } = c.req.valid('query');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => find(tx, engine, q)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/sizes/{size}',
        request: { params: z.object({ size: z.string().min(1).max(200) }) },
        responses: { 200: jsonAnswer(size, 'Where the size is used, and what comes near.') },
      }),
      async c => {
        const { size: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => sizePage(tx, asked)), 200);
      },
    );
