import { expect, test } from 'vitest';
import {
  inch,
  meetNearest,
  meets,
  mm,
  type StatedLength,
  toMm,
  writeMillimetres,
} from '../../../indexer/units/length.ts';

const stated = (value: number, decimals: number | null, unit: 'mm' | 'in' = 'mm'): StatedLength => ({
  um: unit === 'in' ? inch(value) : mm(value),
  decimals,
  unit,
});

test('inch(1) is 25400 µm exactly (ISO 31-1)', () => {
  expect(inch(1)).toBe(25_400);
  expect(inch(3 / 16)).toBe(4_763);
  expect(toMm(inch(1 / 8))).toBe(3.175);
});

test('writeMillimetres leaves no trailing zeros and at most three decimals', () => {
  expect(writeMillimetres(5)).toBe('5');
  expect(writeMillimetres(0.5)).toBe('0.5');
  expect(writeMillimetres(4.7625)).toBe('4.763');
});

test('3/16", 4.7625, 4.762 and 4.76 are one bore', () => {
  for (const one of [stated(3 / 16, null, 'in'), stated(4.7625, 4), stated(4.762, 3), stated(4.76, 2)])
    expect(meets(one, mm(4.762))).toBe(true);
});

test('3.18 is 1/8", 9.25 is the inside of AS568-012', () => {
  expect(meets(stated(3.18, 2), inch(1 / 8))).toBe(true);
  expect(meets(stated(9.25, 2), inch(0.364))).toBe(true);
});

test('one decimal meets only itself: 3.2 is not 3.175', () => {
  expect(meets(stated(3.2, 1), inch(1 / 8))).toBe(false);
  expect(meets(stated(3.2, 1), mm(3.2))).toBe(true);
  expect(meets(stated(3, 0), mm(3.175))).toBe(false);
});

test('meetNearest takes the nearest of two and says that it doubts', () => {
  expect(meetNearest(stated(1.78, 2), [mm(1.776), mm(1.778)])).toEqual({ um: mm(1.778), doubt: true });
  expect(meetNearest(stated(1.78, 2), [mm(1.8), mm(1.778)])).toEqual({ um: mm(1.778), doubt: false });
  expect(meetNearest(stated(5, 0), [mm(4), mm(6)])).toBeNull();
});
