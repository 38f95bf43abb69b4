import { count, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import type { Token } from './tokens.ts';

/** More than this behind a colon is a number of something else: 608 of a bearing. */
const mostBehindColon = 200;

/** `Dadi M4: 6, per il coperchio`: a number alone behind the colon of what is named, and words or nothing behind it. */
export function byColon(tokens: readonly Token[], hits: readonly Hit[]): Quantity | null {
  for (let at = 1; at + 1 < tokens.length; at++) {
    if (tokens[at]!.text !== ':') continue;
    const value = count(tokens[at + 1]);
    const [mark, next] = [tokens[at + 2], tokens[at + 3]];
    if (value === null || value > mostBehindColon || tokens[at + 1]!.taken) return null;
    const ends = !mark || (/^[,;.(]$/.test(mark.text) && mark.gap <= 1 && next?.kind !== 'number');
    const named = hits.some(h => h.nouns.length > 0 && h.last < at);
    // Bore: 5, OD: 11 names sizes; the part's name or its size stands in front of a count.
    const front = hits.find(h => h.last === at - 1);
    // 1:30 is a ratio
    const sized = tokens[at - 1]!.kind === 'number' && tokens[at + 1]!.gap > 0;
    return ends && named && (sized || (front?.nouns.length ?? 0) > 0) ? only(value, at + 1) : null;
  }
  return null;
}

/** `M6x20 8` under a heading that names the part: behind a whole size how many. */
export function behindSize(tokens: readonly Token[], heading: readonly Hit[]): Quantity | null {
  if (!heading.some(h => h.nouns.length > 0)) return null;
  const at = tokens.length - 1;
  const [number, before] = [tokens[at], tokens[at - 1]];
  if (number?.gap !== 1 || number.taken || !before) return null;
  const sized = before.text === 'mm' ? tokens[at - 2] : before;
  const times = before.text === 'mm' ? tokens[at - 3] : tokens[at - 2];
  return sized?.kind === 'number' && times?.text === '×' ? only(count(number), at) : null;
}
