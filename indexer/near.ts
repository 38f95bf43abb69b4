import type { Dimension } from './categories/definition.ts';
import { everyThread } from './categories/every-thread.ts';
import { categories } from './categories/index.ts';
import { compareSizes, nearness } from './compare.ts';
import type { Size } from './size.ts';
import { toMm } from './units/length.ts';

/** Differences up to this many millimetres are within what a worn part and a plain calliper leave open (common practice). */
const fewTenths = 0.3;

/** Neighbouring threads of a series lie this share of the larger apart at most: M2.5 and M3, M4 and M5 (common practice). */
const nextThread = 0.2;

/** How far another size's dimension may be and still be a neighbour: least, and share of the larger one. */
const usualReach = [0.5, 0.2] as const;

/** How far apart two lengths of a dimension may be and still be neighbours, by the larger of them; millimetres. */
function reachOf({ near: [least, share] = usualReach }: Pick<Dimension, 'near'>, larger: number): number {
  return Math.max(least, share * larger);
}

/**
 * What stands in for a size's numbers where near ones are looked for: its thread with its pitch (`M3x0.5`, `6-32`), null
 * where it has none, and its other lengths in the order of its text, each with how far a neighbour's may be.
 */
export interface Neighbourhood {
  thread: string | null;
  /** Threads that are neighbours of it, written alike; itself left out. */
  threads: string[];
  lengths: { value: number; reach: number }[];
}

/** Where the neighbours of a size are to be looked for: `times` as far off as one could be taken for it. */
export function neighbourhoodOf({ category, dims, implied }: Size, times = 1): Neighbourhood {
  const { dims: known, sizeDims } = categories.get(category)!;
  const keys = [...(dims.dia !== undefined && !sizeDims.includes('dia') ? ['dia'] : []), ...sizeDims];
  const lengths = keys.flatMap(key => {
    const value = dims[key] ?? implied[key];
    const dimension = known.find(each => each.key === key);
    if (typeof value !== 'number' || !dimension) return [];
    // A neighbour above may be larger still: its own share counts then.
    const share = Math.min(0.9, (dimension.near ?? usualReach)[1]);
    return [{ value, reach: Math.max(reachOf(dimension, value), (value * share) / (1 - share)) * times }];
  });
  const { thread } = dims;
  if (typeof thread !== 'string') return { thread: null, threads: [], lengths };
  const own = writtenThread(thread, dims.pitch ?? implied.pitch);
  const threads = everyThread
    .filter(each => threadsAreNear(thread, String(each.dims.thread)))
    .map(each => writtenThread(String(each.dims.thread), each.dims.pitch));
  return { thread: own, threads: [...new Set(threads)].filter(each => each !== own), lengths };
}

/** A metric thread is written with its pitch, any other says it by its name. */
const writtenThread = (thread: string, pitch: number | string | undefined) =>
  thread.startsWith('M') ? `${thread}x${pitch}` : thread;

const nominals = new Map(everyThread.map(each => [String(each.dims.thread), toMm(each.nominal)]));

/** Whether two threads are neighbours in diameter, whatever their pitch: they are soon taken for each other. */
function threadsAreNear(a: string, b: string): boolean {
  if (a === b) return true;
  const [one, other] = [nominals.get(a), nominals.get(b)];
  if (one === undefined || other === undefined) return false;
  return Math.abs(one - other) <= Math.max(fewTenths, nextThread * Math.max(one, other)) + 1e-9;
}

/**
 * Whether a person could take one size for the other: they differ in one dimension alone, or in none by more than a few
 * tenths of a millimetre, and in none further than the category's sizes lie apart: 5x11x4 and 5x11x3, never 5x11x40. A
 * thread counts with its pitch. Symmetric; false for sizes that do not compare.
 */
export function easilyConfused(a: Size, b: Size): boolean {
  if (nearness(a, b) === null) return false;
  const known = new Map(categories.get(a.category)!.dims.map(dimension => [dimension.key, dimension]));
  const differing = compareSizes(a, b);
  const threads = differing.some(({ dimension }) => dimension === 'thread');
  // Another thread brings another pitch: together they are one difference.
  const counted = differing.filter(({ dimension }) => !(threads && dimension === 'pitch'));
  const near = counted.every(({ dimension, a: one, b: other, difference }) =>
    difference === null
      ? threadsAreNear(String(one), String(other))
      : Math.abs(difference) <= reachOf(known.get(dimension)!, Math.max(Number(one), Number(other))) + 1e-9,
  );
  const small = ({ difference }: (typeof counted)[number]) =>
    difference !== null && Math.abs(difference) <= fewTenths;
  return near && (counted.length <= 1 || counted.every(small));
}
