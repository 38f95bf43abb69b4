import { PassThrough, Readable } from 'node:stream';
import { createRoute, z } from '@hono/zod-openapi';
import { confirmation, done } from '../answers/people.ts';
import { eraseBench } from '../benches/erase-bench.ts';
import { writeBenchBackup } from '../db/backup/write-backup.ts';
import { personOf } from '../people/actor.ts';
import { confirmPassword } from '../people/set-password.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

/** The bench as a whole, for its owner: its work as one file, to keep or to bring to another place; and its end. */
export const backupRoutes = ({ store, log }: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/bench/erase',
        request: { body: jsonBody(confirmation) },
        responses: { 200: jsonAnswer(done, 'The bench is gone, with all that was in it.') },
      }),
      async c => {
        await confirmPassword(store, personOf(c.get('actor')).person, c.req.valid('json').password);
        await store.inWorkshop(c.get('workshop'), eraseBench);
        return c.json({ done: true as const }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/backup',
        responses: {
          200: {
            description: 'The file, which "fettle restore" adds elsewhere.',
            content: { 'application/gzip': { schema: z.string().openapi({ format: 'binary' }) } },
          },
        },
      }),
      async c => {
        const file = new PassThrough();
        // What fails later than the answer begins breaks the file off, and one that is broken off is told when it is read.
        writeBenchBackup(store, c.get('workshop'), file).catch(error => {
          log({ level: 'error', what: 'backup broke off', message: (error as Error).message });
          file.destroy(error as Error);
        });
        return c.body(Readable.toWeb(file) as ReadableStream, 200, {
          'Content-Type': 'application/gzip',
          'Content-Disposition': 'attachment; filename="bench.fettle"',
        });
      },
    );
