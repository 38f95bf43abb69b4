/** Chance by a seed, so that two runs draw the same parts. */
export interface Chance {
  /** From nought up to one. */
  even(): number;
  between(least: number, most: number): number;
  normal(): number;
  exponential(): number;
  one<T>(all: readonly T[]): T;
}

/** A small generator of good spread (mulberry32). */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    even,
    between: (least, most) => least + (most - least) * even(),
    normal: () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even()),
    exponential: () => -Math.log(1 - even()),
    one: all => all[Math.floor(even() * all.length)]!,
  };
}
