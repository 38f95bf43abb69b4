import { z } from '@hono/zod-openapi';
import { columnMeanings } from '../../indexer/reading/column-meanings.ts';
import { attrs, dims, duty, id, instant, modelRef, readAs } from './common.ts';
import { reading } from './reading.ts';

const state = z.enum(['waiting', 'reading', 'ready', 'refused', 'removed']);
const refusal = z.object({ code: z.string(), place: z.string(), message: z.string(), remedy: z.string() });

/** A maker's diagram and the state of its reading. */
export const diagram = z
  .object({
    id,
    name: z.string(),
    model: modelRef,
    mediaType: z.string(),
    byteCount: z.number().int(),
    /** `removed`: taken off the bench, and can be put back. */
    state,
    /** Why the document as a whole could not be read. */
    refusal: refusal.nullable(),
    /** What of it could not be read, single rows aside; `pages-not-read`: the rest can be read. */
    faults: z.array(refusal.extend({ page: z.number().int() })),
    rowsDone: z.number().int(),
    rowsTotal: z.number().int().nullable(),
    pages: z.number().int().nullable(),
    language: z.string().nullable(),
    unit: z.enum(['mm', 'in']).nullable(),
    createdAt: instant,
    readAt: instant.nullable(),
    /** Rows by what became of them; `doubtful`: taken, and waiting for a person's look. */
    counts: z.object({
      taken: z.number().int(),
      skipped: z.number().int(),
      faulted: z.number().int(),
      doubtful: z.number().int(),
    }),
  })
  .openapi('Diagram');
export type DiagramAnswer = z.infer<typeof diagram>;

export const diagrams = z.object({ diagrams: z.array(diagram) }).openapi('Diagrams');
export type Diagrams = z.infer<typeof diagrams>;

/** What a person says that columns hold: for each table in order a meaning for each column, null where as found. */
export const givenColumns = z
  .array(z.array(z.enum(columnMeanings)).max(256).nullable())
  .max(200)
  .openapi('GivenColumns');

/** One table of a document, and what its columns are taken for; `cells`: the first few below each title. */
export const table = z
  .object({
    page: z.number().int(),
    place: z.string(),
    columns: z.array(
      z.object({ title: z.string(), meaning: z.enum(columnMeanings), cells: z.array(z.string()) }),
    ),
  })
  .openapi('Table');
export type TableAnswer = z.infer<typeof table>;

/** The tables of a document as they were last read; `given`: what a person said, null where all is as found. */
export const diagramColumns = z
  .object({ diagram, tables: z.array(table), given: givenColumns.nullable() })
  .openapi('DiagramColumns');
export type DiagramColumns = z.infer<typeof diagramColumns>;

/** Null takes back what was said of the columns. */
export const newColumns = z.object({ given: givenColumns.nullable() }).openapi('NewColumns');
export type NewColumns = z.infer<typeof newColumns>;

const about = {
  maker: z.string().trim().min(1).max(120),
  model: z.string().trim().min(1).max(120),
  duty: duty.optional(),
};

/** A list sent as text. Files come as multipart/form-data with the same names and `file`. */
export const newDiagramText = z
  .object({
    ...about,
    name: z.string().trim().min(1).max(200).optional(),
    text: z.string().min(1),
    columns: givenColumns.optional(),
  })
  .openapi('NewDiagramText');
export type NewDiagramText = z.infer<typeof newDiagramText>;

export const newDiagramFile = z.object({
  ...about,
  file: z.custom<File>().openapi({ type: 'string', format: 'binary' }),
});

/** `known`: the same document was here already for this model, and nothing was stored. */
export const uploaded = z.object({ diagram, known: z.boolean() }).openapi('Uploaded');
export type Uploaded = z.infer<typeof uploaded>;

/** One server-sent event of `…/progress`; the stream ends at ready or refused. */
export const progress = z
  .object({
    state,
    rowsDone: z.number().int(),
    rowsTotal: z.number().int().nullable(),
    refusal: refusal.nullable(),
  })
  .openapi('Progress');
export type Progress = z.infer<typeof progress>;

/** A person's word on a row; it wins over any reading, and stays when the document is read again. */
export const newCorrection = z
  .object({ category: readAs, dims, attrs, qty: z.number().positive().nullable().optional() })
  .openapi('NewCorrection');
export type NewCorrection = z.infer<typeof newCorrection>;

export const correction = z
  .object({
    category: readAs,
    dims,
    attrs,
    qty: z.number().nullable(),
    size: z.string().nullable(),
    item: z.string().nullable(),
    createdAt: instant,
    /** How many like rows it put right as well; taking it back takes those back too. */
    taught: z.number().int(),
    /** The row whose correction put this one right, by its reference or place; null for a person's own word on it. */
    taughtBy: z.string().nullable(),
  })
  .openapi('Correction');

export const diagramRow = z
  .object({
    id,
    position: z.number().int(),
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
    /** Where it stands on its page, as fractions of the page from its top left. */
    area: z.object({ left: z.number(), top: z.number(), right: z.number(), bottom: z.number() }).nullable(),
    outcome: z.enum(['taken', 'skipped', 'faulted']),
    reason: z.string().nullable(),
    fault: z.object({ code: z.string(), message: z.string(), remedy: z.string() }).nullable(),
    part: id.nullable(),
    /** The text that was read; spans of the reading are offsets into it. */
    text: z.string().nullable(),
    reading: reading.nullable(),
    /** The standing correction, if a person made one. */
    correction: correction.nullable(),
    /** Taken, asks for a person's look, and has no correction yet. */
    doubtful: z.boolean(),
    /** What else the list says: `not-sold-separately`, `as-required`, `serial` … */
    facts: z.array(z.object({ kind: z.string(), from: z.string().nullable(), to: z.string().nullable() })),
    supersededBy: z.array(z.string()),
    /** References of the lines that ship with this one. */
    includes: z.array(z.string()),
  })
  .openapi('DiagramRow');
export type DiagramRow = z.infer<typeof diagramRow>;

/** One page of rows; `next` is the offset to ask for next, null at the end. */
export const diagramRows = z
  .object({ diagram, rows: z.array(diagramRow), next: z.number().int().nullable() })
  .openapi('DiagramRows');
export type DiagramRowsAnswer = z.infer<typeof diagramRows>;
