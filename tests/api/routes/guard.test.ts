import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Accounts } from '../../../api/service.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;
beforeAll(async () => {
  service = await openService({ ports: [4180] });
  bench = await openBench({
    ...service,
    ask: (path, asked) =>
      service.ask(path, { ...asked, headers: { Host: '127.0.0.1:4180', ...asked?.headers } }),
  });
});
afterAll(() => service.close());

const code = async (response: Response) => ((await response.json()) as { code?: string }).code;

describe('Host', () => {
  test.each(['127.0.0.1:4180', 'localhost:4180', '[::1]:4180'])('%s is ours', async Host => {
    expect((await service.ask('/api/health', { headers: { Host } })).status).toBe(200);
  });

  test.each([
    'evil.example',
    'evil.example:4180',
    '127.0.0.1',
    '127.0.0.1:80',
    'localhost.evil.example:4180',
    '127.0.0.1:4180@evil.example',
    '0.0.0.0:4180',
  ])('%s is refused, for reading too', async Host => {
    const response = await service.ask('/api/health', { headers: { Host } });
    expect(response.status).toBe(403);
    expect(await code(response)).toBe('host-not-ours');
  });
});

describe('Origin', () => {
  const post = (headers: Record<string, string>) =>
    bench.ask('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, headers });

  test.each(['http://127.0.0.1:4180', 'http://localhost:4180'])('%s may write', async Origin => {
    expect((await post({ Origin })).status).toBe(201);
  });

  test('so may a client that is no page, and sends none', async () => {
    expect((await post({})).status).toBe(201);
  });

  test.each(['http://evil.example', 'null', 'https://127.0.0.1:4180', 'http://127.0.0.1:4181', ''])(
    '%j may not',
    async Origin => {
      const response = await post({ Origin });
      expect(response.status).toBe(403);
      expect(await code(response)).toBe('origin-not-ours');
    },
  );

  test('nor a cross-site request without one', async () => {
    expect((await post({ 'Sec-Fetch-Site': 'cross-site' })).status).toBe(403);
  });
});

test('every answer tells the browser to run, frame and sniff nothing of anybody else', async () => {
  for (const path of ['/api/health', '/api/nothing']) {
    const { headers } = await service.ask(path, { headers: { Host: 'localhost:4180' } });
    const policy = headers.get('Content-Security-Policy')!;
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
    expect(headers.get('Cache-Control')).toBe('no-store');
  }
});

test('where the page is opened over TLS, a browser is told to come by no other way', async () => {
  const of = async (accounts?: Accounts) => {
    const one = await openService({ accounts });
    const { headers } = await one.ask('/api/health');
    await one.close();
    return headers.get('Strict-Transport-Security');
  };
  expect(await of({ origin: 'https://bench.example', proxies: 0 })).toBe('max-age=31536000');
  expect(await of({ origin: 'http://localhost:4180', proxies: 0 })).toBeNull();
  expect(await of()).toBeNull();
});

test('a body beyond the limit is refused while it arrives', async () => {
  let sent = 0;
  const body = new ReadableStream({
    pull(controller) {
      sent += 1;
      controller.enqueue(new Uint8Array(1024 * 1024));
    },
  });
  const response = await service.app.request('/api/read', {
    method: 'POST',
    headers: { Host: 'localhost:4180', 'Content-Type': 'application/json' },
    body,
    duplex: 'half',
  } as RequestInit);
  expect(response.status).toBe(413);
  expect(await code(response)).toBe('too-large');
  expect(sent).toBeLessThan(20);
});
