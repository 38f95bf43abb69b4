import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { extract, pack } from 'tar-stream';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { RowDigest } from '../../../api/db/backup/digest.ts';
import { backUpBeforeMigrating } from '../../../api/db/backup/keep-backups.ts';
import type { Manifest } from '../../../api/db/backup/manifest.ts';
import { verifyBackup } from '../../../api/db/backup/read-backup.ts';
import { restoreBackup } from '../../../api/db/backup/restore-backup.ts';
import { asKeeper, digestOf, tablesInOrder } from '../../../api/db/backup/tables.ts';
import { writeBackup } from '../../../api/db/backup/write-backup.ts';
import { writeWholeFile } from '../../../api/db/backup/write-file.ts';
import { copyInto } from '../../../api/db/copy-rows.ts';
import { diagram, maker, model, part, row, word } from '../../../api/db/schema/index.ts';
import { withConnection } from '../../../api/db/server.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

let store: TestStore;
let folder: string;
let file: string;
const benches = [randomUUID(), randomUUID()] as const;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fettle-backups-'));
  file = join(folder, 'a.backup');
  store = await createTestStore();
  for (const [at, id] of benches.entries()) {
    await store.createWorkshop({ id, name: `bench\t${at}\n\\N` });
    await store.inWorkshop(id, async tx => {
      const [of] = await tx.insert(maker).values({ workshop: id, name: 'Brindlow ß軸受' }).returning();
      const [made] = await tx.insert(model).values({ workshop: id, maker: of!.id, name: 'B1' }).returning();
      // Larger than a member of a backup, so that a table has several.
      const bytes = randomBytes(3_000_000);
      const [doc] = await tx
        .insert(diagram)
        .values({
          workshop: id,
          model: made!.id,
          name: 'x',
          mediaType: 'text/csv',
          bytes,
          byteCount: bytes.length,
          sha256: '',
        })
        .returning();
      const parts = Array.from({ length: 200 + at }, (_, i) => ({
        id: randomUUID(),
        maker: of!.id,
        number: `${i}`,
        numberKey: `${i}`,
        name: `part ${i}`,
        category: 'bearing' as const,
        dims: { bore: i / 8 },
        attrs: { seal: '\t' },
        certainty: 1 / 3,
        findText: `bearing ${i}`,
      }));
      await copyInto(
        tx,
        part,
        ['id', 'maker', 'number', 'numberKey', 'name', 'category', 'dims', 'attrs', 'certainty', 'findText'],
        parts,
      );
      const rows = parts.map((one, i) => ({
        diagram: doc!.id,
        position: i,
        key: `${i}`,
        page: 1,
        ref: '',
        partNumber: one.number,
        description: '',
        qtyText: '',
        remarks: '',
        place: '',
        variants: [],
        outcome: 'taken' as const,
        part: one.id,
        qty: i / 10,
      }));
      await copyInto(
        tx,
        row,
        [
          'diagram',
          'position',
          'key',
          'page',
          'ref',
          'partNumber',
          'description',
          'qtyText',
          'remarks',
          'place',
          'variants',
          'outcome',
          'part',
          'qty',
        ],
        rows,
      );
    });
  }
  await backUp();
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

const backUp = (to = file) => writeWholeFile(to, out => writeBackup(store.server, out));

/** Rows and digest of every table as it is. */
const state = (server = store.server) =>
  asKeeper(server, async tx => {
    const tables: Record<string, string> = {};
    for (const table of await tablesInOrder(tx)) {
      const { rows, digest } = await digestOf(tx, table);
      tables[table.name] = `${rows} ${digest}`;
    }
    return tables;
  });

const databases = () =>
  withConnection(
    store.server,
    'fettle_admin',
    async sql => {
      const rows = await sql<{ name: string }[]>`
      select datname as name from pg_database where starts_with(datname, ${store.server.database}) order by 1`;
      return rows.map(one => one.name.slice(store.server.database.length));
    },
    { database: 'postgres' },
  );

describe('RowDigest', () => {
  const lines = fc.array(fc.string({ unit: 'binary' }).map(text => text.replaceAll('\n', '')));
  test('is the same whatever the order of rows and the cuts between pieces', () => {
    fc.assert(
      fc.property(lines, fc.infiniteStream(fc.integer({ min: 1, max: 7 })), (rows, cuts) => {
        const whole = new RowDigest();
        whole.update(Buffer.from(rows.map(one => `${one}\n`).join('')));
        const cut = new RowDigest();
        const bytes = Buffer.from(
          [...rows]
            .reverse()
            .map(one => `${one}\n`)
            .join(''),
        );
        for (let at = 0; at < bytes.length; ) {
          const size = cuts.next().value!;
          cut.update(bytes.subarray(at, at + size));
          at += size;
        }
        expect([cut.rows, cut.digest]).toEqual([whole.rows, whole.digest]);
        expect(whole.rows).toBe(rows.length);
      }),
    );
  });
  test('differs where a row differs, is missing or is there twice', () => {
    const of = (text: string) => {
      const digest = new RowDigest();
      digest.update(Buffer.from(text));
      return digest.digest;
    };
    expect(new Set([of('a\nb\n'), of('a\nc\n'), of('a\n'), of('a\nb\nb\n'), of('ab\n'), of('')]).size).toBe(
      6,
    );
  });
});

describe('a backup', () => {
  test('holds every row of every bench', async () => {
    const manifest = await verifyBackup(file);
    const rows = Object.fromEntries(manifest.tables.map(table => [table.name, table.rows]));
    expect(rows).toMatchObject({ workshop: 2, maker: 2, diagram: 2, part: 401, row: 401, correction: 0 });
    expect(
      manifest.members.filter(member => member.name.startsWith('tables/diagram/')).length,
    ).toBeGreaterThan(1);
    expect(statSync(file).mode & 0o777).toBe(0o600);
  });

  test('that row-level security would filter is an error, never a smaller backup', async () => {
    const asOwner = withConnection(store.server, 'fettle_admin', sql =>
      sql.begin(async tx => {
        await tx`set local role fettle_owner`;
        await tx`set local row_security = off`;
        return tx`select count(*) from part`;
      }),
    );
    await expect(asOwner).rejects.toMatchObject({ code: '42501' });
  });

  test('is of one moment while others write', async () => {
    let going = true;
    const writing = (async () => {
      for (let i = 0; going; i++)
        await store.inWorkshop(benches[0], async tx => {
          await tx.insert(word).values([
            { workshop: benches[0], word: `a${i}` },
            { workshop: benches[0], word: `b${i}` },
          ]);
        });
    })();
    const manifest = await backUp(join(folder, 'busy.backup'));
    going = false;
    await writing;
    // Every transaction wrote two words.
    expect(manifest.tables.find(table => table.name === 'word')!.rows % 2).toBe(0);
    await store.inWorkshop(benches[0], tx => tx.delete(word));
  });

  test('whose place cannot be written is refused, and leaves nothing behind', async () => {
    await expect(backUp(join(folder, 'no such folder/x'))).rejects.toMatchObject({
      code: 'file-not-writable',
    });
    const before = readFileSync(file);
    const broken = writeWholeFile(file, async out => {
      out.write('half');
      throw new Error('broke off');
    });
    await expect(broken).rejects.toThrow('broke off');
    expect(readFileSync(file).equals(before)).toBe(true);
    expect(readdirSync(folder).filter(name => name.includes('unfinished'))).toEqual([]);
  });

  test('where the database fails in the middle is an error, not a file', async () => {
    const out = new PassThrough();
    out.resume();
    await expect(writeBackup({ ...store.server, password: 'wrong' }, out)).rejects.toThrow();
  });

  test('made by itself before a migration: the last three are kept', async () => {
    const made: string[] = [];
    for (let i = 0; i < 5; i++) made.push(await backUpBeforeMigrating(folder, store.server, 1));
    expect(made.map(existsSync)).toEqual([false, false, true, true, true]);
    await verifyBackup(made.at(-1)!);
  });
});

describe('restoring', () => {
  test('gives back every row of every bench, keeps what was there until the next time, and serving goes on', async () => {
    const before = await state();
    await store.inWorkshop(benches[0], tx => tx.delete(row));
    await store.inWorkshop(benches[1], tx => tx.insert(word).values({ workshop: benches[1], word: 'new' }));
    expect(await state()).not.toEqual(before);

    const restored = await restoreBackup(store.server, file, store.whileClosed);
    expect(await state()).toEqual(before);
    expect(restored.tables.find(table => table.name === 'part')!.rows).toBe(401);
    expect(await store.inWorkshop(benches[1], tx => tx.select().from(word))).toEqual([]);
    expect(await databases()).toEqual(['', expect.stringMatching(/^_before_restore_\d{17}$/)]);

    const again = await restoreBackup(store.server, file, store.whileClosed);
    expect(await databases()).toEqual(['', again.kept.slice(store.server.database.length)]);
    expect(await state()).toEqual(before);
  });

  test('requests that come meanwhile wait, and are answered', async () => {
    let restoring = true;
    const asked: Promise<string[]>[] = [];
    const asking = (async () => {
      while (restoring) {
        asked.push(store.benches());
        await new Promise(resolve => setTimeout(resolve, 10));
      }
    })();
    await restoreBackup(store.server, file, store.whileClosed);
    restoring = false;
    await asking;
    for (const answer of await Promise.all(asked)) expect(answer).toHaveLength(2);
    expect(asked.length).toBeGreaterThan(5);
  });

  test('is refused while a stranger is connected, and changes nothing', { timeout: 40_000 }, async () => {
    const before = await databases();
    await withConnection(store.server, 'fettle_admin', async sql => {
      await sql`select 1`;
      await expect(restoreBackup(store.server, file, store.whileClosed)).rejects.toMatchObject({
        code: 'in-use',
      });
    });
    expect(await databases()).toEqual(before);
    expect(await store.benches()).toHaveLength(2);
  });
});

describe('what is no good is refused, saying what and the remedy, and changes nothing', () => {
  let before: unknown;
  beforeEach(async () => {
    before = [await state(), await databases()];
  });
  const bad = () => join(folder, 'bad.backup');
  async function expectRefused(bytes: Buffer, code: string, message: RegExp): Promise<void> {
    writeFileSync(bad(), bytes);
    const restoring = restoreBackup(store.server, bad(), store.whileClosed);
    await expect(restoring).rejects.toMatchObject({
      code,
      remedy: expect.stringContaining('Nothing was changed'),
    });
    await expect(restoring).rejects.toThrow(message);
    expect([await state(), await databases()]).toEqual(before);
  }

  /** The backup with its members changed. */
  async function changed(
    change: (members: Map<string, Buffer>, manifest: Manifest) => void,
  ): Promise<Buffer> {
    const members = new Map<string, Buffer>();
    const reading = extract();
    reading.end(gunzipSync(readFileSync(file)));
    for await (const member of reading) {
      const pieces: Buffer[] = [];
      for await (const piece of member) pieces.push(piece as Buffer);
      members.set(member.header.name, Buffer.concat(pieces));
    }
    const manifest = JSON.parse(members.get('manifest.json')!.toString()) as Manifest;
    members.delete('manifest.json');
    change(members, manifest);
    members.set('manifest.json', Buffer.from(JSON.stringify(manifest)));
    const writing = pack();
    for (const [name, content] of members) writing.entry({ name }, content);
    writing.finalize();
    const pieces: Buffer[] = [];
    for await (const piece of writing) pieces.push(piece as Buffer);
    return gzipSync(Buffer.concat(pieces), { level: 1 });
  }
  const sum = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');

  test.each([0.1, 0.5, 0.9, 0.999])('cut off after %d of it', async share => {
    const whole = readFileSync(file);
    await expectRefused(
      whole.subarray(0, Math.floor(whole.length * share)),
      'backup-not-readable',
      /cut short/,
    );
  });
  test('nothing at all', () =>
    expectRefused(Buffer.alloc(0), 'backup-not-readable', /cut short|no manifest/));
  test('a byte changed in the middle', async () => {
    const bytes = Buffer.from(readFileSync(file));
    bytes[Math.floor(bytes.length / 2)]! ^= 0xff;
    await expectRefused(bytes, 'backup-not-readable', /garbled|SHA-256|cut short/);
  });
  test('another kind of file', () =>
    expectRefused(Buffer.from('part,qty\n1,2\n'), 'backup-not-readable', /garbled, or not/));
  test('a gzip of something else', () =>
    expectRefused(gzipSync('x'.repeat(5000)), 'backup-not-readable', /not a backup/));
  test('a foreign tar', async () => {
    const foreign = await changed(members => members.set('etc/passwd', Buffer.from('x')));
    await expectRefused(foreign, 'backup-not-readable', /"etc\/passwd"/);
  });
  test('a member changed', async () => {
    const bytes = await changed(members => members.set('tables/maker/000001.copy', Buffer.from('x\n')));
    await expectRefused(bytes, 'backup-not-readable', /"tables\/maker\/000001.copy" is not what was written/);
  });
  test('a member missing', async () => {
    const bytes = await changed(members => members.delete('tables/maker/000001.copy'));
    await expectRefused(bytes, 'backup-not-readable', /"tables\/maker\/000001.copy" is missing/);
  });
  test('a newer format', async () => {
    const bytes = await changed((_, manifest) => Object.assign(manifest, { format: 3 }));
    await expectRefused(bytes, 'backup-newer', /format 3; this program reads up to 2/);
  });
  test('a newer schema', async () => {
    const bytes = await changed((_, manifest) =>
      manifest.schema.push(...Array(90).fill({ name: 'x', sha256: 'x' })),
    );
    await expectRefused(
      bytes,
      'backup-newer',
      /schema version \d{2,3}; this program knows versions up to \d+/,
    );
  });
  test('another schema', async () => {
    const bytes = await changed((_, manifest) => Object.assign(manifest.schema[0]!, { sha256: 'x' }));
    await expectRefused(bytes, 'backup-other-schema', /another migration 1/);
  });
  test('a table that is not its schema’s', async () => {
    const bytes = await changed((_, manifest) => Object.assign(manifest.tables[0]!, { name: 'pg_authid' }));
    await expectRefused(bytes, 'backup-not-readable', /not those of its schema/);
  });
  test('rows that are not those of the manifest, all sums right', async () => {
    const bytes = await changed((_, manifest) => {
      manifest.tables.find(table => table.name === 'part')!.rows++;
    });
    await expectRefused(bytes, 'backup-not-readable', /"part" came out with 401 rows that are not the 402/);
  });
  test('rows that break a key', async () => {
    const bytes = await changed((members, manifest) => {
      const content = Buffer.from(`${randomUUID()}\t${randomUUID()}\tx\t2024-01-01 00:00:00+00\n`);
      members.set('tables/maker/000001.copy', content);
      const entry = manifest.members.find(member => member.name === 'tables/maker/000001.copy')!;
      Object.assign(entry, { bytes: content.length, sha256: sum(content) });
    });
    await expectRefused(bytes, 'backup-not-readable', /cannot be loaded/);
  });
  test('a file that is not there', async () => {
    await expect(restoreBackup(store.server, join(folder, 'nowhere'))).rejects.toMatchObject({
      code: 'file-not-readable',
    });
  });
});
