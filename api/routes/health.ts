import { createRoute } from '@hono/zod-openapi';
import { sql } from 'drizzle-orm';
import { health, type Readiness, readiness } from '../answers/health.ts';
import type { Store } from '../db/store.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, router } from '../valid.ts';

/** Whether the service answers, its database with it; and whether it can do its work, for what sends requests to it. */
export const healthRoutes = ({ store, engine, hasRoom }: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/health',
        responses: { 200: jsonAnswer(health, 'The service and its database answer.') },
      }),
      async c => {
        await store.benches();
        return c.json({ ok: true as const, engine: engine.name }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/ready',
        responses: {
          200: jsonAnswer(readiness, 'It can do its work.'),
          503: jsonAnswer(readiness, 'It cannot, and why.'),
        },
      }),
      async c => {
        const schema = await schemaOf(store);
        const database = schema === 'unknown' ? 'away' : 'here';
        const disk = hasRoom ? ((await hasRoom()) ? 'room' : 'short') : 'elsewhere';
        const ready = database === 'here' && schema !== 'older' && disk !== 'short';
        const search = { engine: engine.name, state: await engine.state() };
        return c.json({ ready, database, schema, search, disk } as const, ready ? 200 : 503);
      },
    );

/** How the data's schema stands to what this process knows; unknown while the database is away. */
async function schemaOf(store: Store): Promise<Readiness['schema']> {
  try {
    const [row] = await store.asNobody(tx =>
      tx.execute<{ version: number }>(sql`select count(*)::integer as version from migration`),
    );
    const behind = store.version - row!.version;
    return behind === 0 ? 'current' : behind > 0 ? 'older' : 'newer';
  } catch {
    return 'unknown';
  }
}
