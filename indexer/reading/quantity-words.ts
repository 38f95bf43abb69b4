import type { Cell } from './cells.ts';
import { count, holdsName, only, type Quantity } from './count.ts';
import { type Hit, kindBits } from './dictionary.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** Marks between a counting word and its number, and marks that join sizes. */
const behindWord = new Set([':', '=', '.', '(']);
const inSizes = new Set(['×', '-', '/', 'ø', '=']);

/** `Qty: 4`, `4 Stück`, `4個`. A pack's size is no quantity. */
export function byWord(tokens: readonly Token[], hits: readonly Hit[]): Quantity | null {
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

/** Counters glued to their number: 4個, 4no. */
export const counters = wordSet('個 ヶ ケ コ こ 本 枚 つ 組 no nos off');

/** `4個`, `4no`. */
export function byCounter(tokens: readonly Token[]): Quantity | null {
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
const isPack = (tokens: readonly Token[], hits: readonly Hit[], at: number) =>
  hits.some(
    h =>
      h.entries.some(e => e.meaning.kind === 'label' && e.meaning.label === 'pack') &&
      (h.last === at - 1 || h.first === at + 1 || (h.first === at + 2 && tokens[at + 1]!.text === '-')),
  );

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
export function byNumeral(
  tokens: readonly Token[],
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  const at = cells[0]?.first ?? 0;
  const value = numeralOf.get(tokens[at]?.text ?? '');
  if (value === undefined || !holdsName(cells[0]!, hits) || isPack(tokens, hits, at)) return null;
  const next = tokens[at + 1];
  return next && next.gap > 0 && next.kind !== 'mark' ? only(value, at) : null;
}
