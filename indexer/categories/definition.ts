import type { Claim } from '../reading/claim.ts';
import type { Language } from '../reading/dictionary.ts';
import type { Line } from '../reading/line.ts';
import type { Attrs, CategoryName, Dims } from '../reading/reading.ts';
import type { StandardName } from '../reading/standards.ts';
import type { Um } from '../units/length.ts';
import type { Drawing } from './drawing.ts';
import type { Rule } from './judge.ts';
import type { ToolsOf } from './tool.ts';

/** One dimension of a category, as a page, a size and a check name it. */
export interface Dimension {
  key: string;
  /** In plain words: `bore`, `outside`, `width`. */
  label: string;
  /** Drawn and written with Ø. */
  diameter?: boolean;
  /** `mm` a length, `thread` a thread's name, `count` a plain number. */
  unit: 'mm' | 'thread' | 'count';
  /** What is believed of a length: least and most, in micrometres. */
  limits?: readonly [least: Um, most: Um];
  /**
   * How far another size's may be and still be its neighbour: so many millimetres at least, and a share of the larger
   * (common practice: about as far as one or two stock sizes lie apart). Left out, 0.5 mm and a fifth.
   */
  near?: readonly [least: number, share: number];
}

/** Phrases of one language, each with what it says of the part. Several phrases share a value: `'circlip, snap ring'`. */
export type Phrases = Partial<Record<Language, Record<string, Attrs>>>;

export interface CategoryWords {
  /** Phrases that name the part. */
  nouns: Phrases;
  /** Phrases that say something of it but do not name it. */
  modifiers?: Phrases;
  /** Phrases that hold its name and mean something else: a bearing cap. */
  plain?: Partial<Record<Language, string>>;
}

/** A published size: lengths in micrometres by dimension, a thread as text. */
export type PublishedSize = Readonly<Record<string, Um | string>>;

/** A dimension label as printed, and the dimension it means here. */
export type LabelMeanings = Readonly<Record<string, string>>;

/** A line as printed, and what it must give: its size; attributes or dimensions; or undefined for a near-miss. */
export type Example = readonly [
  line: string,
  gives: string | { size?: string | null; dims?: Dims; attrs?: Attrs; qty?: number } | undefined,
];

/** A designation found in a line: tokens `first` up to and including `last`. */
export interface Designation {
  first: number;
  last: number;
  /** The same for two designations that mean one part. */
  key: string;
  /** What it says, to be written into a claim. */
  apply: (claim: Claim) => void;
  /** True where it can only be this category, whatever the words say. */
  sure: boolean;
}

export interface CategoryDefinition {
  name: CategoryName;
  /** `Ball bearing`; plain words for a page. */
  title: string;
  plural: string;
  /** In the order of the size. */
  dims: readonly Dimension[];
  /** The attributes that make another article of one size. */
  itemAttrs: readonly string[];
  /** What a dimension label means here. */
  labels: LabelMeanings;
  words: CategoryWords;
  /** Standards that are of this category, and what each says by itself. */
  standards: Readonly<Record<string, Attrs>>;
  /** First pieces of designations, folded (`608`, `mr`, `hk`): where one stands, `designationAt` is asked. */
  stems: readonly string[];
  designationAt?: (line: Line, token: number) => Designation | null;
  /** Fills a claim's dimensions from the line's sizes. Attributes and designations are in it already. */
  settle: (claim: Claim, line: Line, standard: StandardName | null) => void;
  /** The dimensions that make its size, in order; empty where it has none. */
  sizeDims: readonly string[];
  /** The size's text behind the category's name, or null where the dimensions do not make one. */
  write: (dims: Dims, implied: Dims) => string | null;
  /** The inverse of `write`. */
  parse: (text: string) => { dims: Dims; implied: Dims } | null;
  sizes: readonly PublishedSize[];
  /** Printed names of a size, e.g. `MR115`. */
  designations: (dims: Dims) => string[];
  /** To scale from its numbers; null where they do not make one, or the part is of another shape. */
  drawing?: (dims: Dims, attrs?: Attrs) => Drawing | null;
  /** What replaces what; where left out, every dimension must agree. */
  rules?: readonly Rule[];
  /** The tools it takes; left out where it takes none of its own. */
  tools?: ToolsOf;
  examples: readonly Example[];
}
