import type { Balloon } from '../../indexer/intake/rows.ts';
import type { Callout } from './draw-balloons.ts';

export interface BalloonScore {
  drawn: number;
  hit: number;
  found: number;
  /** Those that were missed and those that are none, in words. */
  wrong: string[];
}

/** Numbers on the drawing that have a balloon of their number within a fortieth of the page, each balloon once. */
export function scoreBalloons(callouts: readonly Callout[], balloons: readonly Balloon[]): BalloonScore {
  const left = [...balloons];
  const missed = callouts.filter(({ ref, page, x, y }) => {
    const at = left.findIndex(b => b.ref === ref && b.page === page && Math.hypot(b.x - x, b.y - y) <= 0.025);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  const words = ({ ref, page, x, y }: Callout | Balloon) =>
    `${ref} on page ${page} at ${x.toFixed(3)}, ${y.toFixed(3)}`;
  return {
    drawn: callouts.length,
    hit: callouts.length - missed.length,
    found: balloons.length,
    wrong: [
      ...missed.map(each => `missed: ${words(each)}`),
      ...left.map(each => `no balloon: ${words(each)}`),
    ],
  };
}
