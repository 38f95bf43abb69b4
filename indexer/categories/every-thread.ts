import type { Dims } from '../reading/reading.ts';
import { baThreads } from '../standards/ba-threads.ts';
import { metricThreads, olderJapaneseThreads } from '../standards/iso-261.ts';
import { externalLimits, formulas, internalLimits, type Limits } from '../standards/iso-965.ts';
import { unifiedLimits, unifiedThreadNamed, unifiedThreads } from '../standards/unified-threads.ts';
import { mm, toMm, type Um } from '../units/length.ts';
import type { Made } from './measurable.ts';

/** A thread of any system with the limits of a sound screw and nut; lengths in micrometres. */
export interface AnyThread {
  /** What it is called: `M3`, `M3x0.35`, `6-32`, `2BA`. */
  readonly designation: string;
  readonly system: 'metric' | 'inch' | 'BA';
  readonly nominal: Um;
  /** 1 for the threads of every drawer, less for the rarer ones (common practice). */
  readonly common: number;
  /** The thread and its pitch as a size names them. */
  readonly dims: Dims;
  /** Outside diameter of the screw. */
  readonly major: Made;
  /** Inside diameter of the nut. */
  readonly minor: Made;
  readonly pitch: Made;
}

/** The size in an inch thread's name: `4` of 4-40, `1/4` of 1/4-20, `1 in` of 1-8. */
export const inchSizeOf = ({ designation }: AnyThread): string =>
  unifiedThreadNamed(designation)?.size ?? designation;

/** A pitch holds to two parts in a thousand on any screw that still turns (common practice). */
const pitchOf = (pitch: number): Made => ({ min: pitch * 0.998, max: pitch * 1.002, source: 'pitch' });

const made = (limits: Limits, source: string): Made => ({ min: limits.min, max: limits.max, source });

const metric: AnyThread[] = metricThreads.map(thread => {
  const [outside, inside] = [externalLimits(thread), internalLimits(thread)];
  return {
    designation: thread.designation,
    system: 'metric',
    nominal: thread.nominal,
    common: thread.series === 'coarse' && thread.choice === 1 ? 1 : 0.35,
    dims: { thread: `M${toMm(thread.nominal)}`, pitch: toMm(thread.pitch) },
    major: made(outside.major, `ISO 965 ${outside.toleranceClass}`),
    minor: made(inside.minor, `ISO 965 ${inside.toleranceClass}`),
    pitch: pitchOf(thread.pitch),
  };
});

/** Threads of Japanese machines from before 1967: the diameter of the ISO thread, and coarser. */
const olderJapanese: AnyThread[] = olderJapaneseThreads.map(thread => {
  const [outside, inside] = [externalLimits(thread), internalLimits(thread)];
  return {
    designation: `M${toMm(thread.nominal)}x${toMm(thread.pitch)}`,
    system: 'metric',
    nominal: thread.nominal,
    common: 0.25,
    dims: { thread: `M${toMm(thread.nominal)}`, pitch: toMm(thread.pitch) },
    major: made(outside.major, 'older Japanese thread, limits by ISO 965'),
    minor: made(inside.minor, 'older Japanese thread, limits by ISO 965'),
    pitch: pitchOf(thread.pitch),
  };
});

const unified: AnyThread[] = unifiedThreads.map(thread => {
  const { external, internal } = unifiedLimits(thread);
  return {
    designation: thread.designation,
    system: 'inch',
    nominal: thread.nominal,
    common: thread.series === 'UNEF' ? 0.25 : 0.5,
    dims: { thread: thread.designation },
    major: made(external.major, 'ASME B1.1 2A'),
    minor: made(internal.minor, 'ASME B1.1 2B'),
    // Not the whole micrometres: over thirty pitches they are a hundredth off.
    pitch: pitchOf(25_400 / thread.tpi),
  };
});

/** The tolerance table of BS 93 is not at hand: the tolerances of ISO 965 for the same pitch stand in for it. */
const ba: AnyThread[] = baThreads
  .filter(thread => thread.nominal >= mm(1))
  .map(thread => {
    const pitch = toMm(thread.pitch);
    const source = 'BS 93, tolerance as ISO 965 for its pitch';
    return {
      designation: thread.designation,
      system: 'BA',
      nominal: thread.nominal,
      common: 0.3,
      dims: { thread: thread.designation },
      major: { min: thread.nominal - Math.round(formulas.td(pitch)), max: thread.nominal, source },
      minor: { min: thread.minor, max: thread.minor + Math.round(formulas.td1(pitch)), source },
      pitch: pitchOf(thread.pitch),
    };
  });

/** Every published thread from 1 to 68 mm: metric, older Japanese, unified and British Association. */
export const everyThread: readonly AnyThread[] = [...metric, ...olderJapanese, ...unified, ...ba];

/** The greatest thread that a loose part is named by: larger ones are on no small mechanism. */
export const greatestMeasured: Um = mm(45);

/** The threads a loose part is compared with. */
export const measuredSizes: readonly AnyThread[] = everyThread.filter(
  thread => thread.nominal <= greatestMeasured,
);
