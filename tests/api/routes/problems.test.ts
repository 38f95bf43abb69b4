import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;
beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
});
afterAll(() => service.close());

const nobody = '11111111-1111-4111-8111-111111111111';

describe('a failure is problem details with a place and a remedy', () => {
  test.each([
    ['/api/nothing', {}, 404, 'route-not-found'],
    ['/api/find', {}, 400, 'bad-request'],
    ['/api/find?q=%20', {}, 400, 'bad-request'],
    ['/api/jobs?state=odd', {}, 400, 'bad-request'],
    [`/api/jobs/${nobody}`, {}, 404, 'not-found'],
    ['/api/jobs/12', {}, 404, 'not-found'],
    ['/api/sizes/nonsense', {}, 404, 'not-found'],
    ['/api/jobs', { method: 'POST', body: {} }, 400, 'bad-request'],
    ['/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key: null }, 400, 'idempotency-key-missing'],
    ['/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key: 'short' }, 400, 'idempotency-key-missing'],
    ['/api/jobs', { method: 'POST', body: { owner: 'Ada', model: nobody } }, 404, 'not-found'],
    ['/api/order?jobs=1', {}, 400, 'bad-request'],
    [`/api/order?jobs=${nobody}`, {}, 404, 'not-found'],
  ])('%s %o', async (path, asked, status, code) => {
    const response = await bench.ask(path, asked);
    expect(response.status).toBe(status);
    expect(response.headers.get('Content-Type')).toBe('application/problem+json');
    const problem = (await response.json()) as Record<string, unknown>;
    expect(problem).toMatchObject({ status, code, type: `urn:fettlebench:problem:${code}` });
    for (const part of ['title', 'detail', 'place', 'remedy'])
      expect(String(problem[part]).length).toBeGreaterThan(2);
    expect(problem.requestId).toBe(response.headers.get('X-Request-Id'));
  });

  test('names the field that zod found', async () => {
    const problem = await bench.refused('/api/jobs', {
      method: 'POST',
      body: { owner: 'Ada', limit: { minor: -1, currency: 'EUR' } },
    });
    expect(problem.place).toBe('limit.minor in the request');
  });

  test('malformed JSON', async () => {
    const response = await service.app.request('/api/jobs', {
      method: 'POST',
      headers: {
        Workshop: bench.id,
        'Idempotency-Key': 'one-two-three',
        'Content-Type': 'application/json',
      },
      body: '{"owner": ',
    });
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({ code: 'not-json' });
  });

  test('a body of another type', async () => {
    const response = await service.app.request('/api/jobs', {
      method: 'POST',
      headers: { Workshop: bench.id, 'Idempotency-Key': 'one-two-three', 'Content-Type': 'text/xml' },
      body: '<a/>',
    });
    expect(response.status).toBe(415);
  });

  test('NUL in a query or a body is refused, not a failure of ours', async () => {
    expect((await bench.ask('/api/find?q=a%00b')).status).toBeLessThan(500);
    expect((await bench.ask('/api/jobs', { method: 'POST', body: { owner: 'a\0b' } })).status).toBe(400);
  });

  test('what is not our refusal is internal: the cause goes to the log under the request id, and no further', async () => {
    const broken = await openService({
      engine: {
        ...(await import('../../../api/search/postgres.ts')).postgresEngine,
        correct: () => Promise.reject(new Error('secret cause')),
      },
    });
    try {
      const there = await openBench(broken);
      const response = await there.ask('/api/find?q=spool');
      const text = await response.text();
      expect(response.status).toBe(500);
      expect(text).not.toContain('secret cause');
      const { code, requestId } = JSON.parse(text);
      expect(code).toBe('internal');
      expect(broken.logged).toContainEqual(
        expect.objectContaining({ requestId, cause: expect.objectContaining({ message: 'secret cause' }) }),
      );
    } finally {
      await broken.close();
    }
  });
});

describe('which bench', () => {
  test('a read that names none is answered for the bench last opened', async () => {
    const other = await openBench(service, 'Other');
    await other.good('/api/jobs', { method: 'POST', body: { owner: 'Otto' } });
    const owners = async () =>
      ((await (await service.ask('/api/jobs')).json()) as { jobs: { owner: string }[] }).jobs.map(
        job => job.owner,
      );
    expect(await owners()).toEqual(['Otto']);
    await service.ask(`/api/benches/${bench.id}/open`, { method: 'POST' });
    expect(await owners()).toEqual([]);
  });

  test('a write that names none is refused', async () => {
    const response = await service.ask('/api/jobs', { method: 'POST', body: { owner: 'Ada' } });
    expect(await response.json()).toMatchObject({ code: 'workshop-missing', status: 400 });
  });

  test.each([nobody, 'odd', ''])('Workshop: %j is no bench', async id => {
    const response = await service.ask('/api/jobs', { headers: { Workshop: id } });
    expect(await response.json()).toMatchObject({ code: 'bench-not-found', status: 404 });
  });
});
