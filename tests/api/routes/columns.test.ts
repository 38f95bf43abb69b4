import { afterAll, beforeAll, expect, test } from 'vitest';
import type {
  DiagramColumns,
  DiagramRow,
  DiagramRowsAnswer,
  JobPage,
  NeedAnswer,
  Pasted,
  Uploaded,
} from '../../../api/answers/index.ts';
import type { ColumnMeaning } from '../../../indexer/reading/column-meanings.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;

beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
});
afterAll(() => service.close());

/** Reference and quantity can be told apart by a person alone: the list has no header, and both count up. */
const text = [
  '1;AB-101;Ball bearing 5x11x4;2',
  '2;AB-102;Wshr 5.l x 8 x 0.5;4',
  '3;AB-103;Screw M3x8;6',
  '4;AB-104;Housing;8',
].join('\n');
const turned: ColumnMeaning[] = ['qty', 'partNumber', 'description', 'ref'];

async function take(model: string, columns?: (ColumnMeaning[] | null)[]): Promise<string> {
  const body = { maker: 'Ondrey', model, text, name: `${model}.csv`, columns };
  const { diagram } = await bench.good<Uploaded>('/api/diagrams/text', { method: 'POST', body });
  await service.readAll();
  return diagram.id;
}

const columnsOf = (id: string) => bench.good<DiagramColumns>(`/api/diagrams/${id}/columns`);
const rowsOf = async (id: string) =>
  (await bench.good<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`)).rows.filter(
    row => row.outcome === 'taken',
  );
const told = (rows: DiagramRow[]) => rows.map(({ ref, qty }) => `${ref}: ${qty}`);

async function say(id: string, given: DiagramColumns['given']): Promise<DiagramColumns> {
  const answer = await bench.good<DiagramColumns>(`/api/diagrams/${id}/columns`, {
    method: 'PUT',
    body: { given },
  });
  await service.readAll();
  return answer;
}

test('the columns are told with their first cells', async () => {
  const { tables, given } = await columnsOf(await take('Tell'));
  expect(given).toBeNull();
  expect(tables).toMatchObject([
    {
      page: 1,
      place: 'row 1',
      columns: [
        { title: '', meaning: 'ref', cells: ['1', '2', '3'] },
        { meaning: 'partNumber', cells: ['AB-101', 'AB-102', 'AB-103'] },
        { meaning: 'description' },
        { meaning: 'qty', cells: ['2', '4', '6'] },
      ],
    },
  ]);
});

test('what a person says of them is read at once, survives reading again, and is taken back', async () => {
  const id = await take('Turn');
  expect(told(await rowsOf(id))).toEqual(['1: 2', '2: 4', '3: 6', '4: 8']);
  const said = await say(id, [turned]);
  expect(said.diagram.state).toBe('waiting');
  expect(told(await rowsOf(id))).toEqual(['2: 1', '4: 2', '6: 3', '8: 4']);
  expect((await columnsOf(id)).tables[0]!.columns.map(({ meaning }) => meaning)).toEqual(turned);

  await bench.good(`/api/diagrams/${id}/read-again`, { method: 'POST' });
  await service.readAll();
  expect(told(await rowsOf(id))).toEqual(['2: 1', '4: 2', '6: 3', '8: 4']);
  await say(id, null);
  expect(told(await rowsOf(id))).toEqual(['1: 2', '2: 4', '3: 6', '4: 8']);
});

test('a correction and a need stay with their row, whatever its columns are called', async () => {
  const id = await take('Keep');
  const [, washer] = await rowsOf(id);
  const correction = { category: 'washer', dims: { id: 5.1, od: 8, thickness: 0.5 }, attrs: {} };
  await bench.good(`/api/diagrams/${id}/rows/${washer!.id}/correction`, { method: 'POST', body: correction });
  const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Marta Quill' } });
  const need = await bench.good<NeedAnswer>(`/api/jobs/${job.id}/needs`, {
    method: 'POST',
    body: { row: washer!.id, qty: 1 },
  });
  expect(need.line).toMatchObject({ row: washer!.id, ref: '2' });

  await say(id, [turned]);
  const now = (await rowsOf(id))[1]!;
  expect(now).toMatchObject({ id: washer!.id, ref: '4', doubtful: false });
  expect(now.correction).toMatchObject({ size: 'washer 5.1x8x0.5' });
  const { wants } = await bench.good<JobPage>(`/api/jobs/${job.id}`);
  expect(wants[0]!.line).toMatchObject({ row: washer!.id, ref: '4' });

  await say(id, null);
  expect((await rowsOf(id))[1]!.correction).toMatchObject({ size: 'washer 5.1x8x0.5' });
});

test('a list is kept as its columns were put right before', async () => {
  const body = { text, columns: [turned] };
  const pasted = await bench.good<Pasted>('/api/read', { method: 'POST', body });
  expect(pasted.rows.map(({ ref, qty }) => `${ref}: ${qty}`)).toEqual(['2: 1', '4: 2', '6: 3', '8: 4']);
  expect(pasted.tables[0]!.columns.map(({ meaning }) => meaning)).toEqual(turned);
  const id = await take('Paste', [turned]);
  expect(told(await rowsOf(id))).toEqual(['2: 1', '4: 2', '6: 3', '8: 4']);
  expect((await columnsOf(id)).given).toEqual([turned]);
});

test('a meaning that there is not is refused', async () => {
  const id = await take('Refuse');
  const path = `/api/diagrams/${id}/columns`;
  const refused = await bench.refused(path, { method: 'PUT', body: { given: [['colour']] } });
  expect(refused).toMatchObject({ status: 400, code: 'bad-request' });
  expect((await columnsOf(id)).given).toBeNull();
});
