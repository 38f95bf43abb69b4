import { randomUUID } from 'node:crypto';
import { sql } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyInto } from '../../../api/db/copy-rows.ts';
import { maker, part } from '../../../api/db/schema/index.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

let store: TestStore;
const bench = randomUUID();
const other = randomUUID();

/** Number and words of each part on the bench. */
const parts: [string | null, string][] = [
  ['70-0309', 'brindlow 70-0309 shim 8.1x11x0.2 schim spacer'],
  ['70-0310', 'brindlow ball bearing 5x11x4 kugellager'],
  ['B 51814-02', 'brindlow ball bearing 5x11x3 kugellager'],
  ['W51_814', 'brindlow bearing cap'],
  ['100%', 'brindlow paßscheibe 8x14x0.1'],
  ['JX-軸受', 'corvane 軸受 5x11x4'],
  [null, 'brindlow zahnrad modul 1'],
];

beforeAll(async () => {
  store = await createTestStore();
  for (const id of [bench, other]) {
    await store.createWorkshop({ id, name: id });
    await store.inWorkshop(id, tx => fill(tx, id === bench ? parts : [['70-0309', 'ondrey bearing secret']]));
  }
});
afterAll(() => store.close());

async function fill(
  tx: Parameters<Parameters<TestStore['inWorkshop']>[1]>[0],
  list: [string | null, string][],
) {
  const id = randomUUID();
  await copyInto(tx, maker, ['id', 'name'], [{ id, name: id }]);
  const columns = ['maker', 'number', 'numberKey', 'name', 'category', 'dims', 'attrs', 'findText'] as const;
  const rows = list.map(([number, words]) => ({
    maker: id,
    number,
    numberKey: number?.toUpperCase().replace(/[^\p{L}\p{N}]/gu, '') ?? words,
    name: words,
    category: 'plain' as const,
    dims: {},
    attrs: {},
    findText: words,
  }));
  await copyInto(tx, part, columns, rows);
  await tx.execute(sql`insert into word (workshop, word)
    select distinct workshop, regexp_split_to_table(find_text, ' ') from part order by 2 on conflict do nothing`);
}

/** The names of the parts that a query finds, best first. */
const find = (workshop: string, query: ReturnType<typeof sql>) =>
  store.inWorkshop(workshop, async tx => {
    const rows = await tx.execute<{ name: string }>(
      sql`select part.name from ${query} with ordinality as found(id, at) join part using (id) order by at`,
    );
    return rows.map(row => row.name);
  });
const byWords = (words: string, workshop = bench) =>
  find(workshop, sql`find_parts_by_words(${sql.param(words.split(' '))}::text[])`);
const byNumber = (fragment: string, workshop = bench) =>
  find(workshop, sql`find_parts_by_number(${fragment})`);

describe('find_parts_by_words', () => {
  test.each([
    ['as known', 'bearing 5x11x4', ['brindlow ball bearing 5x11x4 kugellager']],
    ['capitals', 'KUGELLAGER 5X11X3', ['brindlow ball bearing 5x11x3 kugellager']],
    ['a beginning', 'bear cap', ['brindlow bearing cap']],
    ['a number with a hyphen', '70-0309 shim', ['brindlow 70-0309 shim 8.1x11x0.2 schim spacer']],
    ['a number is never taken for another', '70-0308', []],
    ['ß', 'paßscheibe', ['brindlow paßscheibe 8x14x0.1']],
    ['Japanese', '軸受', ['corvane 軸受 5x11x4']],
    ['nothing like it', 'qqqqqq', []],
    ['no word at all', '& | ! ( ) : * \\', []],
  ])('%s: %s', async (_, words, found) => expect(await byWords(words)).toEqual(found));

  test('where no part holds every word, those that hold most of them come first', async () => {
    expect((await byWords('shim cap bearing'))[0]).toBe('brindlow bearing cap');
  });
  test.each(["o'ring", "');--", 'a:*', '\\', "'", 'x<->y', '%', 'a&b'])(
    '%s is taken as text',
    async words => {
      expect(Array.isArray(await byWords(words))).toBe(true);
    },
  );
});

describe('nearest_words', () => {
  const nearest = (word: string, workshop = bench) =>
    store.inWorkshop(workshop, async tx => {
      const rows = await tx.execute<{ word: string }>(sql`select nearest_words(${word}) as word`);
      return rows.map(row => row.word);
    });
  test.each([
    ['as known', 'bearing', ['bearing']],
    ['a beginning', 'bear', ['bearing']],
    ['a wrong letter', 'beering', ['bearing']],
    ['two letters changed about', 'baering', ['bearing']],
    ['a letter left out', 'kugelager', ['kugellager']],
    ['a letter twice', 'spaccer', ['spacer']],
    ['German', 'passscheibe', ['paßscheibe']],
    ['a number begins one', '70-03', ['70-0309']],
    ['a number is never taken for another', '70-0308', []],
    ['nothing like it', 'qqqqqq', []],
  ])('%s: %s', async (_, word, expected) =>
    expect((await nearest(word)).slice(0, Math.max(1, expected.length))).toEqual(expected),
  );
  test('knows the words of one bench alone', async () => expect(await nearest('secret')).toEqual([]));
});

describe('find_parts_by_number', () => {
  test.each([
    ['with a hyphen', '70-0309', ['brindlow 70-0309 shim 8.1x11x0.2 schim spacer']],
    ['without', '700309', ['brindlow 70-0309 shim 8.1x11x0.2 schim spacer']],
    ['inside', '51814', ['brindlow ball bearing 5x11x3 kugellager', 'brindlow bearing cap']],
    ['a short one as a beginning', 'W5', ['brindlow bearing cap']],
    ['a short one not inside', '81', []],
    ['a wildcard is none', '%%%', []],
    ['a percent sign in a number', '100%', ['brindlow paßscheibe 8x14x0.1']],
    ['letters of any script', '軸受', []],
    ['nothing', '', []],
    ['the words of a part without number are no number', 'zahnrad', []],
  ])('%s: %s', async (_, fragment, found) => expect(await byNumber(fragment)).toEqual(found));
});

test('another workshop’s parts and words are never found', async () => {
  expect(await byWords('secret')).toEqual([]);
  expect(await byNumber('70-0309', other)).toEqual(['ondrey bearing secret']);
  const near = await store.inWorkshop(bench, tx => tx.execute(sql`select nearest_words('secre') as word`));
  expect(near.map(row => row.word)).not.toContain('secret');
});

test('nearest_words gives the word itself, then the nearest', async () => {
  const near = await store.inWorkshop(bench, tx => tx.execute(sql`select nearest_words('Bering') as word`));
  expect(near[0]).toEqual({ word: 'bearing' });
});

test('among 30,000 parts the indexes are used', async () => {
  const many = randomUUID();
  await store.createWorkshop({ id: many, name: 'many' });
  const list = Array.from({ length: 30_000 }, (_, i): [string, string] => {
    const mixed = (i * 7919) % 30_000;
    return [
      `N${String(mixed).padStart(5, '0')}`,
      `corvane word${mixed % 3000} screw M${mixed % 12}x${mixed % 40}`,
    ];
  });
  await store.inWorkshop(many, tx => fill(tx, list));
  const took = async (work: () => Promise<unknown>) => {
    const times: number[] = [];
    for (let round = 0; round < 5; round++) {
      const start = performance.now();
      await work();
      times.push(performance.now() - start);
    }
    return Math.min(...times);
  };
  expect(await byWords('word77 corvane', many)).toContain('corvane word77 screw M5x37');
  // A look through every row takes several times as long; the limits leave room for a busy machine.
  expect(await took(() => byWords('word77 screw', many))).toBeLessThan(120);
  expect(await took(() => byNumber('N12345', many))).toBeLessThan(60);
});
