/**
 * A reading: what was understood from one printed line. The shape is the same on the command line, over HTTP
 * and in the database. Lengths at this edge are millimetres with up to three decimals; threads are text (`M3`, `6-32`).
 */

export const categoryNames = [
  'bearing',
  'roller-clutch',
  'bushing',
  'screw',
  'set-screw',
  'nut',
  'washer',
  'shim',
  'retaining-ring',
  'o-ring',
  'seal',
  'pin',
  'shaft',
  'spring',
  'ball',
  'gear',
  'lubricant',
  'plain',
] as const;

/** A kind of part that the trade tells apart by its dimensions, or `plain`: a part of no such kind. */
export type CategoryName = (typeof categoryNames)[number];

/** What a line can be read as: a part, no part at all, or something only a person can decide. */
export type ReadAs = CategoryName | 'not-a-part' | 'unsure';

/** Dimension name to millimetres, or to text for a thread. Only what the line determines. */
export type Dims = Record<string, number | string>;

/** Attribute name to its value; only what the line states. */
export type Attrs = Record<string, string | boolean>;

/** The characters a field came from: half-open offsets in UTF-16 units of the line's text. */
export interface Span {
  field: string;
  start: number;
  end: number;
}

/** Another way the same characters could be meant. */
export interface Alternative {
  category: ReadAs;
  dims: Dims;
  attrs: Attrs;
  size: string | null;
  why: string;
}

export interface Reading {
  category: ReadAs;
  dims: Dims;
  attrs: Attrs;
  /** Dimensions that neither digits nor a printed designation give but a standard does (a coarse pitch). */
  implied: Dims;
  /** Null where the text states no quantity. */
  qty: number | null;
  /** The canonical size, e.g. `bearing 5x11x4`; null where the text does not determine one. */
  size: string | null;
  /** The size with the attributes that make it another article, e.g. `bearing 5x11x4 two-shields`. */
  item: string | null;
  /** The chance, 0 to 1, that category and dimensions are right and nothing is given that the text does not determine. */
  certainty: number;
  /** True when a person should look; the reason stands in `notes`. */
  review: boolean;
  alternatives: Alternative[];
  spans: Span[];
  notes: string[];
}

/** The mark that stands before decimals. */
export type DecimalMark = '.' | ',';

/** The order in which sizes are printed: of rings inside, outside and what lies across, of rods diameter and length. */
export type PrintedOrder =
  | 'inside outside across'
  | 'outside inside across'
  | 'inside across outside'
  | 'outside across inside'
  | 'across inside outside'
  | 'across outside inside'
  | 'dia length'
  | 'length dia';

export type SizeOrders = Readonly<Partial<Record<CategoryName, PrintedOrder>>>;

/** What a document says its abbreviations stand for: `RH` → `round head`. */
export type Abbreviations = ReadonlyMap<string, string>;

/** What is known about a line besides its text. */
export interface LineContext {
  /** The heading or the column names the line stood under. */
  context?: string | undefined;
  /** en, de, fr, it, es, nl or ja, where known. */
  lang?: string | undefined;
  /** The document's unit for bare numbers, where known. */
  unit?: 'mm' | 'in' | undefined;
  /** The document's decimal mark, where known: the other one, before three figures, then marks thousands. */
  decimal?: DecimalMark | undefined;
  /** The order in which the document prints sizes, where known: it decides where they can be meant in several. */
  orders?: SizeOrders | undefined;
  /** The document's own abbreviations: they go before what these letters mean elsewhere. */
  abbreviations?: Abbreviations | undefined;
}
