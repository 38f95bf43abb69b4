import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { read as Read } from '../../indexer/index.ts';

/** The reader as the program is built: bundled, without what running from source adds to each function. */
export async function builtReader(): Promise<typeof Read> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-reader-'));
  try {
    const outfile = join(folder, 'indexer.mjs');
    await build({
      entryPoints: [join(import.meta.dirname, '../../indexer/index.ts')],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
    });
    return ((await import(pathToFileURL(outfile).href)) as { read: typeof Read }).read;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
