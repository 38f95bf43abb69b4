import { fork } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { chmod, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createAdaptorServer } from '@hono/node-server';
import { createApp } from '../../api/app.ts';
import { openEmbedded } from '../../api/db/open-cluster.ts';
import { type Server, withConnection } from '../../api/db/server.ts';
import { openStore, type Store } from '../../api/db/store.ts';
import { postgresEngine } from '../../api/search/postgres.ts';
import { drawInChild } from '../../api/work/draw-in-child.ts';
import { readHere } from '../api/routes/bench.ts';
import { Chance } from '../documents/random.ts';
import type { Asker, Round } from './asker.ts';
import { fillBench } from './fill-bench.ts';
import { largeCatalogue } from './large-catalogue.ts';
import type { Measured } from './measured.ts';
import type { Latencies } from './open-loop.ts';

export interface FindOptions {
  lines: number;
  /** A folder that is filled once and used again; left out, one that is made and removed. */
  folder?: string | undefined;
}

/** Questions a second, and how many of each kind. */
const rate = 50;
const questions = 1500;

/**
 * Finding on a large bench, over HTTP at 50 questions a second: by size, by words with typing errors, and the page of a
 * size; beside the bare look-up in SQL, past row-level security and prepared, of what each question means.
 */
export async function benchFind({ lines, folder }: FindOptions): Promise<Measured[]> {
  const kept = folder ?? (await mkdtemp(join(tmpdir(), 'fettle-bench-')));
  await mkdir(kept, { recursive: true });
  await chmod(kept, 0o711);
  const cluster = await openEmbedded(join(kept, 'data'), { common: join(kept, 'common'), say: () => {} });
  try {
    const store = await openStore(cluster);
    const filled = await fill(store, join(kept, `filled-${lines}`), lines);
    const figures = await ask(store, filled);
    await store.close();
    return figures;
  } finally {
    await cluster.close();
    if (folder === undefined) await rm(kept, { recursive: true, force: true });
  }
}

/** Fills the bench, unless it was done before; answers which it is. */
async function fill(store: Store, mark: string, lines: number): Promise<string> {
  if (existsSync(mark)) return readFile(mark, 'utf8');
  const workshop = randomUUID();
  await store.createWorkshop({ id: workshop, name: 'Bench' });
  await fillBench(store, workshop, largeCatalogue(lines));
  await writeFile(mark, workshop);
  return workshop;
}

async function ask(store: Store, workshop: string): Promise<Measured[]> {
  const app = createApp({
    store,
    engine: postgresEngine,
    readDocument: readHere,
    drawPage: drawInChild,
    wake: () => {},
    log: entry => console.error(JSON.stringify(entry)),
    ports: [],
    pageFolder: null,
  });
  const http = createAdaptorServer({ fetch: app.fetch });
  http.listen(0, '127.0.0.1');
  await once(http, 'listening');
  const { port } = http.address() as AddressInfo;
  const who: Asker = { origin: `http://127.0.0.1:${port}`, workshop, server: store.server };
  const asker = fork(new URL('./asker.ts', import.meta.url), [JSON.stringify(who)]);
  const figures: Measured[] = [];
  for (const round of await rounds(store.server, workshop)) {
    asker.send(round);
    const [said] = (await once(asker, 'message')) as [Latencies & { name: string }];
    figures.push(figureOf(said));
  }
  asker.send('end');
  await once(asker, 'exit');
  http.close();
  return figures;
}

const figureOf = ({ name, p50, p95, p99, most, count, failed }: Latencies & { name: string }): Measured => ({
  what: name,
  perSecond: rate,
  unit: 'asked',
  note: `p50 ${p50.toFixed(1)}  p95 ${p95.toFixed(1)}  p99 ${p99.toFixed(1)}  most ${most.toFixed(0)} ms of ${count}${failed ? `, ${failed} FAILED` : ''}`,
});

/** Lines drawn at random, and what a person would type to find each. */
async function rounds(server: Server, workshop: string): Promise<Round[]> {
  const parts = await withConnection(server, 'fettle_admin', async sql => {
    await sql`set role fettle_keeper`;
    return sql<{ name: string; size: string | null; maker: string }[]>`
      select part.name, part.size, maker.name as maker
      from part join maker on maker.workshop = part.workshop and maker.id = part.maker
      where part.workshop = ${workshop} order by md5(part.number_key) limit ${questions * 4}`;
  });
  const chance = new Chance(7);
  const sized = parts.filter(part => part.size !== null).slice(0, questions);
  const named = parts.filter(part => part.size === null).slice(0, questions);
  const typed = named.map(part => {
    const words = part.name
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .filter(word => word.length > 3)
      .slice(0, 3);
    return { meant: words, typed: shuffled(words, chance).map(word => misspelt(word, chance)) };
  });
  const path = (q: string) => `/api/find?q=${encodeURIComponent(q)}`;
  return [
    { name: 'find by size, any writing', rate, paths: sized.map(part => path(writtenAs(part, chance))) },
    {
      name: 'bare SQL: parts of that size',
      rate,
      statement: 'select id, number, name from part where workshop = $1 and size = $2 limit 100',
      parameters: sized.map(part => [workshop, part.size!]),
    },
    {
      name: 'find by words with typing errors',
      rate,
      paths: typed.map(each => path(each.typed.join(' '))),
    },
    {
      name: 'bare SQL: full text, the words spelt right',
      rate,
      statement:
        "select id, number, name from part where workshop = $1 and find_words @@ to_tsquery('simple', $2) limit 100",
      parameters: typed.map(each => [workshop, each.meant.join(' & ')]),
    },
    {
      name: 'page of a size',
      rate,
      paths: sized.map(part => `/api/sizes/${encodeURIComponent(part.size!)}`),
    },
  ];
}

/** A size as a list or a person writes it: the line's own words, or the canonical size. */
const writtenAs = ({ name, size }: { name: string; size: string | null }, chance: Chance): string =>
  chance.in100(50) ? name.toLowerCase() : size!;

function shuffled<T>(items: T[], chance: Chance): T[] {
  return items
    .map(item => [chance.next(), item] as const)
    .sort(([a], [b]) => a - b)
    .map(([, item]) => item);
}

/** One slip of the finger: two letters changed about, one left out, one twice, one wrong. */
function misspelt(word: string, chance: Chance): string {
  if (word.length < 5 || chance.in100(30)) return word;
  const at = chance.whole(1, word.length - 2);
  const [before, here, next, after] = [word.slice(0, at), word[at]!, word[at + 1]!, word.slice(at + 2)];
  return chance.pick([
    `${before}${next}${here}${after}`,
    `${before}${next}${after}`,
    `${before}${here}${here}${next}${after}`,
    `${before}e${next}${after}`,
  ]);
}
