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

/** Sizes by whole millimetres of the bore, each under those beside it too, so that a line is held against a handful of rows. */
const nearBore = new Map<number, BearingSize[]>();
for (const size of sizes) {
  const key = Math.round(size.bore / 1000);
  for (const near of [key - 1, key, key + 1]) {
    const sizesThere = nearBore.get(near);
    if (sizesThere) sizesThere.push(size);
    else nearBore.set(near, [size]);
  }
}

/** The published sizes that stated lengths mean; a length left out meets all. */
export const publishedFor = (bore: StatedLength, od?: StatedLength, width?: StatedLength): BearingSize[] =>
  (nearBore.get(Math.round(bore.um / 1000)) ?? []).filter(
    s => meets(bore, s.bore) && (!od || meets(od, s.od)) && (!width || meets(width, s.width)),
  );

/** Whether lengths are those of a published size. */
export const isPublished = (bore: StatedLength, od: StatedLength, width: StatedLength): boolean =>
  (nearBore.get(Math.round(bore.um / 1000)) ?? []).some(
    s => meets(bore, s.bore) && meets(od, s.od) && meets(width, s.width),
  );

/** The usual numbers of a size: `MR115` for 5x11x4. */
export function designations(dims: Dims): string[] {
  const { bore, od, width } = dims;
  if (typeof bore !== 'number' || typeof od !== 'number' || typeof width !== 'number') return [];
  const found = sizes.filter(s => s.bore === mm(bore) && s.od === mm(od) && s.width === mm(width));
  return [...new Set(found.map(s => s.designation))];
}
