import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import recognizers from '@microsoft/recognizers-text-suite';
import { build } from 'esbuild';
import { demoLists } from '../../api/demo/lists/index.ts';
import type { read as Read } from '../../indexer/index.ts';
import { inTurns, type Measured, timesTheTime } from './measured.ts';
import { tokenise } from './plain-tokens.ts';

/**
 * What a general recogniser finds of the same facts: the numbers, the counts of a row and the sizes with their units. The lists
 * are in English, which is the language it is told; its models are made once and kept by it.
 */
function recognise(line: string): number {
  const { recognizeNumber, recognizeOrdinal, recognizeDimension, Culture } = recognizers;
  const { English } = Culture;
  return (
    recognizeNumber(line, English).length +
    recognizeOrdinal(line, English).length +
    recognizeDimension(line, English).length
  );
}

/** Lines read a second, beside plain tokenising and beside a general recogniser, over the demo bench's lines. */
export async function benchReading(): Promise<Measured[]> {
  const read = await readerAsBuilt();
  const lines = demoLists.flatMap(list => list.text.split('\n').filter(line => line.trim() !== ''));
  const over = (use: (line: string) => unknown, some: string[]) => () => {
    for (const line of some) use(line);
    return some.length;
  };
  const few = lines.filter((_, index) => index % 10 === 0);
  const rates = inTurns(
    {
      reading: over(line => read(line), lines),
      tokens: over(tokenise, lines),
      recogniser: over(recognise, few),
    },
    3,
  );
  const { reading = 0, tokens: plain = 0, recogniser = 0 } = rates;
  return [
    {
      what: 'lines read',
      perSecond: reading,
      unit: 'lines',
      note: timesTheTime(reading, plain, 'plain tokenising'),
    },
    { what: 'lines cut into plain tokens with their places', perSecond: plain, unit: 'lines' },
    {
      what: 'lines given to @microsoft/recognizers-text-suite',
      perSecond: recogniser,
      unit: 'lines',
      note: `reading is ${(reading / recogniser).toFixed(0)} times as fast`,
    },
  ];
}

/** The reader as the program is built: bundled, without what running from source adds to each function. */
async function readerAsBuilt(): Promise<typeof Read> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  try {
    const outfile = join(folder, 'indexer.mjs');
    const entry = fileURLToPath(new URL('../../indexer/index.ts', import.meta.url));
    await build({
      entryPoints: [entry],
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
