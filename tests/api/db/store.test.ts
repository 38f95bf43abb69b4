import { randomUUID } from 'node:crypto';
import { eq, sql } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { maker, workshop } from '../../../api/db/schema/index.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

let store: TestStore;
const [a, b] = [randomUUID(), randomUUID()];

beforeAll(async () => {
  store = await createTestStore();
  await store.createWorkshop({ id: a, name: 'Quay Street' });
  await store.createWorkshop({ id: b, name: 'Demo', demo: true });
});
afterAll(() => store.close());

test('a transaction sees and writes the rows of its workshop alone', async () => {
  await store.inWorkshop(a, tx => tx.insert(maker).values({ workshop: a, name: 'Brindlow' }));
  expect(await store.inWorkshop(a, tx => tx.select().from(maker))).toHaveLength(1);
  expect(await store.inWorkshop(b, tx => tx.select().from(maker))).toHaveLength(0);
  await expect(
    store.inWorkshop(b, tx => tx.insert(maker).values({ workshop: a, name: 'Corvane' })),
  ).rejects.toMatchObject({ cause: { code: '42501' } });
  const changed = await store.inWorkshop(b, tx => tx.update(maker).set({ name: 'X' }).returning());
  expect(changed).toEqual([]);
});

test('an error undoes all that the transaction did', async () => {
  const work = store.inWorkshop(a, async tx => {
    await tx.insert(maker).values({ workshop: a, name: 'Hestrel' });
    throw new Error('on purpose');
  });
  await expect(work).rejects.toThrow('on purpose');
  expect(await store.inWorkshop(a, tx => tx.select().from(maker).where(eq(maker.name, 'Hestrel')))).toEqual(
    [],
  );
});

test('300 transactions at once over a small pool never see another workshop', async () => {
  const seen = await Promise.all(
    Array.from({ length: 300 }, (_, i) =>
      store.inWorkshop(i % 2 ? a : b, async tx => {
        const [row] = await tx.select({ id: workshop.workshop }).from(workshop);
        await tx.execute(sql`select pg_sleep(${(i % 5) / 1000})`);
        return row?.id;
      }),
    ),
  );
  expect(seen).toEqual(Array.from({ length: 300 }, (_, i) => (i % 2 ? a : b)));
});

test('benches come last opened first', async () => {
  await store.inWorkshop(a, tx => tx.update(workshop).set({ openedAt: new Date() }));
  expect(await store.benches()).toEqual([a, b]);
});
