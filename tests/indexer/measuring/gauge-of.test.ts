import { describe, expect, it } from 'vitest';
import { gaugeSheets } from '../../../indexer/gauge-sheet.ts';
import { measurings } from '../../../indexer/measuring/categories.ts';
import { gaugeOf } from '../../../indexer/measuring/gauge-of.ts';

describe('gaugeOf', () => {
  it('of a bearing is its face and its width', () => {
    expect(gaugeOf('bearing 5x11x4')?.shapes).toEqual([
      { kind: 'circles', diameters: [11, 5] },
      { kind: 'bar', length: 4, thickness: 11 },
    ]);
  });

  it('of a screw is its crests, pitch by pitch, and its length', () => {
    expect(gaugeOf('screw M3x0.5x8')?.shapes).toEqual([
      { kind: 'comb', pitch: 0.5, pitches: 16, thickness: 3 },
      { kind: 'bar', length: 8, thickness: 3 },
    ]);
  });

  it('of an inch thread has its true pitch: 32 to the inch', () => {
    const [comb] = gaugeOf('screw 6-32x9.525')!.shapes;
    expect(comb?.kind === 'comb' && comb.pitch).toBeCloseTo(25.4 / 32, 6);
  });

  it('of an O-ring is its inside and outside: AS568-012', () => {
    expect(gaugeOf('o-ring 9.246x1.778')?.shapes).toEqual([
      { kind: 'circles', diameters: [9.246 + 2 * 1.778, 9.246] },
    ]);
  });

  it.each(['', 'lubricant', 'bearing 5x11', 'screw M99x1x8', 'screw 3.5x16', 'knob 5'])(
    'of "%s" is nothing',
    size => {
      expect(gaugeOf(size)).toBeNull();
    },
  );

  it('draws every published size', () => {
    for (const measuring of measurings.values())
      for (const { dims } of measuring.candidates(new Set(['length'])))
        expect(
          gaugeOf(`${measuring.category} ${measuring.write(dims, {})}`),
          JSON.stringify(dims),
        ).not.toBeNull();
  });

  it('goes on a sheet with its label', () => {
    expect(gaugeSheets([gaugeOf('washer 3.2x7x0.5')!])[0]).toContain('washer 3.2x7x0.5</text>');
  });
});
