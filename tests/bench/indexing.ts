import { randomUUID } from 'node:crypto';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { asKeeper, copyIn, copyOut, type Table, tablesInOrder } from '../../api/db/backup/tables.ts';
import { openEmbedded } from '../../api/db/open-cluster.ts';
import type { Server } from '../../api/db/server.ts';
import { openStore, type Store } from '../../api/db/store.ts';
import { storeReading } from '../../api/diagrams/store-reading.ts';
import { uploadDiagram } from '../../api/diagrams/upload-diagram.ts';
import { readDocument } from '../../indexer/intake/index.ts';
import { type Measured, timesTheTime } from './measured.ts';

const rows = 20_000;
const rounds = 3;

/** What a store of a reading writes; the rest is there before. */
const written = ['part', 'row', 'reading', 'evidence', 'item', 'word', 'outbox'];

/** Rows indexed a second by the whole path of storing a reading, beside a bare COPY of the same rows into the same tables. */
export async function benchIndexing(): Promise<Measured[]> {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-bench-'));
  await chmod(folder, 0o711);
  const cluster = await openEmbedded(join(folder, 'data'), { common: join(folder, 'common'), say: () => {} });
  try {
    const store = await openStore(cluster);
    const read = readDocument(Buffer.from(list()), 'list.csv');
    const seconds = { stored: [] as number[], copied: [] as number[] };
    let dump: Dump | undefined;
    for (let round = 0; round < rounds; round++) {
      const workshop = await makeBench(store);
      const claim = (await store.claimDiagram(600))!;
      seconds.stored.push(await timed(() => storeReading(store, claim, read)));
      dump ??= await dumpOf(store.server, workshop);
      seconds.copied.push(await copyAgain(store, dump));
    }
    await store.close();
    const rate = (times: number[]) => rows / times.sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
    const [stored, copied] = [rate(seconds.stored), rate(seconds.copied)];
    return [
      {
        what: 'rows indexed: rows, readings, parts, evidence, words',
        perSecond: stored,
        unit: 'rows',
        note: timesTheTime(stored, copied, 'a bare COPY'),
      },
      { what: 'the same rows by a bare COPY into the same tables', perSecond: copied, unit: 'rows' },
    ];
  } finally {
    await cluster.close();
    await rm(folder, { recursive: true, force: true });
  }
}

/** A list as a large maker's would be: bearings, screws, washers and parts without a size, some numbers repeated. */
function list(): string {
  const kinds = [
    (n: number) => `BALL BEARING ${3 + (n % 6)}X${10 + (n % 9)}X${3 + (n % 3)} ZZ`,
    (n: number) => `PAN HEAD SCREW M${2 + (n % 5)}x${4 + (n % 20)}`,
    (n: number) => `WASHER ${3 + (n % 5)}.2X${7 + (n % 8)}X0.${1 + (n % 9)}`,
    (n: number) => `HOUSING, SIDE PLATE ${n % 500}`,
    (n: number) => `LEVER, RELEASE ${n % 300}`,
  ];
  const lines = Array.from(
    { length: rows },
    (_, n) =>
      `${n + 1},B${String(n % 18_000).padStart(6, '0')},"${kinds[n % kinds.length]!(n)}",${1 + (n % 4)}`,
  );
  return ['Ref,Part No,Description,Qty', ...lines].join('\n');
}

async function makeBench(store: Store): Promise<string> {
  const workshop = randomUUID();
  await store.createWorkshop({ id: workshop, name: 'Bench' });
  await store.inWorkshop(workshop, tx =>
    uploadDiagram(tx, {
      maker: 'Brindlow',
      model: 'Tern 40',
      name: 'list.csv',
      mediaType: 'text/csv',
      bytes: Buffer.from('a list'),
    }),
  );
  return workshop;
}

interface Dump {
  workshop: string;
  tables: { table: Table; text: string }[];
}

/** Every table of the one workshop that is there, as COPY writes it. */
const dumpOf = (server: Server, workshop: string): Promise<Dump> =>
  asKeeper(server, async tx => {
    const tables: Dump['tables'] = [];
    for (const table of await tablesInOrder(tx)) {
      const pieces: Buffer[] = [];
      for await (const piece of copyOut(tx, table)) pieces.push(piece);
      tables.push({ table, text: Buffer.concat(pieces).toString('utf8') });
    }
    return { workshop, tables };
  });

/** Seconds that COPY takes for the dump as another workshop's, without what was there before a reading is stored. */
function copyAgain({ server }: Store, { workshop, tables }: Dump): Promise<number> {
  const other = randomUUID();
  const texts = tables.map(({ table, text }) => ({ table, text: text.replaceAll(workshop, other) }));
  const copy = async (tx: Parameters<typeof copyIn>[0], wanted: typeof texts) => {
    for (const { table, text } of wanted)
      if (text !== '') await copyIn(tx, table, Readable.from([Buffer.from(text)]));
  };
  return asKeeper(server, async tx => {
    await copy(
      tx,
      texts.filter(({ table }) => !written.includes(table.name)),
    );
    return timed(() =>
      copy(
        tx,
        texts.filter(({ table }) => written.includes(table.name)),
      ),
    );
  });
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
}
