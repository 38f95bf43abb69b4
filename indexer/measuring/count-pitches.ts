import type { Measurable } from '../categories/measurable.ts';
import { type Context, informationOf } from './doubt.ts';
import { crestUncertainty } from './instruments.ts';
import { limitsOf } from './limits.ts';
import { hundredths, listed, type NextMeasurement } from './next-measurement.ts';

/** Counting over as many pitches as part the nearest two: more than twice the doubt of the length (common practice). */
export function countPitches(measurable: Measurable, context: Context): NextMeasurement[] {
  const pitches = context.possible.map(({ candidate }) => {
    const [made] = limitsOf(candidate, 'pitch', context.attrs);
    return made ? (made.min + made.max) / 2 : 0;
  });
  if (pitches.some(pitch => pitch === 0)) return [];
  const gaps = pitches
    .flatMap((a, at) => pitches.slice(at + 1).map(b => Math.abs(a - b)))
    .filter(gap => gap > 2);
  if (gaps.length === 0) return [];
  const needed = Math.floor((2 * crestUncertainty) / Math.min(...gaps)) + 1;
  if (needed > 60) return [];
  const length = context.observations.find(each => each.measurable.key === 'length')?.read.value;
  const most = Math.max(...pitches);
  // The first and the last thread of a screw are not whole.
  const there = length === undefined ? 10 : Math.max(0, Math.floor(length / most - 1.5));
  const count = Math.max(needed, Math.min(10, there));
  const expect = Object.fromEntries(
    context.possible.map(({ name }, at) => [name, hundredths(pitches[at]! * count)]),
  );
  const short = length !== undefined && count > there;
  const test = { dimension: 'pitch', pitches: count } as const;
  const settles = informationOf(measurable, context, 'calliper-outside', value => ({
    ...test,
    span: (value * count) / 1000,
  }));
  return [
    {
      ...test,
      instrument: 'calliper-outside',
      expect,
      settles,
      own: [],
      why: short
        ? `Count ${count} pitches: ${listed(expect)}. That is ${Math.ceil((count * most) / 1000)} mm of thread, more than this one has: count on a longer one from the same place, or ask where the machine was made.`
        : `Count ${count} pitches: ${listed(expect)}.`,
    },
  ];
}
