import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  DiagramRowsAnswer,
  Found,
  JobPage,
  Jobs,
  NeedAnswer,
  OrderAnswer,
} from '../../../api/answers/index.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
beforeAll(async () => {
  service = await openService();
});
afterAll(() => service.close());

const openJob = (bench: TestBench, body: object) =>
  bench.good<JobPage>('/api/jobs', { method: 'POST', body });

/** Adds a need by the reference number of a list's line. */
async function want(bench: TestBench, job: string, diagram: string, ref: string, qty: number | null) {
  const { rows } = await bench.good<DiagramRowsAnswer>(`/api/diagrams/${diagram}/rows`);
  const row = rows.find(one => one.ref === ref)!;
  return bench.good<NeedAnswer>(`/api/jobs/${job}/needs`, { method: 'POST', body: { row: row.id, qty } });
}

const order = (bench: TestBench, jobs?: string[]) =>
  bench.good<OrderAnswer>(`/api/order${jobs ? `?jobs=${jobs.join(',')}` : ''}`);
const lines = (answer: OrderAnswer) => answer.groups.flatMap(group => group.lines);
const totals = (answer: OrderAnswer) =>
  Object.fromEntries(lines(answer).map(line => [line.item, line.total]));

describe('jobs', () => {
  test('are opened, changed, closed and opened again', async () => {
    const bench = await openBench(service);
    const job = await openJob(bench, {
      owner: 'Ada of the quay',
      fault: 'grinds',
      serial: '4711',
      limit: { minor: 12_000, currency: 'EUR' },
      promised: '2026-12-24',
    });
    expect(job).toMatchObject({
      number: 1,
      promised: '2026-12-24',
      limit: { minor: 12_000, currency: 'EUR' },
    });
    const path = `/api/jobs/${job.id}`;
    const change = (body: object) => bench.good<JobPage>(path, { method: 'PATCH', body });
    expect(await change({ serial: null, limit: null })).toMatchObject({
      serial: null,
      limit: null,
      fault: 'grinds',
    });
    expect((await change({ closed: true })).closedAt).not.toBeNull();
    expect((await bench.good<Jobs>('/api/jobs')).jobs).toEqual([]);
    expect((await bench.good<Jobs>('/api/jobs?state=closed')).jobs).toHaveLength(1);
    expect(
      (await bench.refused(`${path}/needs`, { method: 'POST', body: { item: 'bearing 5x11x4', qty: 1 } }))
        .code,
    ).toBe('in-use');
    expect((await change({ closed: false })).closedAt).toBeNull();
  });

  test('count up without gaps or doubles, however many are opened at once', async () => {
    const bench = await openBench(service);
    const jobs = await Promise.all(
      Array.from({ length: 12 }, (_, at) => openJob(bench, { owner: `owner ${at}` })),
    );
    expect(jobs.map(job => job.number).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 12 }, (_, at) => at + 1),
    );
  });
});

describe('needs', () => {
  test('of an item in any writing; changed, removed, and put back as it was', async () => {
    const bench = await openBench(service);
    const job = await openJob(bench, { owner: 'Ada' });
    const path = `/api/jobs/${job.id}/needs`;
    const need = await bench.good<NeedAnswer>(path, {
      method: 'POST',
      body: { item: 'BALL BEARING 11X5X4', qty: 2, note: 'spool' },
    });
    expect(need).toMatchObject({ item: 'bearing 5x11x4', qty: 2, part: null, line: null });
    await bench.good(`/api/needs/${need.id}`, { method: 'PATCH', body: { qty: 3 } });
    const removed = await bench.good<NeedAnswer>(`/api/needs/${need.id}`, { method: 'DELETE' });
    expect(removed).toMatchObject({ qty: 3, note: 'spool' });
    expect((await bench.refused(`/api/needs/${need.id}`, { method: 'DELETE' })).code).toBe('not-found');
    const { item, qty, note } = removed;
    await bench.good(path, { method: 'POST', body: { item, qty, note } });
    expect(totals(await order(bench))).toEqual({ 'bearing 5x11x4': 3 });
  });

  test.each([
    [{ qty: 1 }, 'bad-request'],
    [{ item: 'something round', qty: 1 }, 'not-a-size'],
    [{ item: 'bearing 5x11x4', qty: 0 }, 'bad-request'],
    [{ item: 'bearing 5x11x4', qty: -1 }, 'bad-request'],
    [{ part: '11111111-1111-4111-8111-111111111111', qty: 1 }, 'not-found'],
    [{ row: '11111111-1111-4111-8111-111111111111', qty: 1 }, 'not-found'],
  ])('%o is refused as %s', async (body, code) => {
    const bench = await openBench(service);
    const job = await openJob(bench, { owner: 'Ada' });
    expect((await bench.refused(`/api/jobs/${job.id}/needs`, { method: 'POST', body })).code).toBe(code);
  });

  test('keep their part while the list it stood on is read again', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', ['2,BR-201,BALL BEARING 5X11X4,2,']);
    const job = await openJob(bench, { owner: 'Ada' });
    const need = await want(bench, job.id, diagram, '2', 2);
    await bench.good(`/api/diagrams/${diagram}/read-again`, { method: 'POST' });
    await service.readAll();
    const [again] = (await bench.good<JobPage>(`/api/jobs/${job.id}`)).wants;
    expect(again).toEqual(need);
  });
});

describe('the order', () => {
  test('sums two jobs by item over makers, with who needs how many', async () => {
    const bench = await openBench(service);
    const tern = await bench.take('Brindlow', 'Tern 40', [
      '2,BR-201,BALL BEARING 5X11X4 ZZ,2,',
      '3,BR-301,PAN HEAD SCREW M3x8,4,',
    ]);
    const dunlin = await bench.take('Hestrel', 'Dunlin 7', [
      '12,HES-77,BALL BEARING 5X11X4 ZZ,1,',
      '13,HES-78,COUNTERSUNK SCREW M3x8,2,',
    ]);
    const [ada, otto] = [await openJob(bench, { owner: 'Ada' }), await openJob(bench, { owner: 'Otto' })];
    await want(bench, ada.id, tern, '2', 2);
    await want(bench, ada.id, tern, '3', 4);
    await want(bench, otto.id, dunlin, '12', 1);
    await want(bench, otto.id, dunlin, '13', 2);
    const answer = await order(bench);
    const bearing = lines(answer).find(line => line.size === 'bearing 5x11x4')!;
    expect(bearing).toMatchObject({
      total: 3,
      jobs: [
        { owner: 'Ada', qty: 2, refs: ['2'] },
        { owner: 'Otto', qty: 1, refs: ['12'] },
      ],
    });
    expect(answer.groups.map(group => group.maker)).toEqual(['Brindlow', 'Hestrel', null]);
    expect(lines(answer).filter(line => line.size === 'screw M3x0.5x8')).toHaveLength(2);
    expect(lines(await order(bench, [otto.id])).map(line => line.total)).toEqual([1, 2]);
    expect(totals(await order(bench, []))).toEqual(totals(answer));
    const csv = await (await bench.ask('/api/order.csv')).text();
    expect(csv.split('\r\n')).toHaveLength(5);
  });

  test('an assembly covers its child; the serial decides; the successor is ordered; a load takes the maker’s own', async () => {
    const bench = await openBench(service);
    const smew = await bench.take('Ondrey', 'Smew', [
      '15,ON-15,DRUM ASSEMBLY,1,includes 16-17',
      '16,ON-16,COVER,1,',
      '17,ON-17,PIN,2,not sold separately',
      '18,ON-18,LEVER,1,superseded by ON-19',
      '19,ON-19,LEVER,1,',
      '20,ON-20,KNOB,1,Reference only',
    ]);
    const winch = await bench.take('Corvane', 'Gull winch', ['8,CV8,BALL BEARING 5X11X4,2,']);
    const job = await openJob(bench, { owner: 'Ada' });
    await want(bench, job.id, smew, '17', 1);
    await want(bench, job.id, smew, '16', 1);
    await want(bench, job.id, smew, '18', 1);
    await want(bench, job.id, smew, '20', 1);
    await want(bench, job.id, winch, '8', 2);
    const answer = await order(bench);
    expect(totals(answer)).toEqual({
      'part Ondrey ON-15': 1,
      'part Ondrey ON-19': 1,
      'part Corvane CV8': 2,
    });
    expect(lines(answer).find(line => line.item === 'part Corvane CV8')!.makersPartOnly).toBe(true);
    expect(answer.leftOut.map(left => left.what)).toEqual(['20 KNOB', '16 COVER']);
  });

  test('an open attribute is answered by a person, and the answer is taken back', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', ['2,BR-201,SCREW M3X8 PAN HEAD,2,']);
    const job = await openJob(bench, { owner: 'Ada' });
    const need = await want(bench, job.id, diagram, '2', 2);
    const stated = 'screw M3x0.5x8 pan phillips';
    await bench.good(`/api/jobs/${job.id}/needs`, { method: 'POST', body: { item: stated, qty: 1 } });
    const [ask] = lines(await order(bench)).flatMap(line => line.asks);
    expect(ask).toMatchObject({ code: 'open-attributes', needs: [need.id], takeAs: [stated] });

    const path = `/api/needs/${need.id}`;
    const answer = (takenAs: string | null) => ({ method: 'PATCH', body: { takenAs } });
    expect(await bench.good(path, answer(stated))).toMatchObject({ takenAs: stated, qty: 2 });
    const [line, ...rest] = lines(await order(bench));
    expect(rest).toEqual([]);
    expect(line).toMatchObject({ item: stated, total: 3, asks: [], taken: [{ need: need.id }] });
    const csv = await (await bench.ask('/api/order.csv')).text();
    expect(csv).toContain(`taken as ${stated} by you`);
    const book = await bench.ask('/api/order.xlsx');
    expect(book.headers.get('content-type')).toContain('spreadsheetml.sheet');
    const sheet = unzipSync(new Uint8Array(await book.arrayBuffer()))['xl/worksheets/sheet1.xml']!;
    expect(strFromU8(sheet)).toContain(`taken as ${stated} by you`);
    expect(await (await bench.ask('/api/order.txt')).text()).toContain(`3 pcs  Brindlow BR-201, `);

    const removed = await bench.good<NeedAnswer>(path, { method: 'DELETE' });
    const body = { row: removed.line!.row, qty: removed.qty, takenAs: removed.takenAs };
    const again = await bench.good<NeedAnswer>(`/api/jobs/${job.id}/needs`, { method: 'POST', body });
    expect(totals(await order(bench))).toEqual({ [stated]: 3 });
    await bench.good(`/api/needs/${again.id}`, answer(null));
    expect(totals(await order(bench))).toEqual({ 'screw M3x0.5x8 pan': 2, [stated]: 1 });
    for (const other of ['screw M3x0.5x10 pan', 'screw M3x0.5x8 countersunk phillips'])
      expect((await bench.refused(`/api/needs/${again.id}`, answer(other))).code).toBe('bad-request');
    expect((await bench.refused(`/api/needs/${again.id}`, answer('round'))).code).toBe('not-a-size');
  });

  test('a part chosen from finding takes its only line on the job’s model', async () => {
    const bench = await openBench(service);
    await bench.take('Ondrey', 'Smew', [
      '15,ON-15,DRUM ASSEMBLY,1,includes 17',
      '17,ON-17,PIN,2,not sold separately',
    ]);
    const found = await bench.good<Found>('/api/find?q=ON-17');
    const model = found.parts[0]!.models[0]!.id;
    const job = await openJob(bench, { owner: 'Ada', model });
    await bench.good(`/api/jobs/${job.id}/needs`, {
      method: 'POST',
      body: { part: found.parts[0]!.id, qty: 1 },
    });
    expect(totals(await order(bench))).toEqual({ 'part Ondrey ON-15': 1 });
  });
});
