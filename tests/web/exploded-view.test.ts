import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { smallPdf } from '../support/small-pdf.ts';
import { atThePage, putIn } from './at-the-page.ts';
import { expectSound } from './sheet.ts';

const { startBench } = atThePage();

const bearing = { ref: '2', x: 0.5, y: 0.15 };
const pdf = () =>
  smallPdf({
    lines: [
      ['1', 'BR-100', 'HOUSING', '1'],
      ['2', 'BR-201', 'BALL BEARING 5X11X4 ZZ', '2'],
      ['3', 'BR-301', 'SCREW M3X8, 2 OFF', '1'],
      ['4', 'BR-302', 'BEARING 5X11X4X3', '1'],
    ],
    balloons: [{ ref: '1', x: 0.2, y: 0.2 }, bearing],
  });

/** A bench of its own, on which the drawing of a model was put in and opened. */
async function openDrawing(width: number, theme: 'light' | 'dark', name: string): Promise<Page> {
  const page = await startBench({ width, theme }, name);
  const maker = { maker: 'Brindlow', model: 'Tern 40' };
  await putIn(page, { name: 'tern.pdf', mimeType: 'application/pdf', bytes: await pdf(), ...maker });
  await page.locator('.plate .picture').waitFor();
  return page;
}

/** Where a place on the page stands on the screen, while the whole page is shown. */
async function placeOf(page: Page, spot: { x: number; y: number }) {
  const box = (await page.locator('.plate .picture').boundingBox())!;
  return { x: box.x + spot.x * box.width, y: box.y + spot.y * box.height };
}

async function tap(page: Page, spot: { x: number; y: number }) {
  const { x, y } = await placeOf(page, spot);
  await page.mouse.click(x, y);
}

describe.each([
  [390, 'dark'],
  [1280, 'light'],
] as const)('at %d px, %s', (width, theme) => {
  test('a tapped balloon opens its line, and the part goes into a job', async () => {
    const page = await openDrawing(width, theme, `Drawing ${width}`);
    await expectSound(page);
    if (width > 1000) {
      const topOf = async (part: string) => (await page.locator(part).boundingBox())!.y;
      expect(await topOf('.drawn > .the-list')).toBeCloseTo(await topOf('.drawn > .exploded'), 0);
    }
    await tap(page, bearing);
    const line = page.getByRole('button', { name: /BALL BEARING 5X11X4 ZZ/, expanded: true });
    await line.waitFor();
    await page.getByText('As it stands on page 1').waitFor();
    await page.getByRole('heading', { name: 'What may stand in for it' }).waitFor();
    await page.locator('.cut .picture').waitFor();
    await expectSound(page);

    await page.getByRole('link', { name: 'Jobs' }).click();
    await page
      .getByRole('button', { name: /Open a job|Open the first/ })
      .first()
      .click();
    const form = page.getByRole('form', { name: 'Open a job' });
    await form.getByLabel('Whose machine').fill('Marta Quill');
    await form.getByRole('button', { name: 'Open this job' }).click();
    await page.getByRole('heading', { name: 'What it needs' }).waitFor();
    await page.getByRole('link', { name: 'Diagrams', exact: true }).click();
    await page.getByRole('link', { name: /Tern 40/ }).click();
    await page.locator('.plate .picture').waitFor();
    await tap(page, bearing);
    await page.getByRole('button', { name: 'Add to job' }).click();
    await page.getByText(/BR-201: 2, for job 1/).waitFor();
  });

  test('a balloon is put in, renumbered by the keyboard and taken back', async () => {
    const page = await openDrawing(width, theme, `Balloons ${width}`);
    await page.getByRole('button', { name: /Put right/ }).click();
    await tap(page, { x: 0.75, y: 0.3 });
    await page.getByLabel('A balloon here: its number').fill('2');
    await page.getByRole('button', { name: 'Put it there' }).click();
    await page.getByText('3 balloons').waitFor();
    await expectSound(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('2 balloons').waitFor();

    const one = page.getByRole('button', { name: /^Balloon 1:/ });
    const before = (await one.boundingBox())!;
    await one.focus();
    await page.keyboard.press('ArrowRight');
    await page.getByText('Balloon 1 is moved.').waitFor();
    expect((await one.boundingBox())!.x).toBeGreaterThan(before.x);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await one.boundingBox())!.x).toBe(before.x);
    await one.focus();
    await page.keyboard.press('Delete');
    await page.getByText('1 balloon', { exact: true }).waitFor();
  });

  test('keys and buttons move the drawing and change its size', async () => {
    const page = await openDrawing(width, theme, `Moving ${width}`);
    const picture = page.locator('.plate .picture');
    const wide = async () => (await picture.boundingBox())!.width;
    const whole = await wide();
    await page.getByRole('button', { name: 'Larger' }).click();
    expect(await wide()).toBeGreaterThan(whole * 1.5);
    await page.locator('.pane').focus();
    await page.keyboard.press('+');
    expect(await wide()).toBeGreaterThan(whole * 2.2);
    const left = (await picture.boundingBox())!.x;
    await page.keyboard.press('ArrowRight');
    expect((await picture.boundingBox())!.x).toBeLessThan(left);
    await page.keyboard.press('0');
    expect(await wide()).toBeCloseTo(whole, 0);
  });

  test('words and numbers are found on the drawing, and found on the bench it opens at them', async () => {
    const page = await openDrawing(width, theme, `Finding ${width}`);
    await page.getByRole('button', { name: /words on the drawing/ }).click();
    const box = page.getByLabel('Find on the drawing', { exact: true });
    await box.fill('ball bearing');
    await page.getByText('1 of 1').waitFor();
    const mark = page.locator('.found-mark.shown');
    await mark.waitFor();
    const pane = (await page.locator('.pane').boundingBox())!;
    const at = (await mark.boundingBox())!;
    expect(at.x).toBeGreaterThan(pane.x - 10);
    expect(at.y).toBeGreaterThan(pane.y);
    expect(at.y).toBeLessThan(pane.y + pane.height);
    await expectSound(page);
    await box.fill('2');
    // Its balloon, its line and a quantity.
    await page.getByText('1 of 3').waitFor();
    await page.getByRole('button', { name: 'Next place' }).click();
    await page.getByText('2 of 3').waitFor();
    await box.fill('no such word');
    await page.getByText('not written here').waitFor();

    await page.goto('/find?q=housing');
    await page.getByRole('link', { name: 'Brindlow Tern 40, page 1' }).click();
    await page.locator('.found-mark.shown').waitFor();
    expect(await page.getByLabel('Find on the drawing', { exact: true }).inputValue()).toBe('housing');
  });

  test('one key takes a doubtful reading as it stands and goes on to the next; it is undone, and stays', async () => {
    const page = await openDrawing(width, theme, `Checking ${width}`);
    const check = page.locator('section', { has: page.getByRole('heading', { name: 'To check' }) });
    await check.getByText('2 of 4').waitFor();
    await check.getByRole('button', { name: /SCREW M3X8/ }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('As it stands on page 1').waitFor();
    await page.getByRole('button', { name: /: line 3$/ }).waitFor();
    await page.locator('.cut .picture').waitFor();
    await expectSound(page);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /BEARING 5X11X4X3/, expanded: true }).waitFor();
    await check.getByText('1 of 4').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await check.getByText('2 of 4').waitFor();
    await page.getByRole('button', { name: /: line 4$/ }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /SCREW M3X8/, expanded: true }).waitFor();
    await page.getByRole('button', { name: /: line 3$/ }).click();
    await check.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Read it again' }).click();
    await page.getByText('4 lines read, none to check').waitFor();
  });
});

test('what was left of a long document is said, and read from its page', async () => {
  const page = await startBench({ width: 390, theme: 'light' }, 'Long bench');
  const long = await PDFDocument.load(await pdf());
  for (let nth = 0; nth < 500; nth += 1) long.addPage([200, 200]);
  const bytes = await long.save();
  await putIn(page, {
    name: 'long.pdf',
    mimeType: 'application/pdf',
    bytes,
    maker: 'Brindlow',
    model: 'Long 5',
  });
  await page.getByText('Page 501 is not read yet').waitFor();
  await expectSound(page);
  await page.getByRole('button', { name: 'Read the rest' }).click();
  await page.getByText('Page 501 is not read yet').waitFor({ state: 'detached', timeout: 30_000 });
  await page.getByText('4 lines read').first().waitFor();
});
