import { randomUUID, timingSafeEqual } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { Hono } from 'hono';
import { createMiddleware } from 'hono/factory';
import { benchCalled } from '../benches/bench-called.ts';
import { addBench } from '../db/backup/add-bench.ts';
import { verifyBackup } from '../db/backup/read-backup.ts';
import { restoreBackup } from '../db/backup/restore-backup.ts';
import { writeBackup, writeBenchBackup } from '../db/backup/write-backup.ts';
import { writeWholeFile } from '../db/backup/write-file.ts';
import type { AppEnv } from '../edge/bench.ts';
import { Refusal, refuse } from '../refusal.ts';
import type { Keeping, Service } from '../service.ts';

/**
 * Backup and restore of a folder that is being served, for the command line alone: `POST /api/keeping/backup` gives
 * the file, `POST /api/keeping/restore` takes it, both with the key that `serving.json` holds.
 */
export function keepingRoutes({ store, log, accounts }: Service, { key, folder }: Keeping) {
  const routes = new Hono<AppEnv>();
  routes.use('/api/keeping/*', keyHeld(key));
  routes.post('/api/keeping/backup', async c => {
    // While the database is away this is refused as everything is; what fails later breaks the file off.
    await store.benches();
    const file = new PassThrough();
    const bench = c.req.query('bench');
    const written = bench
      ? writeBenchBackup(store, await benchCalled(store, bench), file)
      : writeBackup(store.server, file);
    written.catch(error => {
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
      const { bench } = await verifyBackup(file);
      if (!bench) return c.json(await restoreBackup(store.server, file, store.whileClosed));
      // Its owner is told on the command line, which then goes to the database itself.
      if (accounts) throw stopFirst();
      const added = await addBench(store.server, file, null);
      return c.json(added);
    } catch (error) {
      throw error instanceof Refusal && error.place === file ? placedElsewhere(error) : error;
    } finally {
      await rm(file, { force: true });
    }
  });
  return routes;
}

const stopFirst = () =>
  refuse('in-use', {
    place: 'the program',
    message: 'A bench gets an owner here, and that needs the data folder for itself.',
    remedy: 'Stop the program, run "fettle restore FILE --owner NAME", and start it again.',
  });

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
