import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { chmod, mkdir, mkdtemp, rename, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { type Browser, chromium } from 'playwright-core';
import tar from 'tar-stream';

/** Where a browser stands, and the folder of libraries it needs beside the system's own. */
interface Found {
  path: string;
  libraries?: string;
}

/**
 * A headless Chromium: `CHROMIUM_PATH`, then /usr/bin/chromium, then the one from the package registry, unpacked once
 * below node_modules with the libraries it brings, so that no system package is needed.
 * Throws with the remedy where there is none.
 */
export async function launchBrowser(): Promise<Browser> {
  const found = await findBrowser();
  const libraries = [found.libraries, process.env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return chromium.launch({
    executablePath: found.path,
    headless: true,
    env: { ...process.env, ...(libraries ? { LD_LIBRARY_PATH: libraries } : {}) } as Record<string, string>,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--font-render-hinting=none',
    ],
  });
}

async function findBrowser(): Promise<Found> {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (existsSync(named)) return { path: named };
    throw new Error(`CHROMIUM_PATH names ${named}, which does not exist: correct it or unset it.`);
  }
  if (existsSync('/usr/bin/chromium')) return { path: '/usr/bin/chromium' };
  const packaged = process.platform === 'linux' && process.arch === 'x64' ? packagedFolder() : null;
  if (packaged) return unpack(packaged);
  throw new Error(
    'The browser tests need Chromium: install it, or set CHROMIUM_PATH to one. (The copy from npm, @sparticuz/chromium, is for Linux x64.)',
  );
}

/** The folder of compressed files in @sparticuz/chromium, or null where it is not installed. */
function packagedFolder(): string | null {
  try {
    const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
    for (let folder = dirname(entry); folder !== dirname(folder); folder = dirname(folder)) {
      if (existsSync(join(folder, 'bin', 'chromium.br'))) return join(folder, 'bin');
    }
  } catch {
    // Not installed: the caller says what to do.
  }
  return null;
}

/** Unpacks once; a half-unpacked folder never gets the final name. */
async function unpack(packaged: string): Promise<Found> {
  const cache = join(packaged, '..', '..', '..', '.cache');
  const folder = join(cache, 'chromium');
  const found = { path: join(folder, 'chromium'), libraries: join(folder, 'lib') };
  if (existsSync(found.path)) return found;
  await mkdir(cache, { recursive: true });
  const draft = await mkdtemp(join(cache, 'chromium-'));
  await pipeline(
    createReadStream(join(packaged, 'chromium.br')),
    createBrotliDecompress(),
    createWriteStream(join(draft, 'chromium')),
  );
  await chmod(join(draft, 'chromium'), 0o755);
  await untar(join(packaged, 'al2023.tar.br'), draft);
  await rename(draft, folder).catch(() => rm(draft, { recursive: true, force: true }));
  return found;
}

/** The plain files of a brotli-compressed tar, below `folder`. */
async function untar(archive: string, folder: string): Promise<void> {
  const extract = tar.extract();
  const unpacked = pipeline(createReadStream(archive), createBrotliDecompress(), extract);
  for await (const entry of extract) {
    const target = join(folder, entry.header.name);
    if (entry.header.type === 'file') {
      await mkdir(dirname(target), { recursive: true });
      await pipeline(entry, createWriteStream(target));
    } else entry.resume();
  }
  await unpacked;
}
