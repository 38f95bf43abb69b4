import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { type Program, startProgram } from '../support/program.ts';
import { expectSound, looks, openSheet } from './sheet.ts';

let program: Program;
let browser: Browser;

beforeAll(async () => {
  [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await program?.stop();
});

/** Every view of the demo bench, each with what shows that it is there. */
const views: { name: string; open: (page: Page) => Promise<void> }[] = [
  { name: 'first page', open: async page => void (await page.goto('/')) },
  { name: 'find, nothing asked', open: async page => void (await page.goto('/find')) },
  {
    name: 'find, one size',
    open: async page => {
      await page.goto('/find?q=5x11x4');
      await page.getByRole('heading', { name: 'Where it is used' }).waitFor();
    },
  },
  {
    name: 'find, many',
    open: async page => {
      await page.goto('/find?q=screw');
      await page.getByRole('heading', { name: 'Parts', exact: true }).waitFor();
    },
  },
  {
    name: 'size with an inch thread',
    open: async page => {
      await page.goto(`/sizes/${encodeURIComponent('screw 6-32x9.525')}`);
      await page.getByRole('heading', { name: 'Where it is used' }).waitFor();
    },
  },
  {
    name: 'two things compared',
    open: async page => {
      await page.goto(
        `/compare?a=${encodeURIComponent('bearing 5x11x4')}&b=${encodeURIComponent('bearing 5x11x3')}`,
      );
      await page.getByRole('img', { name: /laid upon/ }).waitFor();
    },
  },
  {
    name: 'part',
    open: async page => {
      await page.goto('/find?q=5x11x4');
      await page.getByRole('link', { name: 'CW 20 107', exact: true }).first().click();
      await page.getByText("Same size; not an approval: maker's part only.").first().waitFor();
    },
  },
  {
    name: 'measure, kinds',
    open: async page => {
      await page.goto('/measure');
      await page.getByRole('link', { name: 'Ball bearing' }).waitFor();
    },
  },
  {
    name: 'measure, nothing yet',
    open: async page => {
      await page.goto('/measure/screw');
      await page.getByText('The sizes that agree will be here.').waitFor();
    },
  },
  {
    name: 'measure, answered',
    open: async page => {
      await page.goto('/measure/bearing');
      await page.getByLabel('Bore', { exact: true }).fill('4.97');
      await page.getByText(/^Cannot tell apart/).waitFor();
    },
  },
  {
    name: 'fit',
    open: async page => {
      await page.goto('/fit');
      await page.getByLabel(/^Shaft, where/).fill('4.98');
      await page.locator('.fit').first().waitFor();
    },
  },
  {
    name: 'gauge sheet',
    open: async page => {
      await page.goto(`/gauge?sizes=${encodeURIComponent('bearing 5x11x4')}`);
      await page.getByRole('img', { name: /^Sheet 1/ }).waitFor();
    },
  },
  {
    name: 'diagrams',
    open: async page => {
      await page.goto('/diagrams');
      await page.getByRole('link', { name: 'Skerry 25' }).waitFor();
    },
  },
  {
    name: 'diagram, a line open',
    open: async page => {
      await page.goto('/diagrams');
      await page.getByRole('link', { name: 'Skerry 25' }).click();
      await page.getByRole('button', { name: /WASHER, SHAFT/ }).click();
      await page.getByRole('form', { name: 'Correct line 33' }).waitFor();
    },
  },
  {
    name: 'model',
    open: async page => {
      await page.goto('/diagrams');
      await page.getByRole('link', { name: 'Holmgate 6 winch' }).click();
      await page.getByRole('heading', { level: 1 }).getByRole('link').click();
      await page.getByRole('heading', { name: 'Its bearings' }).waitFor();
      await page.getByText(/^ring pliers A1/).waitFor();
    },
  },
  {
    name: 'jobs',
    open: async page => {
      await page.goto('/jobs');
      await page.getByRole('button', { name: 'Open a job' }).click();
      await page.locator('.job-list').waitFor();
    },
  },
  {
    name: 'job',
    open: async page => {
      await page.goto('/jobs');
      await page.locator('.job-list a').first().click();
      await page.getByRole('heading', { name: 'What it needs' }).waitFor();
    },
  },
  {
    name: 'order',
    open: async page => {
      await page.goto('/order');
      await page.getByRole('heading', { level: 1, name: /^One order for/ }).waitFor();
    },
  },
  { name: 'no such sheet', open: async page => void (await page.goto('/nowhere')) },
];

describe.each(looks)('at $width px, $theme', look => {
  test('every view is whole, reachable and silent', async () => {
    const { page, complaints, close } = await openSheet(browser, program.origin, look);
    for (const { name, open } of views) {
      await open(page);
      await page
        .getByText(/^(Fetching|Looking|Opening|Judging|Summing)/)
        .first()
        .waitFor({ state: 'hidden' });
      expect(await page.evaluate(() => document.documentElement.dataset.theme), name).toBe(look.theme);
      await expectSound(page);
    }
    await close();
    expect(complaints).toEqual([]);
  });
});

test('the sheet is turned over, and stays so', async () => {
  const { page, complaints, close } = await openSheet(browser, program.origin, {
    width: 1280,
    theme: 'light',
  });
  await page.goto('/find');
  const theme = () => page.evaluate(() => document.documentElement.dataset.theme);
  expect(await theme()).toBe('light');
  await page.getByRole('button', { name: /^light \/ dark/ }).click();
  expect(await theme()).toBe('dark');
  await page.reload();
  expect(await theme()).toBe('dark');
  await close();
  expect(complaints).toEqual([]);
});

test('the keyboard comes to the sheet by the first key, and to every place by the next ones', async () => {
  const { page, close } = await openSheet(browser, program.origin, { width: 1280, theme: 'light' });
  await page.goto('/jobs');
  await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
  const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
  await page.keyboard.press('Tab');
  expect(await focused()).toBe('Skip to the sheet');
  const seen: string[] = [];
  for (let i = 0; i < 8; i++) {
    await page.keyboard.press('Tab');
    seen.push(await focused());
  }
  expect(seen).toEqual(
    expect.arrayContaining(['Fettlebench', 'Find', 'Measure', 'Diagrams', 'Jobs', 'Order']),
  );
  await page.getByRole('link', { name: 'Order', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/order');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
  await close();
});

test('on paper there are no places and no buttons, and the title block stays', async () => {
  const { page, close } = await openSheet(browser, program.origin, { width: 1280, theme: 'dark' });
  await page.goto('/order');
  await page.getByRole('heading', { level: 1, name: /^One order for/ }).waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('navigation').isVisible()).toBe(false);
  expect(await page.getByRole('button').filter({ visible: true }).count()).toBe(0);
  expect(await page.getByRole('region', { name: 'Title block' }).isVisible()).toBe(true);
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(
    'rgb(255, 255, 255)',
  );
  await close();
});
