import { createRoute, z } from '@hono/zod-openapi';
import { bench, benches, newBench } from '../answers/bench.ts';
import { id } from '../answers/common.ts';
import { benchesSeen, listBenches } from '../benches/list-benches.ts';
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
      async c => c.json(await listBenches(service.store, c.get('actor')), 200),
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
        const person = c.get('actor')?.person ?? null;
        const started = await startBench(
          service.store,
          idempotencyKey(c),
          fingerprint(c, given),
          given,
          person,
        );
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
        const actor = c.get('actor');
        if (!(await benchesSeen(service.store, actor)).includes(opened)) throw benchNotFound();
        c.set('workshop', opened);
        return c.json(await doOnce(service, c, null, tx => openBench(tx, actor?.person ?? null)), 200);
      },
    );
