import type { Cell } from './cells.ts';
import type { Quantity } from './count.ts';
import { type Hit, kindBits } from './dictionary.ts';
import type { StandardName } from './standards.ts';
import { takeCountRange, takeNumbered } from './take-codes.ts';
import { isWhole, type Token, take } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** Marks the figures that are no sizes, whatever they look like: quantities, references, part numbers, prices, grades. */
export function takeFigures(
  tokens: readonly Token[],
  sets: number,
  cells: readonly Cell[],
  hits: readonly Hit[],
  qty: Quantity | null,
): void {
  if (qty) take(tokens, qty.first, qty.last);
  for (const cell of cells)
    if (cell.column !== null && foreign.has(cell.column)) take(tokens, cell.first, cell.last);
  takeCounts(tokens, cells);
  if (qty || endsShown(tokens)) takeReference(tokens, cells);
  takeDashNumber(tokens);
  takeNumbered(tokens);
  takeCountRange(tokens);
  takePartNumber(tokens);
  if ((sets & diametralPitch) !== 0) takeDiametralPitch(tokens);
  takePhrases(tokens, hits);
}

/** A line that ends in REF shows again what is counted elsewhere. */
const endsShown = (tokens: readonly Token[]) =>
  tokens.at(-1)?.text === 'ref' || (tokens.at(-1)?.text === ')' && tokens.at(-2)?.text === 'ref');

/** Marks the figures beside a sign of money: 9,64 €, $0.05, 2,10 CNY. */
export function takePrices(tokens: readonly Token[]): void {
  for (let at = 0; at < tokens.length; at++) {
    if (!isIn(tokens[at]!, money)) continue;
    const [before, after] = [tokens[at - 1], tokens[at + 1]];
    // $ stands in front, and behind where no figure follows it.
    if (after?.kind === 'number' && after.gap <= 1 && tokens[at]!.kind === 'mark') take(tokens, at + 1);
    else if (before?.kind === 'number' && tokens[at]!.gap <= 1) take(tokens, at - 1);
  }
}

/** Signs and letters of money. */
export const money = wordSet('$ € £ ¥ eur usd gbp chf cny rmb jpy czk pln zł kc sek nok dkk aud cad');

/** Columns whose numbers are no sizes. */
const foreign = new Set(['ref', 'partNumber', 'price', 'weight', 'qty', 'unit']);

/** A number alone in a cell that no heading explains counts something. */
function takeCounts(tokens: readonly Token[], cells: readonly Cell[]): void {
  if (cells.length < 2) return;
  for (const { first, last, column, labels } of cells)
    if (first === last && column === null && labels.length === 0 && isWhole(tokens[first]!))
      take(tokens, first);
}

/** The reference in front of a counted line. */
function takeReference(tokens: readonly Token[], cells: readonly Cell[]): void {
  const first = cells[0]?.first ?? 0;
  const next = tokens[first + 1];
  if (!next || next.gap === 0 || next.text === '×') return;
  if (cells[0]!.last <= first + 1 || !isWhole(tokens[first]!)) return;
  if (next.kind === 'number' || (next.kind === 'word' && !lengthUnits.has(next.text))) take(tokens, first);
}

/** A figure's index with a dash in front of it: -23 WASHER, THRUST. */
function takeDashNumber(tokens: readonly Token[]): void {
  const [dash, number, next] = tokens;
  if (dash?.text !== '-' || number?.gap !== 0 || next?.kind !== 'word' || next.gap === 0) return;
  if (isWhole(number)) take(tokens, 1);
}

const lengthUnits = new Set(['mm', 'cm', 'm', 'in', 'inch']);

/** A maker's number behind the reference: 27 38-1190 E-RING. Two figures by a dash, four long behind it, are no sizes. */
function takePartNumber(tokens: readonly Token[]): void {
  for (let at = 0; at + 2 < tokens.length && at < 4; at++) {
    const [front, dash, back, next] = [tokens[at]!, tokens[at + 1]!, tokens[at + 2]!, tokens[at + 3]];
    if (dash.text !== '-' || dash.gap > 0 || back.gap > 0 || back.text.length < 4) continue;
    if (!isWhole(front) || !isWhole(back)) continue;
    const lettered = next?.text === '-' && next.gap === 0 && isFormOf(tokens[at + 4], tokens[at + 5]);
    if (next && !lettered && (next.gap === 0 || next.text === '×')) continue;
    take(tokens, at, at + (lettered ? 4 : 2));
    if (at === 1 && isWhole(tokens[0]!) && front.gap > 0) take(tokens, 0);
  }
}

/** The letter that ends a maker's number: 33-1042-A. */
const isFormOf = (letter: Token | undefined, next: Token | undefined) =>
  letter?.kind === 'word' && letter.gap === 0 && letter.text.length <= 2 && next?.gap !== 0;

const diametralPitch = wordSet('p dp');

/** A gear's diametral pitch, glued to its letter: 32P, 48DP. */
function takeDiametralPitch(tokens: readonly Token[]): void {
  for (let at = 0; at + 1 < tokens.length; at++) {
    const [number, letter] = [tokens[at]!, tokens[at + 1]!];
    if (!isIn(letter, diametralPitch) || letter.gap > 0 || tokens[at + 2]?.gap === 0) continue;
    if (isWhole(number) && Number(number.text) >= 12) take(tokens, at);
  }
}

/** Figures inside a phrase that says something else, such as a grade or a seal, are no sizes. */
function takePhrases(tokens: readonly Token[], hits: readonly Hit[]): void {
  for (const { first, last, kinds } of hits) {
    if ((kinds & ~(kindBits.modifier | kindBits.noun | kindBits.label)) !== 0) continue;
    // 6.8 x 1.9 is a size and no property class.
    const sized = first === last && (tokens[first - 1]?.text === '×' || tokens[first + 1]?.text === '×');
    if (sized) continue;
    for (let at = first; at <= last; at++) if (tokens[at]!.kind === 'number') take(tokens, at);
  }
}

const noForms: ReadonlySet<number> = new Set();

/** Letters behind a standard that name its form: DIN 125 B 4,3, ISO 2341 - B - 6 x 30. */
export function formLetters(
  tokens: readonly Token[],
  standards: readonly StandardName[],
): ReadonlySet<number> {
  if (standards.length === 0) return noForms;
  const forms = new Set<number>();
  for (const { last } of standards) {
    const at = tokens[last + 1]?.text === '-' ? last + 2 : last + 1;
    if (/^[a-h]$/.test(tokens[at]?.text ?? '') && tokens[at + 1]?.text !== '=') forms.add(at);
  }
  return forms;
}
