import { shimRings, stockedShimThicknesses } from '../standards/din-988.ts';
import { mm, toMm, type Um } from '../units/length.ts';
import { tenth } from './clearance.ts';

/** Shims that fill the gap beside a bearing, on the ring that they may touch; millimetres. */
export interface ShimAnswer {
  ring: 'inner' | 'outer';
  /** The standard's ring that clears the other one; null where none does: then it is cut to these diameters. */
  standard: 'DIN 988' | null;
  id: number;
  od: number;
  /** Sizes, where the standard has the ring: `shim 10x16x0.1`. */
  sizes: string[];
  thicknesses: number[];
  /** What is left of the gap. */
  leaves: { min: number; max: number };
  why: string;
}

/** End play that is felt and does not drag, as small mechanisms want it (common practice: 0.05 to 0.15 mm). */
const wanted = { most: mm(0.15), middle: mm(0.1) };

/** The shoulders of the two rings stand about a third of the way in from bore and outside (bearing catalogues); measure it. */
const shoulder = (bore: Um, od: Um) => Math.floor((od - bore) / 300) * 100;

/** Up to three of the usual thicknesses that bring the gap nearest to the wanted play and never close it. */
export function stack(least: Um, most: Um): Um[] {
  const middle = (least + most) / 2;
  if (most <= wanted.most) return [];
  const few: Um[][] = [[]];
  for (let size = 0; size < 3; size++)
    for (const stackSoFar of few.filter(each => each.length === size))
      for (const thickness of stockedShimThicknesses)
        if (stackSoFar.length === 0 || thickness <= stackSoFar.at(-1)!) few.push([...stackSoFar, thickness]);
  const total = (each: readonly Um[]) => each.reduce((sum, one) => sum + one, 0);
  return few
    .filter(each => total(each) <= Math.max(0, least))
    .sort(
      (a, b) =>
        Math.abs(middle - total(a) - wanted.middle) - Math.abs(middle - total(b) - wanted.middle) ||
        a.length - b.length,
    )[0]!;
}

/**
 * Shims for a gap, in micrometres, beside a bearing: one answer for each ring. A shim on the inner ring must not reach the outer
 * one or the shield, one on the outer ring must not reach the inner (DIN 988: flat faces, mind the cage).
 */
export function shimsFor(bearing: { bore: Um; od: Um }, gap: { min: Um; max: Um }): ShimAnswer[] {
  const thicknesses = stack(gap.min, gap.max);
  if (thicknesses.length === 0) return [];
  const total = thicknesses.reduce((sum, each) => sum + each, 0);
  const { bore, od } = bearing;
  const reach = shoulder(bore, od);
  const inner = shimRings.filter(ring => ring.id === bore && ring.od <= bore + reach).at(-1);
  const outer = shimRings.filter(ring => ring.od === od && ring.id >= od - reach)[0];
  const answer = (
    ring: ShimAnswer['ring'],
    made: { id: Um; od: Um } | undefined,
    cut: { id: Um; od: Um },
  ) => {
    const { id, od: outside } = made ?? cut;
    const other = ring === 'inner' ? 'outer ring or shield' : 'inner ring or shield';
    return {
      ring,
      standard: made ? ('DIN 988' as const) : null,
      id: toMm(id),
      od: toMm(outside),
      sizes: made ? thicknesses.map(each => `shim ${toMm(id)}x${toMm(outside)}x${toMm(each)}`) : [],
      thicknesses: thicknesses.map(toMm),
      leaves: { min: tenth(gap.min - total), max: tenth(gap.max - total) },
      why: made
        ? `Against the ${ring} ring alone; it clears the ${other} by the usual shoulders: look before closing.`
        : `No ring of DIN 988 clears the ${other}: one is cut, ${ring === 'inner' ? 'outside at most' : 'inside at least'} this.`,
    };
  };
  return [
    answer('inner', inner, { id: bore, od: bore + reach }),
    answer('outer', outer, { id: od - reach, od }),
  ];
}
