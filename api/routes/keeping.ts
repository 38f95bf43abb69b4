import { randomUUID, timingSafeEqual } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { Hono } from 'hono';
import { createMiddleware } from 'hono/factory';
import { restoreBackup } from '../db/backup/restore-backup.ts';
import { writeBackup } from '../db/backup/write-backup.ts';
import { writeWholeFile } from '../db/backup/write-file.ts';
import type { AppEnv } from '../edge/bench.ts';
import { Refusal, refuse } from '../refusal.ts';
import type { Service } from '../service.ts';

/** What lets the command line of the same person keep and bring back everything: the announced key, and the folder. */
export interface Keeping {
  key: string;
  folder: string;
}

/**
 * Backup and restore of a folder that is being served, for the command line alone: `POST /api/keeping/backup` gives
 * the file, `POST /api/keeping/restore` takes it, both with the key that `serving.json` holds.
 */
export function keepingRoutes({ store, log }: Service, { key, folder }: Keeping) {
  const routes = new Hono<AppEnv>();
  routes.use('/api/keeping/*', keyHeld(key));
  routes.post('/api/keeping/backup', async c => {
    // While the database is away this is refused as everything is; what fails later breaks the file off.
    await store.benches();
    const file = new PassThrough();
    writeBackup(store.server, file).catch(error => {
      log({ level: 'error', what: 'backup broke off', message: (error as Error).message });
      file.destroy(error as Error);
    });
    return c.body(Readable.toWeb(file) as ReadableStream, 200, { 'Content-Type': 'application/gzip' });
  });
  routes.post('/api/keeping/restore', async c => {
    const body = c.req.raw.body;
    if (!body)
      throw refuse('bad-request', {
        place: 'the request',
        message: 'There is no backup in it.',
        remedy: 'Send the file as the body of the request.',
      });
    const file = join(folder, `restoring-${randomUUID()}`);
    try {
      await writeWholeFile(file, out => pipeline(Readable.fromWeb(body as never), out));
      return c.json(await restoreBackup(store.server, file, store.whileClosed));
    } catch (error) {
      throw error instanceof Refusal && error.place === file ? placedElsewhere(error) : error;
    } finally {
      await rm(file, { force: true });
    }
  });
  return routes;
}

const keyHeld = (key: string) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const given = Buffer.from(c.req.header('Authorization') ?? '');
    const right = Buffer.from(`Bearer ${key}`);
    if (given.length !== right.length || !timingSafeEqual(given, right))
      throw refuse('key-wrong', {
        place: 'Authorization',
        message: 'Backup and restore are for the command line on this machine.',
        remedy: 'Run "fettle backup FILE" or "fettle restore FILE" as the one who started the program.',
      });
    await next();
  });

/** The file lies under another name here than where it came from. */
const placedElsewhere = (error: Refusal) =>
  refuse(error.code, { place: 'the backup', message: error.message, remedy: error.remedy }, error.cause);
