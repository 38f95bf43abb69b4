import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atThePage, putIn } from './at-the-page.ts';
import { expectSound } from './sheet.ts';

const { startBench } = atThePage();

const list = [
  'Ref,Part No,Description,Qty,Spares',
  '1,HB-1,Ball bearing 5x11x4 ZZ,2,9',
  '2,HB-2,Zwsch A 5 x 9 x 0.5,1,9',
  '3,HB-3,Zwsch B 6 x 11 x 0.8,1,9',
].join('\n');

/** A bench of its own, on which the list was put in and opened. */
async function openList(width: number, theme: 'light' | 'dark', name: string): Promise<Page> {
  const page = await startBench({ width, theme }, name);
  const maker = { maker: 'Ondrey', model: 'Tarn 6' };
  await putIn(page, { name: 'tarn.csv', mimeType: 'text/csv', bytes: Buffer.from(list), ...maker });
  await page.getByRole('button', { name: /Ball bearing 5x11x4 ZZ/ }).waitFor();
  return page;
}

const bearing = (page: Page) => page.getByRole('button', { name: /Ball bearing 5x11x4 ZZ/ });

describe.each([
  [390, 'light'],
  [1280, 'dark'],
] as const)('at %d px, %s', (width, theme) => {
  test('a column is said to hold something else, and the rows are read anew; undone, they are as before', async () => {
    const page = await openList(width, theme, `Columns ${width}`);
    await page.getByRole('button', { name: /Ball bearing.*quantity 2/s }).waitFor();
    await page.getByRole('button', { name: 'Look at the columns' }).click();
    await page.getByLabel('Qty').waitFor();
    await expectSound(page);
    await page.getByLabel('Qty').selectOption('nothing we use');
    await page.getByLabel('Spares').selectOption('quantity');
    await page.getByRole('button', { name: 'Read it so' }).click();
    await page.getByRole('button', { name: /Ball bearing.*quantity 9/s }).waitFor();
    await page.getByRole('button', { name: 'Look at the columns' }).click();
    await page.getByRole('button', { name: 'All as found' }).click();
    await page.getByRole('button', { name: /Ball bearing.*quantity 2/s }).waitFor();
  });

  test('a list is taken off the bench and put back', async () => {
    const page = await openList(width, theme, `Removing ${width}`);
    await page.getByRole('button', { name: 'Take it off the bench' }).click();
    await page.getByText('tarn.csv is taken off the bench.').waitFor();
    await expect.poll(() => page.getByRole('link', { name: /Tarn 6/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await bearing(page).waitFor();
  });
});
