import type { Attrs } from '../../indexer/index.ts';

/** The words of the order: plain data in, plain data out. */

/** A job whose needs are pooled. `serial` is the number on the machine, as written; null where nobody has read it. */
export interface PoolJob {
  id: string;
  number: number;
  owner: string;
  /** The machine's model; null where the job names none. */
  model: string | null;
  serial: string | null;
}

/** What the lists say of one line besides its words. */
export interface LineFact {
  kind: string;
  from: string | null;
  to: string | null;
}

/** A line of a list, with the assembly that it ships with. */
export interface PoolLine {
  /** Unique among all lines: diagram and row. */
  id: string;
  ref: string;
  /** Pieces of it in one machine, or in one assembly; null where the list does not say. */
  qty: number | null;
  /** The same by model, where the list has a column for each: 0 is no line of that model. */
  qtyByModel: Record<string, number>;
  part: string | null;
  parent: string | null;
  facts: LineFact[];
  /** The other lines under the same reference number of the same list that a serial number decides between. */
  sameRef: string[];
  /** Only the maker's own part will do here. */
  critical: boolean;
}

export interface PoolPart {
  id: string;
  maker: string;
  number: string | null;
  numberKey: string;
  name: string;
  size: string | null;
  item: string | null;
  /** Attributes that make another article, those that are stated. */
  attrs: Attrs;
  side: 'left' | 'right' | null;
  /** Its size is in doubt: evidence that differs, or a reading nobody has looked at. */
  doubtful: boolean;
  critical: boolean;
}

/** The maker's word that a number replaces a part. */
export interface Successor {
  number: string;
  numberKey: string;
  /** The part of that number, where a list here has it. */
  part: string | null;
  serialFrom: string | null;
  serialTo: string | null;
}

/** An item by its name, taken apart: its size, and the attributes that make another article. */
export interface Item {
  name: string;
  size: string | null;
  attrs: Attrs;
}

export interface PoolNeed {
  id: string;
  job: string;
  /** Pieces; null where nobody has said how many. */
  qty: number | null;
  /** The line it was picked from, or the only line of the part on the job's model. */
  line: string | null;
  part: string | null;
  /** A need stated by its item alone. */
  item: Item | null;
  /** What a person says it is, where its own words leave it open. */
  takenAs: Item | null;
}

/** Everything that pooling looks at. */
export interface Pool {
  jobs: PoolJob[];
  needs: PoolNeed[];
  lines: Map<string, PoolLine>;
  parts: Map<string, PoolPart>;
  /** Direct successors by the part that is superseded. */
  successors: Map<string, Successor[]>;
}

export type AskCode =
  | 'as-required'
  | 'serial-unknown'
  | 'not-on-this-model'
  | 'superseded-branches'
  | 'superseded-on-condition'
  | 'superseded-in-a-loop'
  | 'no-assembly-known'
  | 'more-than-the-assembly-holds'
  | 'open-attributes'
  | 'disagreement';

/** A question that a person answers before the line is ordered. */
export interface Ask {
  code: AskCode;
  text: string;
  needs: string[];
  /** Items of the same size that say it more closely: a person may take the needs as one of them. */
  takeAs?: string[];
  /** The item as its own line states it: taking the needs as this one keeps them apart. */
  own?: string;
}

/** What one job needs of a line's item; `qty` is null while it is asked. */
export interface Share {
  job: string;
  number: number;
  owner: string;
  qty: number | null;
  refs: string[];
}

export interface OrderLine {
  item: string;
  size: string | null;
  name: string;
  /** Pieces that are known; what is still asked comes on top. */
  total: number;
  jobs: Share[];
  numbers: { maker: string; number: string; part: string | null }[];
  makersPartOnly: boolean;
  because: string[];
  /** Needs that a person took `as` this item; `apart` where it is what their list states, so that nothing more is asked. */
  taken: { need: string; what: string; as: string; apart: boolean }[];
  asks: Ask[];
  needs: string[];
}

/** A need that is not ordered by itself, and why. */
export interface LeftOut {
  need: string;
  job: string;
  what: string;
  why: string;
}

export interface OrderList {
  lines: OrderLine[];
  leftOut: LeftOut[];
}
