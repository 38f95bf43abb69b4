/** One reading: the certainty it was given, and whether it was right. */
export interface Judged {
  certainty: number;
  right: boolean;
}

/** Lower ends of the bins; nearly all readings are in the last two. */
const bins = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95];
const width = 40;

interface Bin {
  from: number;
  count: number;
  said: number;
  right: number;
}

function binned(all: readonly Judged[]): Bin[] {
  return bins.flatMap((from, at) => {
    const to = bins[at + 1] ?? Number.POSITIVE_INFINITY;
    const inside = all.filter(({ certainty }) => certainty >= from && certainty < to);
    if (inside.length === 0) return [];
    const said = inside.reduce((sum, { certainty }) => sum + certainty, 0) / inside.length;
    return [
      { from, count: inside.length, said, right: inside.filter(one => one.right).length / inside.length },
    ];
  });
}

/** What was right as a bar, what was said as a stroke across it. */
function bar({ said, right }: Bin): string {
  const signs: string[] = Array.from({ length: width + 1 }, (_, at) => (at <= right * width ? '▒' : '·'));
  signs[Math.round(said * width)] = '┃';
  return signs.join('');
}

/** The mean over the bins of how far what was said is from what was right (expected calibration error). */
export const calibrationError = (all: readonly Judged[]): number =>
  binned(all).reduce((sum, { count, said, right }) => sum + (count / all.length) * Math.abs(said - right), 0);

/** The mean square of what was said from what came out (Brier 1950). */
export const brier = (all: readonly Judged[]): number =>
  all.reduce((sum, { certainty, right }) => sum + (certainty - Number(right)) ** 2, 0) / all.length;

/** The same for saying of each line how many are right of all. */
export function brierOfBaseRate(all: readonly Judged[]): number {
  const rate = all.filter(({ right }) => right).length / all.length;
  return rate * (1 - rate);
}

/** The calibration as lines to print: the bars show how many were right, the stroke what was said. */
export function calibrationPicture(all: readonly Judged[]): string[] {
  return [
    ...binned(all).map(
      bin =>
        `${bin.from.toFixed(2)}  ${bar(bin)}  n ${String(bin.count).padStart(4)}  said ${bin.said.toFixed(3)}  right ${bin.right.toFixed(3)}`,
    ),
    `expected calibration error ${calibrationError(all).toFixed(4)}; Brier score ${brier(all).toFixed(4)}, of the base rate ${brierOfBaseRate(all).toFixed(4)}`,
  ];
}
