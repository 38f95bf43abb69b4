import { type CategoryName, read, writeItem } from '../../indexer/index.ts';
import { refuse } from '../refusal.ts';

/** The canonical name of an item, from any writing that is understood. */
export function itemNamed(text: string): string {
  const { category, dims, implied, attrs, size } = read(text);
  const item = size === null ? null : writeItem(category as CategoryName, dims, implied, attrs);
  if (item === null)
    throw refuse('not-a-size', {
      place: 'item',
      message: `"${text}" does not give a size.`,
      remedy: 'Write the kind of part and its dimensions, for example "bearing 5x11x4" or "pan screw M3x8".',
    });
  return item;
}
