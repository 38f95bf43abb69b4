import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Writable } from 'node:stream';
import { Refusal, refuse } from '../refusal.ts';
import { readInChild, usualLimits } from '../work/spawn-reader.ts';

/**
 * `fettle rows FILE`, where not all pages are wanted with `--pages FROM-TO`: prints the rows, relations, balloons and
 * faults of one document as one JSON object. The data
 * folder is never opened. Gives the exit code: 0 done, 1 refused, with what is wrong and its remedy on `errors`.
 */
export async function printRows(
  file: string,
  output: Writable,
  errors: Writable,
  pages?: string,
): Promise<number> {
  try {
    const { written: _, ...rows } = await readInChild(await bytesOf(file), {
      name: basename(file),
      pages: pagesNamed(pages),
    });
    output.write(`${JSON.stringify(rows)}\n`);
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    errors.write(`${error.place}: ${error.message} ${error.remedy}\n`);
    return 1;
  }
}

/** `501-640`, or one page: `12`. */
function pagesNamed(text: string | undefined): { from: number; to: number } | undefined {
  if (text === undefined) return undefined;
  const [, from, to = from] = /^([1-9]\d{0,5})(?:-([1-9]\d{0,5}))?$/.exec(text) ?? [];
  if (!from || Number(from) > Number(to))
    throw refuse('invalid-request', {
      place: '--pages',
      message: `${text} names no pages.`,
      remedy: 'Name the first and the last page, as in --pages 501-640.',
    });
  return { from: Number(from), to: Number(to) };
}

/** A file's bytes, one more at most than is read, so that a file of any length costs little. */
async function bytesOf(file: string): Promise<Uint8Array> {
  try {
    const handle = await open(file);
    try {
      const { size } = await handle.stat();
      if (size <= usualLimits.bytes) return await handle.readFile();
      const { buffer } = await handle.read(Buffer.alloc(usualLimits.bytes + 1));
      return buffer;
    } finally {
      await handle.close();
    }
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw refuse('unreadable', {
      place: file,
      message:
        code === 'ENOENT'
          ? 'There is no such file.'
          : code === 'EISDIR'
            ? 'This is a folder.'
            : `The file can't be opened (${code}).`,
      remedy: 'Name a file with a parts list that you may read.',
    });
  }
}
