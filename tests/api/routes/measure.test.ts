import { afterAll, beforeAll, expect, test } from 'vitest';
import type { FitAnswer } from '../../../indexer/index.ts';
import type { MeasureAnswer } from '../../../indexer/measure.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
let bench: TestBench;

beforeAll(async () => {
  service = await openService();
  bench = await openBench(service);
  await bench.take('Brindlow', 'Tern', ['1,A-1,Shim 8.2 x 22 x 1.5,1,', '2,A-2,Dowel pin 8 x 20,1,']);
});
afterAll(() => service.close());

const post = (body: object) => ({ method: 'POST', body, key: null });

test('a size that only this workshop has is among the candidates, without being sent', async () => {
  const measurements = [
    { dimension: 'id', value: 8.3 },
    { dimension: 'od', value: 21.8 },
    { dimension: 'thickness', value: 1.5 },
  ];
  const answer = await bench.good<MeasureAnswer>('/api/measure', post({ category: 'shim', measurements }));
  expect(answer.cannotTellApart).toEqual(['shim 8.2x22x1.5']);
});

test('its own pins are named for the next measurement', async () => {
  const measurements = [{ dimension: 'bore', value: 7.93, instrument: 'calliper-inside' }];
  const answer = await bench.good<MeasureAnswer>('/api/measure', post({ category: 'bearing', measurements }));
  expect(answer.next.find(each => each.instrument === 'pin')).toMatchObject({ value: 8, own: ['pin 8x20'] });
});

test('a measurement that cannot be is refused with its place and remedy', async () => {
  const measurements = [{ dimension: 'bore', value: 3 }];
  const problem = await bench.refused('/api/measure', post({ category: 'ball', measurements }));
  expect(problem).toMatchObject({ status: 400, code: 'bad-request', place: 'measurements.0.dimension' });
  expect(problem.remedy).toContain('dia');
});

test('fit is asked without a bench named: the one last opened answers', async () => {
  const response = await service.ask('/api/fit', post({ shaft: { nominal: 5, class: 'g6' } }));
  const answer = (await response.json()) as FitAnswer;
  expect(answer.candidates[0]?.onShaft).toMatchObject({ clearanceMax: 0.012, interferenceMax: 0.004 });
});
