import { everyThread } from '../categories/every-thread.ts';
import type { Gauge, GaugeShape } from '../gauge-sheet.ts';
import type { CategoryName, Dims } from '../reading/reading.ts';
import { indexBy } from '../standards/table.ts';
import { toMm } from '../units/length.ts';
import { measurings } from './categories.ts';

type Shapes = (dims: Record<string, number>) => GaugeShape[];

const circles = (...diameters: number[]): GaugeShape => ({ kind: 'circles', diameters });
const bar = (length: number, thickness: number): GaugeShape => ({ kind: 'bar', length, thickness });

/** The longest comb of crests that is laid on a screw, in millimetres. */
const longestComb = 20;

const thread: Shapes = ({ major = 0, pitch = 1, length = longestComb }) => [
  {
    kind: 'comb',
    pitch,
    pitches: Math.max(1, Math.floor(Math.min(length, longestComb) / pitch)),
    thickness: major,
  },
];

/** What of each category is laid on paper: the ring from its face, the rod from its side, the thread by its crests. */
const shapes: Partial<Record<CategoryName, Shapes>> = {
  bearing: ({ bore = 0, od = 0, width = 0 }) => [circles(od, bore), bar(width, od)],
  bushing: ({ id = 0, od = 0, length = 0 }) => [circles(od, id), bar(length, od)],
  washer: ({ id = 0, od = 0 }) => [circles(od, id)],
  shim: ({ id = 0, od = 0 }) => [circles(od, id)],
  'o-ring': ({ id = 0, cs = 0 }) => [circles(id + 2 * cs, id)],
  'retaining-ring': ({ dia = 0 }) => [circles(dia)],
  ball: ({ dia = 0 }) => [circles(dia)],
  pin: ({ dia = 0, length = 0 }) => [circles(dia), bar(length, dia)],
  spring: ({ wire = 0, od = 0, length = 0 }) => [circles(od, od - 2 * wire), bar(length, od)],
  screw: dims => [...thread(dims), bar(dims.length ?? 0, dims.major ?? 0)],
  'set-screw': dims => [...thread(dims), bar(dims.length ?? 0, dims.major ?? 0)],
  nut: dims => [circles(dims.major ?? 0), ...thread(dims)],
};

const byName = indexBy(everyThread, ({ dims }) => `${dims.thread}x${dims.pitch ?? ''}`);

/** Outside diameter and pitch of the thread that a size names, in millimetres. */
function threadOf({ thread: name, pitch }: Dims): Record<string, number> | null {
  const found = byName.get(`${name}x${pitch ?? ''}`) ?? byName.get(`${name}x`);
  if (!found) return null;
  return { major: toMm(found.nominal), pitch: (found.pitch.min + found.pitch.max) / 2000 };
}

/** A size as a gauge sheet draws it; null for one that has no outline to lay a part on, or that is no size. */
export function gaugeOf(size: string): Gauge | null {
  const [category] = size.split(' ') as [CategoryName];
  const parsed = measurings.get(category)?.parse(size.slice(category.length + 1));
  const draw = shapes[category];
  if (!parsed || !draw) return null;
  const dims: Dims = { ...parsed.implied, ...parsed.dims };
  const threaded = dims.thread === undefined ? {} : threadOf(dims);
  if (threaded === null) return null;
  const lengths = Object.entries(dims).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  );
  const drawn = draw({ ...Object.fromEntries(lengths), ...threaded });
  return drawn.some(isEmpty) ? null : { label: size, shapes: drawn };
}

const isEmpty = (shape: GaugeShape): boolean =>
  shape.kind === 'circles'
    ? shape.diameters.some(each => !(each > 0))
    : !(shape.thickness > 0) || (shape.kind === 'bar' && !(shape.length > 0));
