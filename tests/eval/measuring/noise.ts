import type { Instrument } from '../../../indexer/measure.ts';
import { slips } from '../../../indexer/measuring/observation.ts';
import { ofNoTable } from '../../../indexer/measuring/weigh.ts';

/** How readings of a bench go wrong; micrometres. */
export interface Noise {
  readonly name: string;
  /** Wear beside the assumed one. */
  readonly wear: number;
  /** Lands of the inside jaws. */
  readonly land: readonly [least: number, most: number];
  /** By how much a part's calliper is off in all its readings, one way or the other. */
  readonly calliperOff: number;
  /** Chance that a reading is a slip, some times wider than the instrument. */
  readonly slips: number;
  /** Chance that a part's measurements name one wrong instrument. */
  readonly wrongInstrument: number;
  /** Share of parts that are in no table. */
  readonly ofNoTable: number;
  /** Whether parts are drawn as common as they are taken to be, or every size alike. */
  readonly asCommon: boolean;
}

/** What the measuring assumes. */
export const own: Noise = {
  name: "the model's own noise",
  wear: 1,
  land: [0, 700],
  calliperOff: 0,
  slips,
  wrongInstrument: 0,
  ofNoTable,
  asCommon: true,
};

/** What it does not: untold lands, a calliper off, twice the wear, wrong instruments, every size alike. */
export const foreign: Noise = {
  name: "noise that is not the model's",
  wear: 2,
  land: [200, 700],
  calliperOff: 20,
  slips: 0,
  wrongInstrument: 0.02,
  ofNoTable: 0.1,
  asCommon: false,
};

/** Standard deviations of a reading, in micrometres, the instrument's own offset aside; a gauge goes by the pitch. */
export function deviation(instrument: Instrument, value: number, soft: boolean): number {
  if (instrument === 'thread-gauge') return (0.03 * value) / 1.96;
  const half = {
    'calliper-outside': 30,
    'calliper-inside': 50,
    'calliper-depth': 50,
    micrometer: 5,
    rule: 500,
    pin: 0,
  };
  return Math.max(half[instrument], soft ? 100 : 0) / 1.96;
}

/** Standard deviation of what an instrument is off in all its readings, in the model's own noise. */
export const zero = (instrument: Instrument): number =>
  ({ micrometer: 1.5, rule: 100, 'thread-gauge': 0, pin: 0 })[instrument as string] ?? 10;

/** Instruments that one is taken for. */
export const others: Readonly<Record<string, readonly Instrument[]>> = {
  'calliper-outside': ['micrometer', 'rule'],
  'calliper-inside': ['rule'],
  'calliper-depth': ['rule', 'calliper-outside'],
  micrometer: ['calliper-outside'],
  'thread-gauge': ['rule'],
};

/** By how much a drill shank stands under its name, in micrometres: about 14, as the model has it, or anything up to 20. */
export const shank = { middle: 14, deviation: 6, most: 20 };
