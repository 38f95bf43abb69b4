import { afterAll, beforeAll, expect, test } from 'vitest';
import type {
  DiagramAnswer,
  DiagramRowsAnswer,
  Diagrams,
  Found,
  JobPage,
  PartAnswer,
  Uploaded,
} from '../../../api/answers/index.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;

beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
});
afterAll(() => service.close());

const lines = ['1,RM-1,Ball bearing 5x11x4,2,', '2,RM-2,Wshr 5.l x 8 x 0.5,1,', '3,RM-3,Housing,1,'];
const rowsOf = async (id: string) =>
  (await bench.good<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`)).rows.filter(
    row => row.outcome === 'taken',
  );
const remove = (id: string) => bench.good<DiagramAnswer>(`/api/diagrams/${id}`, { method: 'DELETE' });
async function restore(id: string): Promise<DiagramAnswer> {
  const answer = await bench.good<DiagramAnswer>(`/api/diagrams/${id}/restore`, { method: 'POST' });
  await service.readAll();
  return answer;
}
const numbers = async (q: string) =>
  (await bench.good<Found>(`/api/find?q=${encodeURIComponent(q)}`)).parts.map(part => part.number);

test('a removed diagram is nowhere, and put back it is as it was: corrections, duty and needs too', async () => {
  const id = await bench.take('Corvane', 'Gone 1', lines);
  const [bearing, washer, housing] = await rowsOf(id);
  const correction = { category: 'washer', dims: { id: 5.1, od: 8, thickness: 0.5 }, attrs: {} };
  await bench.good(`/api/diagrams/${id}/rows/${washer!.id}/correction`, { method: 'POST', body: correction });
  await bench.good(`/api/parts/${housing!.part}/duty`, { method: 'PUT', body: { duty: 'load-holding' } });
  const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Jonas Abara' } });
  await bench.good(`/api/jobs/${job.id}/needs`, { method: 'POST', body: { row: bearing!.id, qty: 2 } });

  expect(await remove(id)).toMatchObject({ id, state: 'removed' });
  expect((await bench.good<Diagrams>('/api/diagrams')).diagrams).toEqual([]);
  expect((await bench.refused(`/api/diagrams/${id}`)).code).toBe('not-found');
  expect(await numbers('washer 5.1x8x0.5')).toEqual([]);
  expect(await numbers('RM-3')).toEqual([]);
  // A part that a job wants or whose duty a person told stays known, and so does the job's need.
  expect(await numbers('RM-1')).toContain('RM-1');
  expect((await bench.good<JobPage>(`/api/jobs/${job.id}`)).wants).toMatchObject([{ line: null, qty: 2 }]);

  await restore(id);
  const back = await rowsOf(id);
  expect(back.map(row => row.partNumber)).toEqual(['RM-1', 'RM-2', 'RM-3']);
  expect(back[1]!.correction).toMatchObject({ size: 'washer 5.1x8x0.5' });
  expect(await numbers('washer 5.1x8x0.5')).toEqual(['RM-2']);
  const part = await bench.good<PartAnswer>(`/api/parts/${back[2]!.part}`);
  expect(part.duty).toMatchObject({ duty: 'load-holding', standing: 'confirmed' });
  expect((await bench.good<JobPage>(`/api/jobs/${job.id}`)).wants).toMatchObject([{ line: { ref: '1' } }]);
});

test('one that is just read, or waits, is removed all the same', async () => {
  const body = { maker: 'Corvane', model: 'Gone 2', text: lines.join('\n') };
  const { diagram } = await bench.good<Uploaded>('/api/diagrams/text', { method: 'POST', body });
  await remove(diagram.id);
  await service.readAll();
  expect((await bench.refused(`/api/diagrams/${diagram.id}`)).code).toBe('not-found');
});

test('the same document put in once more is put back', async () => {
  const id = await bench.take('Corvane', 'Gone 3', lines);
  await remove(id);
  expect(await bench.take('Corvane', 'Gone 3', lines)).toBe(id);
  expect(await rowsOf(id)).toHaveLength(3);
});

test('putting back what is there changes nothing', async () => {
  const id = await bench.take('Corvane', 'Gone 4', lines);
  expect((await restore(id)).state).toBe('ready');
});
