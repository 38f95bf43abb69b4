import type { CategoryDefinition } from './categories/definition.ts';
import { categories } from './categories/index.ts';
import {
  type LineShape,
  likeShapes,
  type PrintedNumber,
  printedNumber,
  sameWords,
  shapeOf,
} from './reading/line-shape.ts';
import type { Attrs, Dims, ReadAs } from './reading/reading.ts';
import { inch as inches, mm, toMm } from './units/length.ts';

/** What a line is: as it was read, or as a person says. */
export interface Said {
  category: ReadAs;
  dims: Dims;
  attrs: Attrs;
}

/** Where among a line's numbers a dimension stands: several for a thread (`6-32`), whose name is `written` with them. */
interface Spot {
  dim: string;
  at: number;
  inch: boolean;
  written?: string[];
}

/** What a person's word on one line says of the lines that are written like it. */
export interface Lesson {
  shape: LineShape;
  category: ReadAs;
  spots: Spot[];
  /** Attributes as a person changed them against the reading: true of lines with the same words alone. */
  set: Attrs;
  dropped: string[];
}

/**
 * What a word on a line teaches: which of the printed numbers is which dimension. Null where a dimension is none of the
 * printed numbers, for then the line is an exception and no example.
 *
 * @param read what the line was read as, so that what the person changed is known
 */
export function lessonOf(text: string, said: Said, read: Pick<Said, 'attrs'>): Lesson | null {
  const shape = shapeOf(text);
  const spots: Spot[] = [];
  const used = new Set<number>();
  for (const [dim, value] of Object.entries(said.dims)) {
    const spot =
      typeof value === 'string' ? threadSpot(shape, dim, value) : lengthSpot(shape, dim, value, used);
    if (!spot) return null;
    for (let at = spot.at; at < spot.at + (spot.written ? spot.written.length - 1 : 1); at += 1) used.add(at);
    spots.push(spot);
  }
  const { category } = said;
  const set = Object.fromEntries(
    Object.entries(said.attrs).filter(([key, value]) => read.attrs[key] !== value),
  );
  const dropped = Object.keys(read.attrs).filter(key => said.attrs[key] === undefined);
  return { shape, category, spots, set, dropped };
}

/** What a lesson makes of another line; null where that is not written like the first, or would not be possible. */
export function learn(lesson: Lesson, text: string, read: Said): Said | null {
  const shape = shapeOf(text);
  const alike = sameWords(lesson.shape, shape);
  // Without dimensions only the words tell what it is.
  if (lesson.spots.length === 0 ? !alike : !likeShapes(lesson.shape, shape)) return null;
  const dims: Dims = {};
  for (const spot of lesson.spots) {
    const value = valueAt(shape, spot);
    if (value === null) return null;
    dims[spot.dim] = value;
  }
  const { category } = lesson;
  const own = category === read.category ? read.attrs : onlyMaterial(read.attrs);
  const kept = Object.entries(own).filter(([key]) => !lesson.dropped.includes(key));
  const said = { category, dims, attrs: { ...Object.fromEntries(kept), ...(alike ? lesson.set : {}) } };
  return isPossible(said) ? said : null;
}

const onlyMaterial = ({ material }: Attrs): Attrs => (material === undefined ? {} : { material });

/** A thread by its name: the numbers in it stand in the line one after another. */
function threadSpot({ numbers }: LineShape, dim: string, thread: string): Spot | null {
  const printed = shapeOf(thread).numbers.map(({ text }) => text);
  if (printed.length === 0) return null;
  const at = numbers.findIndex((_, start) =>
    printed.every((text, nth) => sameNumber(numbers[start + nth], text)),
  );
  return at < 0 ? null : { dim, at, inch: false, written: thread.split(printedNumber) };
}

const sameNumber = (number: PrintedNumber | undefined, text: string) =>
  number !== undefined && (number.text === text || number.text.replace(',', '.') === text);

/** The first number not yet taken that a length is, in millimetres or in inches. */
function lengthSpot(
  { numbers }: LineShape,
  dim: string,
  value: number,
  used: ReadonlySet<number>,
): Spot | null {
  for (const inch of [false, true]) {
    const at = numbers.findIndex(
      (number, nth) => !used.has(nth) && lengthOf(number, inch) === toMm(mm(value)),
    );
    if (at >= 0) return { dim, at, inch };
  }
  return null;
}

const lengthOf = ({ value }: PrintedNumber, inch: boolean) => toMm(inch ? inches(value) : mm(value));

function valueAt({ numbers }: LineShape, { at, inch, written }: Spot): number | string | null {
  if (!written) return numbers[at] ? lengthOf(numbers[at], inch) : null;
  const printed = numbers.slice(at, at + written.length - 1).map(({ text }) => text.replace(',', '.'));
  if (printed.length < written.length - 1) return null;
  return written.map((piece, nth) => piece + (printed[nth] ?? '')).join('');
}

/** True for dimensions that the category believes, of which an outside is larger than its inside. */
function isPossible({ category, dims }: Said): boolean {
  const definition = (categories as ReadonlyMap<string, CategoryDefinition>).get(category);
  if (!definition) return Object.keys(dims).length === 0;
  for (const { key, limits } of definition.dims) {
    const value = dims[key];
    if (limits && typeof value === 'number' && (mm(value) < limits[0] || mm(value) > limits[1])) return false;
  }
  const inside = dims.bore ?? dims.id;
  return !(typeof inside === 'number' && typeof dims.od === 'number' && inside >= dims.od);
}
