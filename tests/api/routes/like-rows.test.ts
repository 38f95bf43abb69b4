import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DiagramRow, DiagramRowsAnswer, Found } from '../../../api/answers/index.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;

beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
});
afterAll(() => service.close());

/** "Zwsch" is no word that any list of ours explains; what it is can be told by a person alone. */
const lines = [
  '1,ZW-1,Zwsch A 5 x 9 x 0.5,1,',
  '2,ZW-2,Zwsch B 6 x 11 x 0.8,1,',
  '3,ZW-3,"Zwsch C 4,1 x 8 x 1",2,',
  '4,ZW-4,Zwsch D 11 x 6 x 0.8,1,',
  '5,ZW-5,Ball bearing 5x11x4,1,',
  '6,ZW-6,Zwsch E,1,',
];
const said = { category: 'washer', dims: { id: 5, od: 9, thickness: 0.5 }, attrs: {} };

const rowsOf = async (id: string) =>
  (await bench.good<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`)).rows.filter(
    row => row.outcome === 'taken',
  );
const sizes = async (id: string) =>
  (await rowsOf(id)).map(row => row.correction?.size ?? row.reading?.size ?? '-');
const path = (id: string, row: DiagramRow) => `/api/diagrams/${id}/rows/${row.id}/correction`;
const correct = (id: string, row: DiagramRow, body: object = said) =>
  bench.good<DiagramRow>(path(id, row), { method: 'POST', body });

const asRead = ['-', '-', '-', '-', 'bearing 5x11x4', '-'];
const putRight = ['washer 5x9x0.5', 'washer 6x11x0.8', 'washer 4.1x8x1', '-', 'bearing 5x11x4', '-'];

test('one word puts like rows right, is found by, stays when read again, and is taken back as one', async () => {
  const id = await bench.take('Hestrel', 'Like 1', lines);
  expect(await sizes(id)).toEqual(asRead);
  const answer = await correct(id, (await rowsOf(id))[0]!);
  expect(answer.correction).toMatchObject({ taught: 2, taughtBy: null });
  expect(await sizes(id)).toEqual(putRight);
  const [, second] = await rowsOf(id);
  expect(second!.correction).toMatchObject({ taught: 0, taughtBy: '1' });
  const found = await bench.good<Found>('/api/find?q=washer%206x11x0.8');
  expect(found.parts.map(part => part.number)).toContain('ZW-2');

  await bench.good(`/api/diagrams/${id}/read-again`, { method: 'POST' });
  await service.readAll();
  expect(await sizes(id)).toEqual(putRight);

  const undone = await bench.good<DiagramRow>(path(id, (await rowsOf(id))[0]!), { method: 'DELETE' });
  expect(undone.correction).toBeNull();
  expect(await sizes(id)).toEqual(asRead);
  expect((await bench.good<Found>('/api/find?q=washer%206x11x0.8')).parts).toEqual([]);
});

test('a person’s own word on a like row is left alone, and stays when the other is taken back', async () => {
  const id = await bench.take('Hestrel', 'Like 2', lines);
  const [first, second, third] = await rowsOf(id);
  const shim = { category: 'shim', dims: { id: 6, od: 11, thickness: 0.8 }, attrs: {} };
  await correct(id, second!, shim);
  expect(await sizes(id)).toEqual([
    'shim 5x9x0.5',
    'shim 6x11x0.8',
    'shim 4.1x8x1',
    '-',
    'bearing 5x11x4',
    '-',
  ]);
  // What was only taught gives way to a word of its own.
  await correct(id, first!);
  expect(await sizes(id)).toEqual([
    'washer 5x9x0.5',
    'shim 6x11x0.8',
    'shim 4.1x8x1',
    '-',
    'bearing 5x11x4',
    '-',
  ]);
  await bench.good(path(id, second!), { method: 'DELETE' });
  expect(await sizes(id)).toEqual(['washer 5x9x0.5', '-', '-', '-', 'bearing 5x11x4', '-']);
  await correct(id, third!, { ...said, dims: { id: 4.1, od: 8, thickness: 1 } });
  expect((await sizes(id)).slice(0, 3)).toEqual(putRight.slice(0, 3));
});

test('a row that was read surely in another way is no like row', async () => {
  const id = await bench.take('Hestrel', 'Like 3', [
    '1,SW-1,"Washer, drag 5 x 9 x 0.5",1,',
    '2,SW-2,"Washer, shaft 6 x 11 x 0.8",1,',
    '3,SW-3,Screw A M3 x 8,1,',
    '4,SW-4,Screw B M4 x 10,1,',
  ]);
  const rows = await rowsOf(id);
  const shim = { category: 'shim', dims: { id: 5, od: 9, thickness: 0.5 }, attrs: {} };
  // Both washers were read in one way, so what is wrong of one is wrong of the other.
  expect((await correct(id, rows[0]!, shim)).correction?.taught).toBe(1);
  expect(await sizes(id)).toEqual(['shim 5x9x0.5', 'shim 6x11x0.8', 'screw M3x0.5x8', 'screw M4x0.7x10']);
  // A length that the line does not print is true of this line alone.
  const longer = { category: 'screw', dims: { thread: 'M3', length: 9 }, attrs: {} };
  expect((await correct(id, rows[2]!, longer)).correction?.taught).toBe(0);
  expect((await sizes(id))[3]).toBe('screw M4x0.7x10');
});
