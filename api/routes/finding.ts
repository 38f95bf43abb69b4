import { createRoute, z } from '@hono/zod-openapi';
import { comparison } from '../answers/compare.ts';
import { found, size, uses } from '../answers/find.ts';
import { compare } from '../finding/compare.ts';
import { find } from '../finding/find.ts';
import { sizePage } from '../finding/size-page.ts';
import { usesOf } from '../finding/uses-of.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, router } from '../valid.ts';

/** A part by its id, or a size or article in any writing. */
const thing = z.string().trim().min(1).max(400);

/** Finding: anything a repairer types, the page of a size, and two things side by side. */
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
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/sizes/{size}/uses',
        request: {
          params: z.object({ size: z.string().min(1).max(200) }),
          query: z.object({ from: z.coerce.number().int().min(0).max(1_000_000) }),
        },
        responses: { 200: jsonAnswer(uses, 'Where the size is used, beyond the first models.') },
      }),
      async c => {
        const { size: asked } = c.req.valid('param');
        const { from } = c.req.valid('query');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => usesOf(tx, asked, from)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/compare',
        request: { query: z.object({ a: thing, b: thing }) },
        responses: {
          200: jsonAnswer(comparison, 'The two side by side, and each in the place of the other.'),
        },
      }),
      async c => {
        const { a, b } = c.req.valid('query');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => compare(tx, a, b)), 200);
      },
    );
