import { describe, expect, it } from 'vitest';
import {
  atLeast,
  defineTable,
  groupBy,
  indexBy,
  larger,
  rising,
  unique,
} from '../../../indexer/standards/table.ts';

const columns = ['name: text', 'bore: mm', 'od: mm?', 'deviation: um'] as const;
type Printed = readonly [string, number, number | null, number];
const build = (...rows: Printed[]) =>
  defineTable('rings', 'invented', columns, rows, unique('name'), larger('od', 'bore'), rising(['bore']));

describe('defineTable', () => {
  it('turns printed lengths into whole micrometres and leaves deviations as they are', () => {
    expect(build(['a', 1.5, 4, -2.5]).rows).toEqual([{ name: 'a', bore: 1500, od: 4000, deviation: -2.5 }]);
  });

  it('turns inches into micrometres, 25.4 mm to the inch (ISO 31-1)', () => {
    expect(defineTable('t', 's', ['d: inch'], [[0.5], [0.364]]).rows.map(row => row.d)).toEqual([
      12_700, 9246,
    ]);
  });

  it('keeps its rows from being changed', () => {
    const table = build(['a', 1, 2, 0]);
    expect(() => Object.assign(table.rows[0]!, { bore: 9 })).toThrow(TypeError);
  });

  it.each<[string, Printed[], RegExp]>([
    [
      'an outside diameter not above the bore',
      [['a', 5, 5, 0]],
      /rings, row 1 \(a, 5, 5, 0\): od 5 is not above bore 5/,
    ],
    ['a length of nought', [['a', 0, 5, 0]], /bore is not above zero/],
    ['a length below nought', [['a', 5, -1, 0]], /od is not above zero/],
    ['a length that is no number', [['a', Number.NaN, 5, 0]], /bore is no number/],
    ['an empty text', [['', 1, 5, 0]], /name is no text/],
    [
      'a name that is there already',
      [
        ['a', 1, 5, 0],
        ['a', 2, 5, 0],
      ],
      /row 2 .*name a is there already/,
    ],
    [
      'rows out of order',
      [
        ['a', 2, 5, 0],
        ['b', 1, 5, 0],
      ],
      /row 2 .*bore 1 follows 2/,
    ],
    [
      'the same size twice',
      [
        ['a', 2, 5, 0],
        ['b', 2, 5, 0],
      ],
      /same bore as the row above/,
    ],
  ])('stops at %s and names the row', (_, rows, message) => {
    expect(() => build(...rows)).toThrow(message);
  });

  it('stops at a row of too few cells and at a cell that may not be missing', () => {
    expect(() => build(['a', 1, 2] as unknown as Printed)).toThrow('3 cells for 4 columns');
    expect(() => build(['a', null, 2, 0] as unknown as Printed)).toThrow('bore is missing');
  });

  it('does not compare a cell that the source leaves empty', () => {
    expect(build(['a', 5, null, 0]).rows[0]!.od).toBeNull();
  });
});

describe('the checks', () => {
  it('atLeast lets equal lengths pass and lesser ones not', () => {
    const check = atLeast('max', 'min');
    expect(check({ max: 5, min: 5 }, undefined, [])).toBeNull();
    expect(check({ max: 4000, min: 5000 }, undefined, [])).toBe('max 4 is below min 5');
  });

  it('rising starts anew where the group changes', () => {
    const check = rising(['d'], ['standard']);
    expect(check({ d: 1, standard: 'b' }, { d: 9, standard: 'a' }, [])).toBeNull();
    expect(check({ d: 1000, standard: 'a' }, { d: 9000, standard: 'a' }, [])).toBe('d 1 follows 9');
  });
});

describe('the maps', () => {
  it('indexBy keeps the first of two rows with one value; groupBy keeps both', () => {
    const rows = [
      { d: 1, n: 'a' },
      { d: 1, n: 'b' },
    ];
    expect(indexBy(rows, row => row.d).get(1)!.n).toBe('a');
    expect(
      groupBy(rows, row => row.d)
        .get(1)!
        .map(row => row.n),
    ).toEqual(['a', 'b']);
  });
});
