import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** Common practice of parts lists: the heading names the part, a remark what comes with it. */
describe('what stands beside the part', () => {
  test('a remark that begins with a preposition does not name a row under a heading', () =>
    expect(
      read('|40|M4|25|mit Stoppmuttern|', {
        context: '## Zylinderschrauben\n|Anzahl|Durchmesser|Länge|Bemerkung|',
      }).category,
    ).toBe('screw'));

  test('two numbered parts in the cells of one row are left open', () =>
    expect(read('7 | WASHER, FLAT | 2 | 8 | SCREW, M3X8 | 4').category).toBe('unsure'));

  test('numbers that follow each other in one part are none', () =>
    expect(read('7 | SCREW, M3X8 | 8 | zinc').category).toBe('screw'));
});
