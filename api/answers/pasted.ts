import { z } from '@hono/zod-openapi';
import { category } from './common.ts';
import { givenColumns, table } from './diagram.ts';
import { reading } from './reading.ts';

/** A list put into the paste box: answered, and not stored. */
export const paste = z
  .object({
    text: z.string().min(1).max(2_000_000),
    name: z.string().max(200).optional(),
    columns: givenColumns.optional(),
  })
  .openapi('Paste');
export type Paste = z.infer<typeof paste>;

const outcome = z.enum(['taken', 'skipped', 'faulted']);

export const pastedRow = z
  .object({
    page: z.number().int(),
    ref: z.string(),
    partNumber: z.string(),
    description: z.string(),
    qty: z.number().nullable(),
    qtyText: z.string(),
    remarks: z.string(),
    place: z.string(),
    parent: z.string().nullable(),
    variants: z.array(z.object({ model: z.string(), qty: z.number() })),
    outcome,
    reason: z.string().optional(),
    reading: reading.optional(),
  })
  .openapi('PastedRow');
export type PastedRow = z.infer<typeof pastedRow>;

/** One size that the list holds, and how often. */
export const sizeCount = z
  .object({
    size: z.string(),
    category,
    designations: z.array(z.string()),
    /** Lines that name it. */
    lines: z.number().int(),
    /** Pieces, where every line states how many; null where one does not. */
    qty: z.number().nullable(),
    refs: z.array(z.string()),
  })
  .openapi('SizeCount');
export type SizeCount = z.infer<typeof sizeCount>;

/** The rows as `fettle rows` prints them, and the sizes they hold. */
export const pasted = z
  .object({
    document: z.object({
      name: z.string(),
      pages: z.number().int(),
      language: z.string().nullable(),
      unit: z.enum(['mm', 'in']).nullable(),
    }),
    tables: z.array(table),
    rows: z.array(pastedRow),
    relations: z.array(
      z.object({
        kind: z.string(),
        ref: z.string(),
        refs: z.array(z.string()).optional(),
        partNumber: z.string().optional(),
        of: z.string().optional(),
        from: z.string().optional(),
        to: z.string().optional(),
      }),
    ),
    balloons: z.array(z.object({ ref: z.string(), page: z.number().int(), x: z.number(), y: z.number() })),
    faults: z.array(
      z.object({
        page: z.number().int(),
        place: z.string(),
        code: z.string(),
        message: z.string(),
        remedy: z.string(),
      }),
    ),
    sizes: z.array(sizeCount),
  })
  .openapi('Pasted');
export type Pasted = z.infer<typeof pasted>;
