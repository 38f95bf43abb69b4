import { type Cell, columnsOf, cutCells, nameCells } from './cells.ts';
import type { Quantity } from './count.ts';
import { type Dictionary, type Hit, kindBits } from './dictionary.ts';
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
  heading: Heading;
}

/** A heading cut up: its words, and the columns it names where it is a row of column names. */
interface Heading {
  tokens: Token[];
  hits: Hit[];
  columns: (string | null)[];
}

const noHeading: Heading = { tokens: [], hits: [], columns: [] };

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
  const heading = context.context ? headingOf(context.context, dictionary) : noHeading;
  nameCells(cells, heading.columns);
  const taken = new Uint8Array(tokens.length);
  const standards = readEach(tokens, taken, standardAt);
  const threads = readEach(tokens, taken, threadAt);
  const hits = dictionary.find(tokens);
  const qty = findQuantity(tokens, cells, hits, at => taken[at] === 1);
  if (qty) taken.fill(1, qty.first, qty.last + 1);
  for (const cell of cells) if (isForeign(cell.column)) taken.fill(1, cell.first, cell.last + 1);
  takeCounts(tokens, cells, qty !== null, taken);
  takePhrases(tokens, hits, taken);
  const measures = readMeasures(tokens, taken, context);
  const labels = attachLabels(tokens, measures, cells, hits);
  const groups = groupSizes(tokens, threads, measures, labels);
  for (const group of groups) spreadUnit(group, inUnit);
  spreadInches(groups);
  const ranged = dropRanges(tokens, groups);
  return {
    text,
    tokens,
    cells,
    hits,
    threads,
    standards,
    measures: measuresOf(groups),
    groups: ranged ? groups.filter(g => g.thread || g.measures.length > 0) : groups,
    qty,
    labels,
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
      if (first === last && column === null && isWhole(tokens[first]!)) taken[first] = 1;
  const first = cells[0]?.first ?? 0;
  const next = tokens[first + 1];
  if (
    counted &&
    next &&
    next.gap > 0 &&
    next.text !== '×' &&
    cells[0]!.last > first + 1 &&
    isWhole(tokens[first]!)
  )
    if (next.kind === 'number' || (next.kind === 'word' && !lengthUnits.has(next.text))) taken[first] = 1;
}

/** A number without a point or a comma. */
const isWhole = ({ kind, text }: Token) => kind === 'number' && !text.includes('.') && !text.includes(',');
const lengthUnits = new Set(['mm', 'cm', 'm', 'in', 'inch']);

/** Figures inside a phrase that says something else, such as a grade or a seal, are no sizes. */
function takePhrases(tokens: readonly Token[], hits: readonly Hit[], taken: Uint8Array): void {
  for (const { first, last, kinds } of hits) {
    if ((kinds & ~(kindBits.modifier | kindBits.noun)) !== 0) continue;
    for (let at = first; at <= last; at++) if (tokens[at]!.kind === 'number') taken[at] = 1;
  }
}

/** In a line whose stated sizes are all inches, bare decimals are inches too: .035 wire, .250 OD, 1.50 LG. */
function spreadInches(groups: readonly Group[]): void {
  let stated = false;
  for (const { thread, measures } of groups) {
    if (thread?.kind === 'metric') return;
    for (const { unitStated, unit } of measures) {
      if (unitStated && unit === 'mm') return;
      stated ||= unitStated;
    }
  }
  if (!stated) return;
  for (const group of groups)
    group.measures = group.measures.map(m =>
      m.unitStated || m.whole ? m : { ...inUnit(m, 'in'), unitStated: true },
    );
}

function measuresOf(groups: readonly Group[]): Measure[] {
  const all: Measure[] = [];
  for (const { measures } of groups) for (const measure of measures) all.push(measure);
  return all;
}

/** A cell whose numbers are no sizes. */
const isForeign = (column: string | null) =>
  column === 'ref' ||
  column === 'partNumber' ||
  column === 'price' ||
  column === 'weight' ||
  column === 'qty';

/** The headings last seen, for many lines stand under one. */
const headings = new Map<string, Heading>();
const mostHeadings = 64;

function headingOf(text: string, dictionary: Dictionary): Heading {
  const known = headings.get(text);
  if (known) return known;
  const tokens = tokenise(text);
  const heading = { tokens, hits: dictionary.find(tokens), columns: columnsOf(text, dictionary) };
  if (headings.size >= mostHeadings) headings.clear();
  headings.set(text, heading);
  return heading;
}

/** Reads from left to right what `readAt` finds in tokens not taken yet, and takes its tokens. */
function readEach<T extends { first: number; last: number }>(
  tokens: readonly Token[],
  taken: Uint8Array,
  readAt: (tokens: readonly Token[], at: number) => T | null,
): T[] {
  const found: T[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const one = taken[at] ? null : readAt(tokens, at);
    if (!one) continue;
    found.push(one);
    taken.fill(1, one.first, one.last + 1);
    at = one.last;
  }
  return found;
}

function readMeasures(tokens: readonly Token[], taken: Uint8Array, context: LineContext): Measure[] {
  const measures: Measure[] = [];
  const sized = taken.includes(1);
  for (let at = 0; at < tokens.length; at++) {
    if (tokens[at]!.kind !== 'number' || taken[at]) continue;
    if (measures.length === 0 && !sized && isLetterX(tokens, at)) continue;
    const one = measureAt(tokens, at, taken, isLabel, context);
    if (!one) continue;
    measures.push(one);
    at = one.last;
  }
  return measures;
}

/** Whether a word glued to a number names a dimension: L20, 3ID. */
const isLabel = (word: string) => word === 'id' || word === 'od' || letters[word] !== undefined;

/** An X glued to a figure behind a word, with no size in front of it, is a letter: steel X46. */
const isLetterX = (tokens: readonly Token[], at: number) =>
  tokens[at - 1]?.text === '×' &&
  tokens[at - 1]!.gap > 0 &&
  tokens[at]!.gap === 0 &&
  tokens[at - 2]?.kind === 'word';

const noLabels: ReadonlySet<number> = new Set();

/** Ties labels to the sizes they stand beside. Returns the tokens that are labels. */
function attachLabels(
  tokens: readonly Token[],
  measures: readonly Measure[],
  cells: readonly Cell[],
  hits: readonly Hit[],
): ReadonlySet<number> {
  if (measures.length === 0) return noLabels;
  const labels = new Set<number>();
  let nextHit = 0;
  let before = 0;
  for (let at = 0; at < tokens.length; at++) {
    const word = tokens[at]!;
    while (nextHit < hits.length && hits[nextHit]!.last < at) nextHit++;
    while (before < measures.length && measures[before]!.last < at - 1) before++;
    if (word.kind === 'mark') continue;
    const hit = hits[nextHit];
    const named = hit && hit.first <= at && (hit.kinds & kindBits.label) !== 0 ? hit : null;
    const label = named ? labelIn(named) : word.kind === 'word' ? letters[word.text] : undefined;
    if (label === undefined) continue;
    const last = named?.first === at ? named.last : at;
    const single = word.text.length === 1 && last === at;
    const front = word.gap <= 1 ? measures[before] : undefined;
    const behind = measureBehind(tokens, last, measures, before);
    let labelled: Measure;
    if (
      front?.last === at - 1 &&
      front.label === null &&
      !behind?.sign &&
      (!single || (word.gap === 0 && !behind?.measure))
    )
      labelled = front;
    else if (
      behind?.measure?.label === null &&
      (!single || behind.sign || tokens[behind.measure.first]!.gap <= 1)
    )
      labelled = behind.measure;
    else continue;
    labelled.label = label;
    labelled.labelUpper = word.upper;
    for (let inside = at; inside <= last; inside++) labels.add(inside);
    at = last;
  }
  for (const cell of cells) {
    if (cell.column === null || !columnLabels.has(cell.column)) continue;
    for (const m of measures)
      if (m.label === null && m.first >= cell.first && m.last <= cell.last) m.label = cell.column;
  }
  return labels;
}

function labelIn({ entries }: Hit): string | undefined {
  for (const { meaning } of entries) if (meaning.kind === 'label') return meaning.label;
  return undefined;
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

/** The size that stands directly behind a label: `ID 5`, `L=20`, `Dia. 3`; and whether a sign ties them. */
function measureBehind(
  tokens: readonly Token[],
  last: number,
  measures: readonly Measure[],
  from: number,
): { measure: Measure | undefined; sign: boolean } | null {
  let at = last + 1;
  let sign = false;
  for (; at < tokens.length && at < last + 4; at++) {
    const { text } = tokens[at]!;
    if (text === '=' || text === ':') sign = true;
    else if (text !== '.' && text !== 'ø' && text !== '-') break;
  }
  let index = from;
  while (index < measures.length && measures[index]!.first < at) index++;
  const measure = measures[index]?.first === at ? measures[index] : undefined;
  return measure || sign ? { measure, sign } : null;
}
