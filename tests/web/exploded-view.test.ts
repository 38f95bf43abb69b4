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
});
