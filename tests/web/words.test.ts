import { describe, expect, test } from 'vitest';
import { replaceWords } from '../../web/find/replace-words.ts';
import { dayWords, minorOf, moneyWords } from '../../web/jobs/written.ts';
import { differenceWords } from '../../web/part/difference.ts';
import { certaintyWords } from '../../web/part/evidence.tsx';
import { inchFraction } from '../../web/part/inch.ts';
import { rangeWords } from '../../web/part/ranges.ts';
import { Problem } from '../../web/problem.ts';
import { randomId } from '../../web/random.ts';

describe('replaceWords: a chip changed or taken out', () => {
  const q = '5x11x4 bearing';
  test.each([
    ['another number', { start: 2, end: 4 }, '12', '5x12x4 bearing'],
    ['the middle taken out', { start: 2, end: 4 }, '', '5x4 bearing'],
    ['the first taken out', { start: 0, end: 1 }, '', '11x4 bearing'],
    ['the last taken out', { start: 5, end: 6 }, '', '5x11 bearing'],
    ['a word taken out', { start: 7, end: 14 }, '', '5x11x4'],
    ['what nobody typed is added', { start: null, end: null }, 'ZZ', '5x11x4 bearing ZZ'],
  ])('%s', (_, where, words, next) => expect(replaceWords(q, where, words)).toBe(next));

  test('spaces round the crosses go with the number', () =>
    expect(replaceWords('5 x 11 x 4', { start: 4, end: 6 }, '')).toBe('5 x 4'));
});

describe('differenceWords', () => {
  const of = (dimension: string, a: number, b: number) =>
    differenceWords({
      dimension,
      label: dimension === 'od' ? 'outside' : dimension,
      a,
      b,
      difference: b - a,
    });
  test('a width is wider or narrower', () => {
    expect(of('width', 4, 5)).toBe('1.0 wider');
    expect(of('width', 4, 3)).toBe('1.0 narrower');
  });
  test('a diameter is named, larger or smaller', () => expect(of('od', 11, 10)).toBe('outside 1.0 smaller'));
  test('the rounding of a machine is not shown', () => expect(of('width', 0.1, 0.3)).toBe('0.2 wider'));
  test('what has no number says both', () =>
    expect(differenceWords({ dimension: 'head', label: 'head', a: 'pan', b: 'hex', difference: null })).toBe(
      'head hex instead of pan',
    ));
});

describe('certaintyWords', () => {
  test.each([
    [0.98, 'sure, 98 in 100'],
    [1, 'sure, 99 in 100'],
    [0.76, 'likely, 76 in 100'],
    [0.55, 'unsure, 55 in 100'],
    [0.004, 'no'],
  ])('%d is "%s"', (certainty, words) => expect(certaintyWords(certainty)).toBe(words));
});

describe('money and days', () => {
  // ISO 4217: the euro has two decimals, the yen none.
  test.each([
    ['80', 'EUR', 8000],
    ['80,50', 'EUR', 8050],
    ['80', 'JPY', 80],
    ['eighty', 'EUR', null],
    ['', 'EUR', null],
    ['-1', 'EUR', null],
  ])('"%s" %s is %s minor units', (typed, currency, minor) => expect(minorOf(typed, currency)).toBe(minor));
  test('written with its currency once', () => {
    expect(moneyWords({ minor: 8050, currency: 'EUR' })).toBe('80.50 EUR');
    expect(moneyWords({ minor: 80, currency: 'JPY' })).toBe('80 JPY');
  });
  // 4 December 2026 is a Friday in the Gregorian calendar, wherever the browser stands.
  test('a calendar date has no zone', () => expect(dayWords('2026-12-04')).toBe('Fri 4 Dec'));
});

test('randomId is a version 4 UUID (RFC 9562), without crypto.randomUUID', () => {
  const ids = new Set(Array.from({ length: 500 }, randomId));
  expect(ids.size).toBe(500);
  for (const id of ids)
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
});

describe('Problem', () => {
  test('takes code, place and remedy from problem details (RFC 9457)', async () => {
    const problem = await Problem.of(
      Response.json(
        { code: 'disk-full', detail: 'No room.', place: 'the folder', remedy: 'Make room.' },
        { status: 507 },
      ),
    );
    expect({ ...problem, message: problem.message }).toMatchObject({
      code: 'disk-full',
      message: 'No room.',
      place: 'the folder',
      remedy: 'Make room.',
      status: 507,
    });
  });
  test('an answer that is no problem details still says its status', async () =>
    expect((await Problem.of(new Response('<html>', { status: 502 }))).code).toBe('http-502'));
  test('what was not reached is the connection', () =>
    expect(Problem.from(new TypeError('Failed to fetch')).code).toBe('not-reached'));
});

describe('inchFraction: the inch beside the millimetres', () => {
  // 1 in is 25.4 mm exactly (ISO 31-1)
  test.each([
    [9.525, '3/8'],
    [12.7, '1/2'],
    [6.35, '1/4'],
    [3.175, '1/8'],
    [0.397, '1/64'],
    [4.762, '3/16'],
    [38.1, '1 1/2'],
    [25.4, '1'],
  ])('%d mm is %s in', (mm, inch) => expect(inchFraction(mm)).toBe(inch));
  test.each([3, 5, 3.2, 12.5, 0.1, 9.25, 0.001])('%d mm is none', mm => expect(inchFraction(mm)).toBeNull());
});

test.each([
  [['2', '3', '4', '5', '7'], '2 to 5, 7'],
  [['16', '17'], '16, 17'],
  [['19', '19A', '20'], '19, 19A, 20'],
  [[], ''],
])('rangeWords(%o) is "%s"', (refs, words) => expect(rangeWords(refs)).toBe(words));
