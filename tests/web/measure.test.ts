import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { measuredCategories } from '../../indexer/measure.ts';
import { readDoubt, readLengths } from '../../web/measure/read-lengths.ts';
import { launchBrowser } from '../support/browser.ts';
import { type Program, startProgram } from '../support/program.ts';
import { expectSound, openSheet, wordsOf } from './sheet.ts';

let program: Program;
let browser: Browser;

beforeAll(async () => {
  [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await program?.stop();
});

const wide = { width: 1280, theme: 'light' } as const;
const answer = (page: Page) => page.locator('.answer .say');

describe('readLengths: what a person types and a calliper sends', () => {
  // 1 in is 25.4 mm exactly.
  test.each([
    ['4.98', [4.98]],
    ['4,98', [4.98]],
    [' 4.98 mm', [4.98]],
    ['.5', [0.5]],
    ['3/16', [4.763]],
    ['3/16"', [4.763]],
    ['1 1/8', [28.575]],
    ['1-1/8 in', [28.575]],
    ['0.1875"', [4.763]],
    ['0,1875 in', [4.763]],
    ['4.93 5.00', [4.93, 5]],
    ['4,93; 5,00', [4.93, 5]],
    ['4.93–5.00', [4.93, 5]],
    ['3/16" ±0.01', [4.763]],
    ['4,93 5,00 +- 0,02', [4.93, 5]],
    ['', []],
  ])('%j', (typed, lengths) => expect(readLengths(typed)).toEqual(lengths));

  test.each(['five', '0', '3/0', '-2', '4.9.8', '4.98x'])('%j is no length', typed =>
    expect(readLengths(typed)).toBeNull(),
  );
});

test.each([
  ['4.98 ±0.01', 0.01],
  ['4,98 +/- 0,01 mm', 0.01],
  ['4.98', undefined],
])('readDoubt(%j) is %s', (typed, doubt) => expect(readDoubt(typed)).toBe(doubt));

test.each(['4.93', '4,93 5,00', '5.00'])(
  'a bearing of bore %s inside jaws, outside 10.99, width 3.98 is 5x11x4',
  async bore => {
    // A repair tutorial's own readings of a 5x11x4 bearing: bore 4.93 to 5.00, outside 10.99, width 3.98.
    const { page, complaints, close } = await openSheet(browser, program.origin, wide);
    await page.goto('/measure');
    await page.getByRole('link', { name: 'Ball bearing' }).click();
    await page.getByLabel('Bore', { exact: true }).fill(bore);
    await page.getByLabel('Outside diameter', { exact: true }).fill('10,99');
    await page.getByLabel('Width', { exact: true }).fill('3.98');
    await page
      .getByText(/^5 × 11 × 4/)
      .first()
      .waitFor();
    expect(await wordsOf(answer(page))).toMatch(/^5 × 11 × 4, 9\d in 100$/);
    expect(await page.getByRole('listitem').filter({ hasText: 'none of these' }).count()).toBe(1);
    await page.getByText('parts here').first().waitFor();
    await close();
    expect(complaints).toEqual([]);
  },
);

test('M2.5 or 3-56 is said as a set, with the next measurement and the caution of two systems', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/screw');
  await page.getByLabel('Outside diameter', { exact: true }).fill('2.44');
  await page.getByLabel('Pitches', { exact: true }).selectOption('6');
  await page.getByLabel('Length over 6 pitches').fill('2.71');
  expect(await wordsOf(answer(page))).toMatch(/^Cannot tell apart: .*M2\.5 × 0\.45.*3-56/);
  const next = page.locator('.section', { has: page.getByRole('heading', { name: 'Measure next' }) });
  // 29 pitches of 0.45 are 13.05, of 1/56 in 13.15.
  expect(await wordsOf(next)).toContain('13.05 if M2.5');
  await page.getByText('Threads of two systems are among them').waitFor();
  await close();
});

test('the answer needs no network', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/bearing');
  await page.getByLabel('Bore', { exact: true }).waitFor();
  await page.context().setOffline(true);
  await page.getByLabel('Outside diameter', { exact: true }).fill('12.69');
  await page.getByLabel('Bore', { exact: true }).fill('3/16');
  expect(await wordsOf(answer(page))).toContain('4.762');
  await close();
});

test('the dimension in hand is drawn in the accent, and Enter goes on to the next field', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/bearing');
  const focused = page.locator('.as-measured .dimension.focused text');
  await page.getByLabel('Bore', { exact: true }).fill('4.97');
  expect(await focused.textContent()).toBe('Ø4.97');
  await page.keyboard.press('Enter');
  await page.keyboard.type('10.99');
  await expect.poll(() => focused.textContent()).toBe('Ø10.99');
  expect(await page.getByLabel('Outside diameter', { exact: true }).inputValue()).toBe('10.99');
  await close();
});

test('a doubt of one’s own stands in for the instrument’s', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/ball');
  await page.getByLabel('Diameter', { exact: true }).fill('4.762 ±0.002');
  await page.getByText('± 0.002').waitFor();
  expect(await wordsOf(answer(page))).toMatch(/^4\.763/);
  await close();
});

test('a spring tells its rate with its range, and that no list names it', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/spring');
  await page.getByLabel('Wire diameter', { exact: true }).fill('0.47');
  await page.getByLabel('Outside diameter', { exact: true }).fill('5.1');
  await page.getByLabel('Coils in all', { exact: true }).fill('10');
  const follows = page.locator('.section', { has: page.getByRole('heading', { name: 'What follows' }) });
  // 79 300 x 0.47^4 / (8 x 4.63^3 x 8) = 0.609 N/mm (spring makers' formula), to three figures at most.
  expect(await wordsOf(follows)).toMatch(/Rate: 0\.609 N\/mm, between 0\.\d{1,3} and 0\.\d{1,3}G/);
  await page.getByText('Springs fly').waitFor();
  await close();
});

test('a printed group of play counts: C3 is not MC3', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/fit');
  await page.getByLabel('Instrument for shaft').selectOption('micrometer');
  await page.getByLabel(/^Shaft, where/).fill('7.98');
  const first = page.locator('.fit').first();
  // Two bearing makers' handbooks: MC3 is 0.005 to 0.010, C3 0.008 to 0.023 up to 10 mm bore.
  await expect.poll(() => wordsOf(first)).toContain('0.005 to 0.01 mm radial, from group MC3');
  await page.getByLabel('Group of play printed on the bearing').selectOption('C3');
  await expect.poll(() => wordsOf(first)).toContain('0.008 to 0.023 mm radial, from group C3');
  await close();
});

test('a head is drawn as it is typed', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/screw');
  await page.getByLabel('Head', { exact: true }).selectOption('pan');
  await page.getByLabel('Outside diameter', { exact: true }).fill('2.93');
  await page.getByLabel('Head diameter', { exact: true }).fill('5,45');
  await page.locator('.as-measured .dimension text', { hasText: 'Ø5.45' }).waitFor();
  await page.getByLabel('Head height', { exact: true }).fill('2.3');
  expect(await page.locator('.as-measured .dimension.focused text').textContent()).toBe('2.3');
  await close();
});

test('a size that is ruled out says for what it is too small or too large', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/shim');
  await page.getByLabel('Inside diameter', { exact: true }).fill('8.08');
  await page.getByLabel('Outside diameter', { exact: true }).fill('13.85');
  await page.getByLabel('Thickness', { exact: true }).fill('0.199');
  // DIN 988 in strip of 0.2, held to a few hundredths: the 0.15 and the 0.25 beside it are none.
  const row = (size: RegExp) => page.getByRole('listitem').filter({ hasText: size });
  expect(await wordsOf(row(/^8 × 14 × 0\.15/))).toContain('nothickness too small');
  expect(await wordsOf(row(/^8 × 14 × 0\.25/))).toContain('nothickness too large');
  await close();
});

test('the instrument is remembered', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/pin');
  const instrument = page.getByLabel('Instrument for diameter');
  expect(await instrument.inputValue()).toBe('calliper-outside');
  await instrument.selectOption('micrometer');
  await page.reload();
  expect(await page.getByLabel('Instrument for diameter').inputValue()).toBe('micrometer');
  await close();
});

test('where someone depends on it, only the maker’s part will do', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/measure/ball');
  await page.getByLabel('Diameter', { exact: true }).fill('3.17');
  await page.getByText('Pins tried, wear and duty').click();
  await page.getByLabel('Does someone depend on it?').selectOption('load-holding');
  await page.getByText('asks for the maker’s part only').waitFor();
  await close();
});

test('a shaft of 4.996 by micrometer takes the bearings of bore 5, as h6', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto('/fit');
  await page.getByLabel('Instrument for shaft').selectOption('micrometer');
  await page.getByLabel(/^Shaft, where/).fill('4,996');
  const first = page.locator('.fit').first();
  await first.waitFor();
  expect(await wordsOf(first)).toMatch(/^5 × /);
  // ISO 286: h6 of 5 is 4.992 to 5.
  expect(await wordsOf(first)).toContain('Shaft ash6');
  // ISO 492 normal: bore 4.992 to 5, so a shaft in the middle of it is as likely loose as tight.
  expect(await wordsOf(first)).toMatch(
    /On the shaft: from 0\.01 mm press to 0\.01 mm clearance; clearance 50 in 100/,
  );
  await close();
});

test('the find box answers for a 4.98 shaft with how each sits', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto(`/find?q=${encodeURIComponent('bearing for a 4.98 shaft')}`);
  await page
    .getByText(/On the shaft: .*clearance/)
    .first()
    .waitFor();
  await close();
});

test('the check bar is 100 mm in print, on a sheet of A4 at 1:1', async () => {
  const { page, complaints, close } = await openSheet(browser, program.origin, wide);
  await page.goto(`/gauge?sizes=${encodeURIComponent('bearing 5x11x4,screw M3x0.5x8')}`);
  const sheet = page.getByRole('img', { name: /^Sheet 1 of 1/ });
  await sheet.waitFor();
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  // A4 of ISO 216 is 595 by 842 points of 1/72 in.
  const box = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf)!.slice(1).map(Number);
  expect(box[0]).toBeCloseTo(595, -1);
  expect(box[1]).toBeCloseTo(842, -1);
  await page.emulateMedia({ media: 'print' });
  const drawn = await sheet.evaluate(image => {
    const svg = decodeURIComponent((image as HTMLImageElement).src.split(',').slice(1).join(','));
    const bar = Number(/h(\d+)m/.exec(svg)![1]);
    const across = Number(/viewBox="0 0 (\d+) /.exec(svg)![1]);
    return (bar / across) * image.getBoundingClientRect().width;
  });
  // The CSS inch is 96 pixels, so 100 mm are 377.95.
  expect(drawn).toBeCloseTo((100 * 96) / 25.4, 0);
  await close();
  expect(complaints).toEqual([]);
});

test('a screen that was set against a bank card shows true size, and stays set', async () => {
  const { page, close } = await openSheet(browser, program.origin, wide);
  await page.goto(`/gauge?sizes=${encodeURIComponent('bearing 5x11x4')}`);
  await page.getByLabel('Width of the card').fill('428');
  await page.getByRole('button', { name: 'It meets the card' }).click();
  await page.reload();
  const box = await page.getByRole('img', { name: /^Sheet 1 of 1/ }).boundingBox();
  // ISO/IEC 7810 ID-1: the card is 85.60 mm wide, so 428 pixels are 5 to the millimetre, and A4 is 210 mm wide.
  expect(box!.width).toBeCloseTo(1050, 0);
  // The blank rest of the paper is not shown, and what is shown is not squeezed.
  expect(box!.height).toBeLessThan(400);
  const fit = await page.getByRole('img', { name: /^Sheet 1 of 1/ }).evaluate(image => {
    const { objectFit, objectPosition } = getComputedStyle(image);
    return { objectFit, objectPosition };
  });
  expect(fit).toEqual({ objectFit: 'cover', objectPosition: '0px 0px' });
  await close();
});

describe.each([1280, 390])('at %d px', width => {
  const theme = width === 390 ? 'dark' : 'light';

  test('every kind of part is sound with one reading, its reasons and its further fields open', async () => {
    const { page, complaints, close } = await openSheet(browser, program.origin, { width, theme });
    for (const category of measuredCategories) {
      await page.goto(`/measure/${category}`);
      await page.locator('.reading input').first().fill('3');
      await page.getByText('Pins tried, wear and duty').click();
      await answer(page).waitFor();
      const why = page.getByText('Why', { exact: true }).first();
      if (await why.isVisible()) await why.click();
      await expectSound(page);
    }
    await close();
    expect(complaints).toEqual([]);
  });

  test.each(['light', 'dark'] as const)('measured and fitted views are sound, %s', async theme => {
    const { page, close } = await openSheet(browser, program.origin, { width, theme });
    await page.goto('/measure/screw');
    await page.getByLabel('Outside diameter', { exact: true }).fill('2.44');
    await page.getByText('Pins tried, wear and duty').click();
    await answer(page).waitFor();
    await expectSound(page);
    await page.getByLabel('Outside diameter', { exact: true }).fill('2.4x');
    await page.getByText('That is no length').waitFor();
    await expectSound(page);
    await page.goto('/fit');
    await page.getByLabel(/^Shaft, where/).fill('4.98');
    await page.getByLabel(/^Width/).fill('5');
    await page.locator('.fit').first().waitFor();
    await expectSound(page);
    await close();
  });
});
