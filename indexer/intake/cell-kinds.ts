import type { Role } from '../reading/column-words.ts';
import { narrow } from './clean.ts';
import { readQuantity } from './quantity.ts';
import { readReference } from './reference.ts';

/** Sizes that look like part numbers: `3x8`, `M3x8`, `5 x 11 x 4`, `1/4-20`, `Ø12`; `M6 43 717` is no size. */
const sizeLike =
  /^(?:M\s?\d{1,2}(?:[.,]\d{1,2})?(?:\s*[-x×*]\s*\d{1,3}(?:[.,]\d+)?)*$|[Øø⌀]\s?\d|(?:#|no\.?\s?)?\d[\d.,/]*\s*[-x×*]\s*\d[\d.,/]*\s*(?:x|×|\*)|\d[\d.,/]*\s*[x×*]\s*\d|\d+\/\d+\s*-\s*\d+|(?:DIN|ISO|JIS|EN|BS|ANSI|AS)\s?\d)/i;
const code = /^[A-Z0-9](?:[A-Z0-9]|[ ._/+–-](?=[A-Z0-9(]))*(?:\([A-Z0-9]+\))?$/i;
const money =
  /^(?:[€$£¥]|EUR|USD|GBP|CHF)?\s?\d{1,3}(?:[.,' ]?\d{3})*(?:[.,]\d{2})\s?(?:[€$£¥]|EUR|USD|GBP|CHF|円)?$|^[¥￥]\s?\d[\d,]*$|^\d[\d,]*\s?円$/i;
const noNumber = /^(?:[-–—]+|NSS|N\.S\.S\.|N\/A|NLA|NP|none)$/i;

/**
 * How much a text looks like a part number: 0 not, 1 could be, 2 does. A number has digits and no running words;
 * a size, a standard or a small count is none.
 */
export function partNumberLike(text: string): 0 | 1 | 2 {
  const number = narrow(text).trim();
  if (number.length < 3 || number.length > 32 || !code.test(number) || sizeLike.test(number)) return 0;
  const digits = number.replace(/\D/g, '').length;
  if (digits < 2) return 0;
  const words = number.split(' ');
  if (
    words.length > 4 ||
    words.some(word => /[a-z]{3}/.test(word) || (/^[A-Za-z]+$/.test(word) && word.length > 3))
  )
    return 0;
  if (words.length > 1 && words.some((word, at) => at > 0 && !/\d/.test(word))) return 0;
  return digits >= 3 && number.length >= 5 ? 2 : 1;
}

/** The build of a part number: digits 9, letters A, the rest as it stands: `G4 50 457` is `A9 99 999`. */
export const shapeOf = (text: string): string =>
  narrow(text).trim().replace(/\d/g, '9').replace(/[A-Z]/gi, 'A');

const wordy = /\p{L}{3,}|[\u3040-\u30ff\u4e00-\u9fff]{2,}/u;
export const hasWord = (text: string): boolean => wordy.test(text);

/** Lists count in ones and tens; a number of three digits in their midst is seldom a quantity. */
const likelihood = (qty: number | null): number =>
  qty === null || qty <= 24 ? 3 : qty < 100 ? 2.5 : qty < 1000 ? 1 : -2;

/**
 * How well a cell's content suits a column, about -6 (not at all) to 3 (just what stands there).
 * `shapes` are the builds of part numbers this document has shown often.
 */
export function suits(text: string, role: Role, shapes?: ReadonlySet<string>): number {
  switch (role) {
    case 'ref':
      return readReference(text) ? (/\d/.test(text) ? 3 : -1) : -6;
    case 'partNumber': {
      if (shapes?.has(shapeOf(text))) return 3.5;
      if (noNumber.test(text)) return 1;
      // Where the document builds its numbers one way, another build is seldom one of them.
      return [-6, 1, shapes?.size ? 1.5 : 2.5][partNumberLike(text)]!;
    }
    case 'description': {
      if (hasWord(text)) return /^\d+$/.test(text.split(' ', 1)[0]!) ? 1 : 2;
      return /\p{L}/u.test(text) && !shapes?.has(shapeOf(text)) ? 0.5 : -4;
    }
    case 'qty':
    case 'model': {
      const { qty, understood } = readQuantity(text);
      if (role === 'model' && /^[x×•●○✓✔+]$/i.test(text)) return 2.5;
      return understood ? likelihood(qty) : -6;
    }
    case 'price':
      return money.test(text) ? 3.2 : -6;
    case 'level':
      return /^[.+]*\d{1,2}$/.test(text) ? 1 : -6;
    case 'unit':
      return /^\p{L}{1,5}\.?$/u.test(text) ? 1 : -4;
    case 'size':
      return /\d/.test(text) ? 1.5 : -2;
    case 'material':
      return hasWord(text) ? 1 : -3;
    default:
      return hasWord(text) || /^\p{L}{2,}$/u.test(text) ? 0.5 : -2.5;
  }
}
