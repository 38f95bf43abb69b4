import { PassThrough, Readable, Writable } from 'node:stream';
import { expect, test } from 'vitest';
import { readLines } from '../../../api/cli/read.ts';

async function run(input: string | Readable) {
  const output = new PassThrough({ encoding: 'utf8' });
  const errors = new PassThrough({ encoding: 'utf8' });
  let out = '';
  let err = '';
  output.on('data', chunk => (out += chunk));
  errors.on('data', chunk => (err += chunk));
  const code = await readLines(typeof input === 'string' ? Readable.from([input]) : input, output, errors);
  output.end();
  errors.end();
  await new Promise(resolve => setImmediate(resolve));
  return {
    code,
    err,
    answers: out
      .split('\n')
      .filter(Boolean)
      .map(line => JSON.parse(line)),
  };
}

test('plain lines are named by their number; empty ones are passed over', async () => {
  const { code, answers } = await run('bearing 5 x 11 x 4\n\nM3x8 screw\r\n');
  expect(code).toBe(0);
  expect(answers.map(a => [a.id, a.text, a.reading.size])).toEqual([
    [1, 'bearing 5 x 11 x 4', 'bearing 5x11x4'],
    [3, 'M3x8 screw', 'screw M3x0.5x8'],
  ]);
});

test('JSON lines carry id and context', async () => {
  const { answers } = await run('{"id": "a7", "text": "50x67x7", "context": "Ball Bearings"}\n');
  expect(answers[0]).toMatchObject({ id: 'a7', reading: { size: 'bearing 50x67x7' } });
});

test('a bad line gives a fault with its number, reading goes on, and the code is 1', async () => {
  const { code, err, answers } = await run(
    '{"id": 1, "text": \nnut M3\n{"id": 2}\n{"text": "nut M4", "context": 5}\n',
  );
  expect(code).toBe(1);
  expect(err).toContain('3 of 4');
  expect(answers.map(a => a.fault?.line ?? a.reading.size)).toEqual([1, 'nut M3x0.5', 3, 4]);
  for (const { fault } of answers.filter(a => a.fault)) {
    expect(fault.message).toMatch(/^Line \d/);
    expect(fault.remedy).toContain('"text"');
  }
});

test('a slow reader of the answer holds back the input', async () => {
  let taken = 0;
  const endless = Readable.from(
    (function* () {
      for (let i = 0; i < 20_000; i++) {
        taken++;
        yield `bearing 5x11x4 number ${i}\n`;
      }
    })(),
    { highWaterMark: 16 },
  );
  let release = () => {};
  const gate = new Promise<void>(resolve => (release = resolve));
  const slow = new Writable({
    highWaterMark: 1_024,
    write: (_chunk, _encoding, done) => void gate.then(() => done()),
  });
  const done = readLines(endless, slow, new PassThrough());
  await new Promise(resolve => setTimeout(resolve, 200));
  expect(taken).toBeLessThan(5_000);
  release();
  expect(await done).toBe(0);
  expect(taken).toBe(20_000);
});
