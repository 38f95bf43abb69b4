import { describe, expect, test } from 'vitest';
import { inSerialRange } from '../../../api/ordering/serial.ts';

describe('inSerialRange(serial, from, to)', () => {
  test.each([
    ['5000', '5000', '6000', true],
    ['6000', '5000', '6000', true],
    ['4999', '5000', '6000', false],
    ['6001', '5000', '6000', false],
    ['5000', '5000', null, true],
    ['1', null, '5000', true],
    ['5001', null, '5000', false],
    ['0005001', '5000', null, true],
    ['A-120', 'A100', 'A130', true],
    ['a120', 'A 100', null, true],
    ['12345678901234567891', '12345678901234567890', null, true],
  ])('%s in %s to %s is %s', (serial, from, to, inside) => {
    expect(inSerialRange(serial, from, to)).toBe(inside);
  });

  test.each([
    [null, '5000', null],
    ['', '5000', null],
    ['worn off', '5000', null],
    ['B120', 'A100', 'A130'],
    ['5000', 'first series', null],
  ])('%s in %s to %s cannot be told', (serial, from, to) => {
    expect(inSerialRange(serial, from, to)).toBeNull();
  });
});
