import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';

/** Ways to count, in use in parts lists (common practice). */
const counted: [line: string, qty: number | null][] = [
  ['Qty. 4 M3x8 screw', 4],
  ['screw M3x8 4pcs', 4],
  ['bearing 608, 2 req’d', 2],
  ['Schraube M3x8, je 2', 2],
  ['Schrauben M3x8 - 4 Stk.', 4],
  ['ネジ M3x8 各2', 2],
  ['ネジ M3x8 ×4本', 4],
  ['viti M3x8 4 pz', 4],
  ['4 schroeven M3x8', 4],
  ['4no. M3x8 screws', 4],
  ['- (2) springs, 0.5 wire', 2],
  ['* (6) M5 lock nuts', 6],
  ['M3x8 SHCS x 4', 4],
  ['M3 nut; 4', 4],
  ['two M3 nuts', 2],
  ['deux vis M3x8', 2],
  ['M5x50 hex head 8.8,2', 2],
  ['QX-7,"Bearing 15x24x5, 2RS",2', 2],
  ['29 DOWEL PIN 2X6 2 29A', 2],
  ['12 PIN, CLEVIS 4X18 2 12-1', 2],
  ['15 OIL SEAL 6x12x4 1 NBR', 1],
  ['25 Set Screw M3x6 Set Screw M3x6 2', 2],
  ['6 pcs 608-2RS bearings', 6],
  ['- 2 x 608 bearings', 2],
  // A designation, a size and a pack are no quantity, and several counts are none.
  ['1 Bearing 608', null],
  ['1 pair bearings 608', null],
  ['10 pack M3 nuts', null],
  ['Rondelles M3 (sachet de 50)', null],
  ['shim rings 12x18: 0.1 (2x), 0.3 (1x)', null],
  ['Screw M3 x 8', null],
];

describe('quantities', () => {
  test.each(counted)('%s: %s', (line, qty) => {
    expect(read(line).qty).toBe(qty);
  });

  test('what counts pieces is no attribute: pz is piece in Italian, a cross recess elsewhere', () => {
    expect(read('viti M3x8 4 pz').attrs).not.toHaveProperty('drive');
    expect(read('screw M3x8 pz').attrs).toMatchObject({ drive: 'pozidriv' });
  });
});
