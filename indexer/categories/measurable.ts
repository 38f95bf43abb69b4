import type { Instrument } from '../measuring/instruments.ts';
import type { Attrs, CategoryName, Dims } from '../reading/reading.ts';
import type { Limits } from '../standards/iso-965.ts';
import type { Um } from '../units/length.ts';
import type { Uncertain } from '../units/uncertain.ts';

/** Which way a dimension goes in use, and the mean amount on a used part: micrometres, and a share of the dimension. */
export interface Wear {
  readonly grows: boolean;
  readonly mean: Um;
  readonly share?: number;
}

/** A dimension that can be measured on the part, or on what it sat in. */
export interface Measurable {
  readonly key: string;
  /** In plain words: `outside diameter`. */
  readonly label: string;
  /** Instruments that reach it, the usual one first. */
  readonly ways: readonly Instrument[];
  /** Null where use does not change it. */
  readonly wear: Wear | null;
  /** What is met with at the bench, in micrometres: beyond it a measurement is believed to be a slip. */
  readonly range: readonly [least: Um, most: Um];
  /** Rubber or felt: a calliper presses it, so its reading holds to 0.1 mm at best (common practice). */
  readonly soft?: boolean;
  /** The attribute that must have been seen before this tells anything: a head's width says nothing of a thread while the head is unknown. */
  readonly ofForm?: string;
  /** Use flattens it, so of several readings the largest is nearest to what it was made. */
  readonly flattens?: boolean;
  /** Stands thicker where the part is plated. */
  readonly plates?: boolean;
  /** A plain number, as coils: no length and no instrument. */
  readonly counted?: boolean;
}

/** The limits a dimension is made to, in micrometres, by whom, and of which form of the part alone. */
export interface Made extends Limits {
  readonly source: string;
  /** Holds for a part with these attributes only: a head height for that head. */
  readonly when?: Attrs;
  /** What holds in general, by proportion: it gives way to any limits that are known. */
  readonly general?: boolean;
}

/** One size that a part could be. */
export interface Candidate {
  /** The dimensions of the size, in millimetres or as a thread's name; those that nothing measured settles are left out. */
  readonly dims: Dims;
  readonly attrs?: Attrs;
  readonly designations: readonly string[];
  /** How common it is beside the others of its category: 1 the usual, 0.2 the rarest. */
  readonly common: number;
  /** Limits by measurable dimension; several where standards differ. A dimension left out is not known of this size. */
  readonly made: Readonly<Record<string, Made | readonly Made[]>>;
}

/** What is particular to measuring parts of one category. */
export interface Measuring {
  readonly category: CategoryName;
  readonly measurable: readonly Measurable[];
  /** Published sizes that a part could be. Lengths that go with any thread or diameter count only when measured. */
  candidates(measured: ReadonlySet<string>): readonly Candidate[];
  /** A size that the workshop knows and no table here has; null where the dimensions do not make one. */
  known(dims: Dims): Candidate | null;
  /** The size's text behind the category's name, and its inverse. */
  write(dims: Dims, implied: Dims): string | null;
  parse(text: string): { dims: Dims; implied: Dims } | null;
  /** How far what is seen on the part goes with a candidate: 1 wholly, nought not at all. */
  suits?(candidate: Candidate, attrs: Attrs): number;
  /** What the measurements say of a candidate beside its size: the squeeze of an O-ring. Micrometres by dimension. */
  remarks?(dims: Dims, measured: ReadonlyMap<string, Um>): string[];
  /** What follows from the measurements alone: the rate of a spring. Millimetres by dimension. */
  follows?(measured: ReadonlyMap<string, Uncertain>, attrs: Attrs): Following[];
}

/** A quantity that follows from measurements, with its honest range. */
export interface Following {
  readonly what: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly why: string;
}

/** Limits nominal less and plus a deviation, in micrometres. */
export const about = (nominal: Um, less: number, more: number, source: string, when?: Attrs): Made => ({
  min: nominal - less,
  max: nominal + more,
  source,
  ...(when && { when }),
});

/** What a dimension comes to by proportion to another, where no table has it. */
export const inProportion = (of: Um, least: number, most: number): Made => ({
  min: Math.round(least * of),
  max: Math.round(most * of),
  source: 'usual proportions, common practice',
  general: true,
});

/** Keeps what is worked out, by its key: lists of candidates are built once. */
export function keep<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const kept = new Map<Key, Value>();
  return key => {
    if (!kept.has(key)) kept.set(key, work(key));
    return kept.get(key)!;
  };
}
