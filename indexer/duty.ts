/**
 * Duty: what depends on a part. Where someone can be hurt, agreement of sizes is no approval, so for a critical
 * duty the maker's own part is the only answer.
 */
export const duties = [
  'ordinary',
  'load-holding',
  'brake-or-steering',
  'climbing',
  'medical',
  'aviation',
  'pressure',
  'mains',
  'not-stated',
] as const;

export type Duty = (typeof duties)[number];

/** True where only the maker's own part will do. `not-stated` alone is not critical; see {@link effectiveDuty}. */
export function isCritical(duty: Duty): boolean {
  return duty !== 'ordinary' && duty !== 'not-stated';
}
