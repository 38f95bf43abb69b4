import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
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

const section = (page: Page, heading: string) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: heading, exact: true }) })
    .last();

test.each([390, 1280])('find, size, interchange, why not, add to a job at %d px', async width => {
  const { page, complaints, close } = await openSheet(browser, program.origin, { width, theme: 'light' });
  await page.goto('/');
  await page.getByRole('button', { name: 'Look round the demo bench' }).click();
  await page.waitForURL('**/find');

  // Answers follow the typing, without Enter.
  const box = page.getByRole('search').getByRole('combobox');
  await box.pressSequentially('5x11x4', { delay: 30 });
  const used = section(page, 'Where it is used');
  await used.getByRole('link', { name: '61-0896', exact: true }).first().waitFor();
  expect(await box.inputValue()).toBe('5x11x4');

  await section(page, 'Near, but not it')
    .getByRole('link', { name: /^Why not/ })
    .first()
    .click();
  await page.waitForURL('**/compare**');
  await page.getByRole('img', { name: /laid upon/ }).waitFor();
  await expectSound(page);
  await page.goBack();

  await used.getByRole('link', { name: '61-0896', exact: true }).first().click();
  const near = section(page, 'What may stand in for it')
    .getByRole('listitem')
    .filter({ hasText: 'PW 51814' });
  await near
    .getByRole('link', { name: /^Why not/ })
    .first()
    .click();
  await page.getByRole('heading', { name: 'Side by side' }).waitFor();
  const first = section(page, 'In its place');
  expect(await wordsOf(first)).toContain('does not fit');
  expect(await wordsOf(section(page, 'Side by side'))).toContain('1.0 wider');
  await page.getByRole('heading', { name: 'The other way about' }).waitFor();
  await expectSound(page);

  await page.getByRole('form', { name: 'Compare' }).getByLabel('In its place').fill('bearing 5x11x3');
  await page.keyboard.press('Enter');
  await page.getByText('1.0 narrower').first().waitFor();

  // The head that was asked for goes into the job.
  await box.fill('pan head screw M3x8');
  await box.press('Enter');
  await page.getByText('cross driver').first().waitFor();
  await expectSound(page);
  await page.getByRole('button', { name: 'Add to job' }).first().click();
  await page
    .getByRole('status')
    .getByText(/screw M3 × 0\.5 × 8, pan: 1, for job/)
    .waitFor();
  await close();
  expect(complaints).toEqual([]);
});

test.each([390, 1280])('the box answers as one types on any page, and by keyboard, at %d px', async width => {
  const { page, complaints, close } = await openSheet(browser, program.origin, { width, theme: 'dark' });
  await page.goto('/');
  await page.getByRole('button', { name: 'Look round the demo bench' }).click();
  await page.waitForURL('**/find');
  await page.goto('/jobs');
  const box = page.getByRole('search').getByRole('combobox');
  await box.pressSequentially('5x11x4', { delay: 30 });
  const answers = page.getByRole('listbox', { name: 'Answers' });
  await answers.getByRole('option', { name: /^Ball bearing 5 × 11 × 4/ }).waitFor();
  expect(await box.getAttribute('aria-expanded')).toBe('true');
  await expectSound(page);

  await page.keyboard.press('Escape');
  expect(await answers.isVisible()).toBe(false);
  expect(page.url()).toMatch(/\/jobs$/);

  await box.fill('holmgate');
  await answers.getByRole('option', { name: /^Corvane Holmgate 6 winch/ }).waitFor();
  await page.keyboard.press('ArrowDown');
  expect(await answers.getByRole('option', { selected: true }).textContent()).toContain('Holmgate 6');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Holmgate 6 winch' }).waitFor();

  await box.fill('CW 20 107');
  await answers.getByRole('option', { name: /^CW 20 107/ }).click();
  await page.waitForURL('**/parts/**');
  await close();
  expect(complaints).toEqual([]);
});
