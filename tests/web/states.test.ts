import type { Browser, Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
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

/** Each place: what it asks, what it says while it waits, and what it says where nothing is there yet. */
const places = [
  {
    path: '/find?q=5x11x4',
    asks: '**/api/find?*',
    waiting: 'Looking for 5x11x4',
    empty: /Nothing on this bench/,
  },
  {
    path: '/diagrams',
    asks: '**/api/diagrams',
    waiting: 'Fetching the diagrams',
    empty: 'No diagram here yet.',
  },
  { path: '/jobs', asks: '**/api/jobs?*', waiting: 'Fetching the jobs', empty: 'No job is open.' },
  { path: '/order', asks: '**/api/jobs?*', waiting: 'Fetching the open jobs', empty: /nothing to order/ },
];

const refusal = {
  status: 503,
  contentType: 'application/problem+json',
  body: JSON.stringify({
    code: 'database-away',
    detail: 'The database does not answer.',
    place: 'the data folder',
    remedy: 'Wait a moment; nothing kept is lost.',
  }),
};

async function newBench(page: Page, name: string): Promise<void> {
  await page.goto('/');
  await page.getByLabel('Name of the bench').fill(name);
  await page.getByRole('button', { name: 'Start my bench' }).click();
  await page.waitForURL('**/find');
}

describe.each([1280, 390])('at %d px', width => {
  test.each(places)('$path says what will be here', async ({ path, empty }) => {
    const { page, complaints, close } = await openSheet(browser, program.origin, { width, theme: 'light' });
    await newBench(page, `Empty bench ${width}`);
    await page.goto(path);
    await page.getByText(empty).waitFor();
    await expectSound(page);
    await close();
    expect(complaints).toEqual([]);
  });

  test.each(places)('$path says what it waits for', async ({ path, asks, waiting }) => {
    const { page, close } = await openSheet(browser, program.origin, { width, theme: 'dark' });
    const held: Route[] = [];
    await page.route(asks, route => void held.push(route));
    await page.goto(path);
    await page.getByRole('status').getByText(waiting).waitFor();
    await expectSound(page);
    for (const route of held) await route.continue();
    await page.getByText(waiting).waitFor({ state: 'detached' });
    await close();
  });

  test.each(places)('$path says what was refused, where, and the remedy', async ({ path, asks }) => {
    const { page, close } = await openSheet(browser, program.origin, { width, theme: 'light' });
    await page.route(asks, route => route.fulfill(refusal));
    await page.goto(path);
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await wordsOf(alert)).toContain('The database does not answer.');
    expect(await wordsOf(alert)).toContain('Wait a moment; nothing kept is lost.');
    expect(await wordsOf(alert)).toContain('the data folder');
    expect(await wordsOf(alert)).toContain('database-away');
    await expectSound(page);
    await page.unroute(asks);
    await alert.getByRole('button', { name: 'Try again' }).click();
    await alert.waitFor({ state: 'detached' });
    await close();
  });
});

test('a list that cannot be read says so, and the text is still there', async () => {
  const { page, close } = await openSheet(browser, program.origin, { width: 390, theme: 'light' });
  await page.goto('/');
  await page.route('**/api/read', route => route.fulfill({ ...refusal, status: 422 }));
  await page.getByLabel(/A parts list from a sheet/).fill('1 Ball bearing 5x11x4');
  await page.getByRole('button', { name: 'Read this list' }).click();
  await page.getByRole('alert').getByText('The text is still in the box').waitFor();
  expect(await page.getByLabel(/A parts list from a sheet/).inputValue()).toBe('1 Ball bearing 5x11x4');
  await close();
});

test('a bench that is not reached says so, and what was typed is not lost', async () => {
  const { page, close } = await openSheet(browser, program.origin, { width: 1280, theme: 'light' });
  await newBench(page, 'Cut off bench');
  await page.goto('/jobs');
  await page.getByRole('button', { name: 'Open a job' }).click();
  const form = page.getByRole('form', { name: 'Open a job' });
  await form.getByLabel('Whose machine').fill('Marta Quill');
  await page.route('**/api/jobs', route => route.abort());
  await form.getByRole('button', { name: 'Open this job' }).click();
  await form.getByRole('alert').getByText('The bench does not answer.').waitFor();
  expect(await form.getByLabel('Whose machine').inputValue()).toBe('Marta Quill');
  await close();
});

test('a deed whose answer was lost on the way is tried again under its key, and done once', async () => {
  const { page, close } = await openSheet(browser, program.origin, { width: 1280, theme: 'light' });
  await newBench(page, 'Lossy bench');
  await page.goto('/jobs');
  const keys: string[] = [];
  await page.route('**/api/jobs', async route => {
    if (route.request().method() !== 'POST') return route.continue();
    keys.push((await route.request().headerValue('idempotency-key')) ?? '');
    if (keys.length > 1) return route.continue();
    await route.fetch();
    return route.abort();
  });
  await page.getByRole('button', { name: 'Open a job' }).click();
  await page.getByLabel('Whose machine').fill('Marta Quill');
  await page.getByRole('button', { name: 'Open this job' }).click();
  await page.getByRole('heading', { name: 'What it needs' }).waitFor();
  expect(keys).toHaveLength(2);
  expect(keys[0]).toBe(keys[1]);
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  expect(await page.locator('.job-list > li').count()).toBe(1);
  await close();
});
