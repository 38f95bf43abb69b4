import { type Attrs, type CategoryName, categories, read } from '../../indexer/index.ts';
import type { Item } from './order-list.ts';

/** An item by its name, taken apart. */
export function itemOf(name: string): Item {
  const { category, size, attrs } = read(name);
  return { name, size, attrs: size === null ? {} : itemAttrs(category as CategoryName, attrs) };
}

/** Only the attributes that make another article. */
export function itemAttrs(category: CategoryName, attrs: Attrs): Attrs {
  const making = categories.get(category)?.itemAttrs ?? [];
  return Object.fromEntries(Object.entries(attrs).filter(([key]) => making.includes(key)));
}

/**
 * What the second states and the first leaves open; null where the second is no closer word for the first: another size,
 * an attribute that differs, or one that only the first states. Nothing (an empty list) where both state the same.
 */
export function stillOpen(first: Pick<Item, 'size' | 'attrs'>, second: Pick<Item, 'size' | 'attrs'>) {
  if (first.size === null || first.size !== second.size) return null;
  if (Object.entries(first.attrs).some(([key, value]) => second.attrs[key] !== value)) return null;
  return Object.keys(second.attrs).filter(key => first.attrs[key] === undefined);
}
