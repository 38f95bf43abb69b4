import { stat } from 'node:fs/promises';
import { Readable, type Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { verifyBackup } from '../db/backup/read-backup.ts';
import { writeBackup } from '../db/backup/write-backup.ts';
import { writeWholeFile } from '../db/backup/write-file.ts';
import { answering, askServing, mustHaveData, servingProgram, withServer } from './keeping.ts';

/**
 * `fettle backup FILE`: writes everything into one file, through the serving program where there is one, reads the
 * file through once more, and prints what it holds. Exit code 1 when refused.
 */
export function backupTo(file: string, env: NodeJS.ProcessEnv = process.env): Promise<number> {
  return answering(async () => {
    mustHaveData(env);
    const serving = await servingProgram(env);
    await writeWholeFile(file, async (out: Writable) => {
      if (!serving) return withServer(env, server => writeBackup(server, out));
      const { body } = await askServing(serving, '/api/keeping/backup', file);
      return pipeline(Readable.fromWeb(body as never), out);
    });
    const manifest = await verifyBackup(file);
    return {
      file,
      bytes: (await stat(file)).size,
      madeAt: manifest.madeAt,
      schema: manifest.schema.length,
      rows: Object.fromEntries(manifest.tables.map(table => [table.name, table.rows])),
    };
  });
}
