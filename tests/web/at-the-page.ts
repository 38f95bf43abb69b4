import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { type Program, startProgram } from '../support/program.ts';
import { type Look, openSheet, type Sheet } from './sheet.ts';

/** A document that a person picks. */
export interface Picked {
  name: string;
  mimeType: string;
  bytes: Uint8Array;
  maker: string;
  model: string;
}

/**
 * Serves the page to the tests of one file, each a new person before it; a test in which the page complains fails.
 * Answers the ways in.
 */
export function atThePage() {
  let program: Program;
  let browser: Browser;
  let sheet: Sheet;

  beforeAll(async () => {
    [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
  });
  afterAll(async () => {
    await browser?.close();
    await program?.stop();
  });
  afterEach(async () => {
    const { complaints } = sheet;
    await sheet.close();
    expect(complaints).toEqual([]);
  });

  /** A person who has just started a bench of their own. */
  async function startBench(look: Look, name: string): Promise<Page> {
    sheet = await openSheet(browser, program.origin, look);
    const { page } = sheet;
    await page.goto('/');
    await page.getByLabel('Name of the bench').fill(name);
    await page.getByRole('button', { name: 'Start my bench' }).click();
    await page.waitForURL('**/find');
    return page;
  }

  return { startBench };
}

/** Puts a document in by the picker; the page goes on to it by itself. */
export async function putIn(page: Page, { name, mimeType, bytes, maker, model }: Picked): Promise<void> {
  await page.getByRole('link', { name: 'Diagrams', exact: true }).click();
  await page.getByRole('heading', { name: 'Put one in' }).waitFor();
  await page
    .getByLabel('Files', { exact: true })
    .setInputFiles([{ name, mimeType, buffer: Buffer.from(bytes) }]);
  const form = page.getByRole('form', { name: 'Lists to put in' });
  await form.getByLabel('Maker', { exact: true }).fill(maker);
  await form.getByLabel('Model', { exact: true }).fill(model);
  await form.getByRole('button', { name: /Keep and read/ }).click();
}
