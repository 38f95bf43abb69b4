import type { Dims } from '../../reading/reading.ts';
import { nuts } from '../../standards/nuts.ts';
import { mm } from '../../units/length.ts';
import { type AnyThread, everyThread } from '../every-thread.ts';
import type { Candidate, Made, Measurable, Measuring } from '../measurable.ts';
import { parseThread, writeThread } from '../settle-thread.ts';
import { pitch } from '../threaded-measuring.ts';

/** Surest is to find the screw that runs in freely, and to measure that; the calliper sees the minor diameter alone. */
const measurable: readonly Measurable[] = [
  {
    key: 'minor',
    label: 'inside diameter of the thread',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 5 },
    range: [mm(0.6), mm(40)],
  },
  pitch,
  {
    key: 'acrossFlats',
    label: 'across flats',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 20 },
    range: [mm(2), mm(60)],
  },
  {
    key: 'thickness',
    label: 'height',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(0.5), mm(60)],
  },
];

/** Across flats and heights of the metric nuts on a thread, each for its own type. */
function bodies(thread: AnyThread): Readonly<Record<string, readonly Made[]>> {
  if (thread.system !== 'metric') return {};
  const all = nuts.filter(nut => nut.thread === thread.dims.thread);
  return {
    acrossFlats: all.map(({ acrossFlats, acrossFlatsMin, standard, type }) => ({
      min: acrossFlatsMin ?? acrossFlats * 0.965,
      max: acrossFlats,
      source: standard,
      when: { type },
    })),
    thickness: all.map(({ height, heightMin, standard, type }) => ({
      min: heightMin ?? height - mm(0.3),
      max: height,
      source: standard,
      when: { type },
    })),
  };
}

const sizes: readonly Candidate[] = everyThread.map(thread => ({
  dims: thread.dims,
  designations: [thread.designation],
  common: thread.common,
  made: { ...bodies(thread), minor: thread.minor, pitch: thread.pitch },
}));

export const measuring: Measuring = {
  category: 'nut',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) =>
    sizes.find(
      ({ dims: own }) => own.thread === dims.thread && (own.pitch === undefined || own.pitch === dims.pitch),
    ) ?? null,
  write: writeThread,
  parse: text => {
    const parsed = parseThread(text);
    return parsed && parsed.rest === '' ? parsed : null;
  },
};
