import { categories } from './categories/index.ts';
import type { Tool } from './categories/tool.ts';
import type { Attrs, CategoryName, Dims } from './reading/reading.ts';

/** A size taken apart. */
export interface Size {
  category: CategoryName;
  dims: Dims;
  /** Dimensions that only a standard gives, such as a coarse pitch. */
  implied: Dims;
}

/** The canonical text of a size, e.g. `bearing 5x11x4`; null when the dimensions do not make one. */
export function writeSize(category: CategoryName, dims: Dims, implied: Dims = {}): string | null {
  const text = categories.get(category)!.write(dims, implied);
  return text === null ? null : `${category} ${text}`;
}

/** The inverse of {@link writeSize}; null for anything that is not a canonical size. */
export function parseSize(text: string): Size | null {
  const cut = text.indexOf(' ');
  const definition = categories.get(text.slice(0, cut) as CategoryName);
  const parsed = definition?.parse(text.slice(cut + 1));
  return definition && parsed ? { category: definition.name, ...parsed } : null;
}

/** An attribute as an item writes it: its value, with its name where the value alone would not tell. */
function writeAttr(key: string, value: string | boolean): string {
  if (typeof value === 'boolean') return value ? key : `not-${key}`;
  return key === 'hand' || key === 'point' ? `${value}-${key}` : value;
}

/** The size with the attributes that make it another article, e.g. `bearing 5x11x4 two-shields stainless`; null without a size. */
export function writeItem(category: CategoryName, dims: Dims, implied: Dims, attrs: Attrs): string | null {
  const size = writeSize(category, dims, implied);
  return size === null ? null : itemOf(size, category, attrs);
}

/** The item of a size that is written already. */
export function itemOf(size: string, category: CategoryName, attrs: Attrs): string {
  let item = size;
  for (const key of categories.get(category)!.itemAttrs) {
    const value = attrs[key];
    if (value !== undefined) item += ` ${writeAttr(key, value)}`;
  }
  return item;
}

/** What the list does not state of an item: its attributes, and the dimensions its size still lacks. Open is not equal. */
export function openOf(category: CategoryName, dims: Dims, implied: Dims, attrs: Attrs): string[] {
  const definition = categories.get(category)!;
  const open = definition.itemAttrs.filter(key => attrs[key] === undefined);
  if (writeSize(category, dims, implied) !== null) return open;
  const lacking = definition.dims
    .filter(d => dims[d.key] === undefined && implied[d.key] === undefined)
    .map(d => d.key);
  return [...lacking.filter(key => definition.sizeDims.includes(key)), ...open];
}

/** The usual printed numbers of a size: `['MR115']` for bearing 5x11x4, `['AS568-012']` for o-ring 9.246x1.778. */
export function designationsOf(category: CategoryName, dims: Dims): string[] {
  return categories.get(category)!.designations(dims);
}

/** The tools a part of this category takes, from the standards; with `when` where what decides is not stated. */
export function toolsOf(category: CategoryName, dims: Dims, attrs: Attrs = {}): Tool[] {
  return categories.get(category)?.tools?.(dims, attrs) ?? [];
}
