import { createHash } from 'node:crypto';
import { Readable, type Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import type { TransactionSql } from 'postgres';
import { type Pack, pack as tarPack } from 'tar-stream';
import { clientOf } from '../copy-rows.ts';
import type { Server } from '../server.ts';
import type { Store } from '../store.ts';
import { RowDigest } from './digest.ts';
import { type Manifest, manifestName, memberName, type TableEntry } from './manifest.ts';
import { asKeeper, copyOut, ofTheBench, settle, snapshot, type Table, tablesInOrder } from './tables.ts';

/** About the size of a member: a tar wants to know it before it begins. Whole rows only, so a large row is larger. */
const memberSize = 4 << 20;

/**
 * Writes everything the workshops remember to `out`, which is ended: every table from one snapshot, while others go
 * on reading and writing. Takes a few megabytes of memory whatever the size. Answers what the manifest says.
 */
export const writeBackup = (server: Server, out: Writable): Promise<Manifest> =>
  write(out, pack => asKeeper(server, tx => packTables(tx, pack), snapshot));

/**
 * Writes one bench to `out`, which is ended: its work, to be brought to another place. Read under row-level security,
 * as any request for the bench is, so that nothing of another can be in it.
 */
export const writeBenchBackup = (store: Store, workshop: string, out: Writable): Promise<Manifest> =>
  write(out, pack =>
    store.inSnapshot(workshop, async tx => {
      const client = clientOf(tx);
      await settle(client);
      const [bench] = await client<{ id: string; name: string }[]>`select workshop as id, name from workshop`;
      return packTables(client, pack, bench!);
    }),
  );

async function write(out: Writable, make: (pack: Pack) => Promise<Manifest>): Promise<Manifest> {
  const pack = tarPack();
  const written = pipeline(Readable.from(pack), createGzip({ level: 6 }), out);
  const made = make(pack);
  // Where one of the two fails the other ends too: neither waits for ever, and the snapshot is given back.
  written.catch(error => pack.destroy(error));
  made.catch(error => pack.destroy(error));
  const [ending, making] = await Promise.allSettled([written, made]);
  if (ending.status === 'rejected') throw ending.reason;
  if (making.status === 'rejected') throw making.reason;
  return making.value;
}

async function packTables(
  tx: TransactionSql,
  pack: Pack,
  bench?: { id: string; name: string },
): Promise<Manifest> {
  const schema = await tx<Manifest['schema']>`select name, sha256 from migration order by number`;
  const manifest: Manifest = {
    kind: 'fettlebench backup',
    format: bench ? 2 : 1,
    madeAt: new Date().toISOString(),
    ...(bench && { bench }),
    schema: [...schema],
    tables: [],
    members: [],
  };
  const tables = (await tablesInOrder(tx)).filter(table => !bench || ofTheBench(table));
  for (const table of tables)
    manifest.tables.push(
      await packTable(pack, table, copyOut(tx, table, bench ? 'seen' : 'all'), manifest.members),
    );
  await packMember(pack, manifestName, Buffer.from(JSON.stringify(manifest, null, 1)));
  pack.finalize();
  return manifest;
}

async function packTable(
  pack: Pack,
  table: Table,
  rows: AsyncIterable<Buffer>,
  members: Manifest['members'],
): Promise<TableEntry> {
  const digest = new RowDigest();
  let pieces: Buffer[] = [];
  let bytes = 0;
  let number = 0;
  const flush = async () => {
    const content = Buffer.concat(pieces);
    const name = memberName(table.name, ++number);
    members.push({ name, bytes: content.length, sha256: createHash('sha256').update(content).digest('hex') });
    await packMember(pack, name, content);
    pieces = [];
    bytes = 0;
  };
  for await (const piece of rows) {
    digest.update(piece);
    pieces.push(piece);
    bytes += piece.length;
    // A newline within a field is escaped: one at the end of a piece ends a row.
    if (bytes >= memberSize && piece.at(-1) === 10) await flush();
  }
  if (bytes > 0) await flush();
  return { ...table, rows: digest.rows, digest: digest.digest };
}

/** Adds one member and waits until it was taken, so that no more than one lies in memory. */
function packMember(pack: Pack, name: string, content: Buffer): Promise<void> {
  return new Promise((resolve, reject) => {
    const entry = pack.entry({ name, size: content.length, mode: 0o600 }, error =>
      error ? reject(error) : resolve(),
    );
    entry.end(content);
  });
}
