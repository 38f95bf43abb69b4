import type { Dims } from '../../reading/reading.ts';
import type { BallBearing } from '../../standards/ball-bearing.ts';
import { inchBearings } from '../../standards/inch-bearings.ts';
import { deepGrooveBearings } from '../../standards/iso-15.ts';
import { meets, mm, type StatedLength, type Um } from '../../units/length.ts';

/** A ball bearing in one form: bore, outside diameter and the width of that form. */
export interface BearingSize {
  bore: Um;
  od: Um;
  width: Um;
  designation: string;
}

const forms = (bearing: BallBearing): BearingSize[] =>
  [...new Set([bearing.widthOpen, bearing.widthShielded])]
    .filter(width => width !== null)
    .map(width => ({ bore: bearing.bore, od: bearing.od, width, designation: bearing.designation }));

/** Every published size, metric and inch. */
export const sizes: readonly BearingSize[] = [...deepGrooveBearings, ...inchBearings].flatMap(forms);

/** Sizes by whole millimetres of the bore, so that a line is held against a handful of rows. */
const byBore = new Map<number, BearingSize[]>();
for (const size of sizes) {
  const key = Math.round(size.bore / 1000);
  byBore.set(key, [...(byBore.get(key) ?? []), size]);
}

/** The published sizes that stated lengths mean; a length left out meets all. */
export function publishedFor(bore: StatedLength, od?: StatedLength, width?: StatedLength): BearingSize[] {
  const key = Math.round(bore.um / 1000);
  const near = [key - 1, key, key + 1].flatMap(k => byBore.get(k) ?? []);
  return near.filter(
    s => meets(bore, s.bore) && (!od || meets(od, s.od)) && (!width || meets(width, s.width)),
  );
}

/** The usual numbers of a size: `MR115` for 5x11x4. */
export function designations(dims: Dims): string[] {
  const { bore, od, width } = dims;
  if (typeof bore !== 'number' || typeof od !== 'number' || typeof width !== 'number') return [];
  const found = sizes.filter(s => s.bore === mm(bore) && s.od === mm(od) && s.width === mm(width));
  return [...new Set(found.map(s => s.designation))];
}
