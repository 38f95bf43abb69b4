import { type Cell, columnsOf, cutCells, nameCells } from './cells.ts';
import type { Quantity } from './count.ts';
import type { Dictionary, Hit } from './dictionary.ts';
import { type Group, groupSizes, spreadUnit } from './groups.ts';
import { letters } from './labels.ts';
import { markCells } from './mark-cells.ts';
import { inUnit, type Measure, measureAt } from './measures.ts';
import { mendWords } from './misread.ts';
import { findQuantity } from './quantity.ts';
import { dropRanges } from './ranges.ts';
import type { LineContext } from './reading.ts';
import { type StandardName, standardAt } from './standards.ts';
import { type Thread, threadAt } from './threads.ts';
import { type Token, tokenise } from './tokens.ts';

/** A line cut up once: everything the categories judge by. They never look at the text again. */
export interface Line {
  text: string;
  tokens: Token[];
  cells: Cell[];
  hits: Hit[];
  threads: Thread[];
  standards: StandardName[];
  measures: Measure[];
  groups: Group[];
  qty: Quantity | null;
  /** True where a misread word was mended. */
  mended: boolean;
  /** True where sizes were given as a range, and are left out. */
  ranged: boolean;
  /** Tokens that only name a dimension: `wire` of 0.4 wire. */
  labels: ReadonlySet<number>;
  /** The heading's own hits: what kind of part the list is about. */
  heading: { tokens: Token[]; hits: Hit[] };
}

const emptyHeading = { tokens: [], hits: [] };

/** A line longer than this is cut: no part's line is, and a hostile one costs nothing. */
const longestLine = 4_000;

/** Cuts a line into tokens, cells, threads, standards, sizes and words. Linear in its length. */
export function analyse(text: string, context: LineContext, dictionary: Dictionary): Line {
  const { tokens, mended } = mendWords(
    tokenise(markCells(text.length > longestLine ? text.slice(0, longestLine) : text)),
    dictionary,
    text,
  );
  const cells = cutCells(tokens);
  if (context.context) nameCells(cells, columnsOf(context.context, dictionary));
  const taken = new Uint8Array(tokens.length);
  const standards = each(tokens, taken, at => standardAt(tokens, at));
  const threads = each(tokens, taken, at => (taken[at] ? null : threadAt(tokens, at)));
  const hits = dictionary.find(tokens);
  const qty = findQuantity(tokens, cells, hits, at => taken[at] === 1);
  if (qty) taken.fill(1, qty.first, qty.last + 1);
  for (const cell of cells) if (isForeign(cell.column)) taken.fill(1, cell.first, cell.last + 1);
  takeCounts(tokens, cells, qty !== null, taken);
  takePhrases(tokens, hits, taken);
  const labelled = new Map<number, string>();
  for (const hit of hits) {
    const label = hit.entries.find(e => e.meaning.kind === 'label')?.meaning;
    if (label?.kind === 'label') for (let at = hit.first; at <= hit.last; at++) labelled.set(at, label.label);
  }
  const labelOf = (word: string) => letters[word] ?? (word === 'id' || word === 'od' ? word : undefined);
  const measures = readMeasures(tokens, taken, labelOf, context);
  const skip = attachLabels(tokens, measures, cells, labelled, hits);
  const groups = groupSizes(tokens, threads, measures, skip);
  for (const group of groups) spreadUnit(group, inUnit);
  spreadInches(groups);
  const ranged = dropRanges(tokens, groups);
  const heading = context.context ? headingOf(context.context, dictionary) : emptyHeading;
  return {
    text,
    tokens,
    cells,
    hits,
    threads,
    standards,
    measures: groups.flatMap(g => g.measures),
    groups: groups.filter(g => g.thread || g.measures.length > 0),
    qty,
    labels: skip,
    ranged,
    mended,
    heading,
  };
}

/** A number alone in a cell that no heading explains counts something; so does the reference in front of a counted line. */
function takeCounts(
  tokens: readonly Token[],
  cells: readonly Cell[],
  counted: boolean,
  taken: Uint8Array,
): void {
  if (cells.length > 1)
    for (const { first, last, column } of cells)
      if (first === last && column === null && /^\d+$/.test(tokens[first]!.text)) taken[first] = 1;
  const first = cells[0]?.first ?? 0;
  const next = tokens[first + 1];
  if (
    counted &&
    next &&
    next.gap > 0 &&
    next.text !== '×' &&
    /^\d+$/.test(tokens[first]!.text) &&
    cells[0]!.last > first + 1
  )
    if (next.kind === 'number' || (next.kind === 'word' && !/^(mm|cm|m|in|inch)$/.test(next.text)))
      taken[first] = 1;
}

/** Figures inside a phrase that says something else, such as a grade or a seal, are no sizes. */
function takePhrases(tokens: readonly Token[], hits: readonly Hit[], taken: Uint8Array): void {
  for (const { first, last, entries } of hits) {
    if (!entries.every(e => e.meaning.kind === 'modifier' || e.meaning.kind === 'noun')) continue;
    for (let at = first; at <= last; at++) if (tokens[at]!.kind === 'number') taken[at] = 1;
  }
}

/** In a line whose stated sizes are all inches, bare decimals are inches too: .035 wire, .250 OD, 1.50 LG. */
function spreadInches(groups: readonly Group[]): void {
  const all = groups.flatMap(g => g.measures);
  const stated = all.filter(m => m.unitStated);
  if (
    stated.length === 0 ||
    stated.some(m => m.unit === 'mm') ||
    groups.some(g => g.thread?.kind === 'metric')
  )
    return;
  for (const group of groups)
    group.measures = group.measures.map(m =>
      m.unitStated || m.whole ? m : { ...inUnit(m, 'in'), unitStated: true },
    );
}

/** A cell whose numbers are no sizes. */
const isForeign = (column: string | null) =>
  column === 'ref' ||
  column === 'partNumber' ||
  column === 'price' ||
  column === 'weight' ||
  column === 'qty';

function headingOf(text: string, dictionary: Dictionary) {
  const tokens = tokenise(text);
  return { tokens, hits: dictionary.find(tokens) };
}

function each<T extends { first: number; last: number }>(
  tokens: readonly Token[],
  taken: Uint8Array,
  readAt: (at: number) => T | null,
): T[] {
  const found: T[] = [];
  for (let at = 0; at < tokens.length; ) {
    const one = readAt(at);
    if (one) {
      found.push(one);
      taken.fill(1, one.first, one.last + 1);
    }
    at = one ? one.last + 1 : at + 1;
  }
  return found;
}

function readMeasures(
  tokens: readonly Token[],
  taken: Uint8Array,
  labelOf: (word: string) => string | undefined,
  context: LineContext,
): Measure[] {
  const measures: Measure[] = [];
  const sized = taken.includes(1);
  for (let at = 0; at < tokens.length; ) {
    const one =
      tokens[at]!.kind === 'number' &&
      !taken[at] &&
      !(measures.length === 0 && !sized && isLetterX(tokens, at))
        ? measureAt(tokens, at, taken, word => labelOf(word) !== undefined, context)
        : null;
    if (one) measures.push(one);
    at = one ? one.last + 1 : at + 1;
  }
  return measures;
}

/** An X glued to a figure behind a word, with no size in front of it, is a letter: steel X46. */
const isLetterX = (tokens: readonly Token[], at: number) =>
  tokens[at - 1]?.text === '×' &&
  tokens[at - 1]!.gap > 0 &&
  tokens[at]!.gap === 0 &&
  tokens[at - 2]?.kind === 'word';

/** Ties labels to the sizes they stand beside. Returns the tokens that are labels. */
function attachLabels(
  tokens: readonly Token[],
  measures: Measure[],
  cells: readonly Cell[],
  labelled: ReadonlyMap<number, string>,
  hits: readonly Hit[],
): Set<number> {
  const skip = new Set<number>();
  const byLast = new Map(measures.map(m => [m.last, m]));
  const byFirst = new Map(measures.map(m => [m.first, m]));
  const name = (measure: Measure, label: string, at: number) => {
    measure.label = label;
    measure.labelUpper = tokens[at]!.upper;
    skip.add(at);
  };
  const hitAt = new Map(hits.map(h => [h.first, h]));
  for (let at = 0; at < tokens.length; at++) {
    const word = tokens[at]!;
    let label = labelled.get(at);
    const last = label !== undefined ? (hitAt.get(at)?.last ?? at) : at;
    if (label === undefined && word.kind === 'word') label = letters[word.text];
    if (label === undefined) continue;
    const single = word.text.length === 1 && last === at;
    const before = previousOf(tokens, at, byLast);
    const [after, sign] = nextOf(tokens, last, byFirst);
    if (before && before.label === null && !sign && (!single || (word.gap === 0 && !after)))
      name(before, label, at);
    else if (after && after.label === null && (!single || sign || tokens[after.first]!.gap <= 1))
      name(after, label, at);
    else continue;
    for (let inside = at; inside <= last; inside++) skip.add(inside);
    at = last;
  }
  for (const cell of cells) {
    if (cell.column === null || !columnLabels.has(cell.column)) continue;
    for (const m of measures)
      if (m.label === null && m.first >= cell.first && m.last <= cell.last) m.label = cell.column;
  }
  return skip;
}

const columnLabels = new Set([
  'length',
  'thickness',
  'dia',
  'id',
  'od',
  'width',
  'pitch',
  'bore',
  'wire',
  'height',
]);

/** The size that stands directly before a label: `3mm ID`, `1.50 LG`. */
function previousOf(
  tokens: readonly Token[],
  at: number,
  byLast: ReadonlyMap<number, Measure>,
): Measure | undefined {
  return tokens[at]!.gap <= 1 ? byLast.get(at - 1) : undefined;
}

/** The size that stands directly behind a label: `ID 5`, `L=20`, `Dia. 3`; and whether a sign ties them. */
function nextOf(
  tokens: readonly Token[],
  last: number,
  byFirst: ReadonlyMap<number, Measure>,
): [Measure | undefined, boolean] {
  let at = last + 1;
  let sign = false;
  for (; at < tokens.length && at < last + 4; at++) {
    const { text } = tokens[at]!;
    if (text === '=' || text === ':') sign = true;
    else if (text !== '.' && text !== 'ø' && text !== '-') break;
  }
  return [byFirst.get(at), sign];
}
