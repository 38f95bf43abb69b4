import { z } from '@hono/zod-openapi';
import {
  attrs,
  difference,
  dims,
  dutyAnswer,
  evidenceKind,
  id,
  instant,
  modelRef,
  named,
  readAs,
  tool,
} from './common.ts';

/** A part as it stands in a list of parts. `number` is null where the sheet prints none. */
export const partRef = z
  .object({
    id,
    maker: named,
    number: z.string().nullable(),
    name: z.string(),
    category: readAs,
    size: z.string().nullable(),
    item: z.string().nullable(),
    /** True where a person should look at its size. */
    review: z.boolean(),
    models: z.array(named),
  })
  .openapi('PartRef');
export type PartRef = z.infer<typeof partRef>;

/** Why a part has its size: the words, and where they stand. */
export const evidence = z
  .object({
    kind: evidenceKind,
    category: readAs,
    size: z.string().nullable(),
    item: z.string().nullable(),
    dims,
    attrs,
    certainty: z.number(),
    /** As printed, measured or said. */
    detail: z.string(),
    diagram: named.nullable(),
    createdAt: instant,
  })
  .openapi('Evidence');
export type EvidenceAnswer = z.infer<typeof evidence>;

/** One line of a list that names a part. */
export const line = z
  .object({
    row: id,
    diagram: named,
    model: modelRef,
    page: z.number().int(),
    ref: z.string(),
    partNumber: z.string(),
    description: z.string(),
    qty: z.number().nullable(),
    qtyText: z.string(),
    remarks: z.string(),
    part: id.nullable(),
    category: readAs,
    size: z.string().nullable(),
    item: z.string().nullable(),
    review: z.boolean(),
    duty: dutyAnswer,
    facts: z.array(z.object({ kind: z.string(), from: z.string().nullable(), to: z.string().nullable() })),
  })
  .openapi('Line');
export type LineAnswer = z.infer<typeof line>;

/** One maker's word that `to` replaces `from`. `part` is null where `to` stands on no sheet here. */
export const supersessionLink = z
  .object({
    from: z.string(),
    to: z.string(),
    part: id.nullable(),
    serialFrom: z.string().nullable(),
    serialTo: z.string().nullable(),
  })
  .openapi('SupersessionLink');

/** Where a number leads, in the maker's words only. */
export const supersession = z
  .object({
    links: z.array(supersessionLink),
    /** The one number to order now; null where it asks (branch, condition, loop). */
    current: z.string().nullable(),
    /** Why a person has to decide; null where nobody has to. */
    asks: z.string().nullable(),
    /** Numbers that this one replaces. */
    replaces: z.array(z.string()),
  })
  .openapi('Supersession');
export type SupersessionAnswer = z.infer<typeof supersession>;

export const part = partRef
  .extend({
    dims,
    attrs,
    implied: dims,
    /** Dimensions and attributes that make another article and that nothing states. */
    open: z.array(z.string()),
    certainty: z.number(),
    /** Evidence that does not agree, in words; null where all agrees. */
    disagreement: z.string().nullable(),
    designations: z.array(z.string()),
    evidence: z.array(evidence),
    lines: z.array(line),
    supersession,
    /** Parts that ship with this one, and assemblies it ships with. */
    includes: z.array(partRef),
    partOf: z.array(partRef),
    duty: dutyAnswer,
    tools: z.array(tool),
  })
  .openapi('Part');
export type PartAnswer = z.infer<typeof part>;

/** Another part that might do, judged one way: can it replace the wanted one? */
export const candidate = z
  .object({
    part: partRef,
    verdict: z.enum(['fits', 'fits-with-care', 'does-not-fit']),
    reasons: z.array(z.object({ gate: z.string(), text: z.string(), severity: z.string() })),
    differences: z.array(difference),
  })
  .openapi('Candidate');
export type Candidate = z.infer<typeof candidate>;

/** What could replace a part: the same item, the same size otherwise, and what nearly fits and why it does not. */
export const interchange = z
  .object({
    part: partRef,
    duty: dutyAnswer,
    /** `same size; not an approval: maker's part only`, where it is so. */
    caution: z.string().nullable(),
    sameItem: z.array(candidate),
    sameSize: z.array(candidate),
    near: z.array(candidate),
    /** Parts of the same size beyond those that were judged. */
    beyond: z.number().int(),
  })
  .openapi('Interchange');
export type Interchange = z.infer<typeof interchange>;
