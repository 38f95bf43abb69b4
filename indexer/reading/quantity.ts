import type { Cell } from './cells.ts';
import { count, countIn, holdsName, only, type Quantity } from './count.ts';
import { type Hit, kindBits } from './dictionary.ts';
import { byColon } from './quantity-behind.ts';
import { byLastNumber } from './quantity-column.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** What closes a bracket, and the times sign. */
export const bracket = wordSet(')');
const timesSign = wordSet('×');
/** Counters glued to their number: 4個, 4no. */
const counters = wordSet('個 ヶ ケ コ こ 本 枚 つ 組 no nos off');

/**
 * Finds the quantity: `Qty 4`, `4 pcs`, `2x …`, `… x2`, `(4)`, a quantity cell, or the last column of columns run together.
 *
 * @param sets the sets that the tokens' words are in
 * @param hits the dictionary's finds, by first token
 */
export function findQuantity(
  tokens: readonly Token[],
  sets: number,
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  const bracketed = (sets & bracket) !== 0;
  if (bracketed && severalCounts(tokens)) return null;
  return (
    byColumn(tokens, cells) ??
    byWord(tokens, hits) ??
    ((sets & counters) !== 0 ? byCounter(tokens) : null) ??
    ((sets & timesSign) !== 0 ? byTimes(tokens, cells, hits) : null) ??
    (bracketed ? byBracket(tokens, cells) : null) ??
    byDash(tokens) ??
    byColon(tokens, hits) ??
    byCell(tokens, cells, hits) ??
    byLastNumber(tokens, cells, hits) ??
    byNumeral(tokens, cells, hits)
  );
}

/** Two to twelve in words. */
const numerals: readonly string[] = [
  'two zwei deux due dos twee',
  'three drei trois tre tres drie',
  'four vier quatre quattro cuatro',
  'five funf fuenf cinq cinque cinco vijf',
  'six sechs sei seis zes',
  'seven sieben sept sette siete zeven',
  'eight acht huit otto ocho',
  'nine neun neuf nove nueve negen',
  'ten zehn dix dieci diez tien',
  'eleven elf onze undici once',
  'twelve zwolf zwoelf douze dodici doce twaalf',
];
const numeralOf = new Map(
  numerals.flatMap((words, i) => words.split(' ').map(word => [word, i + 2] as const)),
);

/** `two M3 nuts`: a numeral in words in front of the name. */
function byNumeral(tokens: readonly Token[], cells: readonly Cell[], hits: readonly Hit[]): Quantity | null {
  const at = cells[0]?.first ?? 0;
  const value = numeralOf.get(tokens[at]?.text ?? '');
  if (value === undefined || !holdsName(cells[0]!, hits) || isPack(tokens, hits, at)) return null;
  const next = tokens[at + 1];
  return next && next.gap > 0 && next.kind !== 'mark' ? only(value, at) : null;
}

/** Whether a line counts several parts, each in its brackets: 0.1 (2x), 0.3 (1x). None of them is the line's quantity. */
export function severalCounts(tokens: readonly Token[]): boolean {
  let counts = 0;
  for (let at = 3; at < tokens.length; at++)
    if (tokens[at]!.text === ')' && tokens[at - 3]!.text === '(') {
      const [one, other] = [tokens[at - 2]!, tokens[at - 1]!];
      if ((one.text === '×' && count(other) !== null) || (other.text === '×' && count(one) !== null))
        counts++;
    } else if (isCountBehindSize(tokens, at)) counts++;
  return counts > 1;
}

/** M12 (10): a number alone in brackets behind a size's figure. */
const isCountBehindSize = (tokens: readonly Token[], at: number) =>
  tokens[at]!.text === ')' &&
  tokens[at - 2]!.text === '(' &&
  count(tokens[at - 1]) !== null &&
  tokens[at - 3]!.kind === 'number';

/** What stands under a heading of quantities; two that say otherwise leave it open. */
function byColumn(tokens: readonly Token[], cells: readonly Cell[]): Quantity | null {
  if (cells.length < 2) return null;
  let found: Quantity | null = null;
  for (const cell of cells) {
    const counted = cell.column === 'qty' ? countIn(tokens, cell) : null;
    if (!counted) continue;
    if (found && found.value !== counted.value) return null;
    found ??= only(counted.value, counted.at);
  }
  return found;
}

/** Marks between a counting word and its number, and marks that join sizes. */
const behindWord = new Set([':', '=', '.', '(']);
const inSizes = new Set(['×', '-', '/', 'ø', '=']);

/** `Qty: 4`, `4 Stück`, `4個`. A pack's size is no quantity. */
function byWord(tokens: readonly Token[], hits: readonly Hit[]): Quantity | null {
  for (const hit of hits) {
    if ((hit.kinds & kindBits.count) === 0) continue;
    const named = (hit.kinds & kindBits.column) !== 0;
    let after = hit.last + 1;
    while (behindWord.has(tokens[after]?.text ?? '')) after++;
    const counts = named || opensCell(tokens, hit, after);
    if (counts && count(tokens[after]) !== null) return only(count(tokens[after]), hit.first, after);
    const at = hit.first - 1;
    const sign = tokens[at - 1];
    const apart = sign?.text === '-' && sign.gap > 0 && tokens[at]!.gap > 0;
    const inSize = (inSizes.has(sign?.text ?? '') && !apart) || (at >= 0 && tokens[at]!.taken);
    if (count(tokens[at]) !== null && !inSize && tokens[hit.first]!.gap <= 1 && !isPack(tokens, hits, at))
      return only(count(tokens[at]), at, hit.last);
  }
  return null;
}

/** `4個`, `4no`. */
function byCounter(tokens: readonly Token[]): Quantity | null {
  for (let at = 1; at < tokens.length; at++) {
    if (tokens[at]!.gap > 0 || !isIn(tokens[at]!, counters)) continue;
    if (count(tokens[at - 1]) !== null) return only(count(tokens[at - 1]), at - 1, at);
  }
  return null;
}

/** `Pz 3 Cuscinetto`: a counting word begins the cell, its number stands alone behind it and the name follows. */
function opensCell(tokens: readonly Token[], { first, last }: Hit, after: number): boolean {
  const begins = first === 0 || tokens[first - 1]!.text === '|';
  const [number, name] = [tokens[after], tokens[after + 1]];
  return begins && after === last + 1 && number?.gap === 1 && name?.kind === 'word' && name.gap > 0;
}

/** Whether the number at a token counts what is in a pack. */
export const isPack = (tokens: readonly Token[], hits: readonly Hit[], at: number) =>
  hits.some(
    h =>
      h.entries.some(e => e.meaning.kind === 'label' && e.meaning.label === 'pack') &&
      (h.last === at - 1 || h.first === at + 1 || (h.first === at + 2 && tokens[at + 1]!.text === '-')),
  );

/** `2x M4x10`, `(x2)`, `608ZZ x 4`, `2 x 5x11x4`: the sign stands off, or has no size on one side. */
function byTimes(tokens: readonly Token[], cells: readonly Cell[], hits: readonly Hit[]): Quantity | null {
  for (const cell of cells) {
    const open = tokens[cell.first]?.text === '(' ? cell.first + 1 : cell.first;
    const sign = tokens[open + 1];
    const leading = count(tokens[open]);
    if (leading !== null && sign?.text === '×' && !tokens[open]!.taken) {
      const next = tokens[open + 2];
      if (!next || open + 1 === cell.last || next.kind !== 'number') {
        const sizes = next?.text === 'ø' && open + 1 < cell.last && (sign.gap > 0 || next.gap === 0);
        if (!sizes) return only(leading, open, open + 1);
      } else if (
        next.gap > 0 &&
        (glueFollows(tokens, open + 2, cell.last) ||
          numbersName(tokens, open + 2, hits) ||
          isCode(tokens, open))
      )
        return only(leading, open, open + 1);
    }
    for (let at = cell.first; at <= cell.last; at++) {
      if (!isIn(tokens[at]!, timesSign)) continue;
      const after = count(tokens[at + 1]);
      const before = tokens[at - 1];
      const beforeCount = count(before);
      // (2x), and 1x; behind a name
      if (
        beforeCount !== null &&
        before!.gap + Number(tokens[at - 2]?.text === '(') > 0 &&
        /^[);,|]$/.test(tokens[at + 1]?.text ?? ')')
      )
        return only(beforeCount, at - 1, at);
      if (after === null || !endsThere(tokens, at + 1, cell.last)) continue;
      if (at === cell.first || before!.text === '(' || before!.text === '|') return only(after, at, at + 1);
      const word = before!.kind === 'word' || /^[)"]$/.test(before!.text);
      if (word && tokens[at]!.gap > 0 && (tokens[at + 1]!.gap === 0 || sizedBefore(tokens, cell.first, at)))
        return only(after, at, at + 1);
      // M3x8 x4: glued signs join sizes, the one that stands off counts
      if (
        tokens[at]!.gap > 0 &&
        at >= 3 &&
        tokens[at - 2]!.text === '×' &&
        tokens[at - 2]!.gap === 0 &&
        tokens[at + 1]!.gap === 0
      )
        return only(after, at, at + 1);
    }
  }
  return null;
}

/** A bearing's number, or another of three figures and more in front of a name in the plural: 2 x 608 bearings. */
const numbersName = (tokens: readonly Token[], at: number, hits: readonly Hit[]): boolean =>
  /^\d{3,5}$/.test(tokens[at]!.text) &&
  hits.some(h => h.first === at + 1 && h.nouns.length > 0 && tokens[h.last]!.text.endsWith('s'));

/** Whether a whole size stands before: M3x8 SHCS x 4. */
function sizedBefore(tokens: readonly Token[], first: number, end: number): boolean {
  for (let at = first + 1; at < end - 1; at++)
    if (tokens[at]!.text === '×' && tokens[at - 1]!.kind === 'number' && tokens[at + 1]!.kind === 'number')
      return true;
  return false;
}

/** Glued behind the number stand a code's letters or a glued times sign: 4x 608ZZ, 2 x 5x11x4 */
function glueFollows(tokens: readonly Token[], at: number, last: number): boolean {
  const next = tokens[at + 1];
  return (
    at < last &&
    next?.gap === 0 &&
    (next.text === '×' || (next.kind === 'word' && next.text !== 'mm') || next.text === '-')
  );
}

/** 2x 6806 bearings, 2x 1/4-20: a times sign glued to its count alone, a code of four figures or a fraction behind it. */
function isCode(tokens: readonly Token[], at: number): boolean {
  const [sign, number, next] = [tokens[at + 1]!, tokens[at + 2]!, tokens[at + 3]];
  if (sign.gap > 0 || !next) return false;
  const fraction = next.text === '/' && next.gap === 0 && tokens[at + 4]?.gap === 0;
  return fraction || (/^\d{3,5}$/.test(number.text) && next.kind === 'word' && next.text !== 'mm');
}

const endsThere = (tokens: readonly Token[], at: number, last: number) =>
  at >= last || /^[),;|]$/.test(tokens[at + 1]!.text);

/** `4-M3x8`, as Japanese drawings count; `M3 nuts: 4`, `M3 nuts - 4` and `M3 nuts, 4` at the end. */
function byDash(tokens: readonly Token[]): Quantity | null {
  const [first, dash, letter] = tokens;
  if (
    count(first) !== null &&
    dash?.text === '-' &&
    dash.gap === 0 &&
    letter?.text === 'm' &&
    letter.gap === 0 &&
    letter.taken
  )
    return only(count(first), 0, 1);
  const last = tokens.length - 1;
  const [sign, before] = [tokens[last - 1], tokens[last - 2]];
  const off =
    sign?.text === ':' ||
    sign?.text === '=' ||
    (sign?.text === '-' && sign.gap > 0 && tokens[last]!.gap > 0) ||
    ((sign?.text === ',' || sign?.text === ';') && (sizedBefore(tokens, 0, last) || threaded(tokens)));
  return off && before?.kind === 'word' && before.text.length > 2 && !tokens[last]!.taken
    ? only(count(tokens[last]), last)
    : null;
}

/** Whether a metric thread stands in the line. */
const threaded = (tokens: readonly Token[]) => tokens.some(t => t.text === 'm' && t.taken);

/** More than this in brackets is a year, a profile or a number of the maker's. */
const mostInBrackets = 500;

/** `Gear (2)`: a number alone in brackets behind the name. In front of it it is a reference. */
function byBracket(tokens: readonly Token[], cells: readonly Cell[]): Quantity | null {
  for (const cell of cells) {
    for (let at = cell.first + 1; at + 1 <= cell.last; at++) {
      if (tokens[at - 1]?.text !== '(' || tokens[at + 1]?.text !== ')') continue;
      const value = count(tokens[at]);
      if (value !== null && value <= mostInBrackets && at - 1 > cell.first)
        return only(value, at - 1, at + 1);
    }
  }
  return null;
}

/** The first cell in which a part is named; cells and hits both stand in order. */
function firstNamed(cells: readonly Cell[], hits: readonly Hit[]): number {
  let at = 0;
  for (const { first, last, nouns } of hits) {
    if (nouns.length === 0) continue;
    while (at < cells.length && cells[at]!.last < first) at++;
    if (at < cells.length && cells[at]!.first <= first && last <= cells[at]!.last) return at;
  }
  return -1;
}

/** A number alone in its cell. */
interface Alone {
  value: number;
  index: number;
  at: number;
}

/** A number alone in front of a row that has no other counts where it is so small: most lists want one or two, and few items are so numbered. */
const mostInFront = 4;

/** The small number alone in a cell behind the description; or, of two in front of it, the second. */
function byCell(tokens: readonly Token[], cells: readonly Cell[], hits: readonly Hit[]): Quantity | null {
  if (cells.length < 2 || cells.some(c => c.column !== null && c.column !== 'sheet')) return null;
  const named = firstNamed(cells, hits);
  const described = named >= 0 ? named : cells.findIndex(c => c.last > c.first);
  let before = 0;
  let front: Alone | null = null;
  let second: Alone | null = null;
  for (let index = 0; index < cells.length; index++) {
    const { first, last } = cells[index]!;
    const value = first === last ? count(tokens[first]) : null;
    if (value === null) continue;
    if (index > described && value < 1000) return only(value, first);
    if (index >= described) continue;
    before++;
    if (before === 1) front = { value, index, at: first };
    else if (before === 2) second = { value, index, at: first };
  }
  const early = front !== null && front.index === 0 && front.value > mostInFront;
  const beside: Alone | null = before === 2 ? second : early ? null : front;
  if (beside && beside.value < 1000) return only(beside.value, beside.at);
  if (before > 0) return null;
  // "M3x15mm      2 Tapered screw head": a column run into the next
  const run = cells.find(({ first, last }, index) => {
    const next = tokens[first + 1];
    return (
      index > 0 &&
      first < last &&
      count(tokens[first]) !== null &&
      next?.kind === 'word' &&
      next.gap > 0 &&
      next.text.length > 2
    );
  });
  return run ? only(count(tokens[run.first]), run.first) : null;
}
