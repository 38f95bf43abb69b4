import { execFile } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { chown, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { refuse } from '../refusal.ts';
import type { Binaries } from './binaries.ts';
import { diskFull } from './errors.ts';
import { scramVerifier } from './password.ts';
import type { Place } from './place.ts';

const run = promisify(execFile);

/** Makes an empty database cluster where there is none yet. One that was broken off leaves nothing behind that counts. */
export async function makeCluster(place: Place, binaries: Binaries, password: string): Promise<void> {
  if (existsSync(join(place.data, 'PG_VERSION'))) return refuseOtherMajor(place, binaries);
  const unfinished = `${place.data}.new-${process.pid}`;
  const data = join(unfinished, 'data');
  const verifier = join(unfinished, 'verifier');
  try {
    await rm(unfinished, { recursive: true, force: true });
    await mkdir(unfinished, { mode: 0o700 });
    await writeFile(verifier, scramVerifier(password), { mode: 0o600 });
    if (place.account.uid !== undefined)
      for (const path of [unfinished, verifier]) await chown(path, place.account.uid, place.account.gid!);
    await run(
      join(binaries.folder, 'bin/initdb'),
      [
        `--pgdata=${data}`,
        '--username=postgres',
        '--auth=scram-sha-256',
        `--pwfile=${verifier}`,
        '--encoding=UTF8',
        ...locale(binaries.major),
        '--no-instructions',
      ],
      { ...place.account, cwd: '/', env: programEnvironment() },
    );
    await rename(data, place.data);
  } catch (error) {
    // Another process was quicker.
    if (existsSync(join(place.data, 'PG_VERSION'))) return;
    const said = String((error as { stderr?: string }).stderr ?? error);
    if (said.includes('No space left on device')) throw diskFull(error);
    throw refuse(
      'database-not-made',
      {
        place: place.data,
        message: `The database could not be made: ${said.trim().split('\n').slice(-3).join(' ')}`,
        remedy: 'Look at what is said there; or set DATABASE_URL to the address of a PostgreSQL 16 or later.',
      },
      error,
    );
  } finally {
    await rm(unfinished, { recursive: true, force: true });
  }
}

/**
 * UTF-8 letters with the order of their code points, the same on every machine. With LC_CTYPE C fragments of words
 * would lose ß, ö and all Japanese. macOS has no C.UTF-8.
 */
function locale(major: number): string[] {
  const letters = process.platform === 'darwin' ? 'en_US.UTF-8' : 'C.UTF-8';
  return major >= 17
    ? ['--locale-provider=builtin', '--builtin-locale=C.UTF-8', '--locale=C', `--lc-ctype=${letters}`]
    : [`--locale=${letters}`];
}

/** What PostgreSQL's programs see of our environment: nothing of ours, no PG… variable, a plain locale. */
export const programEnvironment = (): NodeJS.ProcessEnv => ({
  PATH: process.env.PATH,
  LC_ALL: 'C',
  ...(process.env.TZ ? { TZ: process.env.TZ } : {}),
});

function refuseOtherMajor(place: Place, binaries: Binaries): void {
  const major = Number.parseInt(readFileSync(join(place.data, 'PG_VERSION'), 'utf8'), 10);
  if (major === binaries.major) return;
  throw refuse('other-major-version', {
    place: place.data,
    message: `This data was made by PostgreSQL ${major}; the programs here are PostgreSQL ${binaries.major}.`,
    remedy:
      'Make a backup with the release of Fettlebench that the data was made with ("fettle backup FILE"), and restore it with this one into a new folder ("fettle restore FILE").',
  });
}
