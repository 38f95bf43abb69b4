import type { Dims } from '../../reading/reading.ts';
import { hexKeyOfHead } from '../../standards/hex-keys.ts';
import { screwHeads } from '../../standards/screw-heads.ts';
import { mm } from '../../units/length.ts';
import { about, type Made, type Measurable, type Measuring } from '../measurable.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { length, major, measuredThreads, pitch } from '../threaded-measuring.ts';

/** A head is marked by tools and worn flat, never larger. */
const measurable: readonly Measurable[] = [
  major,
  pitch,
  length,
  {
    key: 'headDiameter',
    label: 'head diameter',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 20 },
    range: [mm(1.5), mm(60)],
  },
  {
    key: 'headHeight',
    label: 'head height',
    ways: ['calliper-outside', 'calliper-depth'],
    wear: { grows: false, mean: 20 },
    range: [mm(0.3), mm(40)],
  },
  {
    key: 'acrossFlats',
    label: 'across flats',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 20 },
    range: [mm(1.5), mm(60)],
  },
  { key: 'key', label: 'hexagon key', ways: ['calliper-outside'], wear: null, range: [mm(0.6), mm(22)] },
];

const span = (min: number | null, max: number | null, source: string, when: { head: string }): Made[] =>
  min === null || max === null ? [] : [{ min, max, source, when }];

/** What is known of the heads and keys on a metric thread, over all standards. */
function heads(thread: string): Readonly<Record<string, readonly Made[]>> {
  const all = screwHeads.filter(head => head.thread === thread);
  const forms = [...new Set(all.map(head => head.head))];
  return {
    headDiameter: all.flatMap(h =>
      span(h.dkMin ?? h.dkMax, h.dkTheoretical ?? h.dkMax, h.standard, { head: h.head }),
    ),
    headHeight: all.flatMap(h => span(h.kMin ?? h.kMax * 0.9, h.kMax, h.standard, { head: h.head })),
    acrossFlats: all.flatMap(h => span(h.sMin, h.sMax, h.standard, { head: h.head })),
    key: forms.flatMap(form => {
      const key = hexKeyOfHead(form, thread);
      return key === undefined ? [] : [about(key, 20, 60, `key of a ${form} screw`, { head: form })];
    }),
  };
}

const threads = measuredThreads(heads);

export const measuring: Measuring = {
  category: 'screw',
  measurable,
  candidates: measured => threads.candidates(measured.has('length')),
  known: (dims: Dims) => threads.known(dims),
  write: writeThreadedLength,
  parse: parseThreadedLength,
};
