import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  DiagramRowsAnswer,
  Found,
  JobPage,
  ModelAnswer,
  Models,
  OrderAnswer,
  SizeAnswer,
  Uploaded,
} from '../../../api/answers/index.ts';
import { columnModels } from '../../../api/models/model-columns.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;

beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
});
afterAll(() => service.close());

describe('what the models of a list’s columns are called', () => {
  test.each([
    ['Skarrow 1000/2500/4000', ['1000', '2500', '4000'], ['Skarrow 1000', 'Skarrow 2500', 'Skarrow 4000']],
    [
      'Skarrow 1000, 2500 and 4000',
      ['1000', '2500', '4000'],
      ['Skarrow 1000', 'Skarrow 2500', 'Skarrow 4000'],
    ],
    ['Tarn 40', ['40', '60'], ['Tarn 40', 'Tarn 60']],
    ['Tarn', ['40 S', '60'], ['Tarn 40 S', 'Tarn 60']],
    ['Tarn series', ['Tarn 40', 'Tarn 60'], ['Tarn 40', 'Tarn 60']],
    ['Fell 3', ['left', 'right'], ['Fell 3 left', 'Fell 3 right']],
  ])('%s with %j', (family, columns, names) =>
    expect([...columnModels(family, columns).values()]).toEqual(names),
  );
});

const list = [
  'Key;Part no;Description;1000;2500;4000;Remarks',
  '1;SK-101;Ball bearing 5x11x4;1;2;2;',
  '2;SK-102;Ball bearing 7x14x5;;1;;',
  '3;SK-103;Screw M3x8;4;4;6;',
  '4;SK-104;Body 1000;1;;;',
  '4;SK-105;Body 2500, 4000;;1;1;',
].join('\n');

async function take(model: string, text = list): Promise<string> {
  const body = { maker: 'Brindlow', model, text };
  const { diagram } = await bench.good<Uploaded>('/api/diagrams/text', { method: 'POST', body });
  await service.readAll();
  return diagram.id;
}
const models = async () =>
  new Map((await bench.good<Models>('/api/models')).models.map(model => [model.name, model]));
const modelNamed = async (name: string) =>
  bench.good<ModelAnswer>(`/api/models/${(await models()).get(name)!.id}`);

test('a part wanted for a job on one of them takes its only line there', async () => {
  await take(
    'Dipper 8/9',
    [
      'Key;Part no;Description;8;9;Remarks',
      '1;FL-1;Handle assembly;1;1;includes 2',
      '2;FL-2;Knob;1;1;not sold separately',
    ].join('\n'),
  );
  const found = await bench.good<Found>('/api/find?q=FL-2');
  const model = (await models()).get('Dipper 9')!.id;
  const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada', model } });
  const body = { part: found.parts[0]!.id, qty: 1 };
  await bench.good(`/api/jobs/${job.id}/needs`, { method: 'POST', body });
  const order = await bench.good<OrderAnswer>(`/api/order?jobs=${job.id}`);
  expect(
    order.groups.flatMap(group => group.lines.flatMap(line => line.numbers.map(one => one.number))),
  ).toEqual(['FL-1']);
});

test('what an assembly holds goes by the model of the job, and a line it has none of is refused', async () => {
  const id = await take(
    'Petrel 2/3',
    [
      'Key;Part no;Description;2;3;Remarks',
      '1;PT-1;Rotor assembly;1;1;includes 2',
      '2;PT-2;Roller;1;4;not sold separately',
      '3;PT-3;Cover;1;0;',
    ].join('\n'),
  );
  const { rows } = await bench.good<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`);
  const row = (number: string) => rows.find(each => each.partNumber === number)!.id;
  const totals: Record<string, number[]> = {};
  for (const name of ['Petrel 2', 'Petrel 3']) {
    const model = (await models()).get(name)!.id;
    const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada', model } });
    const needs = `/api/jobs/${job.id}/needs`;
    await bench.good(needs, { method: 'POST', body: { row: row('PT-2'), qty: 4 } });
    const order = await bench.good<OrderAnswer>(`/api/order?jobs=${job.id}`);
    totals[name] = order.groups.flatMap(group => group.lines.map(line => line.total));
    const cover = await bench.ask(needs, { method: 'POST', body: { row: row('PT-3'), qty: 1 } });
    expect(cover.status).toBe(name === 'Petrel 3' ? 400 : 201);
  }
  expect(totals).toEqual({ 'Petrel 2': [4], 'Petrel 3': [1] });
});

test('a size on one of them is held critical by what is said of the family', async () => {
  const text = ['Key;Part no;Description;20;30', '1;GN-1;Ball bearing 9x24x7;1;2'].join('\n');
  const body = { maker: 'Brindlow', model: 'Gannet 20/30', duty: 'load-holding', text };
  await bench.good<Uploaded>('/api/diagrams/text', { method: 'POST', body });
  await service.readAll();
  const found = await bench.good<Found>('/api/find?q=9x24x7');
  const hit = found.sizes.find(each => each.size === 'bearing 9x24x7')!;
  expect(hit).toMatchObject({ models: 2 });
  expect(hit.caution).toContain("maker's part only");
});

test('each column is a model with its own lines and quantities, found by them', async () => {
  const id = await take('Skarrow 1000/2500/4000');
  const here = await models();
  expect(here.get('Skarrow 2500')).toMatchObject({ diagrams: 1, lines: 4 });
  expect(here.get('Skarrow 4000')).toMatchObject({ diagrams: 1, lines: 3 });
  const model = await modelNamed('Skarrow 2500');
  expect(model.lines.map(line => `${line.partNumber} ${line.qty}`)).toEqual([
    'SK-101 2',
    'SK-102 1',
    'SK-103 4',
    'SK-105 1',
  ]);
  expect(model.lists.map(one => one.id)).toEqual([id]);
  expect(model.bearings.map(one => `${one.size}: ${one.qty}`)).toEqual([
    'bearing 5x11x4: 2',
    'bearing 7x14x5: 1',
  ]);

  const size = await bench.good<SizeAnswer>('/api/sizes/bearing%205x11x4');
  expect(size.uses.map(use => `${use.model.name}: ${use.qty}`)).toEqual([
    'Skarrow 1000: 1',
    'Skarrow 2500: 2',
    'Skarrow 4000: 2',
  ]);
  const found = await bench.good<Found>('/api/find?q=7x14x5');
  expect(found.parts[0]!.models.map(one => one.name)).toEqual(['Skarrow 2500']);
  expect(found.sizes[0]).toMatchObject({ models: 1 });
  expect((await bench.good<Found>('/api/find?q=skarrow%204000')).models.map(one => one.name)).toContain(
    'Skarrow 4000',
  );
});

test('the list as a whole keeps its name, its lines and its question', async () => {
  const family = await modelNamed('Skarrow 1000/2500/4000');
  expect(family.lines).toHaveLength(5);
  expect(family.lines.map(line => line.qty)).toEqual([null, null, null, null, null]);
  await bench.good(`/api/models/${family.id}/duty`, { method: 'PUT', body: { duty: 'load-holding' } });
  const one = await modelNamed('Skarrow 1000');
  expect(one.duty).toMatchObject({ duty: 'load-holding' });
  expect(one.lines.every(line => line.duty.critical)).toBe(true);
});

test('models go with the columns that made them, unless a job speaks of them', async () => {
  const id = await take(
    'Fell 30/50',
    'Key;Part no;Description;30;50\n1;FE-11;Nut M3;1;2\n2;FE-12;Pin 2x10;1;1\n3;FE-13;Cap;1;1\n',
  );
  const { id: model } = (await models()).get('Fell 30')!;
  await bench.good('/api/jobs', { method: 'POST', body: { owner: 'Ines Tallow', model } });
  await bench.good(`/api/diagrams/${id}/columns`, {
    method: 'PUT',
    body: { given: [['ref', 'partNumber', 'description', 'qty', 'other']] },
  });
  await service.readAll();
  expect([...(await models()).keys()].filter(name => name.startsWith('Fell'))).toEqual([
    'Fell 30',
    'Fell 30/50',
  ]);
  expect((await modelNamed('Fell 30/50')).lines.map(line => line.qty)).toEqual([1, 1, 1]);
});
