import type { ColumnMeaning } from '../reading/column-meanings.ts';
import type { Reading } from '../reading/reading.ts';

/** What became of one row of a document: a line of the list, not a part, or not readable. */
export type Outcome = 'taken' | 'skipped' | 'faulted';

/** One row of a document's parts list, in printed order. */
export interface Row {
  /** 1-based page; the sheet in a workbook. */
  page: number;
  /** The reference (balloon) number as printed; '' where none is printed. */
  ref: string;
  partNumber: string;
  description: string;
  /** From the quantity column; null where it is empty, says "as required", or holds one for each model. */
  qty: number | null;
  qtyText: string;
  remarks: string;
  /** Where on the page, in a reader's words: `row 54`, `line 12`. */
  place: string;
  /** The reference number of the assembly that this row is part of, where the list tells. */
  parent: string | null;
  variants: { model: string; qty: number }[];
  outcome: Outcome;
  /** Why a row is skipped (`heading`, `header`, `footer`, `total`, `note`, `empty`) or faulted; absent for a taken one. */
  reason?: string;
  /** The reading of a taken row. */
  reading?: Reading;
  /** The text that was read, in which the spans are offsets: the description, then what else belongs to it. */
  text?: string;
  /** As printed, where the list has a column of prices. */
  price?: string;
  /** Where on the page it stands, where pages have places. */
  area?: Area;
}

export type RelationKind =
  | 'includes'
  | 'superseded-by'
  | 'left-right'
  | 'serial'
  | 'attaching'
  | 'not-sold-separately'
  | 'as-required'
  | 'option'
  | 'reference-only';

/** What a list says about how its lines hang together. */
export interface Relation {
  kind: RelationKind;
  ref: string;
  /** includes: the children, ranges drawn out over the references the list really has. */
  refs?: string[];
  /** superseded-by: the number that replaces this one. The row's own number is `of`. */
  partNumber?: string;
  of?: string;
  /** serial: first and last serial number, as printed, inclusive; one of the two may be absent. */
  from?: string;
  to?: string;
}

/** Something that could not be read, with its place and what a person can do about it. */
export interface Fault {
  page: number;
  place: string;
  code: string;
  message: string;
  remedy: string;
}

/** One balloon on a drawing; x and y are fractions of the displayed page from its top left. */
export interface Balloon {
  ref: string;
  page: number;
  x: number;
  y: number;
  /** The reference numbers that it is tied to, where it shows a range or several. */
  refs?: string[];
}

/** A page as it is shown, in points (1/72 inch), and how many degrees clockwise the document has it turned for that. */
export interface PageSize {
  page: number;
  width: number;
  height: number;
  rotation: number;
}

/** Words that stand together on a page, as a person sees them, and where. */
export interface Written extends Area {
  page: number;
  text: string;
}

/** A piece of a page, as fractions of the page as shown, from its top left. */
export interface Area {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** One table of a document and what its columns were taken for; a header repeated on further pages is one table. */
export interface Table {
  /** Where it begins. */
  page: number;
  place: string;
  /** From left to right; a list beside it begins where the first meaning comes again. `cells`: the first few below. */
  columns: { title: string; meaning: ColumnMeaning; cells: string[] }[];
}

/** All that the intake says of one document: what `fettle rows` prints and the API gives. */
export interface DocumentRows {
  document: { name: string; pages: number; language: string | null; unit: 'mm' | 'in' | null };
  tables: Table[];
  rows: Row[];
  relations: Relation[];
  balloons: Balloon[];
  /** The pages that were read, where pages have sizes. */
  pageSizes?: PageSize[];
  /** What is written on those pages, lists and drawings alike; nothing that is hidden. */
  written?: Written[];
  faults: Fault[];
}
