import type { Role } from '../reading/column-words.ts';

/** One column of a table: which cell of a line, what stands in it, and for a model's quantities, which model. */
export interface Column {
  at: number;
  role: Role;
  /** The header as printed; '' where there is none. */
  title: string;
  model?: string;
}

/** Columns that belong to one row; a sheet with lists side by side has several groups. */
export type Layout = Column[][];
