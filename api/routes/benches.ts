import { createRoute, z } from '@hono/zod-openapi';
import { bench, benches, newBench } from '../answers/bench.ts';
import { id } from '../answers/common.ts';
import { listBenches } from '../benches/list-benches.ts';
import { openBench, startBench } from '../benches/start-bench.ts';
import { benchNotFound } from '../edge/bench.ts';
import { doOnce, fingerprint, idempotencyKey } from '../edge/once.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

/** Benches: a bench's own address names it, so these need no header `Workshop`. */
export const benchRoutes = (service: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/benches',
        responses: { 200: jsonAnswer(benches, 'Every bench, the one last opened first.') },
      }),
      async c => c.json(await listBenches(service.store), 200),
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/benches',
        request: { body: jsonBody(newBench) },
        responses: { 201: jsonAnswer(bench, 'The bench, empty and open.') },
      }),
      async c => {
        const given = c.req.valid('json');
        const started = await startBench(service.store, idempotencyKey(c), fingerprint(c, given), given);
        return c.json(started, 201);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/benches/{bench}/open',
        request: { params: z.object({ bench: id }) },
        responses: { 200: jsonAnswer(bench, 'The bench, which now answers reads that name none.') },
      }),
      async c => {
        const { bench: opened } = c.req.valid('param');
        if (!(await service.store.benches()).includes(opened)) throw benchNotFound();
        c.set('workshop', opened);
        return c.json(await doOnce(service, c, null, openBench), 200);
      },
    );
