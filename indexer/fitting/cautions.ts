import { standingCautions } from '../measuring/cautions.ts';
import { inchShaft } from '../units/inch-name.ts';
import { writeMillimetres } from '../units/length.ts';
import type { FitCandidate, FitRequest } from './answer.ts';
import type { FitOf } from './clearance.ts';
import type { Believed } from './seat.ts';

/** More likely tight than loose, and by more than a push. */
const isPress = ({ clearanceProbability, interferenceMax }: FitOf) =>
  clearanceProbability < 0.5 && interferenceMax > 0.005;

/** A doubt of a seat above this, in micrometres, is wider than the fits of small bearings. */
const coarse = 10;

/** What to mind before a bearing is chosen by these seats. */
export function cautionsOf(
  answers: readonly FitCandidate[],
  request: FitRequest,
  seats: readonly (Believed | undefined)[],
): string[] {
  const cautions: string[] = [];
  const widest = Math.max(
    0,
    ...seats.map(seat => (seat && seat.deviation !== null ? (seat.max - seat.min) / 2 : 0)),
  );
  if (widest > coarse)
    cautions.push(
      `A doubt of ${writeMillimetres(Math.round(widest) / 1000)} mm is wider than a fit: a micrometer, or the bearing itself tried on, says more.`,
    );
  if (answers.length === 0)
    cautions.push(
      'No ball bearing known here sits on these seats: measure again, or take the seat for worn or for another part’s.',
    );
  const [shaft] = seats;
  const named = shaft && shaft.nominal === null ? inchShaft(shaft.middle, (shaft.max - shaft.min) / 2) : null;
  if (named !== null) cautions.push(`The shaft passes for an inch one, ${named} in.`);
  const inches = answers.filter(each => each.reasons.some(reason => reason.startsWith('An inch bearing')));
  if (inches.length > 0 && inches.length < answers.length)
    cautions.push(
      'Inch and metric sizes are among them: a bearing that needs force may be of the other system.',
    );
  if (answers.some(({ onShaft, inHousing }) => [onShaft, inHousing].some(of => of && isPress(of))))
    cautions.push(
      'A press can take all the play: turned by hand it must run free. Press on the fitted ring only, with eye protection.',
    );
  return [...cautions, ...standingCautions(request.duty)];
}
