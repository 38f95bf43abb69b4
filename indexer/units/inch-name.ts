import type { Um } from './length.ts';

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

/** Seats lie this far under or over what they are named by, in micrometres: the usual classes of small shafts. */
const [under, over] = [25, 8];

/**
 * The inch shaft that a measured one passes for, `5/16`, in sixteenths: null where a millimetre or half of one is as near, within the
 * doubt of the measurement. All in micrometres.
 */
export function inchShaft(measured: Um, doubt: Um): string | null {
  const passesFor = (nominal: Um) => measured > nominal - under - doubt && measured < nominal + over + doubt;
  const fraction = (Math.round((measured * 16) / 25_400) * 25_400) / 16;
  const metric = Math.round(measured / 500) * 500;
  return fraction > 0 && passesFor(fraction) && !passesFor(metric) ? inchName(Math.round(fraction)) : null;
}
