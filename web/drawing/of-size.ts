import { type Attrs, type CategoryName, categories, type Dims, type Drawing } from '../../indexer/index.ts';

/** The drawing of a size as its category draws it; null where it has none or its numbers do not make one. */
export function drawingOf(category: CategoryName, dims: Dims, implied: Dims, attrs: Attrs): Drawing | null {
  return categories.get(category)?.drawing?.({ ...implied, ...dims }, attrs) ?? null;
}
