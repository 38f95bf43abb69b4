import type { Um } from '../units/length.ts';

/**
 * The fraction of an inch, in sixty-fourths, that a length in micrometres is: `3/16`; null for one that is none. A bearing
 * catalogue rounds an inch to the micrometre or to a ten-thousandth of an inch, so within 3 micrometres.
 */
export function inchName(um: Um): string | null {
  const parts = Math.round((um * 64) / 25_400);
  if (parts < 1 || Math.abs(um - (parts * 25_400) / 64) > 3 || um % 500 === 0) return null;
  let [top, bottom] = [parts, 64];
  while (top % 2 === 0 && bottom > 1) [top, bottom] = [top / 2, bottom / 2];
  if (bottom === 1) return String(top);
  return top > bottom ? `${Math.floor(top / bottom)} ${top % bottom}/${bottom}` : `${top}/${bottom}`;
}
