import type {
  Attrs,
  CategoryName,
  Duty,
  Instrument,
  KnownSize,
  Measurement,
  MeasureRequest,
} from '../../indexer/index.ts';
import { readDoubt, readLengths } from './read-lengths.ts';

/** How a pitch is taken: counted over a length, by the leaf of a gauge, or as threads to the inch. */
export type PitchWay = 'counted' | 'gauge' | 'per-inch';

/** What stands in the fields of one part, as typed. */
export interface Taken {
  /** By dimension. */
  typed: Record<string, string>;
  instruments: Record<string, Instrument>;
  pitchWay: PitchWay;
  pitches: number;
  /** Pins tried in a hole, by dimension: the largest that goes in and the smallest that does not. */
  goes: Record<string, string>;
  stops: Record<string, string>;
  attrs: Attrs;
  condition: 'new' | 'used' | 'worn';
  plated: boolean;
  duty: Duty;
}

export const nothingTaken: Taken = {
  typed: {},
  instruments: {},
  pitchWay: 'counted',
  pitches: 5,
  goes: {},
  stops: {},
  attrs: {},
  condition: 'used',
  plated: false,
  duty: 'not-stated',
};

/** What is measured, as measuring is asked; null where nothing is. What cannot be read as a length is left out. */
export function requestOf(
  category: CategoryName,
  taken: Taken,
  known: readonly KnownSize[],
): MeasureRequest | null {
  const measurements = [
    ...Object.entries(taken.typed).flatMap(([dimension, text]) => measurementOf(dimension, text, taken)),
    ...pinsOf(taken.goes, true),
    ...pinsOf(taken.stops, false),
  ];
  if (measurements.length === 0) return null;
  const { attrs, condition, plated, duty } = taken;
  return { category, measurements, attrs, condition, plated, duty, known };
}

function measurementOf(dimension: string, text: string, taken: Taken): Measurement[] {
  if (dimension === 'pitch' && taken.pitchWay === 'per-inch') {
    const threadsPerInch = Number(text.trim().replace(',', '.'));
    return threadsPerInch > 0 ? [{ dimension, threadsPerInch, instrument: 'thread-gauge' }] : [];
  }
  const values = readLengths(text);
  if (!values || values.length === 0) return [];
  const uncertainty = readDoubt(text);
  if (dimension === 'pitch' && taken.pitchWay === 'counted')
    return [
      { dimension, span: mean(values), pitches: taken.pitches, instrument: 'calliper-outside', uncertainty },
    ];
  const instrument = dimension === 'pitch' ? 'thread-gauge' : taken.instruments[dimension];
  return [{ dimension, values, uncertainty, ...(instrument && { instrument }) }];
}

const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;

const pinsOf = (pins: Record<string, string>, goes: boolean): Measurement[] =>
  Object.entries(pins).flatMap(([dimension, text]) =>
    (readLengths(text) ?? []).map(value => ({ dimension, value, instrument: 'pin' as const, goes })),
  );
