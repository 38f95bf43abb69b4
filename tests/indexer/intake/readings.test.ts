import { describe, expect, test } from 'vitest';
import { readDocument } from '../../../indexer/intake/index.ts';

const read = (...lines: string[]) => readDocument(Buffer.from(lines.join('\n')), 'list').rows;
const header = 'Ref;Part no;Description;Qty;Remarks';

describe('a taken row has the reading of its words', () => {
  test('a remark that states a fact of the part is read with it, and spans point into the text read', () => {
    const [, nut, screw] = read(
      header,
      '1;X-101;Nut M4;1;left-hand thread',
      '2;X-102;Screw M3x8;2;replaced by X-202',
    );
    expect(nut).toMatchObject({ description: 'Nut M4', text: 'Nut M4, left-hand thread' });
    expect(nut!.reading!.attrs.hand).toBe('left');
    const hand = nut!.reading!.spans.find(span => span.field === 'hand')!;
    expect(nut!.text!.slice(hand.start, hand.end).toLowerCase()).toContain('left');
    expect(screw!.text).toBe('Screw M3x8');
  });
  test('a size and a material column belong to the description', () => {
    const rows = read(
      'Ref;Part no;Description;Size;Material;Qty',
      '1;X-101;Ball bearing;5x11x4;;2',
      '2;X-102;Washer;3.2x7x0.5;brass;1',
    );
    expect(rows[1]!.reading!.size).toBe('bearing 5x11x4');
    expect(rows[2]!.reading).toMatchObject({ size: 'washer 3.2x7x0.5', attrs: { material: 'brass' } });
  });
  test('where the column and the words name different quantities, a person is asked', () => {
    const [, differs, agrees] = read(header, '1;X-101;4x Screw M3x8;2;', '2;X-102;2x Nut M3;2;');
    expect(differs).toMatchObject({ qty: 2, reading: { qty: 4, review: true } });
    expect(differs!.reading!.notes.join()).toContain('the quantity column says 2, the description 4');
    expect(agrees!.reading!.notes.join()).not.toContain('quantity column');
  });
  test('a heading is given along with the lines under it', () => {
    const rows = read(
      'Ref;Part no;Description;Qty',
      'Ball bearings;;;',
      '1;X-101;5x11x4;2',
      '2;X-102;8x16x5;1',
    );
    expect(rows[1]).toMatchObject({ outcome: 'skipped', reason: 'heading' });
    expect(rows[2]!.reading!.size).toBe('bearing 5x11x4');
  });
});
