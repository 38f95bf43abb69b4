import { describe, expect, test } from 'vitest';
import { effectiveBalloons } from '../../../api/diagrams/effective-balloons.ts';

const spot = (ref: string, x: number, y: number) => ({ page: 1, ref, x, y });
const found = [
  { id: 'a', ...spot('4', 0.2, 0.3) },
  { id: 'b', ...spot('4', 0.8, 0.3) },
];

describe('effectiveBalloons(found, corrections)', () => {
  test('without a word of a person: as found', () =>
    expect(effectiveBalloons(found, [])).toEqual([
      { ...found[0], by: 'reading' },
      { ...found[1], by: 'reading' },
    ]));

  test('one that is moved counts where it was moved to; its twin stays', () =>
    expect(
      effectiveBalloons(found, [{ id: 'm', from: spot('4', 0.2, 0.3), to: spot('4', 0.25, 0.35) }]),
    ).toEqual([
      { ...found[1], by: 'reading' },
      { id: 'm', ...spot('4', 0.25, 0.35), by: 'person' },
    ]));

  test('one that is none is gone, also when a new reading finds it a hair beside', () => {
    const corrections = [{ id: 'r', from: spot('4', 0.2, 0.3), to: null }];
    const again = [{ id: 'c', ...spot('4', 0.2031, 0.3) }];
    expect(effectiveBalloons(again, corrections)).toEqual([]);
  });

  test('one that was not found is there', () =>
    expect(effectiveBalloons([], [{ id: 'n', from: null, to: spot('9', 0.5, 0.5) }])).toEqual([
      { id: 'n', ...spot('9', 0.5, 0.5), by: 'person' },
    ]));

  test('the same number at the same place of another page is another', () =>
    expect(
      effectiveBalloons(found.slice(0, 1), [
        { id: 'r', from: { ...spot('4', 0.2, 0.3), page: 2 }, to: null },
      ]),
    ).toHaveLength(1));
});
