import { createRoute } from '@hono/zod-openapi';
import { health } from '../answers/health.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, router } from '../valid.ts';

/** Whether the service answers, its database with it. */
export const healthRoutes = ({ store, engine }: Service) =>
  router().openapi(
    createRoute({
      method: 'get',
      path: '/api/health',
      responses: { 200: jsonAnswer(health, 'The service and its database answer.') },
    }),
    async c => {
      await store.benches();
      return c.json({ ok: true as const, engine: engine.name }, 200);
    },
  );
