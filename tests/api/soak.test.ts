import { expect, test } from 'vitest';
import { soak } from '../soak/soak.ts';

/** The short form of `npm run soak`. */
test('killed in the middle of importing and correcting: nothing acknowledged is lost, nothing doubled', {
  timeout: 120_000,
}, async () => {
  const figures = await soak(2);
  expect(figures).toMatchObject({ lost: [], doubled: [], killed: { application: 1, database: 1 } });
  expect(figures.diagrams).toBeGreaterThan(0);
  expect(figures.rows).toBeGreaterThan(0);
});
