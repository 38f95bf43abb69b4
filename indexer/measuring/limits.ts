import type { Candidate, Made, Measurable } from '../categories/measurable.ts';
import type { Attrs } from '../reading/reading.ts';
import type { Um } from '../units/length.ts';
import type { MeasureRequest } from './request.ts';

/** Mean wear beside that of a used part. */
const wearFactor = { new: 0.1, used: 1, worn: 3 } as const;

/** Mean wear of a dimension in micrometres, above nought where it grows. */
export function wearOf(
  { wear }: Measurable,
  made: { max: Um },
  condition: MeasureRequest['condition'],
): number {
  if (wear === null) return 0;
  const amount = (wear.mean + (wear.share ?? 0) * made.max) * wearFactor[condition ?? 'used'];
  return wear.grows ? amount : -amount;
}

/** Whether what is seen on the part speaks against what something has. */
export const agrees = (has: Attrs | undefined, seen: Attrs): boolean =>
  has === undefined ||
  Object.entries(has).every(([key, value]) => seen[key] === undefined || seen[key] === value);

/** The limits of a dimension that hold for a part of these attributes: a table's before general ones; none where nothing is known. */
export function limitsOf(candidate: Candidate, key: string, attrs: Attrs): readonly Made[] {
  const made = candidate.made[key];
  if (made === undefined) return [];
  const all = Array.isArray(made) ? (made as readonly Made[]) : [made as Made];
  const holding = all.filter(each => agrees(each.when, attrs));
  const known = holding.filter(each => !each.general);
  return known.length > 0 ? known : holding;
}
