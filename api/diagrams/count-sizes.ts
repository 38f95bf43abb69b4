import { type CategoryName, designationsOf, parseSize } from '../../indexer/index.ts';
import type { SizeCount } from '../answers/index.ts';

interface Counted {
  size: string | null;
  category: string;
  ref: string;
  qty: number | null;
}

/** The sizes that lines name, by kind and size, with how many lines and pieces there are of each. */
export function countSizes(lines: Counted[]): SizeCount[] {
  const counts = new Map<string, SizeCount>();
  for (const { size, category, ref, qty } of lines) {
    if (size === null) continue;
    const parsed = parseSize(size);
    const count = counts.get(size) ?? {
      size,
      category: category as CategoryName,
      designations: parsed ? designationsOf(parsed.category, parsed.dims) : [],
      lines: 0,
      qty: 0,
      refs: [],
    };
    counts.set(size, {
      ...count,
      lines: count.lines + 1,
      // One line that does not say how many leaves the sum open.
      qty: count.qty === null || qty === null ? null : count.qty + qty,
      refs: ref === '' || count.refs.includes(ref) ? count.refs : [...count.refs, ref],
    });
  }
  return [...counts.values()].sort(
    (a, b) => a.category.localeCompare(b.category) || a.size.localeCompare(b.size, 'en', { numeric: true }),
  );
}
