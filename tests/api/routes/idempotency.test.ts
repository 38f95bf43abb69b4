import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Bench, Benches, JobPage, Jobs } from '../../../api/answers/index.ts';
import { openBench, openService, type TestService } from './bench.ts';

let service: TestService;
beforeAll(async () => {
  service = await openService();
});
afterAll(() => service.close());

describe('a POST under one key', () => {
  test('is done once, and a repeat gets the same answer', async () => {
    const bench = await openBench(service);
    const key = randomUUID();
    const post = () => bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key });
    const first = await post();
    await bench.good(`/api/jobs/${first.id}`, { method: 'PATCH', body: { owner: 'Otto' } });
    expect(await post()).toEqual(first);
    expect((await bench.good<Jobs>('/api/jobs')).jobs).toHaveLength(1);
  });

  test('sent many times at once is done once', async () => {
    const bench = await openBench(service);
    const key = randomUUID();
    const answers = await Promise.all(
      Array.from({ length: 8 }, () =>
        bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key }),
      ),
    );
    expect(new Set(answers.map(answer => answer.id)).size).toBe(1);
    expect((await bench.good<Jobs>('/api/jobs')).jobs).toHaveLength(1);
  });

  test('with another request is refused, and changes nothing', async () => {
    const bench = await openBench(service);
    const key = randomUUID();
    await bench.good('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key });
    const problem = await bench.refused('/api/jobs', { method: 'POST', body: { owner: 'Otto' }, key });
    expect(problem).toMatchObject({ status: 409, code: 'idempotency-key-reused' });
    expect((await bench.good<Jobs>('/api/jobs')).jobs).toHaveLength(1);
  });

  test('that was refused may be tried again with what was wrong set right', async () => {
    const bench = await openBench(service);
    const key = randomUUID();
    await bench.refused('/api/jobs', { method: 'POST', body: { owner: 'Ada', model: randomUUID() }, key });
    await bench.good('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key });
  });

  test('is another bench’s own affair', async () => {
    const [one, other] = [await openBench(service), await openBench(service)];
    const key = randomUUID();
    const ids = await Promise.all(
      [one, other].map(async bench => {
        const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada' }, key });
        return job.id;
      }),
    );
    expect(new Set(ids).size).toBe(2);
  });

  test('a file is the same request whatever the form’s boundary', async () => {
    const bench = await openBench(service);
    const key = randomUUID();
    const send = (text: string) => {
      const form = new FormData();
      form.set('file', new File([text], 'list.csv'));
      form.set('maker', 'Brindlow');
      form.set('model', 'Tern 40');
      return bench.ask('/api/diagrams', { method: 'POST', body: form, key });
    };
    const first = await (await send('1,A-1,KNOB,1')).json();
    expect(await (await send('1,A-1,KNOB,1')).json()).toEqual(first);
    expect((await send('1,A-1,LEVER,1')).status).toBe(409);
  });
});

describe('POST /api/benches', () => {
  test('makes one bench for a key, also when sent at once', async () => {
    const key = randomUUID();
    const start = (name: string) => service.ask('/api/benches', { method: 'POST', body: { name }, key });
    const started = await Promise.all(
      [1, 2, 3].map(async () => (await (await start('Slipway')).json()) as Bench),
    );
    expect(new Set(started.map(bench => bench.id)).size).toBe(1);
    expect((await start('Another')).status).toBe(409);
    const { benches, current } = (await (await service.ask('/api/benches')).json()) as Benches;
    expect(benches.filter(bench => bench.name === 'Slipway')).toHaveLength(1);
    expect(benches.every(bench => bench.name !== 'Another')).toBe(true);
    expect(current).toBe(started[0]!.id);
  });
});
