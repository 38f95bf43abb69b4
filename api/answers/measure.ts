import { z } from '@hono/zod-openapi';
import { instruments } from '../../indexer/measure.ts';
import { attrs, category, dims, duty } from './common.ts';

/** A length in millimetres, as one is measured at a bench. */
const length = z.number().positive().max(1000);
const uncertainty = z.number().min(0).max(10);
const instrument = z.enum(instruments);

const measurement = z
  .strictObject({
    dimension: z.string().min(1).max(40),
    value: length.optional(),
    values: z.array(length).min(1).max(50).optional(),
    instrument: instrument.optional(),
    /** Half-width that holds 95 in 100; left out, the instrument's own. */
    uncertainty: uncertainty.optional(),
    land: length.optional(),
    pitches: z.number().int().min(1).max(500).optional(),
    span: length.optional(),
    threadsPerInch: z.number().min(1).max(200).optional(),
    goes: z.boolean().optional(),
  })
  .openapi('Measurement');

/** The workshop's own sizes with how often each was met; the service fills them in where they are left out. */
const known = z.array(z.object({ size: z.string().max(200), count: z.number().int().min(0) })).max(20_000);

export const measureRequest = z
  .object({
    category,
    attrs: attrs.optional(),
    measurements: z.array(measurement).min(1).max(40),
    known: known.optional(),
    condition: z.enum(['new', 'used', 'worn']).optional(),
    plated: z.boolean().optional(),
    duty: duty.optional(),
  })
  .openapi('MeasureRequest');

const seat = z
  .strictObject({
    value: length.optional(),
    values: z.array(length).min(1).max(50).optional(),
    uncertainty: uncertainty.optional(),
    instrument: instrument.optional(),
    land: length.optional(),
    nominal: length.optional(),
    class: z.string().max(8).optional(),
  })
  .openapi('Seat');

export const fitRequest = z
  .object({
    shaft: seat.optional(),
    housing: seat.optional(),
    width: seat.optional(),
    clearance: z.string().max(4).optional(),
    known: known.optional(),
    duty: duty.optional(),
  })
  .openapi('FitRequest');

/** The workshop's sizes that measuring looks at, the most met first. */
export const sizesKnown = z
  .object({ sizes: z.array(z.object({ size: z.string(), count: z.number().int() })) })
  .openapi('SizesKnown');

export const measureAnswer = z
  .object({
    candidates: z.array(
      z.object({
        size: z.string(),
        designation: z.string().nullable(),
        designations: z.array(z.string()),
        dims,
        attrs,
        probability: z.number(),
        likelihood: z.number(),
        limits: z.record(z.string(), z.array(z.object({ min: z.number(), max: z.number() }))),
        reasons: z.array(z.string()),
      }),
    ),
    noneOfThese: z.number(),
    cannotTellApart: z.array(z.string()),
    next: z.array(
      z.object({
        dimension: z.string(),
        instrument,
        pitches: z.number().optional(),
        value: z.number().optional(),
        expect: z.record(z.string(), z.union([z.number(), z.string()])),
        settles: z.number(),
        own: z.array(z.string()),
        why: z.string(),
      }),
    ),
    taken: z.array(
      z.object({
        dimension: z.string(),
        value: z.number(),
        uncertainty: z.number(),
        instrument: instrument.nullable(),
      }),
    ),
    follows: z.array(
      z.object({
        what: z.string(),
        value: z.number(),
        least: z.number(),
        most: z.number(),
        unit: z.string(),
        why: z.string(),
      }),
    ),
    cautions: z.array(z.string()),
  })
  .openapi('MeasureAnswer');

/** How a hole and a shaft go together, in millimetres. */
export const fitOf = z.object({
  kind: z.enum(['clearance', 'transition', 'interference']),
  clearanceMin: z.number(),
  clearanceMax: z.number(),
  interferenceMin: z.number(),
  interferenceMax: z.number(),
  clearanceProbability: z.number(),
});

const interval = z.object({ min: z.number(), max: z.number() });

export const fitAnswer = z
  .object({
    candidates: z.array(
      z.object({
        size: z.string(),
        designations: z.array(z.string()),
        dims,
        likelihood: z.number(),
        shaftClass: z.string().nullable(),
        shaftCouldBe: z.array(z.string()),
        housingClass: z.string().nullable(),
        housingCouldBe: z.array(z.string()),
        onShaft: fitOf.nullable(),
        inHousing: fitOf.nullable(),
        widthGap: interval.nullable(),
        shims: z.array(
          z.object({
            ring: z.enum(['inner', 'outer']),
            standard: z.literal('DIN 988').nullable(),
            id: z.number(),
            od: z.number(),
            sizes: z.array(z.string()),
            thicknesses: z.array(z.number()),
            leaves: interval,
            why: z.string(),
          }),
        ),
        play: interval.extend({ group: z.string(), state: z.string(), axial: interval }).nullable(),
        reasons: z.array(z.string()),
      }),
    ),
    taken: z.array(
      z.object({
        seat: z.enum(['shaft', 'housing', 'width']),
        value: z.number(),
        uncertainty: z.number(),
        instrument: instrument.nullable(),
      }),
    ),
    cautions: z.array(z.string()),
  })
  .openapi('FitAnswer');

export type MeasureRequestBody = z.infer<typeof measureRequest>;
export type FitRequestBody = z.infer<typeof fitRequest>;
