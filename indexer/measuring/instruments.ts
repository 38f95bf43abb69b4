import { deviationOf } from '../units/uncertain.ts';

/** What a repairer measures with. */
export const instruments = [
  'calliper-outside',
  'calliper-inside',
  'calliper-depth',
  'micrometer',
  'rule',
  'thread-gauge',
  'pin',
] as const;

export type Instrument = (typeof instruments)[number];

interface Doubt {
  /** What it is called in a sentence. */
  readonly label: string;
  /** Half-width that holds 95 in 100 of its readings on a clean part, in micrometres. */
  readonly uncertainty: number;
  /** Standard deviation of what it is off in all readings alike, in micrometres: it does not average out. */
  readonly zero: number;
}

/**
 * Uncertainties of hand tools in ordinary use (common practice): a display step of 0.01 mm is not the accuracy, the user's
 * hand is part of the instrument. A pin is its own size, a leaf of a thread gauge goes by the pitch, see below.
 */
const doubts: Readonly<Record<Instrument, Doubt>> = {
  'calliper-outside': { label: 'calliper', uncertainty: 30, zero: 10 },
  'calliper-inside': { label: 'inside jaws', uncertainty: 50, zero: 10 },
  'calliper-depth': { label: 'depth rod', uncertainty: 50, zero: 10 },
  micrometer: { label: 'micrometer', uncertainty: 5, zero: 1.5 },
  rule: { label: 'rule', uncertainty: 500, zero: 100 },
  'thread-gauge': { label: 'thread gauge', uncertainty: 0, zero: 0 },
  pin: { label: 'pin', uncertainty: 10, zero: 0 },
};

/** What an instrument is called in a sentence. */
export const labelOf = (instrument: Instrument): string => doubts[instrument].label;

/** The 95-in-100 half-width of an instrument, in micrometres. */
export const uncertaintyOfInstrument = (instrument: Instrument): number => doubts[instrument].uncertainty;

/** Standard deviation, in micrometres, of the mean of `count` readings: the hand's part averages out, the zero does not. */
export function deviationOfMean(instrument: Instrument, count: number): number {
  const { uncertainty, zero } = doubts[instrument];
  return Math.hypot(deviationOf(uncertainty) / Math.sqrt(count), zero);
}

/** A leaf of a thread gauge held to the flanks tells pitches 3 in 100 apart (common practice). */
export const gaugeUncertainty = (pitch: number): number => 0.03 * pitch;

/** Half-width, in micrometres, of a calliper laid over the crests of a thread (common practice). */
export const crestUncertainty = 50;

/**
 * What inside jaws read in a bore: their flat land bridges a chord, so always less than the bore.
 * Bore, land and reading in one unit; a land as wide as the bore does not enter.
 */
export const insideJawReading = (bore: number, land: number): number =>
  Math.sqrt(Math.max(0, bore ** 2 - land ** 2));

/** Lands of the inside jaws met with, in micrometres, alike likely: worn sharp ones to 0.7 mm flat. */
const lands = [50, 150, 250, 350, 450, 550, 650];

/** By how much inside jaws may read under a bore, in micrometres: alike likely amounts. `land` where it is known. */
export function jawBiases(bore: number, land: number | null): number[] {
  return (land === null ? lands : [land]).map(width => bore - insideJawReading(bore, Math.min(width, bore)));
}
