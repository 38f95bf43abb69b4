import { z } from '@hono/zod-openapi';
import { id, named } from './common.ts';

/** A question that only a person can answer before the line can be ordered. */
export const ask = z
  .object({
    code: z.enum([
      'as-required',
      'serial-unknown',
      'not-on-this-model',
      'superseded-branches',
      'superseded-on-condition',
      'superseded-in-a-loop',
      'no-assembly-known',
      'more-than-the-assembly-holds',
      'open-attributes',
      'disagreement',
    ]),
    text: z.string(),
    /** The needs it is about. */
    needs: z.array(id),
    /** Items of the same size that say it more closely: a need may be taken as one of them. */
    takeAs: z.array(z.string()).optional(),
    /** The item as its own line states it: taking the needs as this one keeps them apart. */
    own: z.string().optional(),
  })
  .openapi('Ask');
export type AskAnswer = z.infer<typeof ask>;

export const orderLine = z
  .object({
    item: z.string(),
    size: z.string().nullable(),
    name: z.string(),
    /** Pieces known; what is still asked comes on top. */
    total: z.number(),
    /** Who needs how many; `qty` null asks. */
    jobs: z.array(
      z.object({
        job: id,
        number: z.number().int(),
        owner: z.string(),
        qty: z.number().nullable(),
        refs: z.array(z.string()),
      }),
    ),
    /** The numbers it goes by, maker by maker. */
    numbers: z.array(z.object({ maker: z.string(), number: z.string(), part: id.nullable() })),
    /** Only the maker's own part will do. */
    makersPartOnly: z.boolean(),
    /** Why it is there: successor of, parent covers, smallest assembly that holds … */
    because: z.array(z.string()),
    /** Needs that a person took `as` this item; `what` as its list calls it, `apart` where it is what the list states. */
    taken: z.array(z.object({ need: id, what: z.string(), as: z.string(), apart: z.boolean() })),
    asks: z.array(ask),
    needs: z.array(id),
  })
  .openapi('OrderLine');
export type OrderLineAnswer = z.infer<typeof orderLine>;

/** Every need of the chosen jobs, pooled by item. `maker` is null for what several makers' numbers name alike. */
export const order = z
  .object({
    jobs: z.array(z.object({ id, number: z.number().int(), owner: z.string() })),
    groups: z.array(z.object({ maker: z.string().nullable(), lines: z.array(orderLine) })),
    /** Needs that are not ordered by themselves, and why. */
    leftOut: z.array(z.object({ need: id, job: named, what: z.string(), why: z.string() })),
  })
  .openapi('Order');
export type OrderAnswer = z.infer<typeof order>;
