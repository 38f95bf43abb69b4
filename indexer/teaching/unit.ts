import type { Evidenced } from '../read.ts';
import type { Features } from '../reading/evidence.ts';
import type { Line } from '../reading/line.ts';
import { type Lesson, Votes } from './lesson.ts';

export type Unit = 'mm' | 'in';

/** What a document that says its unit outright counts for, in votes of its lines. */
const outright = 100;
/** Millimetres are what a bare number means anyway; inches must be the plain habit of the list. */
const [leastVotes, marginOfInches] = [2, 1.5];

/** The unit of a document's bare numbers, from those of its sizes whose unit shows. */
export class UnitLesson implements Lesson<Unit> {
  readonly #votes = new Votes<Unit>();

  /** @param said the document's own words besides its lines: titles, headings, column names */
  constructor(said: Iterable<string>) {
    for (const text of said) {
      const unit = unitSaid(text);
      if (unit) this.#votes.add(unit, outright);
    }
  }

  hear({ line, features }: Evidenced): void {
    const unit = line && unitOf(line, features);
    if (unit) this.#votes.add(unit);
  }

  settle(): Unit | null {
    const [inches, millimetres] = [this.#votes.of('in'), this.#votes.of('mm')];
    if (inches >= leastVotes && inches > marginOfInches * millimetres) return 'in';
    return millimetres > inches ? 'mm' : null;
  }
}

/** The unit in which a line prints what shows one; null where nothing does, or both. */
function unitOf(line: Line, features: Features): Unit | null {
  const [inches, millimetres] = [showsInches(line), showsMillimetres(line, features)];
  return inches === millimetres ? null : inches ? 'in' : 'mm';
}

/** A unit's sign, a fraction, or a thread that only inches have. */
const showsInches = ({ measures, threads }: Line) =>
  measures.some(m => m.unitStated && m.unit === 'in') || threads.some(t => t.kind !== 'metric');

/**
 * A unit's sign, a metric thread, a decimal comma, a standard of the metric world, a size published in whole millimetres,
 * or three bare sizes so large that as inches they are no small part's (common practice).
 */
function showsMillimetres(line: Line, features: Features): boolean {
  const { measures, threads, standards, groups, tokens } = line;
  return (
    measures.some(m => m.unitStated && m.unit === 'mm') ||
    threads.some(t => t.kind === 'metric') ||
    standards.some(({ name }) => /^(DIN|ISO|JIS|EN|UNI|NF)\b/.test(name)) ||
    measures.some(m => !m.unitStated && tokens[m.first]!.text.includes(',')) ||
    (features.has('listed') && measures.every(m => m.unit === 'mm') && measures.some(m => m.whole)) ||
    groups.some(g => g.measures.length >= 3 && g.measures.some(m => !m.unitStated && m.value >= largeInches))
  );
}

/** Inches that no part of a small mechanism with three sizes has. */
const largeInches = 4;

const inchWords = 'in|inch|inches|zoll|pouces?|pollici|pulgadas?|duim|インチ';
const millimetreWords = 'mm|millimet(?:er|re)s?|millimetern?|millimetres?|millimetri|milimetros|ミリ';
const sizeWords =
  'dim(?:ension)?s?|sizes?|measurements?|ma(?:ß|ss)e?|abmessung(?:en)?|cotes?|dimensioni|misure|quote|medidas?|cotas?|maten|afmeting(?:en)?|寸法|単位|length|länge|longueur|lunghezza|longitud|lengte';
const said = new RegExp(
  `(?:${sizeWords})(?:\\s+(?:are|sind|sono|son|zijn|in|en|given|angegeben|all|shown))*\\s*[(\\[:=]?\\s*(${inchWords}|${millimetreWords})(?![\\p{L}\\d])`,
  'iu',
);
const isInches = new RegExp(`^(?:${inchWords})$`, 'iu');

/** The unit that words state for sizes: "All dimensions in mm", "Size (in)". */
function unitSaid(text: string): Unit | null {
  const unit = said.exec(text)?.[1];
  return unit === undefined ? null : isInches.test(unit) ? 'in' : 'mm';
}
