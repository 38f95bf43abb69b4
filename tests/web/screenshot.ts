/**
 * Draws the picture that the README shows: the page of one bearing size on the demo bench.
 * `npx tsx tests/web/screenshot.ts FILE`
 */
import { launchBrowser } from '../support/browser.ts';
import { startProgram } from '../support/program.ts';
import { openSheet } from './sheet.ts';

const [file] = process.argv.slice(2);
if (!file) {
  console.error('Name the file to write: npx tsx tests/web/screenshot.ts web/screenshot.png');
  process.exit(2);
}

const [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
try {
  const { page, complaints, close } = await openSheet(browser, program.origin, {
    width: 1280,
    theme: 'light',
  });
  await page.goto('/');
  await page.getByRole('button', { name: 'Look round the demo bench' }).click();
  await page.goto('/find?q=ball%20bearing%205x11x4');
  await page.getByRole('heading', { name: 'Where it is used' }).waitFor();
  await page.getByRole('button', { name: 'Add to job' }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: file, fullPage: true });
  await close();
  if (complaints.length > 0) throw new Error(`The page complained: ${complaints.join('; ')}`);
} finally {
  await browser.close();
  await program.stop();
}
