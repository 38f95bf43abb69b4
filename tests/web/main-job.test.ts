import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { type Program, startProgram } from '../support/program.ts';
import { expectSound, openSheet, type Sheet, wordsOf } from './sheet.ts';

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

/** A person who has just opened the address. */
async function arrive(width = 1280): Promise<Page> {
  sheet = await openSheet(browser, program.origin, { width, theme: 'light' });
  await sheet.page.goto('/');
  return sheet.page;
}

async function find(page: Page, words: string): Promise<void> {
  const box = page.getByRole('search').getByRole('combobox');
  await box.fill(words);
  await box.press('Enter');
}

/** A bench of one's own, named so that no other test's is meant. */
async function startBench(page: Page, name: string): Promise<void> {
  await page.getByLabel('Name of the bench').fill(name);
  await page.getByRole('button', { name: 'Start my bench' }).click();
  await page
    .getByRole('combobox', { name: 'Bench' })
    .locator('option:checked')
    .getByText(name)
    .waitFor({ state: 'attached' });
}

/** The section under a heading, not one that holds it among others. */
const section = (page: Page, heading: string) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: heading, exact: true }) })
    .last();

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

describe('on the demo bench', () => {
  const look = async (width?: number) => {
    const page = await arrive(width);
    await page.getByRole('button', { name: 'Look round the demo bench' }).click();
    await page.waitForURL('**/find');
    return page;
  };

  test('5x11x4 is found under every number it goes by, and what is near is not it', async () => {
    const page = await look();
    await find(page, '5x11x4');
    const used = section(page, 'Where it is used');
    for (const number of ['61-0896', 'CW 20 107', 'M4.0.041', 'DS 3307'])
      await used.getByRole('link', { name: number, exact: true }).first().waitFor();
    expect(await used.getByText('PW 51814').count()).toBe(0);
    const near = section(page, 'Near, but not it').getByRole('listitem').filter({ hasText: '1.0 wider' });
    expect((await wordsOf(near.first())).replace(/ /g, '')).toContain('5×11×5');
    expect(await page.getByRole('img', { name: /ball bearing 5 × 11 × 4/ }).count()).toBe(1);
  });

  test('a part names what may stand in for it, and a load-holding one says maker’s part only', async () => {
    const page = await look();
    await find(page, '5x11x4');
    const used = section(page, 'Where it is used');
    await used.getByRole('link', { name: '61-0896', exact: true }).first().click();
    const standIns = section(page, 'What may stand in for it');
    const other = standIns.getByRole('listitem').filter({ hasText: 'M4.0.041' }).first();
    expect(await wordsOf(other)).toMatch(/^fits/);
    const wider = standIns.getByRole('listitem').filter({ hasText: 'PW 51814' }).first();
    expect(await wordsOf(wider)).toContain('does not fit');
    await page.goBack();
    await used.getByRole('link', { name: 'CW 20 107', exact: true }).click();
    await page.getByText("Same size; not an approval: maker's part only.").first().waitFor();
    expect(await standIns.getByText(/^fits/).count()).toBe(0);
  });

  test('a chip is changed in place, and taken out', async () => {
    const page = await look();
    await find(page, 'ball bearing 5x11x4');
    await page.getByRole('button', { name: /^width 4/ }).click();
    await page.getByRole('textbox', { name: 'width' }).fill('5');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^width 5/ }).waitFor();
    await page.getByRole('button', { name: 'Take out width 5' }).click();
    await page.waitForURL('**q=ball%20bearing%205x11');
  });

  test('one hand on a phone: find, and add to a job', async () => {
    const page = await look(390);
    await find(page, '5x11x4');
    await page.getByRole('button', { name: /^One more/ }).click();
    await page.getByRole('button', { name: 'Add to job' }).click();
    await page
      .getByRole('status')
      .getByText(/ball bearing 5 × 11 × 4: 2, for job/)
      .waitFor();
    await undo(page).click();
  });
});

const list = `Ref\tPart number\tDescription\tQty
1\tHB-1\tBall bearing 5x11x4 ZZ\t2
2\tHB-2\tScrew, pan head M3 x 8\t4
3\tHB-3\tWasher, shaft 5.l x 8 x 0.5\t1
4\tHB-4\tHousing\t1
5\tHB-5\tShim 8 x 14 x 0.1, as required\tAR
6\tHB-6\tTorsion spring\t1
7\tHB-7\tRotor nut M7 x 0.75 left-hand thread\t1
`;

/** Puts the list in through the paste box and keeps it. */
async function keepList(page: Page, model: string): Promise<void> {
  await page.getByLabel(/A parts list from a sheet/).fill(list);
  await page.getByRole('button', { name: 'Read this list' }).click();
  await page.getByRole('button', { name: 'Keep this list' }).click();
  await page.getByLabel('Maker', { exact: true }).fill('Ondrey');
  await page.getByLabel('Model', { exact: true }).fill(model);
  await page.getByLabel('Does it lift, hold a load, brake or steer?').selectOption('ordinary');
  await page.getByRole('button', { name: /^Keep it on/ }).click();
  await page.getByRole('heading', { level: 1, name: `Ondrey ${model}` }).waitFor();
  await page.getByText('7 lines read').waitFor();
}

describe('on a bench of one’s own', () => {
  test('a pasted list is answered, and nothing is stored until it is kept', async () => {
    const page = await arrive();
    await startBench(page, 'Paste bench');
    await page.goto('/');
    await page.getByLabel(/A parts list from a sheet/).fill(list);
    await page.getByRole('button', { name: 'Read this list' }).click();
    await page.getByText('7 lines read').waitFor();
    const sizes = section(page, 'Its sizes');
    expect((await wordsOf(sizes)).replace(/ /g, '')).toContain('5×11×4');
    await page.getByRole('link', { name: 'Diagrams' }).click();
    await page.getByText('No diagram here yet.').waitFor();
    await page.goto('/');
    await keepList(page, 'Tarn 3');
    await page.getByRole('link', { name: 'Diagrams' }).click();
    await page.getByRole('link', { name: 'Tarn 3' }).waitFor();
  });

  test('what the columns of a pasted list hold is put right before it is kept, and is kept so', async () => {
    const page = await arrive();
    await startBench(page, 'Column bench');
    await page.goto('/');
    const box = page.getByLabel(/A parts list from a sheet/);
    await box.fill('Pos;Pieces;Name;Stock\n1;4;Ball bearing 5x11x4;2\n2;6;Screw M3x8;9\n3;1;Housing;3\n');
    await page.getByRole('button', { name: 'Read this list' }).click();
    await page.getByText('3 lines read').waitFor();
    const pieces = () => section(page, 'Its lines').locator('td.qty').allInnerTexts();
    const said = (await pieces()).map(text => text.replace(/\D/g, ''));
    await page.getByText('Say what its columns hold').click();
    await page.getByLabel('Pieces', { exact: true }).selectOption('other');
    await page.getByLabel('Stock', { exact: true }).selectOption('qty');
    await page.getByRole('button', { name: 'Read it so' }).click();
    await expect
      .poll(async () => (await pieces()).map(text => text.replace(/\D/g, '')))
      .toEqual(['2', '9', '3']);
    expect(said).toEqual(['4', '6', '1']);
    await page.getByRole('button', { name: 'Keep this list' }).click();
    await page.getByLabel('Maker', { exact: true }).fill('Ondrey');
    await page.getByLabel('Model', { exact: true }).fill('Tarn 9');
    await page.getByRole('button', { name: /^Keep it on/ }).click();
    await page.getByText('3 lines read').waitFor();
    await page
      .getByRole('button', { name: /Screw M3x8/ })
      .getByText('9')
      .waitFor();
  });

  test('a doubtful line is corrected by keyboard, and the correction is undone', async () => {
    const page = await arrive();
    await startBench(page, 'Checking bench');
    await page.goto('/');
    await keepList(page, 'Tarn 4');
    const line = page.getByRole('button', { name: /Washer, shaft/ });
    await section(page, 'To check')
      .getByRole('button', { name: /Washer, shaft/ })
      .waitFor();
    expect(await line.locator('mark').allTextContents()).toEqual(['5.l']);

    await line.focus();
    await page.keyboard.press('Enter');
    const form = page.getByRole('form', { name: 'Correct line 3' });
    await form.getByLabel('It is').selectOption('washer');
    await form.getByLabel('hole').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('5.1');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('8');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.5');
    await page.keyboard.press('Enter');

    await page.getByText('Line 3 is washer 5.1 × 8 × 0.5.').waitFor();
    expect(
      await section(page, 'To check')
        .getByRole('button', { name: /Washer, shaft/ })
        .count(),
    ).toBe(0);
    await find(page, 'washer 5.1x8x0.5');
    await page.getByRole('link', { name: 'HB-3' }).first().waitFor();
    await page.goBack();
    await undo(page).click();
    await section(page, 'To check')
      .getByRole('button', { name: /Washer, shaft/ })
      .waitFor();
  });

  test('what the list tells of dangers stands at the line and before the machine is opened', async () => {
    const page = await arrive();
    await startBench(page, 'Careful bench');
    await page.goto('/');
    await keepList(page, 'Tarn 5');
    const before = section(page, 'Before you open it');
    expect(await wordsOf(before)).toMatch(/Left-hand thread[\s\S]*7[\s\S]*clockwise/);
    expect(await wordsOf(before)).toMatch(/Springs and clips fly[\s\S]*6[\s\S]*Eye protection/);
  });

  test('two jobs are summed by item, with who needs how many; as required asks', async () => {
    const page = await arrive();
    await startBench(page, 'Order bench');
    await page.goto('/');
    await keepList(page, 'Tarn 6');

    const openJob = async (owner: string) => {
      await page.getByRole('link', { name: 'Jobs', exact: true }).click();
      await page
        .getByRole('button', { name: /Open a job|Open the first/ })
        .first()
        .click();
      const form = page.getByRole('form', { name: 'Open a job' });
      await form.getByLabel('Whose machine').fill(owner);
      await form.getByLabel('Model', { exact: true }).selectOption({ label: 'Ondrey Tarn 6' });
      await form.getByLabel('Serial number').fill('84512');
      await form.getByRole('button', { name: 'Open this job' }).click();
      await page.getByRole('heading', { name: 'What it needs' }).waitFor();
    };
    const needs = section(page, 'What it needs');
    const fromList = section(page, "From the model's list");

    await openJob('Marta Quill');
    await fromList.getByRole('button', { name: 'Add line 1 HB-1' }).click();
    await needs.getByText('HB-1').waitFor();
    await fromList.getByRole('button', { name: 'Add line 5 HB-5' }).click();
    await needs.getByText('as required', { exact: true }).waitFor();

    await openJob('Jonas Abara');
    await fromList.getByRole('button', { name: 'Add line 1 HB-1' }).click();
    await needs.getByText('HB-1').waitFor();
    await needs.getByRole('button', { name: 'One more: HB-1' }).click();
    await needs.getByRole('group', { name: 'HB-1: 3' }).waitFor();

    await page.getByRole('link', { name: 'Order', exact: true }).click();
    await page.getByRole('heading', { name: 'One order for jobs 1 and 2' }).waitFor();
    const bearings = page.getByRole('row').filter({ hasText: 'HB-1' });
    expect((await bearings.getByRole('cell').allInnerTexts()).slice(1, 4)).toEqual(['2', '3', '5']);
    await section(page, 'To answer first').getByRole('link', { name: 'Say how many in job 1' }).click();

    await page
      .getByRole('form', { name: /How many of HB-5/ })
      .getByLabel('How many?')
      .fill('3');
    await page.keyboard.press('Enter');
    await needs.getByRole('group', { name: 'HB-5: 3' }).waitFor();
    await needs.getByRole('button', { name: 'Remove HB-1' }).click();
    await page.getByText('HB-1 is out of the job.').waitFor();
    await page.getByRole('link', { name: 'Order', exact: true }).click();
    await page.getByText('nothing left to ask').waitFor();
    expect((await bearings.getByRole('cell').allInnerTexts()).slice(1, 4)).toEqual(['·', '3', '3']);
    await undo(page).click();
    await expect
      .poll(async () => (await bearings.getByRole('cell').allInnerTexts()).slice(1, 4))
      .toEqual(['2', '3', '5']);

    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download as CSV' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('order.csv');
    const [book] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download as XLSX' }).click(),
    ]);
    expect(book.suggestedFilename()).toBe('order.xlsx');
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await page.getByText('The order is copied').waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(
      /^Order for jobs 1, 2\n\nFrom Ondrey\n5 pcs {2}Ondrey HB-1, /,
    );
    await page.getByRole('checkbox', { name: /Job 1/ }).uncheck();
    await page.getByRole('heading', { name: 'One order for job 2' }).waitFor();
  });

  test.each([390, 1280])(
    'what a list leaves open is answered on the order at %d px, and undone',
    async width => {
      const page = await arrive(width);
      await startBench(page, `Open bench ${width}`);
      await page.goto('/');
      await keepList(page, 'Tarn 9');
      await page.getByRole('link', { name: 'Jobs', exact: true }).click();
      await page
        .getByRole('button', { name: /Open a job|Open the first/ })
        .first()
        .click();
      const form = page.getByRole('form', { name: 'Open a job' });
      await form.getByLabel('Whose machine').fill('Ines Tallow');
      await form.getByLabel('Model', { exact: true }).selectOption({ label: 'Ondrey Tarn 9' });
      await form.getByRole('button', { name: 'Open this job' }).click();
      const needs = section(page, 'What it needs');
      await section(page, "From the model's list").getByRole('button', { name: 'Add line 2 HB-2' }).click();
      await needs.getByText('HB-2').waitFor();
      await find(page, 'screw M3x8');
      await page.getByRole('button', { name: 'Add to job' }).first().click();
      await page
        .getByRole('status')
        .getByText(/for job/)
        .waitFor();

      await page.getByRole('link', { name: 'Order', exact: true }).click();
      const asked = section(page, 'To answer first');
      await asked.getByText(/Its head is not stated/).waitFor();
      await expectSound(page);
      await asked.getByRole('button', { name: 'Yes, the same' }).click();
      await page.getByText('nothing left to ask').waitFor();
      await page.getByText('screw M3x0.5x8 taken as this by you').waitFor();
      expect(await page.locator('.pool tbody tr').count()).toBe(1);
      await expectSound(page);
      await undo(page).click();
      await asked.getByRole('button', { name: 'No, keep it apart' }).click();
      await page.getByText('nothing left to ask').waitFor();
      await page.getByText('screw M3x0.5x8 kept apart by you').waitFor();
      expect(await page.locator('.pool tbody tr').count()).toBe(2);
      await page.getByRole('button', { name: /^Ask again about/ }).click();
      await asked.getByRole('button', { name: 'Yes, the same' }).waitFor();
    },
  );

  test('several files are dropped at once, and each is read', async () => {
    const page = await arrive();
    await startBench(page, 'Drop bench');
    await page.getByRole('link', { name: 'Diagrams' }).click();
    await page.getByLabel('Files', { exact: true }).setInputFiles([
      { name: 'tarn-7.tsv', mimeType: 'text/tab-separated-values', buffer: Buffer.from(list) },
      {
        name: 'tarn-8.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('Ref,Part number,Description,Qty\n1,HB-1,Ball bearing 5x11x4 ZZ,2\n'),
      },
    ]);
    const form = page.getByRole('form', { name: 'Lists to put in' });
    for (const [place, model] of ['Tarn 7', 'Tarn 8'].entries()) {
      await form.getByLabel('Maker', { exact: true }).nth(place).fill('Ondrey');
      await form.getByLabel('Model', { exact: true }).nth(place).fill(model);
    }
    await form.getByRole('button', { name: 'Keep and read these 2 lists' }).click();
    const shelf = section(page, 'Ondrey');
    await shelf.getByRole('listitem').filter({ hasText: 'Tarn 7' }).getByText('7 lines read').waitFor();
    await shelf.getByRole('listitem').filter({ hasText: 'Tarn 8' }).getByText('1 line read').waitFor();
  });

  test.each([390, 1280])(
    'a list of monstrous words stays within %d px, and nothing in it is run',
    async width => {
      const page = await arrive(width);
      await startBench(page, `Long bench ${width} ${'m'.repeat(60)}`);
      await page.goto('/');
      const long = 'W'.repeat(90);
      await page
        .getByLabel(/A parts list from a sheet/)
        .fill(
          `Ref\tPart number\tDescription\tQty\n1\t${long}\tBall bearing 5x11x4 ${long}\t2\n2\tX-2\t<img src=x onerror=alert(1)> <b>bold</b>\t1\n3\t${long}3\tWasher 3.2x7x0.5\t1\n`,
        );
      await page.getByRole('button', { name: 'Read this list' }).click();
      await page.getByText('3 lines read').waitFor();
      await expectSound(page);
      await page.getByRole('button', { name: 'Keep this list' }).click();
      await page.getByLabel('Maker', { exact: true }).fill(long);
      await page.getByLabel('Model', { exact: true }).fill(long);
      await page.getByRole('button', { name: /^Keep it on/ }).click();
      await page.getByRole('heading', { level: 1, name: `${long} ${long}` }).waitFor();
      await page.getByRole('listitem').filter({ hasText: '<img src=x onerror=alert(1)>' }).waitFor();
      await expectSound(page);
      await find(page, 'washer 3.2x7x0.5');
      await page.getByRole('heading', { name: 'Where it is used' }).waitFor();
      await expectSound(page);
      await section(page, 'Where it is used').getByRole('row').getByRole('link').last().click();
      await page.getByRole('heading', { name: 'What may stand in for it' }).waitFor();
      await expectSound(page);
      await page.goto('/jobs');
      await page.getByRole('button', { name: 'Open a job' }).click();
      const form = page.getByRole('form', { name: 'Open a job' });
      await form.getByLabel('Whose machine').fill(long);
      await form.getByLabel('Model').selectOption({ index: 1 });
      await form.getByLabel('What is wrong').fill(long);
      await form.getByRole('button', { name: 'Open this job' }).click();
      const fromList = section(page, "From the model's list");
      await fromList.getByRole('button', { name: /^Add line 1/ }).click();
      await fromList.getByRole('button', { name: /^Add line 2/ }).click();
      await section(page, 'What it needs').getByText('2 lines').waitFor();
      await expectSound(page);
      await page.goto('/order');
      await page.getByRole('heading', { name: 'One order for job 1' }).waitFor();
      await expectSound(page);
      await page.goto('/jobs');
      await page.locator('.job-list').waitFor();
      await expectSound(page);
    },
  );

  test('a document is saved as it came, and read again without losing a correction', async () => {
    const page = await arrive();
    await startBench(page, 'Again bench');
    await page.goto('/');
    await keepList(page, 'Tarn 9');
    await section(page, 'To check')
      .getByRole('button', { name: /Washer, shaft/ })
      .click();
    const form = page.getByRole('form', { name: 'Correct line 3' });
    await form.getByLabel('It is').selectOption('screw');
    await form.getByLabel('thread').fill('m3');
    await form.getByLabel('length').fill('8');
    await form.getByRole('button', { name: 'Keep this' }).click();
    await page.getByText('Line 3 is screw M3 × 0.5 × 8.').waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save it as it came' }).click(),
    ]);
    expect(await readFile(await file.path(), 'utf8')).toBe(list);
    await page.getByRole('button', { name: 'Read it again' }).click();
    await page.getByText('is read again').waitFor();
    await page
      .getByRole('button', { name: /Washer, shaft/ })
      .getByText('checked')
      .waitFor();
    await section(page, 'Parts list').getByText('M3').first().waitFor();
  });
});
