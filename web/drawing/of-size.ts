import {
  type Attrs,
  type CategoryName,
  categories,
  type Dims,
  type Drawing,
  type ReadAs,
} from '../../indexer/index.ts';

/** A part or a size by what is known of it. */
export interface Drawn {
  category: ReadAs;
  dims: Dims;
  implied: Dims;
  attrs: Attrs;
}

/** The drawing of a part as its category draws it; null where it has none or its numbers do not make one. */
export function drawingOf({ category, dims, implied, attrs }: Drawn): Drawing | null {
  return categories.get(category as CategoryName)?.drawing?.({ ...implied, ...dims }, attrs) ?? null;
}
