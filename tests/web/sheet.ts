import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export interface Look {
  width: number;
  theme: 'light' | 'dark';
}

/** A phone at the bench and a computer beside it, on paper and as its print. */
export const looks: Look[] = [
  { width: 1280, theme: 'light' },
  { width: 1280, theme: 'dark' },
  { width: 390, theme: 'light' },
  { width: 390, theme: 'dark' },
];

/** One browser page, and everything it complained of meanwhile. */
export interface Sheet {
  page: Page;
  /** Errors of the console, uncaught ones and breaches of the content security policy; none is all right. */
  complaints: string[];
  close(): Promise<void>;
}

/** A new person at the bench: no cookie, nothing remembered. */
export async function openSheet(browser: Browser, origin: string, { width, theme }: Look): Promise<Sheet> {
  const context = await browser.newContext({
    baseURL: origin,
    viewport: { width, height: width < 640 ? 844 : 900 },
    colorScheme: theme,
    acceptDownloads: true,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  const complaints: string[] = [];
  page.on('console', message => {
    if (message.type() === 'error') complaints.push(`${message.text()} at ${page.url()}`);
  });
  page.on('pageerror', error => complaints.push(`${error.message} at ${page.url()}`));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', event =>
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  return { page, complaints, close: () => context.close() };
}

/** All the words of something, spaces and breaks made one. */
export const wordsOf = async (what: Locator): Promise<string> =>
  ((await what.textContent()) ?? '').replace(/\s+/g, ' ').trim();

/** The view in hand is sound: nobody is shut out of it, nothing hangs over its edge, every control can be hit. */
export async function expectSound(page: Page): Promise<void> {
  await page.evaluate(axeSource);
  const results = (await page.evaluate(
    'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] })',
  )) as AxeResults;
  const found = results.violations.map(
    ({ id, help, nodes }) => `${id}: ${help} (${nodes.map(node => node.html.slice(0, 120)).join(' | ')})`,
  );
  expect(found.join('\n'), `axe-core at ${page.url()}`).toBe('');
  expect(await overhang(page), `wider than the window at ${page.url()}`).toBeLessThanOrEqual(0);
  expect((await smallControls(page)).join('\n'), `controls under 44 px at ${page.url()}`).toBe('');
}

/** Pixels by which the page is wider than its window. */
const overhang = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** Buttons, boxes and lists to choose from whose place to touch is under 44 px high. */
const smallControls = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'button, select, input:not([type=checkbox]):not([hidden]), textarea',
      ),
    ]
      .filter(control => control.checkVisibility())
      .filter(control => {
        const reach = Number.parseFloat(getComputedStyle(control, '::after').height) || 0;
        const around = control.closest('.chip, .find')?.getBoundingClientRect().height ?? 0;
        return Math.max(control.getBoundingClientRect().height, reach, around) < 43.5;
      })
      .map(control => control.outerHTML.slice(0, 120)),
  );
