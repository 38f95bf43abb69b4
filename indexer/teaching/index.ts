import { readWithEvidence } from '../read.ts';
import type { LineContext, Reading } from '../reading/reading.ts';
import { abbreviationsIn } from './abbreviations.ts';
import { DecimalLesson } from './decimal-mark.ts';
import { dittoEnd } from './dittos.ts';
import { findLanguage, type Language } from './language.ts';
import { aloneContext, type ListedLine } from './listed-line.ts';
import { ReadTaught } from './read-taught.ts';
import { OrderLesson } from './size-order.ts';
import { type Unit, UnitLesson } from './unit.ts';

export type { ListedLine } from './listed-line.ts';

/** All the lines of a document, and its own words about them. */
export interface ListedDocument {
  lines: () => Iterable<ListedLine>;
  /** Column names, each once. */
  headers: readonly string[];
  /** Titles, headings and notes: lines that are no parts. */
  front: readonly string[];
}

/** What a document taught of its lines. */
export interface Taught {
  language: Language | null;
  unit: Unit | null;
  /** Reads the document's lines one by one from the first to the last, since a ditto mark means the line before. */
  reader: () => { read: (line: ListedLine) => Reading };
}

/**
 * Learns from all lines of a document together what its bare numbers, orders and abbreviations mean. A first pass reads each
 * line by itself, and only what can be meant in one way votes; the reader it gives then reads each with what was settled.
 * Where nothing is settled, a line reads as it does alone.
 */
export function teach({ lines, headers, front }: ListedDocument): Taught {
  const language = findLanguage(
    headers,
    Array.from(lines(), line => line.text),
  );
  const unit = new UnitLesson([...headers, ...front]);
  const decimal = new DecimalLesson();
  const orders = new OrderLesson();
  for (const line of lines()) {
    if (dittoEnd(line.text) > 0) continue;
    const alone = readWithEvidence(line.text, aloneContext(line, language));
    for (const lesson of [unit, decimal, orders]) lesson.hear(alone);
  }
  const settledUnit = unit.settle();
  const taught: LineContext = {
    unit: settledUnit ?? undefined,
    decimal: decimal.settle() ?? undefined,
    orders: orders.settle() ?? undefined,
    abbreviations: abbreviationsIn(front) ?? undefined,
  };
  return { language, unit: settledUnit, reader: () => new ReadTaught(taught, language) };
}
