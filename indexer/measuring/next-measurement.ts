import { writeMillimetres } from '../units/length.ts';
import type { Instrument } from './instruments.ts';

/** A measurement that would help to tell the sizes apart, and what it would show. */
export interface NextMeasurement {
  dimension: string;
  instrument: Instrument;
  /** Of a pitch, how many to count. */
  pitches?: number;
  /** Of a pin, its diameter in millimetres. */
  value?: number;
  /** By size, the millimetres to expect, or what the pin does. */
  expect: Record<string, number | string>;
  /** How much of the doubt it is expected to settle: 1 all of it. */
  settles: number;
  /** The workshop's own sizes that would serve as that pin. */
  own: string[];
  why: string;
}

/** Micrometres as a calliper shows them: millimetres in hundredths. */
export const hundredths = (um: number) => Math.round(um / 10) / 100;

/** `13.05 if M2.5, 13.15 if 3-56`; possibilities that show the same are said together. */
export function listed(expect: Record<string, number | string>): string {
  const together = new Map<number | string, string[]>();
  for (const [name, what] of Object.entries(expect))
    together.set(what, [...(together.get(what) ?? []), name]);
  return [...together]
    .map(([what, who]) => `${typeof what === 'number' ? written(what) : what} if ${who.join(' or ')}`)
    .join(', ');
}

const written = (value: number) =>
  Math.abs(value * 100 - Math.round(value * 100)) < 1e-6 ? value.toFixed(2) : writeMillimetres(value);
