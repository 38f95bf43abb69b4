import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyBackup } from '../../api/db/backup/read-backup.ts';
import { launchBrowser } from '../support/browser.ts';
import { type Program, startProgram } from '../support/program.ts';
import { expectSound, type Look, looks, openSheet, type Sheet, wordsOf } from './sheet.ts';

const owner = { signIn: 'orla', password: 'a lantern over the quay', bench: 'Harbour bench' };

let program: Program;
let browser: Browser;
beforeAll(async () => {
  [program, browser] = await Promise.all([startProgram(owner), launchBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await program?.stop();
});

/** A picture of the view in hand, where `SHOTS` names a folder for them. */
async function shot(page: Page, name: string, { width, theme }: Look): Promise<void> {
  const folder = process.env.SHOTS;
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: `${folder}/${name}-${width}-${theme}.png`, fullPage: true });
}

async function signIn(page: Page, name = owner.signIn, password = owner.password): Promise<void> {
  await page.getByLabel('Name you sign in by').fill(name);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

/** What the browser itself tells of an answer of 401 or 404, which is meant here. */
const unmeant = ({ complaints }: Sheet) => complaints.filter(one => !/status of 4\d\d/.test(one));

describe.each(looks)('at $width px, $theme', look => {
  const each = `${look.width}-${look.theme}`;

  test('an owner signs in, sees to people, tokens, sessions and the trail, and signs out', async () => {
    const sheet = await openSheet(browser, program.origin, look);
    const { page } = sheet;
    await page.goto('/jobs');
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    await expectSound(page);
    await shot(page, 'sign-in', look);
    await signIn(page, owner.signIn, 'another lantern');
    await page.getByRole('alert').getByText('Name and password do not belong together.').waitFor();
    expect(await page.getByLabel('Name you sign in by').inputValue()).toBe(owner.signIn);
    await expectSound(page);
    await shot(page, 'sign-in-refused', look);
    await signIn(page);
    // Where they were about to go.
    await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();

    await page.getByRole('link', { name: 'Settings', exact: true }).click();
    await page.getByRole('heading', { name: 'Where you are signed in' }).waitFor();
    await page.getByText('This one.').waitFor();
    await expectSound(page);
    await shot(page, 'you', look);

    await page.getByRole('link', { name: 'People', exact: true }).click();
    await page.getByText('orla (you)').waitFor();
    const form = page.getByRole('form', { name: 'Bring somebody in' });
    await form.getByLabel('Their name').fill(`Ida Fenn ${each}`);
    await form.getByLabel('What they may do').selectOption({ label: 'Counter' });
    await form.getByRole('button', { name: 'Make a link for them' }).click();
    const link = await page.getByLabel(`Link for Ida Fenn ${each}`).inputValue();
    expect(link).toMatch(/\/join#fettle_i_/);
    await expectSound(page);
    await shot(page, 'people', look);
    await page.getByRole('button', { name: 'I have it' }).click();
    expect(await page.getByLabel('Link for').count()).toBe(0);

    // A role is changed, and changed back by the word that says so.
    const role = page.getByLabel(`What Ida Fenn ${each} may do`);
    await role.selectOption({ label: 'Repairer' });
    await page.getByText(`Ida Fenn ${each}: Repairer.`).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      name =>
        document.querySelectorAll<HTMLSelectElement>('.person select').length > 0 &&
        [...document.querySelectorAll<HTMLElement>('.person')].some(
          row => row.textContent?.includes(name) && row.querySelector('select')?.value === 'counter',
        ),
      `Ida Fenn ${each}`,
    );

    await page.getByRole('button', { name: `Rename Ida Fenn ${each}` }).click();
    const another = page.getByRole('form', { name: `Another name for Ida Fenn ${each}` });
    await another.getByRole('textbox').fill(`Ida Marsh ${each}`);
    await expectSound(page);
    await another.getByRole('button', { name: 'Keep the name' }).click();
    await page.getByText(`Ida Marsh ${each} is the name now.`).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByLabel(`What Ida Fenn ${each} may do`).waitFor();

    await page.getByRole('link', { name: 'Tokens', exact: true }).click();
    await page.getByRole('heading', { name: 'Tokens of this bench' }).waitFor();
    const token = page.getByRole('form', { name: 'Make a token' });
    await token.getByLabel('What it is for').fill(`Till ${each}`);
    await token.getByRole('button', { name: 'Make the token' }).click();
    expect(await page.getByLabel(`Token "Till ${each}"`).inputValue()).toMatch(/^fettle_t_/);
    await expectSound(page);
    await shot(page, 'tokens', look);
    await page.getByRole('button', { name: `Revoke Till ${each}` }).click();
    await page.getByText(`"Till ${each}" lets nobody in any more.`).waitFor();

    await page.getByRole('link', { name: 'Trail', exact: true }).click();
    await page.getByText(`revoked the token “Till ${each}”.`).waitFor();
    await page.getByText(`invited Ida Fenn ${each} as counter.`).waitFor();
    await expectSound(page);
    await shot(page, 'trail', look);

    await page.getByRole('link', { name: 'Backup', exact: true }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the bench as a file' }).click(),
    ]);
    expect((await verifyBackup(await download.path())).bench?.name).toBe(owner.bench);
    await page.getByText('The bench is saved as bench.fettle.').waitFor();
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await expectSound(page);
    await shot(page, 'backup', look);

    await page.getByRole('link', { name: 'You', exact: true }).click();
    await page.getByRole('button', { name: 'Sign out', exact: true }).click();
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    expect((await page.context().cookies()).filter(cookie => cookie.name === 'fettle')).toEqual([]);

    // Whoever has the link chooses a sign-in, and is in.
    await page.goto(link.slice(program.origin.length));
    await page.getByRole('heading', { name: 'Work at Harbour bench' }).waitFor();
    await page.getByLabel('Name to sign in by').fill(`ida.${each}`);
    await page.getByLabel('Password', { exact: true }).fill('short');
    await page.getByText('12 characters or more: three or four words do well.').waitFor();
    await expectSound(page);
    await shot(page, 'join', look);
    await page.getByLabel('Password', { exact: true }).fill(owner.password);
    await page.getByRole('button', { name: 'Come in' }).click();
    await page.waitForURL('**/find');
    await page.getByRole('link', { name: 'Settings', exact: true }).click();
    await page.getByText(`You are signed in as ida.${each}.`).waitFor();
    // What is the owner's alone is not shown to her, and refused where she goes by hand.
    expect(await page.getByRole('link', { name: 'People', exact: true }).count()).toBe(0);
    await page.goto('/settings/people');
    await page.getByRole('alert').getByText('Your role on this bench does not allow this.').waitFor();
    await expectSound(page);
    // The link is used up.
    await page.goto(link.slice(program.origin.length));
    await page.reload();
    await page.getByRole('alert').getByText('This link was used already, or has run out.').waitFor();
    await expectSound(page);
    await shot(page, 'link-void', look);
    await sheet.close();
    expect(unmeant(sheet)).toEqual([]);
  });

  test('each sheet of the settings says what it waits for, and what was refused', async () => {
    const sheet = await openSheet(browser, program.origin, look);
    const { page } = sheet;
    await page.goto('/settings');
    await signIn(page);
    await page.getByRole('heading', { level: 1, name: 'You' }).waitFor();
    for (const [path, asks, waiting] of [
      ['/settings', '**/api/sessions', 'Fetching where you are signed in'],
      ['/settings/people', '**/api/people', 'Fetching the people'],
      ['/settings/tokens', '**/api/tokens', 'Fetching the tokens'],
      ['/settings/trail', '**/api/trail*', 'Fetching the trail'],
    ] as const) {
      let refuse = () => {};
      const held = new Promise<void>(resolve => {
        refuse = resolve;
      });
      await page.route(asks, async route => {
        await held;
        await route.fulfill({
          status: 503,
          contentType: 'application/problem+json',
          body: JSON.stringify({
            code: 'database-away',
            detail: 'The database does not answer.',
            place: 'database',
            remedy: 'Wait a moment; nothing kept is lost.',
          }),
        });
      });
      await page.goto(path);
      await page.getByRole('status').getByText(waiting).waitFor();
      await expectSound(page);
      refuse();
      const alert = page.getByRole('alert');
      await alert.waitFor();
      expect(await wordsOf(alert)).toContain('Wait a moment; nothing kept is lost.');
      await expectSound(page);
      await page.unroute(asks);
      await alert.getByRole('button', { name: 'Try again' }).click();
      await alert.waitFor({ state: 'detached' });
    }
    await sheet.close();
    expect(sheet.complaints.filter(one => !/status of (4\d\d|503)/.test(one))).toEqual([]);
  });
});

test('a session that was ended elsewhere asks to sign in, and goes on where it was', async () => {
  const sheet = await openSheet(browser, program.origin, { width: 1280, theme: 'light' });
  const { page } = sheet;
  await page.goto('/settings/tokens');
  await signIn(page);
  await page.getByRole('heading', { name: 'Make a token' }).waitFor();
  await page.context().clearCookies();
  await page.getByLabel('What it is for').fill('Till');
  await page.getByRole('button', { name: 'Make the token' }).click();
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await signIn(page);
  await page.getByRole('heading', { name: 'Make a token' }).waitFor();
  await sheet.close();
});

test('by keyboard alone one signs in', async () => {
  const sheet = await openSheet(browser, program.origin, { width: 1280, theme: 'dark' });
  const { page } = sheet;
  await page.goto('/find');
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.type(owner.signIn);
  await page.keyboard.press('Tab');
  await page.keyboard.type(owner.password);
  await page.keyboard.press('Enter');
  await page.getByRole('navigation', { name: 'Places' }).waitFor();
  await sheet.close();
});

test('who only reads is offered nothing that would be refused', async () => {
  const sheet = await openSheet(browser, program.origin, { width: 1280, theme: 'light' });
  const { page } = sheet;
  await page.goto('/jobs');
  await signIn(page);
  await page.getByRole('button', { name: 'Open the first' }).waitFor();
  // The owner has a list, a job with a need, and somebody who may look.
  const made = await page.evaluate(async () => {
    const send = async (path: string, body: object) => {
      const response = await fetch(path, {
        method: 'POST',
        body: JSON.stringify(body),
        headers: {
          'Content-Type': 'application/json',
          'Idempotency-Key': `reader-test ${path}`.replaceAll(' ', '-'),
          Workshop:
            localStorage.getItem('fettle.bench') ?? (await (await fetch('/api/benches')).json()).current,
        },
      });
      return response.json();
    };
    const text = '1,A-1,BALL BEARING 5X11X4,1\n2,A-2,SHIM 8.1 X 11 X 0.2 OR 0.3,1';
    const { diagram } = await send('/api/diagrams/text', { maker: 'Brindlow', model: 'Tern', text });
    const job = await send('/api/jobs', { owner: 'Ada', model: diagram.model.id });
    await send(`/api/jobs/${job.id}/needs`, { item: 'bearing 5x11x4', qty: 2 });
    const { link } = await send('/api/people', { name: 'Rufus', role: 'reader' });
    return { diagram: diagram.id as string, job: job.id as string, link: link as string };
  });
  await page.context().clearCookies();
  await page.goto(made.link.slice(program.origin.length));
  await page.getByLabel('Name to sign in by').fill('rufus');
  await page.getByLabel('Password', { exact: true }).fill(owner.password);
  await page.getByRole('button', { name: 'Come in' }).click();
  await page.waitForURL('**/find');
  const writes =
    /open (a|the first)|close the job|change|remove|one (more|less)|add|keep|correct|read it again|take it off|put|download|copy as|columns|same|apart/i;
  for (const [path, shown] of [
    ['/jobs', 'Machine of|Brindlow Tern'],
    [`/jobs/${made.job}`, 'What it needs'],
    ['/diagrams', 'On this bench|Brindlow'],
    [`/diagrams/${made.diagram}`, 'BALL BEARING'],
    ['/order', 'One order for'],
    ['/find?q=5x11x4', 'Where it is used'],
  ] as const) {
    await page.goto(path);
    await page.locator('main').getByText(new RegExp(shown)).first().waitFor();
    await page
      .getByText(/^(Fetching|Looking|Opening|Judging|Summing)/)
      .first()
      .waitFor({ state: 'hidden' });
    const buttons = await page
      .locator('main')
      .getByRole('button')
      .filter({ visible: true })
      .allTextContents();
    expect(
      buttons.filter(words => writes.test(words)),
      path,
    ).toEqual([]);
    await expectSound(page);
  }
  // A line is opened, and only looked at.
  await page.goto(`/diagrams/${made.diagram}`);
  await page.getByRole('button', { name: /BALL BEARING/ }).click();
  await page.getByRole('heading', { name: 'What we read' }).first().waitFor();
  expect(await page.getByRole('button', { name: 'Correct it' }).count()).toBe(0);
  await expectSound(page);
  await sheet.close();
  expect(unmeant(sheet)).toEqual([]);
});

test('an owner erases the bench, then themselves, and nobody can sign in as them', async () => {
  const sheet = await openSheet(browser, program.origin, { width: 390, theme: 'dark' });
  const { page } = sheet;
  await page.goto('/settings/backup');
  await signIn(page);
  await page.getByText('Take Harbour bench away for good').click();
  await expectSound(page);
  await page.getByRole('form', { name: 'Erase the bench' }).getByLabel('Your password').fill(owner.password);
  await page.getByRole('button', { name: 'Erase the bench for good' }).click();
  await page.getByText('Harbour bench is erased.').waitFor();
  await page.getByRole('heading', { name: 'Your benches' }).waitFor();
  await expectSound(page);
  await page.getByLabel('Name of the bench').fill('Last bench');
  await page.getByRole('button', { name: 'Start my bench' }).click();
  await page.waitForURL('**/find');
  await page.goto('/settings');
  await page.getByText('Take my name out of everything').click();
  const form = page.getByRole('form', { name: 'Erase me' });
  await form.getByLabel('Your password').fill(owner.password);
  await form.getByRole('button', { name: 'Erase me for good' }).click();
  // The bench would have nobody: that one goes first.
  await form.getByRole('alert').getByText('The bench would have no owner left.').waitFor();
  await expectSound(page);
  await page.goto('/settings/backup');
  await page.getByText('Take Last bench away for good').click();
  await page.getByRole('form', { name: 'Erase the bench' }).getByLabel('Your password').fill(owner.password);
  await page.getByRole('button', { name: 'Erase the bench for good' }).click();
  await page.getByText('Last bench is erased.').waitFor();
  await page.goto('/jobs');
  await page.getByText('You work at no bench.').waitFor();
  await expectSound(page);
  await page.goto('/settings');
  await page.getByText('Take my name out of everything').click();
  await form.getByLabel('Your password').fill(owner.password);
  await form.getByRole('button', { name: 'Erase me for good' }).click();
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await signIn(page);
  await page.getByRole('alert').getByText('Name and password do not belong together.').waitFor();
  await sheet.close();
  expect(unmeant(sheet)).toEqual([]);
});
