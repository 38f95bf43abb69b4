import { categories } from './categories/index.ts';
import type { Article } from './categories/judge.ts';
import type { Size } from './size.ts';

/** How two sizes of one category differ in one dimension; `difference` is b less a, null where they are no numbers. */
export interface DimensionDifference {
  dimension: string;
  label: string;
  a: number | string;
  b: number | string;
  difference: number | null;
}

/**
 * Names every dimension in which two sizes differ, in the order of the size. Lengths in millimetres. A dimension that only one
 * of them has is no difference, but open. Sizes of two categories do not compare: an empty list.
 */
export function compareSizes(a: Size, b: Size): DimensionDifference[] {
  if (a.category !== b.category) return [];
  return categories.get(a.category)!.dims.flatMap(({ key, label }) => {
    const [one, other] = [a.dims[key] ?? a.implied[key], b.dims[key] ?? b.implied[key]];
    if (one === undefined || other === undefined || one === other) return [];
    const difference =
      typeof one === 'number' && typeof other === 'number' ? Math.round((other - one) * 1000) / 1000 : null;
    return [{ dimension: key, label, a: one, b: other, difference }];
  });
}

/** How much a millimetre of a dimension counts: a thread that differs is another part, a length is soon too long. */
const otherThread = 10;

/**
 * How near two sizes of one category are: the root of the summed squares of their differences in millimetres, nought for
 * equal ones. Null when they do not compare: another category, or no dimension in common.
 */
export function nearness(a: Size, b: Size): number | null {
  if (a.category !== b.category) return null;
  const common = categories
    .get(a.category)!
    .dims.filter(
      ({ key }) =>
        (a.dims[key] ?? a.implied[key]) !== undefined && (b.dims[key] ?? b.implied[key]) !== undefined,
    );
  if (common.length === 0) return null;
  const sum = compareSizes(a, b).reduce(
    (all, d) => all + (d.difference === null ? otherThread ** 2 : d.difference ** 2),
    0,
  );
  return Math.round(Math.sqrt(sum) * 1000) / 1000;
}

/** A dimension or attribute of two articles side by side; null where it is not known of one. */
export interface Compared {
  key: string;
  label: string;
  kind: 'dimension' | 'attribute';
  a: number | string | boolean | null;
  b: number | string | boolean | null;
  /** b less a, where both are numbers. */
  difference: number | null;
  /** `open` where one of them does not say: never taken for the same. */
  standing: 'same' | 'differs' | 'open';
}

/**
 * Every dimension and every attribute that two articles of one category have, side by side: dimensions first, in the
 * order of the size, then what makes another article, then what else is stated. Lengths in millimetres. Articles of two
 * categories share no dimensions: an empty list.
 */
export function compareArticles(a: Article, b: Article): Compared[] {
  if (a.category !== b.category) return [];
  const { dims, itemAttrs } = categories.get(a.category)!;
  const stated = [...Object.keys(a.attrs), ...Object.keys(b.attrs)];
  return [
    ...dims.map(({ key, label }) =>
      sideBySide(key, label, 'dimension', a.dims[key] ?? a.implied[key], b.dims[key] ?? b.implied[key]),
    ),
    ...[...new Set([...itemAttrs, ...stated])].map(key =>
      sideBySide(key, key, 'attribute', a.attrs[key], b.attrs[key]),
    ),
  ].filter(({ a: one, b: other }) => one !== null || other !== null);
}

function sideBySide(
  key: string,
  label: string,
  kind: Compared['kind'],
  a: Compared['a'] | undefined,
  b: Compared['b'] | undefined,
): Compared {
  const known = a !== undefined && b !== undefined;
  return {
    key,
    label,
    kind,
    a: a ?? null,
    b: b ?? null,
    difference: typeof a === 'number' && typeof b === 'number' ? Math.round((b - a) * 1000) / 1000 : null,
    standing: !known ? 'open' : a === b ? 'same' : 'differs',
  };
}
