import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { type IncomingMessage, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { diagram } from '../../../api/db/schema/index.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

const program = fileURLToPath(new URL('../../../dist/fettle.js', import.meta.url));
const password = 'a lantern over the quay';

let store: TestStore;
let folder: string;
let env: NodeJS.ProcessEnv;
beforeAll(async () => {
  store = await createTestStore();
  folder = await mkdtemp(join(tmpdir(), 'fettle-person-'));
  env = { ...process.env, DATABASE_URL: store.url, FETTLE_DATA: join(folder, 'data'), PORT: '0' };
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

interface Done {
  code: number;
  out: string;
  said: string;
}

/** Runs the built program with some words on its standard input. */
function fettle(args: string[], typed = '', more: NodeJS.ProcessEnv = {}): Promise<Done> {
  return new Promise(resolve => {
    const child = execFile(
      process.execPath,
      [program, ...args],
      { env: { ...env, ...more } },
      (error, out, said) => resolve({ code: Number(error?.code ?? 0), out, said }),
    );
    child.stdin!.end(typed);
  });
}

/** Serves until stopped; what it says, line by line. */
async function serving(
  more: NodeJS.ProcessEnv = {},
): Promise<{ child: ChildProcess; address: string; log: string[] }> {
  const child = spawn(process.execPath, [program, 'serve'], {
    env: { ...env, ...more },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const log: string[] = [];
  createInterface({ input: child.stderr! }).on('line', line => log.push(line));
  for await (const line of createInterface({ input: child.stdout! })) {
    const address = /http:\/\/127\.0\.0\.1:\d+/.exec(line)?.[0];
    if (address) return { child, address, log };
  }
  throw new Error(`It did not serve. It said:\n${log.join('\n')}`);
}

const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise(resolve => child.once('exit', code => resolve(code)));

describe('fettle person', () => {
  test('add makes somebody an owner, by a password from the input', async () => {
    const done = await fettle(['person', 'add', 'Marta', '--bench', 'Harbour bench'], `${password}\n`);
    expect([done.code, done.said]).toEqual([0, '']);
    expect(JSON.parse(done.out)).toMatchObject({ signIn: 'marta', new: true, bench: 'Harbour bench' });
    expect(done.out).not.toContain(password);
  });

  test('add a second bench to who is there already: no password is asked for', async () => {
    const { code, out } = await fettle(['person', 'add', 'marta', '--bench', 'Quay bench']);
    expect([code, JSON.parse(out).new]).toEqual([0, false]);
  });

  test.each([
    [['person', 'add', 'bo', '--bench', 'B'], `${password}\n`, 'sign-in name'],
    [['person', 'add', 'bosun', '--bench', 'B'], 'short\n', 'password'],
    [['person', 'add', 'bosun'], `${password}\n`, '--bench'],
    [['person', 'link', 'nobody.here'], '', 'nobody.here'],
  ])('%s is refused', async (args, typed, place) => {
    const { code, out, said } = await fettle(args, typed);
    expect([code, out]).toEqual([1, '']);
    expect(said).toContain(`fettle: ${place}:`);
  });

  test('link prints a link at the address that people open', async () => {
    const { out } = await fettle(['person', 'link', 'marta'], '', { FETTLE_ORIGIN: 'https://bench.example' });
    expect(JSON.parse(out).link).toMatch(/^https:\/\/bench\.example\/new-password#fettle_p_[\w-]{86}$/);
  });
});

describe('fettle serve over a database of its own', () => {
  test('lets nobody in who has not signed in, and stops in order', async () => {
    const { child, address, log } = await serving();
    const ask = (path: string, init: RequestInit = {}) =>
      fetch(address + path, { ...init, headers: { Origin: address, ...init.headers } });
    expect((await ask('/api/find?q=608')).status).toBe(401);
    expect((await ask('/api/benches')).status).toBe(401);
    const signedIn = await ask('/api/session', {
      method: 'POST',
      body: JSON.stringify({ signIn: 'marta', password }),
      headers: { 'Content-Type': 'application/json' },
    });
    expect(signedIn.status).toBe(200);
    // In the clear, on this machine, a cookie cannot ask for TLS.
    const cookie = signedIn.headers.get('Set-Cookie')!;
    expect(cookie).toMatch(/^fettle=fettle_s_/);
    const headers = { Cookie: cookie.split(';')[0]! };
    const benches = (await (await ask('/api/benches', { headers })).json()) as {
      benches: { name: string }[];
    };
    // No demo bench: every bench is somebody's.
    expect(benches.benches.map(bench => bench.name).sort()).toEqual(['Harbour bench', 'Quay bench']);
    child.kill('SIGTERM');
    expect(await ended(child)).toBe(0);
    for (const line of log) expect(JSON.parse(line)).toMatchObject({ time: expect.any(String) });
    expect(log.join('')).not.toMatch(/marta|lantern|q=/);
  });

  test('waits for the requests that run when it is told to stop', async () => {
    const { child, address } = await serving({ FETTLE_ACCOUNTS: 'off' });
    const asked = request(`${address}/api/fit`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Origin: address },
    });
    const answered = once(asked, 'response') as Promise<[IncomingMessage]>;
    // Half of it is on its way when the program is told to stop, the rest comes after.
    asked.write('{"shaft": {"val');
    await new Promise(resolve => setTimeout(resolve, 300));
    const code = ended(child);
    child.kill('SIGTERM');
    await new Promise(resolve => setTimeout(resolve, 300));
    asked.end('ue": 4.996}}');
    const [answer] = await answered;
    expect(answer.statusCode).toBe(200);
    answer.resume();
    expect(await code).toBe(0);
    expect(await fetch(address).catch(() => 'gone')).toBe('gone');
  });

  test('gives back what it was reading when it is told to stop, for another to take at once', async () => {
    const { child, address } = await serving({ FETTLE_ACCOUNTS: 'off' });
    const ask = async (path: string, body?: object, bench?: string) => {
      const response = await fetch(address + path, {
        method: body ? 'POST' : 'GET',
        ...(body && { body: JSON.stringify(body) }),
        headers: {
          'Content-Type': 'application/json',
          'Idempotency-Key': `stopping ${path}`.replaceAll(' ', '-'),
          Origin: address,
          ...(bench && { Workshop: bench }),
        },
      });
      return response.json();
    };
    const { id: bench } = await ask('/api/benches', { name: 'Stopping' });
    const text = Array.from({ length: 40_000 }, (_, i) => `${i},A-${i},BALL BEARING 5X11X4,1`).join('\n');
    const given = { maker: 'Brindlow', model: 'Tern', text };
    const { diagram: taken } = await ask('/api/diagrams/text', given, bench);
    const standing = async () => {
      const [row] = await store.inWorkshop(bench, tx =>
        tx.select({ state: diagram.state, lease: diagram.lease }).from(diagram),
      );
      return row!;
    };
    while ((await standing()).state === 'waiting') await new Promise(resolve => setTimeout(resolve, 20));
    expect((await standing()).state).toBe('reading');
    child.kill('SIGTERM');
    expect(await ended(child)).toBe(0);
    expect(await standing()).toEqual({ state: 'waiting', lease: null });
    expect(taken.id).toMatch(/^[0-9a-f-]{36}$/);
  });

  test.each([
    [{ FETTLE_HOST: '0.0.0.0', FETTLE_ACCOUNTS: 'off' }, 'FETTLE_HOST'],
    [{ FETTLE_HOST: '0.0.0.0' }, 'FETTLE_ORIGIN'],
    [{ PORT: 'x', FETTLE_PROXIES: 'y' }, 'PORT, FETTLE_PROXIES'],
  ])('refuses %o, and says what to do', async (more, place) => {
    const { code, said } = await fettle(['serve'], '', more);
    expect(code).toBe(1);
    expect(said).toContain(`fettle: ${place}:`);
    expect(said.trim().split('\n').length).toBeGreaterThan(1);
  });
});
