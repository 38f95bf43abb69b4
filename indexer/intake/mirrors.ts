import { type Entry, subjectOf } from './entry.ts';
import type { Relation, Row } from './rows.ts';
import { sideOf } from './sides.ts';

/** Left and right of one part: descriptions alike but for the side, or part numbers alike but for a last L and R. */
export function mirrors(taken: readonly Entry[]): Relation[] {
  const groups = new Map<string, { left: Row[]; right: Row[] }>();
  const file = (key: string, side: 'left' | 'right', row: Row) => {
    const group = groups.get(key) ?? { left: [], right: [] };
    group[side].push(row);
    groups.set(key, group);
  };
  for (const { row } of taken) {
    const sided = sideOf(row.description);
    const lettered = /^(.*\d[ -]?)([LR])$/i.exec(row.partNumber);
    if (sided) file(sided.rest, sided.side, row);
    else if (lettered)
      file(
        `${lettered[1]} ${row.description}`.toLowerCase(),
        /l/i.test(lettered[2]!) ? 'left' : 'right',
        row,
      );
  }
  return [...groups.values()].flatMap(({ left, right }) =>
    left.length === right.length
      ? left.map<Relation>((row, nth) => ({
          kind: 'left-right',
          ...subjectOf(row),
          refs: [right[nth]!.ref],
          ...(right[nth]!.partNumber && { partNumber: right[nth]!.partNumber }),
        }))
      : [],
  );
}
