import { z } from '@hono/zod-openapi';
import { attrs, category, difference, dims, dutyAnswer, id, modelRef, readAs, tool } from './common.ts';
import { fitOf } from './measure.ts';
import { modelSummary } from './model.ts';
import { partRef } from './part.ts';

/** One thing the query was taken to say. */
export const understoodField = z
  .object({
    field: z.string(),
    value: z.union([z.number(), z.string(), z.boolean()]),
    /** The words of the query it came from; null where a standard gives it. */
    text: z.string().nullable(),
    start: z.number().int().nullable(),
    end: z.number().int().nullable(),
    how: z.enum(['stated', 'assumed']),
  })
  .openapi('UnderstoodField');

/** The query as it was read. */
export const understood = z
  .object({
    category: readAs,
    size: z.string().nullable(),
    dims,
    implied: dims,
    attrs,
    fields: z.array(understoodField),
    /** Other ways the same characters could be meant. */
    otherwise: z.array(z.object({ category: readAs, size: z.string().nullable(), why: z.string() })),
    notes: z.array(z.string()),
  })
  .openapi('Understood');
export type Understood = z.infer<typeof understood>;

export const sizeHit = z
  .object({
    size: z.string(),
    category,
    dims,
    implied: dims,
    designations: z.array(z.string()),
    parts: z.number().int(),
    models: z.number().int(),
    /** Some of these lines hold a load, brake or the like: maker's part only. */
    caution: z.string().nullable(),
  })
  .openapi('SizeHit');
export type SizeHit = z.infer<typeof sizeHit>;

/** A size that is not the one asked for, and in what it differs; of a bearing for a measured shaft also how it sits there. */
export const nearSize = sizeHit
  .extend({
    differences: z.array(difference),
    /** A person could take one for the other: one dimension differs, or none by more than a few tenths. */
    confusable: z.boolean(),
    onShaft: fitOf.nullable().optional(),
  })
  .openapi('NearSize');
export type NearSize = z.infer<typeof nearSize>;

export const partHit = partRef
  .extend({
    matched: z.enum(['number', 'part-of-number', 'words', 'size']),
    /** `same size; not an approval: maker's part only`, where it is so. */
    caution: z.string().nullable(),
  })
  .openapi('PartHit');
export type PartHit = z.infer<typeof partHit>;

/** What one find box answers. */
export const found = z
  .object({
    query: z.string(),
    understood: understood.nullable(),
    sizes: z.array(sizeHit),
    near: z.array(nearSize),
    parts: z.array(partHit),
    models: z.array(modelSummary),
    /** Pages on which the query is written, and the words it stands in. */
    pages: z.array(
      z.object({ diagram: id, name: z.string(), model: modelRef, page: z.number().int(), text: z.string() }),
    ),
    /** Words of the query that were taken for others here. */
    corrected: z.array(z.object({ from: z.string(), to: z.string() })),
    engine: z.enum(['postgres', 'meilisearch']),
  })
  .openapi('Found');
export type Found = z.infer<typeof found>;

/** One line that takes the size. */
export const use = z
  .object({
    part: partRef,
    model: modelRef,
    diagram: id,
    row: id,
    ref: z.string(),
    qty: z.number().nullable(),
    qtyText: z.string(),
    /** How we know, and the words. */
    evidence: z.object({ kind: z.string(), detail: z.string(), certainty: z.number() }).nullable(),
    duty: dutyAnswer,
  })
  .openapi('Use');
export type Use = z.infer<typeof use>;

/** How many models, of how many makers, a size is used in. */
const used = z.object({ models: z.number().int(), makers: z.number().int() });

/** Where a size is used, a page of models at a time. */
export const uses = z.object({ uses: z.array(use), used }).openapi('Uses');
export type Uses = z.infer<typeof uses>;

export const size = z
  .object({
    size: z.string(),
    category,
    dims,
    implied: dims,
    designations: z.array(z.string()),
    caution: z.string().nullable(),
    /** Where it is used: the first models, and how many there are in all. */
    uses: z.array(use),
    used,
    items: z.array(z.object({ item: z.string(), open: z.array(z.string()), parts: z.number().int() })),
    near: z.array(nearSize),
    tools: z.array(tool),
  })
  .openapi('Size');
export type SizeAnswer = z.infer<typeof size>;
