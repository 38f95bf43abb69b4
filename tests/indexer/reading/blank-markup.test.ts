import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';
import { blankMarkup } from '../../../indexer/reading/blank-markup.ts';

describe('mark-up of lists', () => {
  test.each([
    '- **Pz 3** Cuscinetto 42x30x7',
    '### **Ring Ø21\\*2,6**',
    '1 [Screw M3x10](./parts/m3x8_screw.md) https://example.org/a?b=4x5',
    '- [x] *Washer* `M4` <br> ✅ 🔩',
    '- (4) Washer M6',
  ])('%s keeps every place', text => expect(blankMarkup(text)).toHaveLength(text.length));

  test.each([
    ['- **Pz 3** Cuscinetto 42x30x7', 3, { bore: 30, od: 42, width: 7 }],
    ['- (4) Arandela plana 6,4 x 12 x 1,6 (24H19)', 4, { id: 6.4, od: 12, thickness: 1.6 }],
    ['* 12x 10-32 x 3/4" Pan Head Machine Screws', 12, { thread: '10-32', length: 19.05 }],
    ['* 2x 1/4-20 x 1 1/2" hex cap screws', 2, { thread: '1/4-20', length: 38.1 }],
    ['- 2x 6806 bearings', 2, { bore: 30, od: 42, width: 7 }],
    ['| **2× Welle Ø8 × 150 mm** | 7 |', 2, { dia: 8, length: 150 }],
    ['| **M2 Schwenkachse** | Zylinderstift DIN 7 2 × 8 mm | **2** |', 2, { dia: 2, length: 8 }],
    ['### **O-Ring Ø20\\*2**', null, { id: 20, cs: 2 }],
    ['3 [Screw M3x10](./parts/m3x8_screw.md)', 3, { thread: 'M3', length: 10 }],
    ['vis_ronde_M3_5_x_15', null, { thread: 'M3.5', length: 15 }],
  ])('%s', (text, qty, dims) => expect(read(text)).toMatchObject({ qty, dims }));

  test('what is taken away parts no cells', () => {
    const context = 'Bearing | bore × OD × W (mm) | Use | Status';
    expect(read('| 6002 2RS | 15 × 32 × 9 | **gears** (run on it) | ✅ |', { context })).toMatchObject({
      category: 'bearing',
      dims: { bore: 15, od: 32, width: 9 },
    });
    expect(read('| &nbsp;&nbsp;3&nbsp; | **Nut** `M4` |', { context: 'Qty | Part' })).toMatchObject({
      category: 'nut',
      dims: { thread: 'M4' },
      qty: 3,
    });
  });

  test('stars between figures are times signs', () => {
    expect(read('bearing 5 *11* 4').dims).toEqual({ bore: 5, od: 11, width: 4 });
  });
});
