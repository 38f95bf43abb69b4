import { once } from 'node:events';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { type LineContext, read } from '../../indexer/index.ts';

/** One line as asked: what to read, under which name. */
interface Asked {
  id: unknown;
  text: string;
  context: LineContext;
}

class BadLine extends Error {}

const remedy =
  'Give one JSON object a line, with "id" and "text" (and, if known, "context" and "lang"), or the plain text alone.';

/** Takes one line of input apart: JSON where it begins with a brace, else the plain text, named by its number. */
function take(line: string, number: number): Asked {
  if (!line.trimStart().startsWith('{')) return { id: number, text: line, context: {} };
  let value: Record<string, unknown>;
  try {
    value = JSON.parse(line) as Record<string, unknown>;
  } catch (error) {
    throw new BadLine(`is no JSON: ${(error as Error).message}`);
  }
  if (typeof value['text'] !== 'string') throw new BadLine('has no "text"');
  const optional = (key: string) => {
    const given = value[key];
    if (given !== undefined && given !== null && typeof given !== 'string')
      throw new BadLine(`has a "${key}" that is no text`);
    return given ?? undefined;
  };
  const unit = optional('unit');
  if (unit !== undefined && unit !== 'mm' && unit !== 'in')
    throw new BadLine('has a "unit" that is neither mm nor in');
  return {
    id: value['id'] ?? number,
    text: value['text'],
    context: { context: optional('context'), lang: optional('lang'), unit },
  };
}

/**
 * Reads part lines from `input`, plain or JSON, and writes one JSON object a line: id, text and reading. A bad line gives
 * a fault with its number, and reading goes on. Memory stays constant: the output's pace holds back the input.
 *
 * @returns the exit code: 0, or 1 when a line was bad
 */
export async function readLines(input: Readable, output: Writable, errors: Writable): Promise<number> {
  let number = 0;
  let bad = 0;
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    number++;
    if (line.trim() === '') continue;
    if (!output.write(`${answer(line, number, () => bad++)}\n`)) await once(output, 'drain');
  }
  if (bad > 0) errors.write(`${bad} of ${number} lines could not be taken; see the faults in the answer.\n`);
  return bad > 0 ? 1 : 0;
}

function answer(line: string, number: number, failed: () => void): string {
  try {
    const { id, text, context } = take(line, number);
    return JSON.stringify({ id, text, reading: read(text, context) });
  } catch (error) {
    if (!(error instanceof BadLine)) throw error;
    failed();
    return JSON.stringify({
      id: number,
      fault: { line: number, message: `Line ${number} ${error.message}.`, remedy },
    });
  }
}
