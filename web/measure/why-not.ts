import type { CandidateAnswer, Measurable, MeasureAnswer } from '../../indexer/index.ts';

/** Below one in two hundred a size is a no (as it is told to people). */
const no = 0.005;

/** Why a size is as good as ruled out: which reading it is too large or too small for; null where it is not, or nothing says so. */
export function whyNot(
  { probability, limits }: CandidateAnswer,
  taken: MeasureAnswer['taken'],
  measurables: readonly Measurable[],
): string | null {
  if (probability >= no) return null;
  let worst: { off: number; words: string } | null = null;
  for (const { dimension, value, uncertainty, instrument } of taken) {
    const made = limits[dimension] ?? [];
    if (made.length === 0 || instrument === 'pin') continue;
    const [min, max] = [Math.min(...made.map(each => each.min)), Math.max(...made.map(each => each.max))];
    const off = Math.max(min - value, value - max) / uncertainty;
    if (off <= (worst?.off ?? 1)) continue;
    const label = measurables.find(each => each.key === dimension)?.label ?? dimension;
    worst = { off, words: `${label} too ${value < min ? 'large' : 'small'}` };
  }
  return worst?.words ?? null;
}
