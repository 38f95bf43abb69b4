import { randomUUID } from 'node:crypto';
import { sql } from 'drizzle-orm';
import { copyInto } from '../../api/db/copy-rows.ts';
import { diagram, duty, maker, model, part } from '../../api/db/schema/index.ts';
import { type Server, withConnection } from '../../api/db/server.ts';
import type { Store, Tx } from '../../api/db/store.ts';
import { ofReading } from '../../api/diagrams/effective-reading.ts';
import { keyRows } from '../../api/diagrams/keyed-rows.ts';
import { type List, storeLists } from '../../api/diagrams/store-lines.ts';
import { sha256 } from '../../api/diagrams/upload-diagram.ts';
import { partIdentity } from '../../api/parts/part-identity.ts';
import { settleParts } from '../../api/parts/settle-parts.ts';
import type { Duty } from '../../indexer/index.ts';
import type { LargeList } from './large-catalogue.ts';

/** How many lists go into one transaction. */
const atOnce = 100;
/** Every so many-th machine holds a load, so that the duty of a size has to be looked up. */
const criticalEvery = 10;

/**
 * Puts many lists into an empty bench, as reading them one after another would leave it, in minutes: the rows of a
 * hundred lists by one COPY, all parts settled at the end in one statement, and the indexes built once over all.
 */
export async function fillBench(store: Store, workshop: string, lists: Iterable<LargeList>): Promise<void> {
  const say = stopwatch();
  const indexes = await dropIndexes(store.server);
  const makers = new Map<string, string>();
  const parts = new Map<string, string>();
  let lines = 0;
  for (const some of inHundreds(lists)) {
    await store.inWorkshop(workshop, tx => putIn(tx, some, makers, parts));
    lines += some.reduce((sum, list) => sum + list.read.rows.length, 0);
    if (lines % 100_000 === 0) say(`${lines} lines`);
  }
  await asOwner(store.server, ['analyze']);
  await store.inWorkshop(workshop, async tx => {
    await tx.execute(sql`create temporary table touched on commit drop as select id, size from part`);
    await tx.execute(sql`analyze touched`);
    await settleParts(tx);
  });
  say(`${parts.size} parts settled`);
  // Until now no part had a size, and the planner would look each up among all rows.
  await asOwner(store.server, ['analyze']);
  await store.inWorkshop(workshop, settleAllSizes);
  say('sizes settled');
  await asOwner(store.server, ["set maintenance_work_mem = '256MB'", ...indexes, 'vacuum (analyze)']);
  say('indexes built');
}

/** The sizes there are and the models that take them, where no list has columns for several: all of them in one reading. */
async function settleAllSizes(tx: Tx): Promise<void> {
  await tx.execute(sql`
    insert into size (workshop, size)
    select distinct this_workshop(), size from part where size is not null`);
  await tx.execute(sql`
    insert into size_model (workshop, size, model)
    select distinct this_workshop(), part.size, diagram.model
    from row join part on part.id = row.part join diagram on diagram.id = row.diagram
    where part.size is not null`);
}

/** One batch of lists, their makers and parts made where they are new. */
async function putIn(
  tx: Tx,
  lists: LargeList[],
  makers: Map<string, string>,
  parts: Map<string, string>,
): Promise<void> {
  const newMakers: { id: string; name: string }[] = [];
  const newParts: Omit<typeof part.$inferInsert, 'workshop'>[] = [];
  const ofModels = lists.map(list => ({ ...list, id: randomUUID(), diagram: randomUUID() }));
  const stored = ofModels.map(list => {
    const makerId = idIn(makers, list.maker, id => newMakers.push({ id, name: list.maker }));
    const lines = keyRows(list.read.rows).map(row => ({
      ...row,
      id: randomUUID(),
      says: ofReading(row.reading!),
    }));
    const named = new Map<string, string>();
    for (const line of lines) {
      const { number, numberKey } = partIdentity(list.id, line);
      const about = { number, numberKey, name: line.description, category: line.says.category };
      const id = idIn(parts, `${makerId} ${numberKey}`, id =>
        newParts.push({ id, maker: makerId, ...about, dims: {}, attrs: {} }),
      );
      named.set(line.key, id);
    }
    return { diagram: list.diagram, maker: makerId, lines, faults: [], parts: named } satisfies List & {
      maker: string;
    };
  });
  const makerOf = new Map(stored.map(list => [list.diagram, list.maker]));
  await copyInto(tx, maker, ['id', 'name'], newMakers);
  await copyInto(
    tx,
    model,
    ['id', 'maker', 'name'],
    ofModels.map(list => ({ id: list.id, maker: makerOf.get(list.diagram)!, name: list.model })),
  );
  await copyInto(
    tx,
    duty,
    ['model', 'duty', 'standing'],
    ofModels.map((list, at) => ({ model: list.id, duty: dutyOf(at), standing: 'confirmed' as const })),
  );
  await copyInto(
    tx,
    diagram,
    [
      'id',
      'model',
      'name',
      'mediaType',
      'bytes',
      'byteCount',
      'sha256',
      'state',
      'rowsDone',
      'rowsTotal',
      'readAt',
    ],
    ofModels.map(list => diagramOf(list)),
  );
  await copyInto(
    tx,
    part,
    ['id', 'maker', 'number', 'numberKey', 'name', 'category', 'dims', 'attrs'],
    newParts,
  );
  await storeLists(tx, stored);
}

const dutyOf = (at: number): Duty => (at % criticalEvery === 0 ? 'load-holding' : 'ordinary');

function diagramOf(list: LargeList & { id: string; diagram: string }) {
  const bytes = Buffer.from(`${list.maker} ${list.model} ${list.diagram}`);
  const rows = list.read.rows.length;
  return {
    id: list.diagram,
    model: list.id,
    name: 'list.csv',
    mediaType: 'text/csv',
    bytes,
    byteCount: bytes.byteLength,
    sha256: sha256(bytes),
    state: 'ready' as const,
    rowsDone: rows,
    rowsTotal: rows,
    readAt: new Date(),
  };
}

function idIn(known: Map<string, string>, key: string, make: (id: string) => void): string {
  const there = known.get(key);
  if (there !== undefined) return there;
  const id = randomUUID();
  known.set(key, id);
  make(id);
  return id;
}

function* inHundreds<T>(items: Iterable<T>): Generator<T[]> {
  let some: T[] = [];
  for (const item of items) {
    some.push(item);
    if (some.length < atOnce) continue;
    yield some;
    some = [];
  }
  if (some.length > 0) yield some;
}

/** Takes away the indexes that no constraint needs, of the tables that are filled; answers how they are made again. */
async function dropIndexes(server: Server): Promise<string[]> {
  const indexes = await withConnection(server, 'fettle_admin', async connection => {
    await connection`set role fettle_owner`;
    return connection<{ name: string; made: string }[]>`
      select indexrelid::regclass::text as name, pg_get_indexdef(indexrelid) as made
      from pg_index
      where indrelid in ('part'::regclass, 'row'::regclass, 'evidence'::regclass, 'word'::regclass, 'size_model'::regclass)
        and not exists (select from pg_constraint where conindid = indexrelid)`;
  });
  await asOwner(
    server,
    indexes.map(({ name }) => `drop index ${name}`),
  );
  return indexes.map(({ made }) => made);
}

const asOwner = (server: Server, statements: string[]) =>
  withConnection(server, 'fettle_admin', async connection => {
    await connection`set role fettle_owner`;
    for (const statement of statements) await connection.unsafe(statement);
  });

/** Says how far it is, and after how many seconds. */
function stopwatch() {
  const start = performance.now();
  return (done: string) => console.error(`  ${done} in ${Math.round((performance.now() - start) / 1000)} s`);
}
