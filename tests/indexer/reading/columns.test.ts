import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** Rows and column names composed after the ways of open parts lists (common practice). */
describe('a row under its column names', () => {
  test.each([
    ['14,4,"Washer, fibre, M6",,£0.12', 'Item,Qty,Description,Supplier,Price', 'washer', { thread: 'M6' }, 4],
    [
      '6,Screw,M3x4,Cap head,$5.69',
      'Qty,Component,Spec,Notes,Cost,Source',
      'screw',
      { thread: 'M3', length: 4 },
      6,
    ],
    [
      'W, M4 thin nut (low),   2,   Q0-25',
      '"Item", "Part name", "Qty", "Part Number"',
      'nut',
      { thread: 'M4' },
      2,
    ],
    [
      '3 70-0211 BALL BEARING 6x12x4 2 4.90',
      'Ref Part no. Description Qty Price',
      'bearing',
      { bore: 6, od: 12, width: 4 },
      2,
    ],
    ['12 40mm Wood Screws $0.05 $0.60', 'Qty. Component $/Unit Subtotal', 'screw', { length: 40 }, 12],
    ['M4 14 20 DIN 7984', '#Bolts\nSize Lenght amount Standard', 'screw', { thread: 'M4', length: 14 }, 20],
    ['2 | 22,5 | 6', '## Rods\n# | Length (mm) | Diameter (mm)', 'shaft', { dia: 6, length: 22.5 }, 2],
    [
      '|✅|30|M12|35|Flachkopf|',
      '## Schrauben\n|Bestellt|Anzahl|Durchmesser|Länge|Besonderheit|',
      'screw',
      { thread: 'M12', length: 35 },
      30,
    ],
    ['M5ナット | 箱 | 28', '部品名 | 備考 | 個数', 'nut', { thread: 'M5' }, 28],
    ['Écrou M6 | 32 | 0,30 €', 'Désignation | Nbre | Prix unitaire', 'nut', { thread: 'M6' }, 32],
    [
      'Rondella piana 6,4x12x1,6 | 8',
      'Denominazione | N. pezzi',
      'washer',
      { id: 6.4, od: 12, thickness: 1.6 },
      8,
    ],
    ['Tuerca M8 | 5', 'Nombre | Uds.', 'nut', { thread: 'M8' }, 5],
    ['Moer M8 | 5', 'Benaming | Aantal', 'nut', { thread: 'M8' }, 5],
  ])('%s', (text, context, category, dims, qty) =>
    expect(read(text, { context })).toMatchObject({ category, dims, qty }),
  );

  test.each([
    ['10x', 10],
    ['x4', 4],
    ['~6', 6],
    ['1 (optional)', 1],
    ['1 set', 1],
    ['8 pcs', 8],
    ['2-4', null],
    ['2+1', null],
    ['3 m', null],
    ['0.5', null],
    ['AR', null],
  ])('%s in a column of quantities', (cell, qty) =>
    expect(read(`M5 nut | ${cell}`, { context: 'Part | Qty' }).qty).toBe(qty),
  );

  test('# counts only where no other column does', () => {
    expect(read('83 | M3', { context: '### Nuts\n# | Size' }).qty).toBe(83);
    expect(read('83 | M3 nut | 4', { context: '# | Part | Qty' }).qty).toBe(4);
  });

  test('ID is an inside beside other dimensions, else a number of the list', () => {
    expect(read('washer | 8 | 12 | 1', { context: 'Part | ID | OD | Thickness' }).dims).toEqual({
      id: 8,
      od: 12,
      thickness: 1,
    });
    expect(read('8 | washer M6 | 12', { context: 'ID | Part | Qty' })).toMatchObject({
      dims: { thread: 'M6' },
      qty: 12,
    });
  });

  test('a column of items holds names or numbers', () => {
    const context = 'Item | Total Qty | Description';
    expect(read('**M4 Lock Nut** | 2 | For shoulder bolts', { context })).toMatchObject({
      category: 'nut',
      dims: { thread: 'M4' },
      qty: 2,
    });
    expect(read('S02 | M4 lock nut | 12', { context: 'Item | Description | Qty' })).toMatchObject({
      category: 'nut',
      dims: { thread: 'M4' },
      qty: 12,
    });
  });

  test('where a part goes, comes from or is shown says nothing of it', () => {
    const found = read('| M3 × 8 | 19 | Button → plate ×4 (Step 2), bearing 608, left | [shop](x) |', {
      context: '### Socket screws\n| Spec | Qty | Use | Supplier |',
    });
    expect(found).toMatchObject({ category: 'screw', dims: { thread: 'M3', length: 8 }, qty: 19, attrs: {} });
  });

  test('a shim named by its screw', () => {
    const context = 'Item | Total Qty | Description';
    expect(read('M5 x 0.3mm Shim | 18 | Throughout', { context }).dims).toEqual({
      thread: 'M5',
      thickness: 0.3,
    });
  });

  test('columns of two models say no quantity', () => {
    expect(
      read('MR106 | Bearing 10x6x3 | 2 | 4', { context: 'Article | Description | Front | Rear' }).qty,
    ).toBeNull();
    expect(read('M5 nut | 2 | 4', { context: 'Part | Qty left | Qty right' }).qty).toBeNull();
  });

  test('a short row whose figures cannot stand under the names is read without them', () => {
    expect(read('M3x8 screw | 608', { context: 'Qty | Part | Price' }).dims).toEqual({
      thread: 'M3',
      length: 8,
    });
  });
});

describe('prices', () => {
  test.each([
    ['| Arbre 16mm h6 — 500mm | 2 | 9,64 € |', { dia: 16, length: 500 }],
    ['Circlip E20 | 1 | ~0.30 €', { dia: 20 }],
    ['Ball 4mm 2,10 CNY', { dia: 4 }],
    ['Shim 8x14x0.1 $ 3', { id: 8, od: 14, thickness: 0.1 }],
  ])('%s: no size', (text, dims) => expect(read(text).dims).toEqual(dims));
});
