import { z } from '@hono/zod-openapi';
import { id, instant, modelRef, named } from './common.ts';
import { partRef } from './part.ts';

/** An amount in whole minor units of its currency. */
export const money = z
  .object({ minor: z.number().int().nonnegative(), currency: z.string().regex(/^[A-Z]{3}$/) })
  .openapi('Money');

export const job = z
  .object({
    id,
    /** The number on the tray. */
    number: z.number().int(),
    model: modelRef.nullable(),
    serial: z.string().nullable(),
    owner: z.string(),
    fault: z.string(),
    limit: money.nullable(),
    promised: z.iso.date().nullable(),
    closedAt: instant.nullable(),
    createdAt: instant,
    needs: z.number().int(),
  })
  .openapi('Job');
export type JobAnswer = z.infer<typeof job>;

export const jobs = z.object({ jobs: z.array(job) }).openapi('Jobs');
export type Jobs = z.infer<typeof jobs>;

export const newJob = z
  .object({
    owner: z.string().trim().min(1).max(200),
    fault: z.string().trim().max(2000).optional(),
    model: id.nullable().optional(),
    serial: z.string().trim().min(1).max(80).nullable().optional(),
    limit: money.nullable().optional(),
    promised: z.iso.date().nullable().optional(),
  })
  .openapi('NewJob');
export type NewJob = z.infer<typeof newJob>;

/** What is left out stays as it is; `closed` closes or opens again. */
export const jobChange = newJob.partial().extend({ closed: z.boolean().optional() }).openapi('JobChange');
export type JobChange = z.infer<typeof jobChange>;

export const need = z
  .object({
    id,
    job: id,
    part: partRef.nullable(),
    /** The item wanted: stated, or the part's own. */
    item: z.string().nullable(),
    /** Null asks: the list says "as required". */
    qty: z.number().nullable(),
    note: z.string(),
    /** The item that a person says it is, where its list leaves something open. */
    takenAs: z.string().nullable(),
    /** The line of the list it was picked from. */
    line: z.object({ row: id, ref: z.string(), diagram: named }).nullable(),
    createdAt: instant,
  })
  .openapi('Need');
export type NeedAnswer = z.infer<typeof need>;

/** A part (with the line it was picked from) or an item by its size; never both. */
export const newNeed = z
  .object({
    part: id.optional(),
    row: id.optional(),
    /** A size or an item, in any writing that finding understands. */
    item: z.string().trim().min(1).max(200).optional(),
    qty: z.number().positive().nullable(),
    note: z.string().max(500).optional(),
    takenAs: z.string().trim().min(1).max(200).nullable().optional(),
  })
  .openapi('NewNeed');
export type NewNeed = z.infer<typeof newNeed>;

export const needChange = z
  .object({
    qty: z.number().positive().nullable().optional(),
    note: z.string().max(500).optional(),
    /** An item of the same size that says it more closely, or its own: no other. Null takes the answer back. */
    takenAs: z.string().trim().min(1).max(200).nullable().optional(),
  })
  .openapi('NeedChange');
export type NeedChange = z.infer<typeof needChange>;

export const jobPage = job.extend({ wants: z.array(need) }).openapi('JobPage');
export type JobPage = z.infer<typeof jobPage>;
