import { describe, expect, it } from 'vitest';
import { metricThreadNamed, metricThreads } from '../../../indexer/standards/iso-261.ts';
import { externalLimits, internalLimits } from '../../../indexer/standards/iso-965.ts';

/** 6g rows of ISO 965-2 as fastener makers print them: major max and min, pitch diameter max and min, mm (6h for M1.2, M1.4). */
const published: [string, number, number, number, number][] = [
  ['M1.2', 1.2, 1.133, 1.038, 0.985],
  ['M1.4', 1.4, 1.325, 1.205, 1.149],
  ['M1.6', 1.581, 1.496, 1.354, 1.291],
  ['M2', 1.981, 1.886, 1.721, 1.654],
  ['M2.5', 2.48, 2.38, 2.188, 2.117],
  ['M3', 2.98, 2.874, 2.655, 2.58],
  ['M3.5', 3.479, 3.354, 3.089, 3.004],
  ['M4', 3.978, 3.838, 3.523, 3.433],
  ['M5', 4.976, 4.826, 4.456, 4.361],
  ['M6', 5.974, 5.794, 5.324, 5.212],
  ['M8', 7.972, 7.76, 7.16, 7.042],
  ['M8x1', 7.974, 7.794, 7.324, 7.212],
  ['M10', 9.968, 9.732, 8.994, 8.862],
  ['M10x1.25', 9.972, 9.76, 9.16, 9.042],
  ['M12x1.5', 11.968, 11.732, 10.994, 10.854],
  ['M14x1.5', 13.968, 13.732, 12.994, 12.854],
  ['M20x1.5', 19.968, 19.732, 18.994, 18.854],
];

const um = (mm: number) => Math.round(mm * 1000);

describe('externalLimits', () => {
  it.each(published)(
    'of %s are major %d to %d and pitch diameter %d to %d',
    (name, majorMax, majorMin, max, min) => {
      expect(externalLimits(metricThreadNamed(name)!)).toMatchObject({
        major: { max: um(majorMax), min: um(majorMin) },
        pitchDiameter: { max: um(max), min: um(min) },
      });
    },
  );

  it('takes 8.974 and 17.732 where pages misprint M9x1 and M18x1.5 (8.972, 17.762)', () => {
    expect(externalLimits(metricThreadNamed('M9x1')!).major.max).toBe(8974);
    expect(externalLimits(metricThreadNamed('M18x1.5')!).major.min).toBe(17_732);
  });

  it('is 6h up to M1.4 and 6g above (ISO 965-2)', () => {
    expect(externalLimits(metricThreadNamed('M1.4')!).toleranceClass).toBe('6h');
    expect(externalLimits(metricThreadNamed('M1.6')!).toleranceClass).toBe('6g');
  });

  it('is by formula for an older pitch the standard has no cell for', () => {
    // M5x0.9: es = -(15 + 9.9), Td = 180 x 0.9^(2/3) - 3.15 / sqrt 0.9 = 164.5 (ISO 965-1).
    expect(externalLimits({ nominal: 5000, pitch: 900 }).major).toEqual({ max: 4975, min: 4975 - 164 });
  });

  it('refuses a diameter outside the tables', () => {
    expect(() => externalLimits({ nominal: 900, pitch: 225 })).toThrow(RangeError);
  });

  it('lies within 14 µm of the plain formulas of ISO 965-1 up to M20, within 25 above', () => {
    // Recomputed here in full, from the published formulas; the gaps are what its rounding leaves at pitch 2.5, 4 and 4.5.
    const ranges = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90];
    for (const thread of metricThreads) {
      const [d, p] = [thread.nominal / 1000, thread.pitch / 1000];
      const at = ranges.findIndex((to, i) => i > 0 && d <= to);
      const mean = Math.sqrt(ranges[at - 1]! * ranges[at]!);
      const es = d <= 1.4 ? 0 : -(15 + 11 * p);
      const td = 180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p);
      const td2 = 90 * p ** 0.4 * mean ** 0.1;
      const room = d <= 20 ? 14 : 25;
      const { major, pitchDiameter } = externalLimits(thread);
      const basic = 1000 * (d - 0.649519 * p);
      expect(Math.abs(major.max - (1000 * d + es)), thread.designation).toBeLessThan(2);
      expect(Math.abs(major.min - (1000 * d + es - td)), thread.designation).toBeLessThan(room);
      expect(Math.abs(pitchDiameter.max - (basic + es)), thread.designation).toBeLessThan(2);
      expect(Math.abs(pitchDiameter.min - (basic + es - td2)), thread.designation).toBeLessThan(room);
    }
  });
});

describe('internalLimits', () => {
  // 6H rows as tap makers and handbooks print them: minor min and max, pitch diameter min and max, mm.
  it.each<[string, number, number, number, number, string]>([
    ['M1.6', 1.221, 1.321, 1.373, 1.458, '6H'],
    ['M2', 1.567, 1.679, 1.74, 1.83, '6H'],
    ['M3', 2.459, 2.599, 2.675, 2.775, '6H'],
    ['M4', 3.242, 3.422, 3.545, 3.663, '6H'],
    ['M5', 4.134, 4.334, 4.48, 4.605, '6H'],
    ['M6', 4.917, 5.153, 5.35, 5.5, '6H'],
    ['M8', 6.647, 6.912, 7.188, 7.348, '6H'],
    ['M10', 8.376, 8.676, 9.026, 9.206, '6H'],
    ['M1.4', 1.075, 1.142, 1.205, 1.265, '5H'],
    ['M2x0.25', 1.729, 1.785, 1.838, 1.898, '5H'],
    ['M1.6x0.2', 1.383, 1.421, 1.47, 1.512, '4H'],
  ])(
    'of %s are minor %d to %d, pitch diameter %d to %d, class %s',
    (name, low, high, min, max, toleranceClass) => {
      expect(internalLimits(metricThreadNamed(name)!)).toEqual({
        toleranceClass,
        minor: { min: um(low), max: um(high) },
        pitchDiameter: { min: um(min), max: um(max) },
      });
    },
  );

  it('leave every screw room in its nut', () => {
    for (const thread of metricThreads) {
      const [screw, nut] = [externalLimits(thread), internalLimits(thread)];
      expect(nut.pitchDiameter.min, thread.designation).toBeGreaterThanOrEqual(screw.pitchDiameter.max);
      expect(nut.minor.max, thread.designation).toBeLessThan(screw.major.min);
    }
  });
});
