/** One figure of a benchmark. */
export interface Measured {
  what: string;
  perSecond: number;
  unit: string;
  /** The ratio to the baseline, in words. */
  note?: string;
}

/** `12.3 times the time of <baseline>`, from two rates. */
export const timesTheTime = (rate: number, baseline: number, name: string): string =>
  `${(baseline / rate).toFixed(2)} times the time of ${name}`;

/** The least time of one turn, in milliseconds: a shorter one would measure how cold the way before it left the caches. */
const turn = 50;

/** Lets a way run until the engine has compiled what it uses. */
function warm(run: () => number): void {
  const end = performance.now() + warmUp;
  do run();
  while (performance.now() < end);
}

/** Milliseconds before a way is measured: less, and a large way is measured while it is still being compiled. */
const warmUp = 3_000;

/**
 * Runs the ways in turns until each has had `seconds`, so that a slow spell of the machine hits all alike; answers
 * how many units a second each managed, by the median of its turns.
 */
export function inTurns(ways: Record<string, () => number>, seconds: number): Record<string, number> {
  const rates: Record<string, number[]> = Object.fromEntries(Object.keys(ways).map(name => [name, []]));
  for (const run of Object.values(ways)) warm(run);
  const end = performance.now() + seconds * 1000 * Object.keys(ways).length;
  while (performance.now() < end)
    for (const [name, run] of Object.entries(ways)) {
      const start = performance.now();
      let units = 0;
      while (performance.now() - start < turn) units += run();
      rates[name]?.push(units / ((performance.now() - start) / 1000));
    }
  return Object.fromEntries(Object.entries(rates).map(([name, all]) => [name, median(all)]));
}

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
