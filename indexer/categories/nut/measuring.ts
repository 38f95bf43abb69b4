import type { Dims } from '../../reading/reading.ts';
import { type Nut, nuts } from '../../standards/nuts.ts';
import { baNuts, inchNuts, type NutBody, olderJapaneseNuts } from '../../standards/other-nuts.ts';
import { mm } from '../../units/length.ts';
import { type AnyThread, inchSizeOf, measuredSizes } from '../every-thread.ts';
import { type Candidate, inProportion, type Made, type Measurable, type Measuring } from '../measurable.ts';
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
    label: 'width across flats',
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

/** A nut's body as its table has it: the metric ones have no least values in every standard. */
type Body = Pick<Nut, 'standard' | 'type' | 'acrossFlats' | 'acrossFlatsMin' | 'height' | 'heightMin'>;

function bodiesOn(thread: AnyThread): readonly (Body | NutBody)[] {
  if (thread.system === 'inch') return inchNuts(inchSizeOf(thread));
  if (thread.system === 'BA') return baNuts(thread.designation);
  const older = olderJapaneseNuts(thread.designation);
  return older.length > 0 ? older : nuts.filter(nut => nut.thread === thread.dims.thread);
}

/** Across flats and heights of the nuts on a thread, each for its own type, and what holds of any nut. */
function bodies(thread: AnyThread): Readonly<Record<string, readonly Made[]>> {
  const all = bodiesOn(thread);
  return {
    acrossFlats: [
      ...all.map(({ acrossFlats, acrossFlatsMin, standard, type }) => ({
        min: acrossFlatsMin ?? acrossFlats * 0.965,
        max: acrossFlats,
        source: standard,
        when: { type },
      })),
      inProportion(thread.nominal, 1.3, 2.6),
    ],
    thickness: [
      ...all.map(({ height, heightMin, standard, type }) => ({
        min: heightMin ?? height - mm(0.3),
        max: height,
        source: standard,
        when: { type },
      })),
      inProportion(thread.nominal, 0.35, 2.5),
    ],
  };
}

const sizes: readonly Candidate[] = measuredSizes.map(thread => ({
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
