import type { Instrument } from '../../../indexer/measure.ts';
import type { Attrs, CategoryName } from '../../../indexer/reading/reading.ts';

/** One dimension to take: by an instrument, as pitches counted, or by the pins in tenths on either side of it. */
export type Take = readonly [dimension: string, instrument: Instrument, pitches?: number];

/** A way of measuring parts of one category, as people do it. */
export interface Session {
  readonly name: string;
  readonly category: CategoryName;
  readonly attrs?: Attrs;
  readonly takes: readonly Take[];
  /** Sizes of the workshop, where a category has no published ones. */
  readonly known?: readonly { size: string; count: number }[];
}

/** Springs of an invented bench: no two within what a calliper tells apart. */
const springs = [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.6].flatMap(wire =>
  [5, 6.5, 8.5].map((index, at) => {
    const od = Math.round(wire * index * 20) / 20;
    return { size: `spring ${wire}x${od}x${Math.round(od * (1.5 + at) * 2) / 2}`, count: 1 };
  }),
);

export const sessions: readonly Session[] = [
  {
    name: 'screw, calliper, 5 pitches',
    category: 'screw',
    takes: [
      ['major', 'calliper-outside'],
      ['pitch', 'calliper-outside', 5],
      ['length', 'calliper-depth'],
    ],
  },
  {
    name: 'screw, micrometer, gauge',
    category: 'screw',
    takes: [
      ['major', 'micrometer'],
      ['pitch', 'thread-gauge'],
      ['length', 'calliper-outside'],
    ],
  },
  {
    name: 'set screw, calliper, 4 pitches',
    category: 'set-screw',
    takes: [
      ['major', 'calliper-outside'],
      ['pitch', 'calliper-outside', 4],
      ['length', 'calliper-outside'],
    ],
  },
  {
    name: 'nut, inside jaws, gauge',
    category: 'nut',
    takes: [
      ['minor', 'calliper-inside'],
      ['pitch', 'thread-gauge'],
    ],
  },
  {
    name: 'bearing, calliper',
    category: 'bearing',
    takes: [
      ['bore', 'calliper-inside'],
      ['od', 'calliper-outside'],
      ['width', 'calliper-outside'],
    ],
  },
  {
    name: 'bearing, pins, calliper',
    category: 'bearing',
    takes: [
      ['bore', 'pin'],
      ['od', 'calliper-outside'],
    ],
  },
  {
    name: 'bearing, rule',
    category: 'bearing',
    takes: [
      ['bore', 'rule'],
      ['od', 'rule'],
      ['width', 'rule'],
    ],
  },
  {
    name: 'washer, calliper',
    category: 'washer',
    attrs: { type: 'flat' },
    takes: [
      ['id', 'calliper-inside'],
      ['od', 'calliper-outside'],
      ['thickness', 'calliper-outside'],
    ],
  },
  {
    name: 'shim, micrometer',
    category: 'shim',
    takes: [
      ['id', 'calliper-inside'],
      ['od', 'calliper-outside'],
      ['thickness', 'micrometer'],
    ],
  },
  {
    name: 'ring for a shaft, groove',
    category: 'retaining-ring',
    attrs: { type: 'external' },
    takes: [
      ['shaft', 'micrometer'],
      ['groove', 'calliper-outside'],
      ['thickness', 'calliper-outside'],
    ],
  },
  {
    name: 'E-clip, groove',
    category: 'retaining-ring',
    attrs: { type: 'e-clip' },
    takes: [
      ['groove', 'calliper-outside'],
      ['thickness', 'micrometer'],
    ],
  },
  {
    name: 'O-ring, calliper',
    category: 'o-ring',
    takes: [
      ['cs', 'calliper-outside'],
      ['id', 'calliper-inside'],
    ],
  },
  {
    name: 'pin, micrometer',
    category: 'pin',
    takes: [
      ['dia', 'micrometer'],
      ['length', 'calliper-outside'],
    ],
  },
  { name: 'ball, micrometer', category: 'ball', takes: [['dia', 'micrometer']] },
  { name: 'ball, calliper', category: 'ball', takes: [['dia', 'calliper-outside']] },
  {
    name: 'bushing, calliper',
    category: 'bushing',
    takes: [
      ['id', 'calliper-inside'],
      ['od', 'calliper-outside'],
      ['length', 'calliper-outside'],
    ],
  },
  {
    name: 'spring, micrometer',
    category: 'spring',
    known: springs,
    takes: [
      ['wire', 'micrometer'],
      ['od', 'calliper-outside'],
      ['length', 'calliper-outside'],
    ],
  },
];
