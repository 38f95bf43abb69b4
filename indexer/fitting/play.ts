import type { Play } from '../standards/iso-5753.ts';

/** Of a press fit's interference this part is taken from the play inside (a bearing maker's handbook: about 80 in 100). */
const taken = 0.8;

/** Radial play left after a press, all in one unit: nought or less is preloaded. */
export const remainingPlay = (play: number, interference: number): number => play - taken * interference;

/** Least and greatest of the interferences of both rings, in the unit of the play. */
export interface Press {
  readonly min: number;
  readonly max: number;
}

/** What is left of a group's play between both rings as fitted, and what to call it. */
export function playAfter(
  play: Play,
  onShaft: Press,
  inHousing: Press,
): Play & { state: 'free' | 'may be preloaded' | 'preloaded' } {
  const min = remainingPlay(play.min, onShaft.max + inHousing.max);
  const max = remainingPlay(play.max, onShaft.min + inHousing.min);
  return { min, max, state: min > 0 ? 'free' : max <= 0 ? 'preloaded' : 'may be preloaded' };
}
