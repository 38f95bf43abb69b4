import { PassThrough, Readable } from 'node:stream';
import { createRoute, z } from '@hono/zod-openapi';
import { writeBenchBackup } from '../db/backup/write-backup.ts';
import type { Service } from '../service.ts';
import { router } from '../valid.ts';

/** The bench's work as one file, for its owner: to keep, or to bring to another place. */
export const backupRoutes = ({ store, log }: Service) =>
  router().openapi(
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
