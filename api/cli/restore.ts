import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import { verifyBackup } from '../db/backup/read-backup.ts';
import { type Restored, restoreBackup } from '../db/backup/restore-backup.ts';
import { answering, askServing, servingProgram, withServer } from './keeping.ts';

/**
 * `fettle restore FILE`: puts a backup in the place of everything there is, through the serving program where there is
 * one, and prints what came back. What was there is kept until the next restore. Exit code 1 when refused.
 */
export function restoreFrom(file: string, env: NodeJS.ProcessEnv = process.env): Promise<number> {
  return answering(async () => {
    // What is no backup is told before anything is opened or sent.
    await verifyBackup(file);
    const serving = await servingProgram(env);
    const restored = serving
      ? await restoreThrough(serving, file)
      : await withServer(env, server => restoreBackup(server, file));
    return {
      file,
      madeAt: restored.madeAt,
      rows: Object.fromEntries(restored.tables.map(table => [table.name, table.rows])),
      before: restored.kept,
    };
  });
}

async function restoreThrough(serving: Parameters<typeof askServing>[0], file: string): Promise<Restored> {
  const body = Readable.toWeb(createReadStream(file)) as ReadableStream;
  const answer = await askServing(serving, '/api/keeping/restore', file, { body, duplex: 'half' });
  return (await answer.json()) as Restored;
}
