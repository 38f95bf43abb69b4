import type { DecimalMark } from './reading.ts';
import { respelled, type Token } from './tokens.ts';

const grouped: Readonly<Record<DecimalMark, RegExp>> = {
  ',': /^[1-9]\d{0,2}\.\d{3}$/,
  '.': /^[1-9]\d{0,2},\d{3}$/,
};

/**
 * Takes the marks of thousands out of a line's numbers, where the document's decimal mark is known: in a list that writes
 * 2,5 the shaft of 1.200 is longer than a metre.
 *
 * @returns a note for each number
 */
export function takeThousands(tokens: Token[], decimal: DecimalMark): string[] {
  const notes: string[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.kind !== 'number' || !grouped[decimal].test(token.text)) continue;
    notes.push(`${token.text} is more than a thousand: this list writes decimals with a “${decimal}”`);
    tokens[at] = { ...respelled(token, 'number', token.text.replace(/[.,]/, '')), decimals: 0 };
  }
  return notes;
}
