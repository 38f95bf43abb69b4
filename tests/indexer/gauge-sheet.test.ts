import { describe, expect, it } from 'vitest';
import {
  bankCardWidth,
  type Gauge,
  gaugeSheetEnds,
  gaugeSheets,
  pixelsPerMillimetre,
} from '../../indexer/gauge-sheet.ts';

const bearing: Gauge = { label: 'bearing 5x11x4', shapes: [{ kind: 'circles', diameters: [11, 5] }] };
const screw: Gauge = {
  label: 'screw M3x0.5x8',
  shapes: [
    { kind: 'comb', pitch: 0.5, pitches: 16, thickness: 3 },
    { kind: 'bar', length: 8, thickness: 3 },
  ],
};

const numbers = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].map(match => Number(match[1]));

describe('a gauge sheet', () => {
  const [svg] = gaugeSheets([bearing, screw]);

  it('has the millimetre for its unit: A4 of ISO 216, 210 by 297, one unit a millimetre', () => {
    expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
  });

  it('draws a bearing at its own diameters', () => {
    expect(numbers(svg!, / r="([\d.]+)"/g)).toEqual([5.5, 2.5]);
  });

  it('draws sixteen pitches of 0.5 as seventeen crests over 8 mm', () => {
    const crests = numbers(svg!, /<path d="M([\d.]+) [\d.]+v3"/g);
    expect(crests).toHaveLength(17);
    expect(crests.at(-1)! - crests[0]!).toBeCloseTo(8, 9);
  });

  it('has a bar of 100 mm to check the print by', () => {
    expect(svg).toContain('h100m');
  });
});

it('what does not fit on one sheet goes on the next, nothing lost and nothing over the margin', () => {
  const sheets = gaugeSheets(
    Array.from({ length: 90 }, (_, at) => ({
      label: `ring ${at}`,
      shapes: [{ kind: 'circles', diameters: [40] }],
    })),
  );
  expect(sheets.length).toBeGreaterThan(1);
  expect(sheets.join('').match(/<circle/g)).toHaveLength(90);
  for (const svg of sheets) {
    for (const x of numbers(svg, /cx="([\d.]+)"/g)) expect(x + 20).toBeLessThanOrEqual(198);
    for (const y of numbers(svg, /cy="([\d.]+)"/g)) expect(y + 20).toBeLessThanOrEqual(285);
  }
});

it('a label cannot be mark-up', () => {
  const [svg] = gaugeSheets([{ label: '<script>&"', shapes: bearing.shapes }]);
  expect(svg).toContain('&lt;script&gt;&amp;&quot;');
});

it('names what the paper does not hold', () => {
  expect(() =>
    gaugeSheets([{ label: 'shaft 6x400', shapes: [{ kind: 'bar', length: 400, thickness: 6 }] }]),
  ).toThrow('shaft 6x400');
});

it('a screen is measured by a bank card, 85.60 mm wide (ISO/IEC 7810 ID-1)', () => {
  expect(bankCardWidth).toBe(85.6);
  expect(pixelsPerMillimetre(321)).toBeCloseTo(3.75, 3);
});

it('a sheet ends below its lowest gauge, and holds it', () => {
  const [end] = gaugeSheetEnds([bearing, screw]);
  const [svg] = gaugeSheets([bearing, screw]);
  const lowest = Math.max(...[...svg!.matchAll(/<text [^>]*y="([\d.]+)"/g)].map(([, y]) => Number(y)));
  expect(end).toBeGreaterThan(lowest);
  expect(end).toBeLessThan(297);
});
