/** A reference number at its place; x and y are fractions of the shown page from its top left. */
export interface Spot {
  page: number;
  ref: string;
  x: number;
  y: number;
}

/** What a person says of a balloon: `from` as found, or null where none was; `to` as it is, or null where none is. */
export interface SpotCorrection {
  id: string;
  from: Spot | null;
  to: Spot | null;
}

/** A balloon that counts. */
export interface EffectiveBalloon extends Spot {
  /** Of the balloon as found or, where a person put it there, of their correction. */
  id: string;
  by: 'reading' | 'person';
}

/** How far apart the same balloon may stand in two readings, as a fraction of the page: below half of any circle. */
const sameSpot = 0.006;

const isSame = (a: Spot, b: Spot): boolean =>
  a.page === b.page && a.ref === b.ref && Math.hypot(a.x - b.x, a.y - b.y) <= sameSpot;

/** The balloons that count: those found, but for what a person put right, and those a person put there. */
export function effectiveBalloons(
  found: (Spot & { id: string })[],
  corrections: SpotCorrection[],
): EffectiveBalloon[] {
  const putRight = corrections.flatMap(({ from }) => from ?? []);
  const asFound = found.filter(spot => !putRight.some(from => isSame(from, spot)));
  const byPerson = corrections.flatMap(({ id, to }) => (to ? { ...to, id } : []));
  return [
    ...asFound.map(spot => ({ ...spot, by: 'reading' as const })),
    ...byPerson.map(spot => ({ ...spot, by: 'person' as const })),
  ];
}
