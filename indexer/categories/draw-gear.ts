import type { Dims } from '../reading/reading.ts';
import { circle, circles, type Drawing, lengthsOf, sheet } from './drawing.ts';

/**
 * A spur gear on its face after ISO 2203: tip circle thick, reference circle in chain, root circle thin. The reference
 * diameter is module times teeth (ISO 21771). Null without both.
 */
export function drawGear(dims: Dims): Drawing | null {
  const lengths = lengthsOf(dims, 'module', 'teeth');
  if (!lengths || lengths.teeth < 5) return null;
  const { module, teeth } = lengths;
  const reference = module * teeth;
  const tip = reference + 2 * module;
  const middle = tip / 2;
  const { bore } = dims;
  const face = circles(
    tip,
    [middle, ...(typeof bore === 'number' && bore > 0 && bore < reference ? [bore / 2] : [])],
    [reference / 2 - 1.25 * module],
  );
  return sheet(tip, tip, {
    ...face,
    centre: [...face.centre, circle(middle, middle, reference / 2)],
    dimensions: [
      {
        key: 'module',
        from: [middle - reference / 2, 0],
        to: [middle + reference / 2, 0],
        offset: -6,
        text: `Ø${Math.round(reference * 1000) / 1000}`,
      },
    ],
  });
}
