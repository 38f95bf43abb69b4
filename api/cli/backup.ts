import { stat } from 'node:fs/promises';
import { Readable, type Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { benchCalled } from '../benches/bench-called.ts';
import { verifyBackup } from '../db/backup/read-backup.ts';
import { writeBackup, writeBenchBackup } from '../db/backup/write-backup.ts';
import { writeWholeFile } from '../db/backup/write-file.ts';
import { answering, askServing, mustHaveData, servingProgram, withServer, withStore } from './keeping.ts';

/**
 * `fettle backup FILE [--bench NAME]`: writes everything, or the work of one bench, into one file, through the serving
 * program where there is one, reads the file through once more, and prints what it holds. Exit code 1 when refused.
 */
export function backupTo(
  file: string,
  bench: string | undefined,
  env: NodeJS.ProcessEnv = process.env,
): Promise<number> {
  return answering(async () => {
    mustHaveData(env);
    const serving = await servingProgram(env);
    await writeWholeFile(file, async (out: Writable) => {
      if (!serving && bench !== undefined)
        return withStore(env, async store => writeBenchBackup(store, await benchCalled(store, bench), out));
      if (!serving) return withServer(env, server => writeBackup(server, out));
      const query = bench === undefined ? '' : `?bench=${encodeURIComponent(bench)}`;
      const { body } = await askServing(serving, `/api/keeping/backup${query}`, file);
      return pipeline(Readable.fromWeb(body as never), out);
    });
    const manifest = await verifyBackup(file);
    return {
      file,
      bytes: (await stat(file)).size,
      madeAt: manifest.madeAt,
      schema: manifest.schema.length,
      ...(manifest.bench && { bench: manifest.bench }),
      rows: Object.fromEntries(manifest.tables.map(table => [table.name, table.rows])),
    };
  });
}
