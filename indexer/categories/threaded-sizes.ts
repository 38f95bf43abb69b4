import type { Dims } from '../reading/reading.ts';
import { metricThreads } from '../standards/iso-261.ts';
import { unifiedThreads } from '../standards/unified-threads.ts';
import { inch, mm, toMm } from '../units/length.ts';
import type { PublishedSize } from './definition.ts';

/** Published threads with each of some stock lengths (mm), or without one. */
export function threadedSizes(lengths: readonly (number | null)[]): PublishedSize[] {
  const threads: PublishedSize[] = [
    ...metricThreads.map(t => ({ thread: `M${toMm(t.nominal)}`, pitch: t.pitch })),
    ...unifiedThreads.map(t => ({ thread: t.designation, pitch: inch(1 / t.tpi) })),
  ];
  return threads.flatMap(t => lengths.map(l => (l === null ? t : { ...t, length: mm(l) })));
}

/** What the thread is called in speech: `M3`, `6-32`. */
export const designationOfThread = (dims: Dims): string[] =>
  typeof dims['thread'] === 'string' ? [dims['thread']] : [];
