import { isWhole, type Token, take } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** The item's number with a point or a bracket behind it: 24. Lock ring, 7) Spring washer. */
export function takeNumbered(tokens: readonly Token[]): void {
  const [number, sign] = tokens;
  if (!number || !isWhole(number) || number.text.length > 3 || sign?.gap !== 0 || !/^[.)]$/.test(sign.text))
    return;
  const next = sign.text === '.' && tokens[2]?.text === ')' ? tokens[3] : tokens[2];
  if (next?.kind === 'word' && next.gap > 0) take(tokens, 0);
}

/** Marks a range of counts in front of the name: 1-2 M4 washers. */
export function takeCountRange(tokens: readonly Token[]): void {
  const [low, dash, high, next] = tokens;
  if (!next || dash?.text !== '-' || dash.gap > 0 || high?.gap !== 0 || !isWhole(low!) || !isWhole(high))
    return;
  const counts = Number(low!.text) < Number(high.text) && Number(high.text) <= mostOfRange && !low!.taken;
  if (counts && next.gap > 0 && next.kind === 'word' && (next.taken || !units.has(next.text)))
    take(tokens, 0, 2);
}

const mostOfRange = 20;
const units = new Set('mm cm in inch m unc unf un nc nf'.split(' '));

/** What begins the number of a military or aerospace standard. */
export const military = wordSet('ms an nas nasm mil');

/** Marks such numbers, whose figures are codes and no sizes: MS51957-17, AN960-10, NAS1149F0332P. */
export function takeMilitary(tokens: readonly Token[]): void {
  for (let at = 0; at + 1 < tokens.length; at++) {
    const figures = tokens[at + 1]!;
    if (!isIn(tokens[at]!, military) || figures.gap > 0 || !/^\d{1,5}$/.test(figures.text)) continue;
    let last = at + 1;
    while (tokens[last + 1]?.gap === 0 && (tokens[last + 1]!.kind !== 'mark' || isDashIn(tokens, last + 1)))
      last++;
    // AN3 alone is too short to be told from a word with a figure.
    if (last > at + 1 || figures.text.length > 2) take(tokens, at, last);
    at = last;
  }
}

const isDashIn = (tokens: readonly Token[], at: number) =>
  tokens[at]!.text === '-' && tokens[at + 1]?.gap === 0 && tokens[at + 1]!.kind !== 'mark';

/** Words that say what a part was before. */
export const former = wordSet(
  'was were formerly previously old fruher ehemals bisher anciennement prima antes voorheen 旧',
);

/** Marks what a bracket says the part was before: M4x16 (was M4x12). */
export function takeFormer(tokens: readonly Token[]): void {
  let inside = false;
  for (let at = 1; at < tokens.length; at++) {
    if (tokens[at]!.text === ')') inside = false;
    else if (tokens[at - 1]!.text === '(' && isIn(tokens[at]!, former)) inside = true;
    if (inside) take(tokens, at);
  }
}
