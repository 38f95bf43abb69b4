import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Server } from '../server.ts';
import { writeBackup } from './write-backup.ts';
import { writeWholeFile } from './write-file.ts';

const keep = 3;

/**
 * The backup that is made by itself before a migration: `backups/<moment>-schema-<version>.backup` in the data
 * folder. The last three are kept.
 */
export async function backUpBeforeMigrating(
  folder: string,
  server: Server,
  version: number,
): Promise<string> {
  const backups = join(folder, 'backups');
  await mkdir(backups, { recursive: true, mode: 0o700 });
  const moment = new Date().toISOString().replaceAll(':', '-');
  const file = join(backups, `${moment}-schema-${version}.backup`);
  await writeWholeFile(file, out => writeBackup(server, out));
  const made = (await readdir(backups)).filter(name => name.endsWith('.backup')).sort();
  for (const old of made.slice(0, -keep)) await rm(join(backups, old));
  return file;
}
