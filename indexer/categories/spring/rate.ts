/**
 * Rate of a coil spring, k = G d^4 / (8 D^3 n), with the range that its measurements leave (spring makers' pages). All
 * lengths in one unit; the rate in the unit of G times that length: N/mm for N/mm² and mm.
 */
export interface Coil {
  /** Wire diameter. */
  readonly wire: number;
  /** Mean diameter of the coil: outside less wire. */
  readonly mean: number;
  /** Coils that work. */
  readonly active: number;
}

/** The rate of a coil spring of shear modulus `modulus`. */
export const springRate = ({ wire, mean, active }: Coil, modulus: number): number =>
  (modulus * wire ** 4) / (8 * mean ** 3 * active);

/** Half-widths of what was measured, in its own units. */
export type CoilDoubt = Readonly<Record<keyof Coil, number>>;

/**
 * Least and greatest rate when each measurement is off by as much as it may, one at a time, combined as independent
 * errors are: each side by the root of the sum of its squares.
 */
export function rateRange(coil: Coil, doubt: CoilDoubt, modulus: number): { least: number; most: number } {
  const middle = springRate(coil, modulus);
  const off = (key: keyof Coil, by: number) => springRate({ ...coil, [key]: coil[key] + by }, modulus);
  const sides = (['wire', 'mean', 'active'] as const).map(key =>
    [off(key, -doubt[key]) - middle, off(key, doubt[key]) - middle].sort((a, b) => a - b),
  );
  const combined = (side: 0 | 1) => Math.hypot(...sides.map(both => both[side]!));
  return { least: Math.max(0, middle - combined(0)), most: middle + combined(1) };
}

/** Shear modulus by material, in N/mm² (spring makers' pages); a spring whose material nobody stated is taken as steel. */
export const shearModulus: Readonly<Record<string, number>> = {
  steel: 79_300,
  stainless: 69_000,
  bronze: 41_400,
  brass: 34_500,
};

/** Coils that do not work, by the ends: open 0, closed 2, closed and ground 2, double closed 4 (a spring maker's page). */
export const deadCoils: Readonly<Record<string, number>> = {
  open: 0,
  closed: 2,
  'closed-ground': 2,
  'double-closed': 4,
};
