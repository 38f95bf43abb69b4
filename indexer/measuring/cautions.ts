import { type Duty, isCritical } from '../duty.ts';
import type { Observation } from './observation.ts';
import type { MeasureRequest } from './request.ts';
import type { Weighed } from './weigh.ts';

/**
 * What stands with every answer that rests on measurements: agreement is a suggestion; where someone could be hurt, not even
 * that.
 */
export function standingCautions(duty: Duty | undefined): string[] {
  return [
    ...(duty !== undefined && isCritical(duty)
      ? ['What hangs on this part asks for the maker’s part only: agreement of sizes is not an approval.']
      : []),
    'A measured match is a suggestion; the maker’s instructions come first.',
  ];
}

/** Readings of one diameter this far apart speak of wear or a bend, in millimetres (common practice). */
const ovality = 0.03;

/** What to mind about an answer: readings that speak of wear, no size that agrees, threads of two systems. */
export function cautionsOf(
  request: MeasureRequest,
  observations: readonly Observation[],
  set: readonly Weighed[],
  noneOfThese: number,
): string[] {
  const cautions: string[] = [];
  request.measurements.forEach(({ values }, at) => {
    if (!values || values.length < 2) return;
    const spread = Math.max(...values) - Math.min(...values);
    if (spread > ovality)
      cautions.push(
        `The readings of the ${observations[at]!.measurable.label} differ by ${spread.toFixed(2)} mm: worn, bent or out of round.`,
      );
  });
  if (noneOfThese > 0.5)
    cautions.push(
      'No size known here agrees with these measurements: measure again, or take it for a special.',
    );
  const systems = new Set(set.map(({ candidate }) => threadSystem(candidate.dims.thread)).filter(Boolean));
  if (systems.size > 1)
    cautions.push(
      'Threads of two systems are among them: the wrong one starts a turn or two, then seizes and strips. Try it by hand.',
    );
  return [...cautions, ...standingCautions(request.duty)];
}

function threadSystem(thread: unknown): string | null {
  if (typeof thread !== 'string') return null;
  return thread.startsWith('M') ? 'metric' : thread.endsWith('BA') ? 'BA' : 'inch';
}
