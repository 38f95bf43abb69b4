import { PassThrough, Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { fitLines } from '../../../api/cli/fit.ts';
import { measureLines } from '../../../api/cli/measure.ts';

async function run(lines: typeof measureLines, ...input: unknown[]) {
  const [output, errors] = [new PassThrough({ encoding: 'utf8' }), new PassThrough({ encoding: 'utf8' })];
  let [out, err] = ['', ''];
  output.on('data', chunk => {
    out += chunk;
  });
  errors.on('data', chunk => {
    err += chunk;
  });
  const text = input.map(line => (typeof line === 'string' ? line : JSON.stringify(line))).join('\n');
  const code = await lines(Readable.from([text]), output, errors);
  await new Promise(resolve => setImmediate(resolve));
  const answers = out
    .split('\n')
    .filter(Boolean)
    .map(line => JSON.parse(line));
  return { code, err, answers };
}

const ball = {
  category: 'ball',
  measurements: [{ dimension: 'dia', value: 3.175, instrument: 'micrometer' }],
};

test('measure carries the id along, and names a line without one by its number', async () => {
  const { code, answers } = await run(measureLines, { id: 'a7', ...ball }, '', ball);
  expect(code).toBe(0);
  expect(answers.map(answer => [answer.id, answer.cannotTellApart])).toEqual([
    ['a7', ['ball 3.175']],
    [3, ['ball 3.175']],
  ]);
});

test('a bad line gives a fault with its number, place and remedy, the rest go on, and the code is 1', async () => {
  const { code, err, answers } = await run(
    measureLines,
    '{"id":',
    { id: 'x', category: 'ball', measurements: [{ dimension: 'bore', value: 3 }] },
    { id: 'y', category: 'ball', measurements: [{ dimension: 'dia', value: '3' }] },
    { id: 'z', category: 'ball', measurements: [{ dimension: 'dia', value: 3, instrumnet: 'rule' }] },
    ball,
  );
  expect(code).toBe(1);
  expect(err).toContain('4 of 5 lines');
  expect(answers.map(answer => answer.fault?.place)).toEqual([
    'the line',
    'measurements.0.dimension',
    'measurements.0.value',
    'measurements.0',
    undefined,
  ]);
  expect(answers[1]).toMatchObject({ id: 'x', fault: { line: 2, remedy: 'Name one of dia.' } });
});

test('the sizes a workshop knows come in the line', async () => {
  const { answers } = await run(measureLines, {
    category: 'spring',
    measurements: [{ dimension: 'wire', value: 0.5 }],
    known: [{ size: 'spring 0.5x5x20', count: 2 }],
  });
  expect(answers[0].cannotTellApart).toEqual(['spring 0.5x5x20']);
});

test('fit answers a line with its seats', async () => {
  const { code, answers } = await run(fitLines, {
    id: 1,
    shaft: { value: 4.996, uncertainty: 0.004 },
    housing: { value: 11.01 },
    width: { value: 4, uncertainty: 0 },
  });
  expect(code).toBe(0);
  expect(answers[0]).toMatchObject({
    id: 1,
    candidates: [
      {
        size: 'bearing 5x11x4',
        shaftClass: 'h6',
        onShaft: { clearanceMax: 0.008, interferenceMax: 0.008, clearanceProbability: 0.5 },
        widthGap: { min: 0, max: 0.12 },
      },
    ],
  });
});

test('fit without a seat is a fault', async () => {
  const { code, answers } = await run(fitLines, { id: 2 });
  expect(code).toBe(1);
  expect(answers[0]).toMatchObject({ id: 2, fault: { place: 'shaft' } });
});
