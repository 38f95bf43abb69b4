import { plainly } from '../categories/settle-rod.ts';
import type { Evidenced } from '../read.ts';
import type { Measure } from '../reading/measures.ts';
import type { CategoryName, PrintedOrder, Reading, SizeOrders } from '../reading/reading.ts';
import { type Lesson, Votes } from './lesson.ts';

/** The names that categories give to what lies inside, outside and across a ring, and to a rod's sizes. */
const ring = ['bearing', 'roller-clutch', 'washer', 'shim', 'seal', 'bushing'] as const;
const rod = ['pin', 'shaft'] as const;
const families: readonly (readonly CategoryName[])[] = [ring, rod];
const roleOf: Readonly<Record<string, string>> = {
  bore: 'inside',
  id: 'inside',
  od: 'outside',
  width: 'across',
  thickness: 'across',
  dia: 'dia',
  length: 'length',
};

const [leastVotes, margin] = [2, 3];
/** Bearings that may be longer than their outside diameter. */
const isLong = new Set<string | boolean>(['linear', 'needle', 'rod-end', 'block', 'spherical']);
/** An inside so many times another size is no thickness (common practice). */
const plainlyThicker = 2;

/** The order in which a document prints the sizes of rings and of rods, as its lines show that can be read in one way only. */
export class OrderLesson implements Lesson<SizeOrders> {
  readonly #byCategory = new Map<CategoryName, Votes<PrintedOrder>>();

  hear(read: Evidenced): void {
    const category = read.reading.category as CategoryName;
    const family = families.find(f => f.includes(category));
    const order = family && printedOrder(read, family === rod);
    if (!order) return;
    const votes = this.#byCategory.get(category) ?? new Votes<PrintedOrder>();
    this.#byCategory.set(category, votes);
    votes.add(order);
  }

  /** A category's own order, else that of its kin: who prints washers outside first prints bearings so too. */
  settle(): SizeOrders | null {
    const orders: Partial<Record<CategoryName, PrintedOrder>> = {};
    for (const family of families) {
      const together = new Votes<PrintedOrder>();
      for (const category of family)
        for (const [order, votes] of this.#byCategory.get(category)?.counted() ?? [])
          together.add(order, votes);
      const shared = together.settle(leastVotes, margin);
      for (const category of family) {
        const order = this.#byCategory.get(category)?.settle(leastVotes, margin) ?? shared;
        if (order) orders[category] = order;
      }
    }
    return Object.keys(orders).length > 0 ? orders : null;
  }
}

/** The order of one line's sizes, where they can have no other: published, or each far from the others. */
function printedOrder({ line, reading, features }: Evidenced, isRod: boolean): PrintedOrder | null {
  const sizes = line?.groups.find(g => g.joined && !g.thread)?.measures ?? [];
  if (sizes.length !== (isRod ? 2 : 3) || sizes.some(m => m.label !== null)) return null;
  if (isRod) return rodOrder(sizes);
  if (features.has('listed')) return orderRead(sizes, reading);
  return reading.category === 'bushing' || isLong.has(reading.attrs['type'] ?? '') ? null : ringOrder(sizes);
}

/** The order in which a reading took its sizes. */
function orderRead(sizes: readonly Measure[], { spans }: Reading): PrintedOrder | null {
  const roles = sizes.map(
    m => roleOf[spans.find(s => s.start === m.start && s.field in roleOf)?.field ?? ''],
  );
  return roles.includes(undefined) ? null : (roles.join(' ') as PrintedOrder);
}

/** A flat ring's outside is its largest size; one far smaller than the others lies across. */
function ringOrder(sizes: readonly Measure[]): PrintedOrder | null {
  const [across, inside, outside] = [...sizes].sort((a, b) => a.um - b.um) as [Measure, Measure, Measure];
  if (outside.um === inside.um || inside.um < plainlyThicker * across.um) return null;
  return sizes
    .map(m => (m === outside ? 'outside' : m === inside ? 'inside' : 'across'))
    .join(' ') as PrintedOrder;
}

function rodOrder(sizes: readonly Measure[]): PrintedOrder | null {
  const [first, second] = sizes as [Measure, Measure];
  if (!plainly(first, second) || sizes.some(m => m.diameter)) return null;
  return first.um < second.um ? 'dia length' : 'length dia';
}
