import { once } from 'node:events';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { z } from 'zod';
import { BadMeasurement } from '../../indexer/measure.ts';

/** What is wrong with a line: where, why, and what to do about it. */
interface Fault {
  line: number;
  place: string;
  message: string;
  remedy: string;
}

/**
 * Answers one JSON object a line from `input`, one JSON object a line to `output`, with the line's `id`, or its number, carried along.
 * A bad line gives a fault with its number, and the next is taken. Memory stays constant: the output's pace holds back the input.
 *
 * @returns the exit code: 0, or 1 when a line was bad
 */
export async function answerLines<Asked extends object>(
  schema: z.ZodType<Asked>,
  work: (asked: Asked) => object,
  input: Readable,
  output: Writable,
  errors: Writable,
): Promise<number> {
  let number = 0;
  let bad = 0;
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    number++;
    if (line.trim() === '') continue;
    const answer = answerLine(schema, work, line, number);
    if ('fault' in answer) bad++;
    if (!output.write(`${JSON.stringify(answer)}\n`)) await once(output, 'drain');
  }
  if (bad > 0) errors.write(`${bad} of ${number} lines could not be taken; see the faults in the answer.\n`);
  return bad > 0 ? 1 : 0;
}

function answerLine<Asked extends object>(
  schema: z.ZodType<Asked>,
  work: (asked: Asked) => object,
  line: string,
  number: number,
): object {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch (error) {
    return fault(
      number,
      number,
      'the line',
      `It is no JSON: ${(error as Error).message}.`,
      'Give one JSON object a line.',
    );
  }
  const id = idOf(value) ?? number;
  const parsed = schema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    const place = issue?.path.join('.') || 'the line';
    return fault(id, number, place, `${issue?.message}.`, `Correct "${place}" and give the line again.`);
  }
  try {
    return { id, ...work(parsed.data) };
  } catch (error) {
    if (!(error instanceof BadMeasurement)) throw error;
    return fault(id, number, error.place, error.message, error.remedy);
  }
}

const fault = (id: unknown, line: number, place: string, message: string, remedy: string) => ({
  id,
  fault: { line, place, message, remedy } satisfies Fault,
});

function idOf(value: unknown): string | number | undefined {
  const id = typeof value === 'object' && value !== null ? (value as { id?: unknown }).id : undefined;
  return typeof id === 'string' || typeof id === 'number' ? id : undefined;
}
