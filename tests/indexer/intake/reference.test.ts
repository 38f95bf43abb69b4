import { describe, expect, test } from 'vitest';
import { readReference, refsBetween } from '../../../indexer/intake/reference.ts';

describe('a reference number is read as the drawing shows it', () => {
  const cases: [string, string, number | null][] = [
    ['12', '12', null],
    ['24A', '24A', null],
    ['24 A', '24A', null],
    ['12-1', '12-1', null],
    ['12.1', '12.1', null],
    ['12:3', '12:3', null],
    ['(12)', '12', null],
    ['12.', '12', null],
    ['*7', '7', null],
    ['⑦', '7', null],
    ['１２', '12', null],
    ['A3', 'A3', null],
    ['2X 37', '37', 2],
    ['37 (2)', '37', 2],
  ];
  for (const [cell, ref, qty] of cases) test(cell, () => expect(readReference(cell)).toEqual({ ref, qty }));
  for (const cell of ['', 'Frame', 'M3x8', '70-0309', '12345', 'HANDLE', '5 x 11'])
    test(`"${cell}" is none`, () => expect(readReference(cell)).toBeNull());
});

describe('a range is drawn out over the references the list really has', () => {
  const refs = ['1', '2', '3', '5', '5A', '5B', '6', 'A3', '10'];
  const cases: [string, string, string[]][] = [
    ['2', '5', ['2', '3', '5', '5A', '5B']],
    ['5A', '6', ['5A', '5B', '6']],
    ['3', '5A', ['3', '5', '5A']],
    ['7', '9', []],
    ['6', '2', []],
    ['A1', 'A4', []],
  ];
  for (const [from, to, found] of cases)
    test(`${from} to ${to}`, () => expect(refsBetween(from, to, refs)).toEqual(found));
});
