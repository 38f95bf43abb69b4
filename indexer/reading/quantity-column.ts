import type { Cell } from './cells.ts';
import { count, holdsName, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import type { Thread } from './threads.ts';
import type { Token } from './tokens.ts';

/** `9 E-RING E-3 2`: a reference in front and a number standing alone behind the name; or a count before a plural. */
export function byLastNumber(
  tokens: readonly Token[],
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  const cell = wholeRow(tokens, cells);
  if (!cell) return null;
  const reference = referenceEnd(tokens, cell, hits);
  const first = count(tokens[cell.first]);
  const at = lastColumn(tokens, cell);
  const value = count(tokens[at]);
  const shownAgain = tokens[at + 1]?.text === 'ref';
  const stands =
    value !== null && value <= mostInList && isAlone(tokens, at) && !tokens[at]!.taken && !shownAgain;
  // * 4 DIN 7984 …, 2 DIN 471 … 12: in front of a standard, where no other number could be one
  const standard = reference === cell.first && !tokens[cell.first]!.taken && tokens[cell.first + 1]!.taken;
  if (standard && !(stands && isSized(tokens, cell.first, at))) return only(first, cell.first);
  if (stands && reference !== null && at > reference + 1) return only(value, at);
  if (stands && isRepeated(tokens, cell.first, at)) return only(value, at);
  const plural = pluralFollows(tokens, cell, hits);
  if (
    first !== null &&
    reference !== null &&
    cell.last > cell.first &&
    plural &&
    !packs(tokens[reference + 1])
  )
    return only(first, cell.first);
  const bracketed = tokens[cell.first]!.text === '(' && tokens[cell.first + 2]?.text === ')';
  if (bracketed && plural) return only(count(tokens[cell.first + 1]), cell.first, cell.first + 2);
  return null;
}

/** Whether a size stands between: a thread or two figures by a times sign. */
function isSized(tokens: readonly Token[], first: number, end: number): boolean {
  for (let at = first + 1; at < end; at++)
    if (tokens[at]!.text === '×' || (tokens[at]!.text === 'm' && tokens[at]!.taken)) return true;
  return false;
}

/** More than this without a column that says so is a number of something else: 608 of a bearing. */
const mostInList = 200;

/** A pack's size is no quantity. */
const packs = (token: Token | undefined) =>
  /^(pack|packs|pk|set|pair|pairs|bag|box|er)$/.test(token?.text ?? '-');

/** The row where it is one cell, or one that was only wrapped. */
function wholeRow(tokens: readonly Token[], cells: readonly Cell[]): Cell | null {
  const first = cells[0];
  if (!first || cells.length === 1) return first ?? null;
  if (!cells.every(cell => cell === first || tokens[cell.first]?.gap === 9)) return null;
  return { ...first, last: cells.at(-1)!.last };
}

/** Where a leading reference number ends (9, 12A); null where the line does not begin with one. */
function referenceEnd(tokens: readonly Token[], cell: Cell, hits: readonly Hit[]): number | null {
  if (tokens[cell.first]?.kind !== 'number') return null;
  const letter = tokens[cell.first + 1];
  const end = letter?.gap === 0 && /^[a-h]$/.test(letter.text) ? cell.first + 1 : cell.first;
  const next = tokens[end + 1];
  if (!next || next.gap === 0 || next.kind === 'mark') return null;
  return next.kind === 'word' || holdsName(cell, hits) ? end : null;
}

/** Words and marks that begin what stands behind the quantity column: a price, a remark. */
const behindQuantity = new Set(
  (
    'nss nsa np nla ref not replaced superseded supersedes use was see to from up includes incl option optional tube bottle set ' +
    'sheet $ € £ ¥'
  ).split(' '),
);

/** The last token of the columns that are no price and no remark. */
function lastColumn(tokens: readonly Token[], cell: Cell): number {
  let end = cell.last;
  for (let at = cell.first + 2; at <= cell.last; at++)
    if (
      behindQuantity.has(tokens[at]!.text) &&
      tokens[at]!.gap > 0 &&
      count(tokens[at - 1]) !== null &&
      isAlone(tokens, at - 1)
    ) {
      end = at - 1;
      break;
    }
  end = beforeNextReference(tokens, cell.first, end);
  // Behind a whole size the first of two numbers alone is the quantity, the second a page or the next reference.
  const sized = holdsTimes(tokens, cell.first, end);
  // … and what stands behind it in words is a material or a remark: OIL SEAL 6x12x4 1 NBR
  if (sized) {
    let back = end;
    while (back > end - mostWordsBehind && isRemark(tokens, back))
      back -= tokens[back]!.kind === 'word' ? 1 : 2;
    if (back < end && count(tokens[back]) !== null && isAlone(tokens, back)) return back;
  }
  const two = sized && count(tokens[end]) !== null && count(tokens[end - 1]) !== null;
  return two && isAlone(tokens, end) && isAlone(tokens, end - 1) && end - 1 > cell.first + 1 ? end - 1 : end;
}

function holdsTimes(tokens: readonly Token[], first: number, end: number): boolean {
  for (let at = first; at < end; at++) if (tokens[at]!.text === '×') return true;
  return false;
}

/** A word that stands off, or a material's letters with their figures: SUS303, S45C. */
const isRemark = (tokens: readonly Token[], at: number): boolean => {
  const { kind, gap } = tokens[at]!;
  if (kind === 'word' && gap > 0) return true;
  return kind === 'number' && gap === 0 && tokens[at - 1]?.kind === 'word' && tokens[at - 1]!.gap > 0;
};

const mostWordsBehind = 3;

/** The next line's reference at the end: 12 … 2 12-1, 29 … 2 29A. */
function beforeNextReference(tokens: readonly Token[], first: number, end: number): number {
  const number = tokens[first]!.text;
  if (!/^\d+$/.test(number)) return end;
  for (let at = Math.max(first + 2, end - 2); at < end; at++)
    if (tokens[at]!.text === number && tokens[at]!.gap > 0 && tokens[at + 1]!.gap === 0) return at - 1;
  return end;
}

const isAlone = (tokens: readonly Token[], at: number) =>
  tokens[at]!.gap > 0 && !joiningMarks.has(tokens[at - 1]?.text ?? '');
const joiningMarks = new Set('× - / = : ø # + ~ ,'.split(' '));

/** `Hex nut M5 Hex nut M5 8`: name and description say the same, then comes the number, or a word and the number. */
function isRepeated(tokens: readonly Token[], first: number, end: number): boolean {
  const half = Math.floor((end - first) / 2);
  if (half < 2) return false;
  for (let at = first; at < first + half; at++)
    if (tokens[at]!.text !== tokens[at + half]!.text) return false;
  return true;
}

/** How a plural ends, where its singular does not end so. */
const plurals: Readonly<Record<string, RegExp>> = {
  en: /[^s]s$/,
  de: /(schrauben|muttern|scheiben|federn|ringe|lager|stifte|kugeln|bolzen)$/,
  fr: /(ecrous|rondelles|roulements|goupilles|ressorts|joints|billes|circlips|boulons)$/,
  it: /(viti|dadi|rondelle|cuscinetti|molle|spine|sfere|boccole|bussole|filettate|filettati|inserti|rosette|grani|anelli|ingranaggi)$/,
  es: /[aeon][rs]?e?s$/,
  nl: /(en|lagers|bouten|kogels)$/,
};

/** A name of the line is a plural: 4 M3x8 screws. */
const pluralFollows = (tokens: readonly Token[], cell: Cell, hits: readonly Hit[]): boolean =>
  hits.some(hit => {
    if (hit.last > cell.last || hit.nouns.length === 0) return false;
    const word = tokens[hit.last]!.text;
    return word.length > 3 && (plurals[hit.entries[0]!.lang]?.test(word) ?? false);
  });

/** `M5 116` under a heading of nuts or washers, which have no length: thread, then how many. */
export function behindThread(
  tokens: readonly Token[],
  [thread]: readonly Thread[],
  heading: readonly Hit[],
): Quantity | null {
  if (thread?.first !== 0 || heading.length === 0 || !namesFlat(heading)) return null;
  const at = thread.last + 1;
  const next = tokens[at + 1];
  const alone = tokens[at]?.gap === 1 && (!next || (next.kind === 'word' && next.gap > 0));
  return alone && !(next && lengthUnit.test(next.text)) ? only(count(tokens[at]), at) : null;
}

/** Whether every part that a heading names is a nut or a washer. */
function namesFlat(heading: readonly Hit[]): boolean {
  const nouns = heading.flatMap(hit => hit.nouns);
  const flat = nouns.filter(
    ({ meaning }) =>
      meaning.kind === 'noun' &&
      (meaning.category === 'nut' || meaning.category === 'washer' || meaning.attrs.type === 't-nut'),
  );
  return nouns.length > 0 && flat.length === nouns.length;
}

const lengthUnit = /^(mm|cm|m|in|inch)$/;
