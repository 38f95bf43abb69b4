import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyInto } from '../../../api/db/copy-rows.ts';
import { copyLine, storableText } from '../../../api/db/copy-text.ts';
import { diagram, maker, model, word } from '../../../api/db/schema/index.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

let store: TestStore;
const bench = randomUUID();
const other = randomUUID();

beforeAll(async () => {
  store = await createTestStore();
  for (const id of [bench, other]) await store.createWorkshop({ id, name: id });
});
afterAll(() => store.close());

describe('copyLine', () => {
  // The characters that the PostgreSQL manual lists under "COPY, File Formats, Text Format".
  test.each([
    [['a', 'b'], 'a\tb\n'],
    [[null, ''], '\\N\t\n'],
    [['\\N'], '\\\\N\n'],
    [['a\tb\nc\rd\\e'], 'a\\tb\\nc\\rd\\\\e\n'],
    [['\\.'], '\\\\.\n'],
  ])('%j is %j', (fields, line) => expect(copyLine(fields)).toBe(line));
});

test('any text comes back as it was, but for what PostgreSQL cannot keep', async () => {
  const texts = fc.array(fc.string({ unit: 'binary', maxLength: 40 }), { maxLength: 20 });
  await fc.assert(
    fc.asyncProperty(texts, async names => {
      const rows = names.map((name, at) => ({ name: `${at} ${name}`, id: randomUUID() }));
      const rolledBack = new Error('undo');
      await store
        .inWorkshop(bench, async tx => {
          expect(await copyInto(tx, maker, ['id', 'name'], rows)).toBe(rows.length);
          const found = await tx.select({ id: maker.id, name: maker.name }).from(maker);
          expect(new Map(found.map(row => [row.id, row.name]))).toEqual(
            new Map(rows.map(row => [row.id, storableText(row.name)])),
          );
          throw rolledBack;
        })
        .catch(error => expect(error).toBe(rolledBack));
    }),
    { numRuns: 60, examples: [[['\\.', '\\N', '\t', 'a\u0000b', '\ud800', 'Ω\r\n', '軸受']]] },
  );
});

test('bytes, dates, JSON and nothing keep their kinds', async () => {
  const at = new Date('2024-02-29T12:34:56.789Z');
  const bytes = Buffer.from([0, 1, 92, 10, 255]);
  const refusal = { code: 'a\u0000', place: '\\ud800 "\n', message: '\ud800', remedy: 'ß' };
  const found = await store.inWorkshop(bench, async tx => {
    const [made] = await tx.insert(maker).values({ workshop: bench, name: 'Brindlow' }).returning();
    const [of] = await tx.insert(model).values({ workshop: bench, maker: made!.id, name: 'B1' }).returning();
    const columns = [
      'model',
      'name',
      'mediaType',
      'bytes',
      'byteCount',
      'sha256',
      'refusal',
      'unit',
      'readAt',
    ] as const;
    const row = {
      model: of!.id,
      name: 'x',
      mediaType: 'text/csv',
      bytes,
      byteCount: 5,
      sha256: '0',
      refusal,
      unit: null,
      readAt: at,
    };
    await copyInto(tx, diagram, columns, [row]);
    return (await tx.select().from(diagram))[0]!;
  });
  expect(found).toMatchObject({ bytes, byteCount: 5, unit: null, readAt: at, workshop: bench });
  expect(found.refusal).toEqual({ ...refusal, code: 'a\uFFFD', message: '\uFFFD' });
});

test('rows go to the workshop of the transaction alone', async () => {
  await store.inWorkshop(bench, tx => copyInto(tx, word, ['word'], [{ word: 'bearing' }, { word: 'shim' }]));
  expect(await store.inWorkshop(other, tx => tx.select().from(word))).toEqual([]);
});

test('known rows are passed over when asked, else refused, and twice in one transaction is fine', async () => {
  const words = ['pin', 'nut'].map(text => ({ word: text }));
  const counts = await store.inWorkshop(bench, async tx => [
    await copyInto(tx, word, ['word'], words),
    await copyInto(tx, word, ['word'], [...words, { word: 'seal' }], { skipKnown: true }),
  ]);
  expect(counts).toEqual([2, 1]);
  await expect(store.inWorkshop(bench, tx => copyInto(tx, word, ['word'], words))).rejects.toMatchObject({
    cause: { code: '23505' },
  });
});

test('a source of rows that breaks off leaves nothing behind, and the connection usable', async () => {
  const rows = (function* () {
    yield { word: 'washer' };
    throw new Error('broke off');
  })();
  await expect(store.inWorkshop(other, tx => copyInto(tx, word, ['word'], rows))).rejects.toThrow(
    'broke off',
  );
  expect(await store.inWorkshop(other, tx => tx.select().from(word))).toEqual([]);
});

test('a value that its column does not take is refused, however late PostgreSQL says so', async () => {
  const rows = [
    { maker: bench, name: 'x' },
    { maker: 'no id at all', name: 'y' },
  ];
  await expect(
    store.inWorkshop(bench, tx => copyInto(tx, model, ['maker', 'name'], rows)),
  ).rejects.toMatchObject({
    code: '22P02',
  });
});
