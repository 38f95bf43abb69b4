import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import { type Added, addBench, type NewOwner } from '../db/backup/add-bench.ts';
import { verifyBackup } from '../db/backup/read-backup.ts';
import { type Restored, restoreBackup } from '../db/backup/restore-backup.ts';
import type { Store } from '../db/store.ts';
import { personNamed } from '../people/sign-in.ts';
import { foldSignIn } from '../people/sign-in-name.ts';
import { refuse } from '../refusal.ts';
import { configurationOf } from './configuration.ts';
import { answering, askServing, servingProgram, withServer, withStore } from './keeping.ts';

/**
 * `fettle restore FILE [--owner SIGN-IN]`: puts a backup in the place of everything there is, or adds the one bench
 * that it holds to those there are, through the serving program where there is one, and prints what came back. What
 * was replaced is kept until the next restore. Where people sign in, somebody has to own an added bench. Exit code 1
 * when refused.
 */
export function restoreFrom(
  file: string,
  owner: string | undefined,
  env: NodeJS.ProcessEnv = process.env,
): Promise<number> {
  return answering(async () => {
    // What is no backup is told before anything is opened or sent.
    const { bench } = await verifyBackup(file);
    const { accounts } = configurationOf(env);
    if (bench && accounts && !owner) throw ownerMissing();
    const serving = await servingProgram(env);
    if (serving) return told(file, await restoreThrough(serving, file));
    if (!bench) return told(file, await withServer(env, server => restoreBackup(server, file)));
    return told(
      file,
      await withStore(env, async store =>
        addBench(store.server, file, owner && accounts ? await ownerNamed(store, owner) : null),
      ),
    );
  });
}

const told = (file: string, back: Restored | Added) => ({
  file,
  madeAt: back.madeAt,
  ...('bench' in back && { bench: back.bench }),
  rows: Object.fromEntries(back.tables.map(table => [table.name, table.rows])),
  ...('kept' in back && { before: back.kept }),
});

const ownerMissing = () =>
  refuse('bad-request', {
    place: '--owner',
    message: 'It is missing: this is one bench, and people sign in here.',
    remedy: 'Say who is to own it: --owner NAME; "fettle person add" makes somebody new.',
  });

async function ownerNamed(store: Store, text: string): Promise<NewOwner> {
  const name = foldSignIn(text);
  const person = await personNamed(store, name);
  if (person) return { person, name };
  throw refuse('not-found', {
    place: '--owner',
    message: 'Nobody signs in by this name.',
    remedy: 'Check the name; "fettle person add" makes somebody new.',
  });
}

async function restoreThrough(
  serving: Parameters<typeof askServing>[0],
  file: string,
): Promise<Restored | Added> {
  const body = Readable.toWeb(createReadStream(file)) as ReadableStream;
  const answer = await askServing(serving, '/api/keeping/restore', file, { body, duplex: 'half' });
  return (await answer.json()) as Restored | Added;
}
