import type { Dims } from '../reading/reading.ts';
import { inchLengthLimits, lengthLimits, screwLengths } from '../standards/iso-4759.ts';
import { indexBy } from '../standards/table.ts';
import { inch, mm, toMm, type Um } from '../units/length.ts';
import { type AnyThread, everyThread, greatestMeasured, measuredSizes } from './every-thread.ts';
import { type Candidate, keep, type Made, type Measurable } from './measurable.ts';

/** Crests wear and are never worn larger. */
export const major: Measurable = {
  key: 'major',
  label: 'outside diameter',
  ways: ['calliper-outside', 'micrometer'],
  wear: { grows: false, mean: 5 },
  range: [mm(0.8), greatestMeasured],
  plates: true,
};

export const pitch: Measurable = {
  key: 'pitch',
  label: 'pitch',
  ways: ['calliper-outside', 'thread-gauge'],
  wear: null,
  range: [mm(0.15), mm(5)],
};

/** By the head: under it for a flat seat, over all for a countersunk head or none (suppliers' pages). */
export const length: Measurable = {
  key: 'length',
  label: 'length',
  ways: ['calliper-depth', 'calliper-outside'],
  wear: { grows: false, mean: 5 },
  range: [mm(1), mm(150)],
};

/** Lengths sold beside those of ISO 888 (suppliers' lists), in micrometres. */
const oddLengths: readonly Um[] = [1.5, 3.5, 4.5, 7, 9, 11, 13, 15, 22].map(mm);

/** Lengths of inch and BA screws, in micrometres: sixteenths to half an inch, eighths to one, quarters to two. */
const inchLengths: readonly Um[] = [2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 20, 24, 28, 32].map(sixteenths =>
  inch(sixteenths / 16),
);

interface Length {
  readonly nominal: Um;
  readonly common: number;
  readonly made: Made;
}

const metricLength = keep((nominal: Um): Length => {
  const { min, max } = lengthLimits(nominal) ?? { min: nominal - mm(0.7), max: nominal + mm(0.7) };
  return {
    nominal,
    common: screwLengths.includes(nominal) ? 1 : 0.3,
    made: { min, max, source: 'ISO 4759-1 A' },
  };
});

const inchLength = keep((nominal: Um): Length => {
  // Above an inch from memory: 0.05 in under.
  const { min, max } = inchLengthLimits(nominal) ?? { min: nominal - inch(0.05), max: nominal };
  return { nominal, common: 1, made: { min, max, source: 'commercial tolerance' } };
});

/** The lengths a thread is made in: from about its diameter to fifteen times that. */
function lengthsOf(thread: AnyThread): readonly Length[] {
  const inRange = (nominal: Um) => nominal >= 0.75 * thread.nominal && nominal <= 15 * thread.nominal;
  return thread.system === 'metric'
    ? [...screwLengths, ...oddLengths].filter(inRange).map(metricLength)
    : inchLengths.filter(inRange).map(inchLength);
}

const byName = indexBy(everyThread, ({ dims }) => `${dims.thread}x${dims.pitch ?? ''}`);

/** The thread that a size names. */
const threadOf = ({ thread, pitch }: Dims): AnyThread | undefined =>
  byName.get(`${thread}x${pitch ?? ''}`) ?? byName.get(`${thread}x`);

/** Candidates of a threaded part: every thread alone, or with every length it is made in. `more` gives heads or points. */
export function measuredThreads(more: (thread: AnyThread) => Readonly<Record<string, readonly Made[]>>) {
  const moreOf = keep(more);
  const withoutLength = keep(
    (thread: AnyThread): Candidate => ({
      dims: thread.dims,
      designations: [thread.designation],
      common: thread.common,
      made: {
        ...moreOf(thread),
        major: thread.major,
        pitch: thread.pitch,
      },
    }),
  );
  const withLength = (alone: Candidate, { nominal, common, made }: Length): Candidate => ({
    ...alone,
    dims: { ...alone.dims, length: toMm(nominal) },
    common: alone.common * common,
    made: { ...alone.made, length: made },
  });
  const lists = keep((lengthMeasured: boolean): readonly Candidate[] =>
    measuredSizes.flatMap(thread => {
      const alone = withoutLength(thread);
      return lengthMeasured ? lengthsOf(thread).map(each => withLength(alone, each)) : [alone];
    }),
  );
  return {
    candidates: lists,
    known(dims: Dims): Candidate | null {
      const thread = threadOf(dims);
      if (!thread || typeof dims.length !== 'number') return null;
      const made = (thread.system === 'metric' ? metricLength : inchLength)(mm(dims.length));
      return withLength(withoutLength(thread), { ...made, common: 1 });
    },
  };
}
