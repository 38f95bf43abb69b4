import { z } from '@hono/zod-openapi';
import { categoryNames, duties } from '../../indexer/index.ts';

/** A random id, as every subject has one. */
export const id = z.uuid();

/** A UTC instant, ISO 8601. */
export const instant = z.iso.datetime();

/** A kind of part that has sizes of its own, or `plain`. */
export const category = z.enum(categoryNames);

/** What a line can be read as: a category, no part at all, or something only a person can decide. */
export const readAs = z.enum([...categoryNames, 'not-a-part', 'unsure']);

/** Dimension name to millimetres, or to text for a thread. */
export const dims = z.record(z.string(), z.union([z.number(), z.string()]));

/** Attribute name to its value; only what is stated. */
export const attrs = z.record(z.string(), z.union([z.string(), z.boolean()]));

export const duty = z.enum(duties);

/** A maker, model, bench … by its id and the name people know it by. */
export const named = z.object({ id, name: z.string() });
export type Named = z.infer<typeof named>;

/** A model with its maker, as it is named on the bench. */
export const modelRef = z.object({ id, name: z.string(), maker: named });
export type ModelRef = z.infer<typeof modelRef>;

/** What hangs on a model, an assembly or a part, and who says so. */
export const dutyAnswer = z
  .object({
    duty,
    /** `not-stated`: nobody has answered and no word proposes; `proposed` by a word; `confirmed` by a person. */
    standing: z.enum(['not-stated', 'proposed', 'confirmed']),
    /** Where it comes from. `assembly`: inherited from the parent line. */
    from: z.enum(['part', 'assembly', 'model', 'nothing']),
    /** The printed word that proposed it. */
    word: z.string().nullable(),
    /** True: only the maker's own part will do. */
    critical: z.boolean(),
  })
  .openapi('Duty');
export type DutyAnswer = z.infer<typeof dutyAnswer>;

/** One dimension or attribute in which two things differ; `difference` is second less first, in millimetres. */
export const difference = z
  .object({
    dimension: z.string(),
    label: z.string(),
    a: z.union([z.number(), z.string()]),
    b: z.union([z.number(), z.string()]),
    difference: z.number().nullable(),
  })
  .openapi('Difference');
export type DifferenceAnswer = z.infer<typeof difference>;

/** How we know a size: a person's correction first, then print, then what a designation means. */
export const evidenceKind = z.enum(['corrected', 'printed', 'designation', 'measured', 'stated']);

/** A tool that a part takes; `when` names the form it is for, where the part leaves it open. */
export const tool = z
  .object({ kind: z.string(), size: z.string(), when: z.string().nullable(), source: z.string() })
  .openapi('Tool');
