import { besideSizes, dropBeside } from './beside-sizes.ts';
import { type Cell, cutCells } from './cells.ts';
import type { Place } from './claim.ts';
import { type Columns, columnsOf, noColumns } from './columns.ts';
import type { Quantity } from './count.ts';
import { type Dictionary, type Hit, kindBits, setKnown } from './dictionary.ts';
import { type Group, groupSizes, measuresOf, spreadInches, spreadUnit } from './groups.ts';
import { gluedLabels, labelSizes } from './label-sizes.ts';
import { markCells } from './mark-cells.ts';
import { type Measure, measureAt } from './measures.ts';
import { mendWords } from './misread.ts';
import { mendFigures } from './misread-figures.ts';
import { nameCells, silenceAsides } from './name-cells.ts';
import { withOwnWords } from './own-words.ts';
import { proseIn, type Stretch } from './prose.ts';
import { findQuantity } from './quantity.ts';
import { behindSize } from './quantity-behind.ts';
import { behindThread } from './quantity-column.ts';
import { dropRanges } from './ranges.ts';
import type { LineContext, SizeOrders } from './reading.ts';
import { beginStandard, type StandardName, standardAt } from './standards.ts';
import { formLetters, money, takeFigures, takePrices } from './take.ts';
import { former, military, takeFormer, takeMilitary } from './take-codes.ts';
import { takeThousands } from './thousands.ts';
import { beginThread, type Thread, threadAt } from './threads.ts';
import { type Token, take, tokenise } from './tokens.ts';
import { setsOf } from './vocabulary.ts';

/** A line cut up once: everything the categories judge by. They never look at the text again. */
export interface Line {
  text: string;
  tokens: Token[];
  /** The sets that its words are in, together, as {@link wordSet} gives them. */
  sets: number;
  cells: Cell[];
  hits: Hit[];
  threads: Thread[];
  standards: StandardName[];
  measures: Measure[];
  groups: Group[];
  qty: Quantity | null;
  /** True where a misread word was mended. */
  mended: boolean;
  /** Where letters were taken for figures. */
  misread: readonly Place[];
  /** True where sizes were given as a range, and are left out. */
  ranged: boolean;
  /** True where the line was too long, and only its beginning is read. */
  cut: boolean;
  /** What the line's document decides in it, and why, in words. */
  taught: string[];
  /** Cells and sentences of prose behind the part's name. */
  prose: readonly Stretch[];
  /** The order in which the line's document prints sizes, where it is known. */
  orders: SizeOrders | undefined;
  /** Tokens that only name a dimension: `wire` of 0.4 wire. */
  labels: ReadonlySet<number>;
  /** The heading's own hits: what kind of part the list is about. */
  heading: Heading;
}

/** A heading cut up: its words, and the columns it names where it is a row of column names. */
interface Heading {
  tokens: Token[];
  hits: Hit[];
  /** Those that name no column. */
  naming: Hit[];
  columns: Columns;
}

const noHeading: Heading = { tokens: [], hits: [], naming: [], columns: noColumns };

/** A line longer than this is cut: no part's line is, and a hostile one costs nothing. */
export const longestLine = 4_000;

/** Cuts a line into tokens, cells, threads, standards, sizes and words. Linear in its length. */
export function analyse(text: string, context: LineContext, dictionary: Dictionary): Line {
  const cut = text.length > longestLine;
  const printed = mendFigures(cut ? text.slice(0, longestLine) : text);
  const heading = context.context ? headingOf(context.context, dictionary) : noHeading;
  const { columns, parted } = heading.columns;
  const marked = markCells(printed.text, parted === 'comma' ? columns.length : 0);
  const { tokens, mended } = mendWords(tokenise(marked), dictionary, printed.text);
  const taught = context.decimal ? takeThousands(tokens, context.decimal) : [];
  const cells = nameCells(cutCells(tokens), heading.columns, tokens);
  silenceAsides(tokens, cells);
  const sets = setsOf(tokens);
  if ((sets & former) !== 0) takeFormer(tokens);
  if ((sets & military) !== 0) takeMilitary(tokens);
  const standards = (sets & beginStandard) === 0 ? [] : readEach(tokens, standardAt);
  const threads = (sets & beginThread) === 0 ? [] : readEach(tokens, threadAt);
  let hits = dictionary.find(tokens);
  if (standards.length > 0) hits = hits.filter(outside(standards));
  if (context.abbreviations) {
    const own = withOwnWords(hits, tokens, context.abbreviations, dictionary);
    hits = own.hits;
    taught.push(...own.notes);
  }
  setKnown(tokens, hits);
  if ((sets & money) !== 0) takePrices(tokens);
  const qty =
    findQuantity(tokens, sets, cells, hits) ??
    behindThread(tokens, threads, heading.hits) ??
    behindSize(tokens, heading.hits);
  takeFigures(tokens, sets, cells, hits, qty);
  const prose = proseIn(tokens, cells, hits);
  const printedSizes = readMeasures(tokens, gluedLabels(tokens, hits), context);
  const beside = prose.length > 0 || (sets & besideSizes) !== 0;
  const measures = beside ? dropBeside(tokens, prose, printedSizes) : printedSizes;
  const labels = labelSizes(tokens, measures, cells, hits, formLetters(tokens, standards));
  const groups = groupSizes(tokens, threads, measures, labels);
  for (const group of groups) spreadUnit(group);
  spreadInches(groups);
  if (context.unit === 'in' && measures.some(m => m.unit === 'in' && !m.unitStated))
    taught.push('a bare number is inches, the unit of this list');
  const ranged = dropRanges(tokens, groups);
  return {
    text,
    tokens,
    sets,
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
    cut,
    taught,
    prose,
    orders: context.orders,
    misread: printed.places,
    heading,
  };
}

/** A word inside a standard's name means nothing by itself: the AS of AS568 is no Dutch shaft. The body's name stays known. */
function outside(standards: readonly StandardName[]): (hit: Hit) => boolean {
  return ({ first, kinds }) =>
    kinds === kindBits.finish || !standards.some(s => s.first <= first && first <= s.last);
}

/** The headings last seen, for many lines stand under one. */
const headings = new Map<string, Heading>();
const mostHeadings = 64;

function headingOf(text: string, dictionary: Dictionary): Heading {
  const known = headings.get(text);
  if (known) return known;
  const tokens = tokenise(text);
  const hits = dictionary.find(tokens);
  const naming = hits.filter(hit => (hit.kinds & kindBits.column) === 0);
  setKnown(tokens, naming);
  const heading = { tokens, hits, naming, columns: columnsOf(text, dictionary) };
  if (headings.size >= mostHeadings) headings.clear();
  headings.set(text, heading);
  return heading;
}

/** Reads from left to right what `readAt` finds in tokens not taken yet, and takes its tokens. */
function readEach<T extends { first: number; last: number }>(
  tokens: readonly Token[],
  readAt: (tokens: readonly Token[], at: number) => T | null,
): T[] {
  const found: T[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const one = tokens[at]!.taken ? null : readAt(tokens, at);
    if (!one) continue;
    found.push(one);
    take(tokens, one.first, one.last);
    at = one.last;
  }
  return found;
}

function readMeasures(
  tokens: readonly Token[],
  isLabel: (at: number) => boolean,
  context: LineContext,
): Measure[] {
  const measures: Measure[] = [];
  const sized = tokens.some(token => token.taken);
  for (let at = 0; at < tokens.length; at++) {
    if (tokens[at]!.kind !== 'number' || tokens[at]!.taken) continue;
    if (measures.length === 0 && !sized && isLetterX(tokens, at)) continue;
    const one = measureAt(tokens, at, isLabel, context);
    if (!one) continue;
    measures.push(one);
    at = one.last;
  }
  return measures;
}

/** An X glued to a figure behind a word, with no size in front of it, is a letter: steel X46. */
const isLetterX = (tokens: readonly Token[], at: number) =>
  tokens[at - 1]?.text === '×' &&
  tokens[at - 1]!.gap > 0 &&
  tokens[at]!.gap === 0 &&
  tokens[at - 2]?.kind === 'word';
