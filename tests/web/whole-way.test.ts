import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atThePage, putIn } from './at-the-page.ts';
import { expectSound, wordsOf } from './sheet.ts';

const { startBench } = atThePage();

const pasted = `Ref\tPart number\tDescription\tQty
1\tHB-1\tBall bearing 5x11x4 ZZ\t2
2\tHB-2\tScrew, pan head M3 x 8\t4
3\tHB-3\tWasher, shaft 5.l x 8 x 0.5\t1
4\tHB-4\tHousing\t1
5\tHB-5\tBall bearing 5x11x5 ZZ\t1
`;
const uploaded = `Pos;Number;Name;Pieces;Remarks
10;PW 10;Ball bearing MR115ZZ;2;
11;PW 11;Screw, pan head M3x8;2;
12;PW 12;Washer 5.1x8x0.5;3;
13;PW 13;Knob;1;Superseded by PW 14
14;PW 14;Knob;1;
`;

/** The section under a heading, not one that holds it among others. */
const section = (page: Page, heading: string) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: heading, exact: true }) })
    .last();

const go = (page: Page, place: string) => page.getByRole('link', { name: place, exact: true }).click();

async function find(page: Page, words: string): Promise<void> {
  const box = page.getByRole('search').getByRole('combobox');
  await box.fill(words);
  await box.press('Enter');
}

async function paste(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByLabel(/A parts list from a sheet/).fill(pasted);
  await page.getByRole('button', { name: 'Read this list' }).click();
  await page.getByText('5 lines read').waitFor();
  await expectSound(page);
  await page.getByRole('button', { name: 'Keep this list' }).click();
  await page.getByLabel('Maker', { exact: true }).fill('Ondrey');
  await page.getByLabel('Model', { exact: true }).fill('Tarn 11');
  await page.getByLabel('Does it lift, hold a load, brake or steer?').selectOption('ordinary');
  await page.getByRole('button', { name: /^Keep it on/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Ondrey Tarn 11' }).waitFor();
}

/** The washer whose inside diameter holds a letter for a figure, by keyboard alone. */
async function correct(page: Page): Promise<void> {
  const line = section(page, 'To check').getByRole('button', { name: /Washer, shaft/ });
  await line.waitFor();
  expect(await line.locator('mark').allTextContents()).toEqual(['5.l']);
  await line.focus();
  await page.keyboard.press('Enter');
  const form = page.getByRole('form', { name: 'Correct line 3' });
  await form.getByLabel('It is').selectOption('washer');
  await form.getByLabel('hole').focus();
  for (const figure of ['5.1', '8', '0.5']) {
    await page.keyboard.press('Control+A');
    await page.keyboard.type(figure);
    await page.keyboard.press(figure === '0.5' ? 'Enter' : 'Tab');
  }
  await page.getByText('Line 3 is washer 5.1 × 8 × 0.5.').waitFor();
}

async function openJob(page: Page, owner: string, model: string): Promise<void> {
  await go(page, 'Jobs');
  await page
    .getByRole('button', { name: /Open a job|Open the first/ })
    .first()
    .click();
  const form = page.getByRole('form', { name: 'Open a job' });
  await form.getByLabel('Whose machine').fill(owner);
  await form.getByLabel('Model', { exact: true }).selectOption({ label: model });
  await form.getByRole('button', { name: 'Open this job' }).click();
  await page.getByRole('heading', { name: 'What it needs' }).waitFor();
}

async function addLine(page: Page, line: string, number: string): Promise<void> {
  await section(page, "From the model's list")
    .getByRole('button', { name: `Add line ${line} ${number}` })
    .click();
  await section(page, 'What it needs').getByText(number).first().waitFor();
}

async function download(page: Page, button: string): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFile(await file.path());
}

test.each([390, 1280])('from two lists to one order at %d px', async width => {
  const page = await startBench({ width, theme: width === 390 ? 'dark' : 'light' }, `Whole way ${width}`);
  await paste(page);
  await correct(page);
  const csv = { name: 'dunlin.csv', mimeType: 'text/csv', bytes: Buffer.from(uploaded) };
  await putIn(page, { ...csv, maker: 'Pellworth', model: 'Dunlin 2' });
  await page.getByRole('heading', { level: 1, name: 'Pellworth Dunlin 2' }).waitFor();
  await page.getByText('5 lines read').waitFor();
  await expectSound(page);

  // Found under both makers' numbers; the wider one is near, and why it is not the same is said.
  await find(page, '5 x 11 x 4');
  const used = section(page, 'Where it is used');
  await used.getByRole('link', { name: 'PW 10', exact: true }).waitFor();
  await used.getByRole('link', { name: 'HB-1', exact: true }).click();
  const standIns = section(page, 'What may stand in for it').getByRole('listitem');
  expect(await wordsOf(standIns.filter({ hasText: 'PW 10' }).first())).toMatch(/^fits/);
  await standIns
    .filter({ hasText: 'HB-5' })
    .getByRole('link', { name: /^Why not/ })
    .click();
  await page.getByRole('img', { name: /laid upon/ }).waitFor();
  expect(await wordsOf(section(page, 'Side by side'))).toContain('1.0 wider');
  expect(await wordsOf(section(page, 'In its place'))).toContain('does not fit');
  await expectSound(page);

  await openJob(page, 'Marta Quill', 'Ondrey Tarn 11');
  await addLine(page, '1', 'HB-1');
  await addLine(page, '3', 'HB-3');
  await openJob(page, 'Jonas Abara', 'Ondrey Tarn 11');
  await addLine(page, '1', 'HB-1');
  await section(page, 'What it needs').getByRole('button', { name: 'One more: HB-1' }).click();
  await openJob(page, 'Ines Tallow', 'Pellworth Dunlin 2');
  await addLine(page, '10', 'PW 10');
  await addLine(page, '12', 'PW 12');
  await addLine(page, '13', 'PW 13');
  await expectSound(page);

  await go(page, 'Order');
  await page.getByRole('heading', { name: 'One order for jobs 1, 2 and 3' }).waitFor();
  await page.getByText('nothing left to ask').waitFor();
  await expectSound(page);
  // On a phone each figure stands behind the words for it.
  const counts = async (words: string) =>
    (await page.getByRole('row').filter({ hasText: words }).getByRole('cell').allInnerTexts())
      .slice(1, 5)
      .map(cell => cell.split(/\s+/).at(-1));
  // Two bearings, three, and two of the other maker's; a washer, corrected, and three; the knob that came after.
  expect(await counts('5 × 11 × 4')).toEqual(['2', '3', '2', '7']);
  expect(await counts('5.1 × 8 × 0.5')).toEqual(['1', '·', '3', '4']);
  expect(await counts('PW 14')).toEqual(['·', '·', '1', '1']);

  const table = (await download(page, 'Download as CSV')).toString('utf8');
  expect(table).toMatch(/bearing 5x11x4[^\n]*\b7\b/);
  expect(table).toMatch(/washer 5\.1x8x0\.5[^\n]*\b4\b/);
  expect((await download(page, 'Download as XLSX')).subarray(0, 2).toString()).toBe('PK');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await page.getByText('The order is copied').waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Order for jobs 1, 2, 3\n/);
});
