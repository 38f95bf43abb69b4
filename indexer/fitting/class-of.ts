import { deviations } from '../standards/iso-286.ts';
import type { Um } from '../units/length.ts';
import type { Believed } from './seat.ts';

/** Classes that seats of bearings are made to, the usual grade first: shafts grade 6, housings grade 7 (bearing handbooks). */
const shaftClasses = [
  ['g6', 'h6', 'js6', 'k6', 'm6', 'n6', 'p6'],
  ['f7', 'h7', 'h8', 'e8', 'h9'],
];
const housingClasses = [
  ['G7', 'H7', 'JS7', 'K7', 'M7', 'N7', 'P7'],
  ['F8', 'H8', 'H9', 'H11'],
];

/** The class a seat as measured would pass for, and the others that its doubt allows; null where it passes for none. */
export interface ClassOf {
  readonly best: string | null;
  readonly also: string[];
}

/**
 * The ISO 286 class of a seat: the one its drawing gives, else as measured: of the classes whose limits hold it, the one whose middle is nearest, the usual
 * grade before coarser ones.
 */
export function classOf(kind: 'shaft' | 'housing', seat: Believed, nominal: Um): ClassOf {
  if (seat.toleranceClass !== null) return { best: seat.toleranceClass, also: [] };
  const found = (kind === 'shaft' ? shaftClasses : housingClasses).flatMap((names, rank) =>
    names.flatMap(name => {
      const limits = deviations(name, nominal);
      if (!limits) return [];
      const [min, max] = [nominal + limits.lower, nominal + limits.upper];
      return [{ name, rank, min, max, off: Math.abs(seat.middle - (min + max) / 2) }];
    }),
  );
  const holding = found
    .filter(each => each.min - 0.5 <= seat.middle && seat.middle <= each.max + 0.5)
    .sort((a, b) => a.rank - b.rank || a.off - b.off);
  const best = holding[0]?.name ?? null;
  const also = found
    .filter(each => each.rank === 0 && each.name !== best && each.min < seat.max && seat.min < each.max)
    .map(each => each.name);
  return { best, also };
}
