import {
  type Attrs,
  type CategoryName,
  categories,
  type Dims,
  type ReadAs,
  type Reading,
  writeItem,
  writeSize,
} from '../../indexer/index.ts';
import { coarsePitch } from '../../indexer/standards/iso-261.ts';
import { mm, toMm } from '../../indexer/units/length.ts';
import type { EvidenceKind } from '../db/schema/index.ts';

/** What counts as a row's meaning: the person's word where there is one, else the reading. */
export interface Effective {
  kind: EvidenceKind;
  category: ReadAs;
  size: string | null;
  item: string | null;
  dims: Dims;
  attrs: Attrs;
  certainty: number;
}

export interface Corrected {
  category: ReadAs;
  dims: Dims;
  attrs: Attrs;
}

/** The person's word as evidence: certain, with the size and item that its dimensions make. */
export function ofCorrection({ category, dims, attrs }: Corrected): Effective {
  const named = (categories as ReadonlyMap<string, unknown>).has(category)
    ? (category as CategoryName)
    : null;
  const implied = impliedBy(dims);
  return {
    kind: 'corrected',
    category,
    size: named && writeSize(named, dims, implied),
    item: named && writeItem(named, dims, implied, attrs),
    dims,
    attrs,
    certainty: 1,
  };
}

/** A reading as evidence: printed as digits, or given by a designation. */
export function ofReading(reading: Reading): Effective {
  const { category, size, item, dims, attrs, certainty } = reading;
  return {
    kind: isDesignation(reading) ? 'designation' : 'printed',
    category,
    size,
    item,
    dims,
    attrs,
    certainty,
  };
}

/** True where a designation gives a dimension whose digits stand nowhere in the line. */
function isDesignation({ dims, spans }: Reading): boolean {
  const fields = new Set(spans.map(span => span.field));
  return fields.has('designation') && Object.keys(dims).some(name => !fields.has(name));
}

/** What a standard adds to the dimensions a person gave: the coarse pitch of a metric thread (ISO 261). */
function impliedBy({ thread, pitch }: Dims): Dims {
  const metric = typeof thread === 'string' ? /^M(\d+(?:\.\d+)?)$/.exec(thread) : null;
  const coarse = metric && pitch === undefined ? coarsePitch(mm(Number(metric[1]))) : undefined;
  return coarse === undefined ? {} : { pitch: toMm(coarse) };
}
