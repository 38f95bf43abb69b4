import { sql } from 'drizzle-orm';
import type { Fault } from '../../indexer/intake/rows.ts';
import { copyInto } from '../db/copy-rows.ts';
import { storableJson, storableText } from '../db/copy-text.ts';
import { evidence, part, reading, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { partIdentity } from '../parts/part-identity.ts';
import type { Effective } from './effective-reading.ts';
import type { KeyedRow } from './keyed-rows.ts';

/** A row on its way into the store, with what counts as its meaning; `says` is null where it is no part. */
export interface Line extends KeyedRow {
  id: string;
  says: Effective | null;
}

interface Subject {
  /** The diagram. */
  id: string;
  maker: string;
  model: { id: string };
}

/** The lines of a list, with the part that each names, by the line's key. */
export interface List {
  diagram: string;
  lines: Line[];
  faults: Fault[];
  parts: ReadonlyMap<string, string>;
}

/** Stores the rows with their readings, the parts they name and the evidence they give. */
export async function storeLines(tx: Tx, subject: Subject, lines: Line[], faults: Fault[]): Promise<void> {
  const parts = await storeParts(tx, subject, lines);
  await storeLists(tx, [{ diagram: subject.id, lines, faults, parts }]);
}

/** Stores the rows of lists whose parts are there, with readings and evidence, each table by one COPY. */
export async function storeLists(tx: Tx, lists: readonly List[]): Promise<void> {
  await copyInto(tx, row, rowColumns, ofEach(lists, rowsOf));
  await copyInto(tx, reading, readingColumns, ofEach(lists, readingsOf));
  await copyInto(tx, evidence, evidenceColumns, ofEach(lists, evidenceOf));
}

function* ofEach<T>(lists: readonly List[], rows: (list: List) => Iterable<T>): Generator<T> {
  for (const list of lists) yield* rows(list);
}

/** Makes the parts that are new, marks all that are named as touched, and answers their ids by the rows' keys. */
async function storeParts(tx: Tx, { maker, model }: Subject, lines: Line[]): Promise<Map<string, string>> {
  const keys = new Map<string, string>();
  const named = new Map<string, { number: string | null; name: string; category: Effective['category'] }>();
  for (const line of lines) {
    if (!line.says) continue;
    const { number, numberKey } = partIdentity(model.id, line);
    const key = storableText(numberKey);
    keys.set(line.key, key);
    if (!named.has(key)) named.set(key, { number, name: line.description, category: line.says.category });
  }
  const added = [...named].map(([numberKey, about]) => ({
    maker,
    numberKey,
    ...about,
    dims: {},
    attrs: {},
  }));
  await copyInto(tx, part, ['maker', 'number', 'numberKey', 'name', 'category', 'dims', 'attrs'], added, {
    skipKnown: true,
  });
  const known = await tx.execute<{ id: string; key: string }>(sql`
    select part.id, part.number_key as key
    from jsonb_array_elements_text(${storableJson([...named.keys()])}::jsonb) as named(key)
    join part on part.maker = ${maker} and part.number_key = named.key`);
  const ids = new Map(known.map(one => [one.key, one.id]));
  await tx.execute(sql`
    insert into touched
    select id, size from part
    where id = any(${`{${[...ids.values()].join(',')}}`}::uuid[]) and id not in (select id from touched)`);
  await tx.execute(sql`analyze touched`);
  return new Map([...keys].map(([rowKey, key]) => [rowKey, ids.get(key)!]));
}

const rowColumns = [
  'id',
  'diagram',
  'position',
  'key',
  'page',
  'ref',
  'partNumber',
  'description',
  'qty',
  'qtyText',
  'remarks',
  'place',
  'parent',
  'variants',
  'area',
  'outcome',
  'reason',
  'fault',
  'part',
] as const;

function* rowsOf({ diagram, lines, parts, faults }: List) {
  const byPlace = new Map(faults.map(fault => [`${fault.page} ${fault.place}`, fault]));
  for (const line of lines)
    yield {
      ...line,
      diagram,
      area: line.area ?? null,
      reason: line.reason ?? null,
      fault: line.outcome === 'faulted' ? faultOf(line, byPlace.get(`${line.page} ${line.place}`)) : null,
      part: parts.get(line.key) ?? null,
    };
}

const faultOf = (line: Line, fault: Fault | undefined) => ({
  code: fault?.code ?? line.reason ?? 'not-readable',
  message: fault?.message ?? 'This row could not be read.',
  remedy: fault?.remedy ?? 'Compare it with the sheet, mend it there and send the list again.',
});

const readingColumns = [
  'row',
  'text',
  'category',
  'dims',
  'attrs',
  'implied',
  'qty',
  'size',
  'item',
  'certainty',
  'review',
  'alternatives',
  'spans',
  'notes',
] as const;

function* readingsOf({ lines }: List) {
  for (const line of lines)
    if (line.reading) yield { ...line.reading, row: line.id, text: line.text ?? line.description };
}

const evidenceColumns = [
  'part',
  'kind',
  'category',
  'size',
  'item',
  'dims',
  'attrs',
  'certainty',
  'diagram',
  'rowKey',
  'detail',
] as const;

function* evidenceOf({ diagram, lines, parts }: List) {
  for (const line of lines)
    if (line.says)
      yield {
        ...line.says,
        part: parts.get(line.key)!,
        diagram,
        rowKey: line.key,
        detail: line.text ?? line.description,
      };
}
