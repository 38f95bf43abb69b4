import { z } from '@hono/zod-openapi';
import { attrs, category, dims, dutyAnswer } from './common.ts';
import { partRef } from './part.ts';

/** One of two things compared: a part, or a size or article by itself. */
export const compared = z
  .object({
    /** Null where a size was named and no part. */
    part: partRef.nullable(),
    category: z.union([category, z.enum(['not-a-part', 'unsure'])]),
    size: z.string().nullable(),
    item: z.string().nullable(),
    dims,
    implied: dims,
    attrs,
    duty: dutyAnswer,
  })
  .openapi('Compared');
export type ComparedAnswer = z.infer<typeof compared>;

const value = z.union([z.number(), z.string(), z.boolean()]).nullable();

/** A judgement of one thing in the place of the other. */
const oneWay = z.object({
  verdict: z.enum(['fits', 'fits-with-care', 'does-not-fit']),
  reasons: z.array(z.object({ gate: z.string(), text: z.string(), severity: z.string() })),
  /** `same size; not an approval: maker's part only`, or the like, where it is so. */
  caution: z.string().nullable(),
});

/** Two things dimension by dimension, and each in the place of the other: that B may replace A says nothing of A for B. */
export const comparison = z
  .object({
    a: compared,
    b: compared,
    /** Dimensions and attributes side by side; `open` where one does not say, which is never the same. */
    rows: z.array(
      z.object({
        key: z.string(),
        label: z.string(),
        kind: z.enum(['dimension', 'attribute']),
        a: value,
        b: value,
        difference: z.number().nullable(),
        standing: z.enum(['same', 'differs', 'open']),
      }),
    ),
    bForA: oneWay,
    aForB: oneWay,
  })
  .openapi('Comparison');
export type Comparison = z.infer<typeof comparison>;
