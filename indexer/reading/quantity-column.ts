import type { Cell } from './cells.ts';
import { count, holdsName, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import type { Token } from './tokens.ts';

/** `9 E-RING E-3 2`: a reference in front and a number standing alone behind the name; or a count before a plural. */
export function byLastNumber(
  tokens: readonly Token[],
  cells: readonly Cell[],
  hits: readonly Hit[],
  isTaken: (at: number) => boolean,
): Quantity | null {
  const cell = wholeRow(tokens, cells);
  if (!cell) return null;
  const reference = referenceEnd(tokens, cell, hits);
  const first = count(tokens[cell.first]);
  const at = lastColumn(tokens, cell);
  const value = count(tokens[at]);
  const shownAgain = tokens[at + 1]?.text === 'ref';
  const stands = value !== null && value < 1000 && isAlone(tokens, at) && !isTaken(at) && !shownAgain;
  if (stands && reference !== null && at > reference + 1) return only(value, at);
  if (stands && isRepeated(tokens, cell.first, at)) return only(value, at);
  if (first !== null && reference !== null && cell.last > cell.first && pluralFollows(tokens, cell, hits))
    return only(first, cell.first);
  return null;
}

/** The row where it is one cell, or one that was only wrapped. */
function wholeRow(tokens: readonly Token[], cells: readonly Cell[]): Cell | null {
  const [first, ...others] = cells;
  if (!first || !others.every(cell => tokens[cell.first]?.gap === 9)) return null;
  return { ...first, last: others.at(-1)?.last ?? first.last };
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
const behindQuantity =
  /^(nss|nsa|np|nla|ref|not|replaced|superseded|supersedes|use|was|see|to|from|up|includes|incl|option|optional|tube|bottle|set|sheet|[$€£¥])$/;

/** The last token of the columns that are no price and no remark. */
function lastColumn(tokens: readonly Token[], cell: Cell): number {
  let end = cell.last;
  for (let at = cell.first + 2; at <= cell.last; at++)
    if (behindQuantity.test(tokens[at]!.text) && tokens[at]!.gap > 0 && count(tokens[at - 1]) !== null) {
      end = at - 1;
      break;
    }
  // Behind a whole size the first of two numbers alone is the quantity, the second a page or the next reference.
  const sized = tokens.slice(cell.first, end).some(token => token.text === '×');
  const two = sized && count(tokens[end]) !== null && count(tokens[end - 1]) !== null;
  return two && isAlone(tokens, end) && isAlone(tokens, end - 1) && end - 1 > cell.first + 1 ? end - 1 : end;
}

const isAlone = (tokens: readonly Token[], at: number) =>
  tokens[at]!.gap > 0 && !/^[×\-/=:ø#+~,]$/.test(tokens[at - 1]?.text ?? '');

/** `Hex nut M5 Hex nut M5 8`: name and description say the same, then comes the number. */
function isRepeated(tokens: readonly Token[], first: number, end: number): boolean {
  const half = (end - first) / 2;
  if (!Number.isInteger(half) || half < 2) return false;
  for (let at = first; at < first + half; at++)
    if (tokens[at]!.text !== tokens[at + half]!.text) return false;
  return true;
}

/** How a plural ends, where its singular does not end so. */
const plurals: Readonly<Record<string, RegExp>> = {
  en: /[^s]s$/,
  de: /(schrauben|muttern|scheiben|federn|ringe|lager|stifte|kugeln|bolzen)$/,
  fr: /(ecrous|rondelles|roulements|goupilles|ressorts|joints|billes|circlips|boulons)$/,
  it: /(viti|dadi|rondelle|cuscinetti|molle|spine|sfere|boccole|rosette|grani|anelli|ingranaggi)$/,
  es: /[aeon][rs]?e?s$/,
  nl: /(en|lagers|bouten|kogels)$/,
};

/** The line's last name is a plural: 4 M3x8 screws. */
function pluralFollows(tokens: readonly Token[], cell: Cell, hits: readonly Hit[]): boolean {
  const name = hits.findLast(h => h.last <= cell.last && h.nouns.length > 0);
  if (!name) return false;
  const word = tokens[name.last]!.text;
  const { lang } = name.entries[0]!;
  return word.length > 3 && (plurals[lang]?.test(word) ?? false);
}
