import type { GridLine } from './grid.ts';
import { readQuantity } from './quantity.ts';
import type { Row } from './rows.ts';

/** A row before it is read: what stands in it, and what is known of it from around it. */
export interface Entry {
  row: Row;
  /** The heading above it, or the names of its columns. */
  context: string;
  /** Cells of a size or material column: facts of the part, to be read with its description. */
  facts: string[];
  /** Steps of indent, by points, blanks or a level column; null where the list shows none. */
  depth: number | null;
  asRequired: boolean;
  referenceOnly: boolean;
  /** Things a person should know of how it was taken in. */
  doubts: string[];
  /** The reference of the part that this one fastens, '' where that has none; null for a part of its own. */
  attachingTo: string | null;
}

/** A row of a line, taken unless `part` says otherwise. */
export function entry(line: GridLine, part: Partial<Row>): Entry {
  return {
    row: {
      page: line.page,
      ref: '',
      partNumber: '',
      description: '',
      qty: null,
      qtyText: '',
      remarks: '',
      place: line.place,
      parent: null,
      variants: [],
      outcome: 'taken',
      ...(line.area && { area: line.area }),
      ...part,
    },
    context: '',
    facts: [],
    depth: null,
    asRequired: false,
    referenceOnly: false,
    doubts: [],
    attachingTo: null,
  };
}

/** Gives a row the quantity that its cell says; words that are none are a doubt. */
export function setQuantity(taken: Entry, text: string): void {
  const { qty, asRequired, referenceOnly, understood } = readQuantity(text);
  taken.row.qty = qty;
  taken.row.qtyText = text;
  taken.asRequired ||= asRequired;
  taken.referenceOnly ||= referenceOnly;
  if (!understood) taken.doubts.push(`the quantity "${text}" could not be read`);
}

/** A model's cell: a number, nothing, or a mark that the part is fitted, which then counts the row's quantity or one. */
export function addVariant(taken: Entry, model: string, text: string): void {
  const { qty } = readQuantity(text);
  const fitted = /^[x×•●○✓✔+]$/i.test(text) ? (taken.row.qty ?? 1) : 0;
  taken.row.variants.push({ model, qty: qty ?? fitted });
}

/** The row that a relation speaks of: its reference, and its own number where it has one. */
export const subjectOf = (row: Row) => ({ ref: row.ref, ...(row.partNumber && { of: row.partNumber }) });
