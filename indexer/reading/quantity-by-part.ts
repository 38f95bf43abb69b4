import type { Hit } from './dictionary.ts';
import type { CategoryName } from './reading.ts';
import type { Token } from './tokens.ts';

/** A bearing's number with the letters of its shields or seals, glued to its count: 4x608zz, 2x6804-2RS. */
export function isClosed(tokens: readonly Token[], at: number): boolean {
  if (!/^\d{3,5}$/.test(tokens[at]!.text)) return false;
  const [next, figure, letters] = [tokens[at + 1], tokens[at + 2], tokens[at + 3]];
  const closing = (t: Token | undefined) => t?.gap === 0 && /^(?:zz|z|rs|rsh|ddu|llu)$/.test(t.text);
  if (closing(next)) return true;
  const dashed = next?.text === '-' && next.gap === 0;
  return dashed && (closing(figure) || (figure?.text === '2' && closing(letters)));
}

const names = (hits: readonly Hit[], kinds: readonly CategoryName[]) =>
  hits.some(h => h.categories.some(c => kinds.includes(c)));

/** A ball has one size, so that what is multiplied with it counts: 10 x 3 mm balls. */
export const namesBall = (hits: readonly Hit[]): boolean =>
  names(hits, ['ball']) && !names(hits, ['bearing']);

/** A nut or a washer named by its thread has no length, so that a number behind counts: M5 washer x 4. */
export const namesFlat = (hits: readonly Hit[]): boolean =>
  names(hits, ['nut', 'washer']) && !names(hits, ['screw']);
