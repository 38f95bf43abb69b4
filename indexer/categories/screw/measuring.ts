import type { Dims } from '../../reading/reading.ts';
import { hexKeyOfHead, inchHexKey } from '../../standards/hex-keys.ts';
import { inchHeads } from '../../standards/inch-screw-heads.ts';
import { baNuts, olderJapaneseNuts } from '../../standards/other-nuts.ts';
import { screwHeads } from '../../standards/screw-heads.ts';
import { mm, type Um } from '../../units/length.ts';
import { type AnyThread, inchSizeOf } from '../every-thread.ts';
import { about, inProportion, type Made, type Measurable, type Measuring } from '../measurable.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { length, major, measuredThreads, pitch } from '../threaded-measuring.ts';

/** A head is marked by tools and worn flat, never larger. */
const measurable: readonly Measurable[] = [
  major,
  pitch,
  length,
  {
    key: 'headDiameter',
    ofForm: 'head',
    label: 'head diameter',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 20 },
    range: [mm(1.5), mm(60)],
  },
  {
    key: 'headHeight',
    ofForm: 'head',
    label: 'head height',
    ways: ['calliper-outside', 'calliper-depth'],
    wear: { grows: false, mean: 20 },
    range: [mm(0.3), mm(40)],
  },
  {
    key: 'acrossFlats',
    ofForm: 'head',
    label: 'width across flats',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 20 },
    range: [mm(1.5), mm(60)],
  },
  {
    key: 'key',
    ofForm: 'head',
    label: 'hexagon key',
    ways: ['calliper-outside'],
    wear: null,
    range: [mm(0.6), mm(22)],
  },
];

const span = (min: number | null, max: number | null, source: string, when: { head: string }): Made[] =>
  min === null || max === null ? [] : [{ min, max, source, when }];

/** What is known of the heads and keys on a thread, over all standards, and what holds of any head. */
function heads(thread: AnyThread): Readonly<Record<string, readonly Made[]>> {
  const known = { metric: metricHeads, inch: inchHeadsOn, BA: baHeads }[thread.system](thread);
  const { nominal } = thread;
  return {
    headDiameter: [...known.headDiameter, inProportion(nominal, 1.25, 4)],
    headHeight: [...known.headHeight, inProportion(nominal, 0.25, 1.5)],
    acrossFlats: [...known.acrossFlats, inProportion(nominal, 1.3, 2.3)],
    key: [...known.key, inProportion(nominal, 0.35, 0.9)],
  };
}

interface Heads {
  readonly headDiameter: readonly Made[];
  readonly headHeight: readonly Made[];
  readonly acrossFlats: readonly Made[];
  readonly key: readonly Made[];
}

function metricHeads({ designation, dims }: AnyThread): Heads {
  const thread = String(dims.thread);
  const all = screwHeads.filter(head => head.thread === thread);
  const forms = [...new Set(all.map(head => head.head))];
  const older = olderJapaneseNuts(designation);
  return {
    headDiameter: all.flatMap(h =>
      span(h.dkMin ?? h.dkMax, h.dkTheoretical ?? h.dkMax, h.standard, { head: h.head }),
    ),
    headHeight: all.flatMap(h => span(h.kMin ?? h.kMax * 0.9, h.kMax, h.standard, { head: h.head })),
    // The hexagons of the older threads were larger than those of today.
    acrossFlats:
      older.length > 0
        ? older.flatMap(nut => span(nut.acrossFlatsMin, nut.acrossFlats, nut.standard, { head: 'hex' }))
        : all.flatMap(h => span(h.sMin, h.sMax, h.standard, { head: h.head })),
    key: forms.flatMap(form => keyOf(hexKeyOfHead(form, thread), form)),
  };
}

const keyOf = (key: Um | undefined, head: string): Made[] =>
  key === undefined ? [] : [about(key, 20, 60, `key of a ${head} screw`, { head })];

/** Heads whose keys ASME B18.3 lists, by its own names for them. */
const socketHeads = { 'socket-cap': 'cap', button: 'button', countersunk: 'flat' } as const;

function inchHeadsOn(thread: AnyThread): Heads {
  const size = inchSizeOf(thread);
  const all = inchHeads(size);
  return {
    headDiameter: all.map(h => ({ ...h.diameter, source: h.standard, when: { head: h.head } })),
    headHeight: all.flatMap(h =>
      h.height ? [{ ...h.height, source: h.standard, when: { head: h.head } }] : [],
    ),
    acrossFlats: all.flatMap(h =>
      h.acrossFlats ? [{ ...h.acrossFlats, source: h.standard, when: { head: h.head } }] : [],
    ),
    key: Object.entries(socketHeads).flatMap(([head, named]) => keyOf(inchHexKey(named, size), head)),
  };
}

/** The hexagon heads of BA screws are as wide as their nuts; their other heads stand in no table here. */
const baHeads = ({ designation }: AnyThread): Heads => ({
  headDiameter: [],
  headHeight: [],
  acrossFlats: baNuts(designation)
    .slice(0, 1)
    .flatMap(nut => span(nut.acrossFlatsMin, nut.acrossFlats, nut.standard, { head: 'hex' })),
  key: [],
});

const threads = measuredThreads(heads);

export const measuring: Measuring = {
  category: 'screw',
  measurable,
  candidates: measured => threads.candidates(measured.has('length')),
  known: (dims: Dims) => threads.known(dims),
  write: writeThreadedLength,
  parse: parseThreadedLength,
};
