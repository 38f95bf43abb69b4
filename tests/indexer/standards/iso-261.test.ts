import { describe, expect, it } from 'vitest';
import {
  coarsePitch,
  metricThread,
  metricThreadNamed,
  metricThreads,
  metricThreadsOf,
  olderJapaneseThreads,
} from '../../../indexer/standards/iso-261.ts';

/** ISO 261 coarse pitches in mm, as tap and fastener makers print them. */
const coarse: [number, number][] = [
  [1, 0.25],
  [1.2, 0.25],
  [1.4, 0.3],
  [1.6, 0.35],
  [1.8, 0.35],
  [2, 0.4],
  [2.2, 0.45],
  [2.5, 0.45],
  [3, 0.5],
  [3.5, 0.6],
  [4, 0.7],
  [5, 0.8],
  [6, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [20, 2.5],
  [24, 3],
  [30, 3.5],
  [36, 4],
  [42, 4.5],
  [48, 5],
  [56, 5.5],
  [64, 6],
];

describe('coarsePitch', () => {
  it.each(coarse)('of M%d is %d', (nominal, pitch) => {
    expect(coarsePitch(Math.round(nominal * 1000))).toBe(Math.round(pitch * 1000));
  });

  // Older DIN and JIS sizes, in tap makers' tables.
  it.each([
    [1700, 350],
    [2300, 400],
    [2600, 450],
  ])('of %d µm, outside ISO 261, is its one usual pitch %d', (nominal, pitch) => {
    expect(coarsePitch(nominal)).toBe(pitch);
  });

  it.each([5500, 15_000, 17_000, 3001, 0])('of %d µm is unknown', nominal => {
    expect(coarsePitch(nominal)).toBeUndefined();
  });
});

describe('metricThreadNamed', () => {
  it('finds every thread by its designation, by its two numbers and among those of its diameter', () => {
    for (const thread of metricThreads) {
      expect(metricThreadNamed(thread.designation)).toBe(thread);
      expect(metricThread(thread.nominal, thread.pitch)).toBe(thread);
      expect(metricThreadsOf(thread.nominal)).toContain(thread);
    }
  });

  it('understands a coarse pitch that is written out', () => {
    expect(metricThreadNamed('M3x0.5')?.designation).toBe('M3');
    expect(metricThreadNamed('M2.5x0.45')?.designation).toBe('M2.5');
  });

  it.each(['M3x0.6', 'M3x', 'M', '', 'M3.1', '6-32'])('knows no thread %j', designation => {
    expect(metricThreadNamed(designation)).toBeUndefined();
  });
});

describe('metricThreads', () => {
  it('list the fine pitches of M8, M10 and M12 (ISO 261)', () => {
    const pitches = (nominal: number) => metricThreadsOf(nominal).map(thread => thread.pitch);
    expect(pitches(8000)).toEqual([1250, 1000, 750]);
    expect(pitches(10_000)).toEqual([1500, 1250, 1000, 750]);
    expect(pitches(12_000)).toEqual([1750, 1500, 1250, 1000]);
  });

  // ISO 262 as an open CAD library quotes it, mm.
  it.each([
    [24, [3, 2]],
    [36, [4, 3]],
    [52, [5, 4]],
    [68, [6, 4]],
  ])('hold the pitches of ISO 262 for M%d: %j', (nominal, pitches) => {
    const all = metricThreadsOf(nominal * 1000).map(thread => thread.pitch / 1000);
    expect(all.filter(pitch => pitches.includes(pitch))).toEqual(pitches);
  });

  it('mark the preferred diameters (ISO 261 choice 1)', () => {
    const preferred = metricThreads.filter(thread => thread.series === 'coarse' && thread.choice === 1);
    expect(
      preferred
        .map(thread => thread.designation)
        .slice(0, 16)
        .join(' '),
    ).toBe('M1 M1.2 M1.6 M2 M2.5 M3 M4 M5 M6 M8 M10 M12 M16 M20 M24 M30');
  });

  it('keep the coarser pitches that Japanese screws had before the 1960s apart', () => {
    for (const { nominal, pitch } of olderJapaneseThreads) {
      expect(pitch).toBeGreaterThan(coarsePitch(nominal)!);
      expect(metricThread(nominal, pitch)).toBeUndefined();
    }
  });
});
