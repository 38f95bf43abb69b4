import { z } from '@hono/zod-openapi';
import { attrs, dims, readAs } from './common.ts';

const span = z.object({ field: z.string(), start: z.number().int(), end: z.number().int() });

const alternative = z.object({
  category: readAs,
  dims,
  attrs,
  size: z.string().nullable(),
  why: z.string(),
});

/** What was understood from one printed line, with the characters each field came from. */
export const reading = z
  .object({
    category: readAs,
    dims,
    attrs,
    implied: dims,
    qty: z.number().nullable(),
    size: z.string().nullable(),
    item: z.string().nullable(),
    certainty: z.number(),
    review: z.boolean(),
    alternatives: z.array(alternative),
    spans: z.array(span),
    notes: z.array(z.string()),
  })
  .openapi('Reading');
export type ReadingAnswer = z.infer<typeof reading>;
