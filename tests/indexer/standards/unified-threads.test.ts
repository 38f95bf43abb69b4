import { describe, expect, it } from 'vitest';
import {
  unifiedLimits,
  unifiedThreadNamed,
  unifiedThreads,
  unifiedThreadsOf,
} from '../../../indexer/standards/unified-threads.ts';

/** Class 2A of ASME B1.1 as published, inches: major max and min, pitch diameter max and min. */
const class2A: [string, number, number, number, number][] = [
  ['0-80', 0.0595, 0.0563, 0.0514, 0.0496],
  ['1-64', 0.0724, 0.0686, 0.0623, 0.0603],
  ['1-72', 0.0724, 0.0689, 0.0634, 0.0615],
  ['2-56', 0.0854, 0.0813, 0.0738, 0.0717],
  ['3-48', 0.0983, 0.0938, 0.0848, 0.0825],
  ['4-40', 0.1112, 0.1061, 0.095, 0.0925],
  ['6-32', 0.1372, 0.1312, 0.1169, 0.1141],
  ['8-32', 0.1631, 0.1571, 0.1428, 0.1399],
  ['10-24', 0.189, 0.1818, 0.1619, 0.1586],
  ['10-32', 0.1891, 0.1831, 0.1688, 0.1658],
  ['1/4-20', 0.2489, 0.2408, 0.2164, 0.2127],
  ['1/4-28', 0.249, 0.2425, 0.2258, 0.2225],
  ['1/2-13', 0.4985, 0.4876, 0.4485, 0.4435],
  ['5/8-11', 0.6234, 0.6113, 0.5644, 0.5589],
  ['3/4-10', 0.7482, 0.7353, 0.6832, 0.6773],
  ['1-8', 0.998, 0.983, 0.9168, 0.91],
];

/** Class 2B of ASME B1.1 as handbooks print it, inches: minor min and max; those from 1/4 and number 10 are given to 0.001. */
const class2B: [string, number, number, number][] = [
  ['4-40', 0.0849, 0.0939, 0.0001],
  ['6-32', 0.104, 0.114, 0.0006],
  ['10-32', 0.156, 0.164, 0.0006],
  ['1/4-20', 0.196, 0.207, 0.0006],
];

const um = (inches: number) => Math.round(inches * 25_400);

describe('unifiedLimits', () => {
  it.each(class2A)(
    'of %s, class 2A, are major %d to %d and pitch diameter %d to %d inch',
    (name, major, least, max, min) => {
      expect(unifiedLimits(unifiedThreadNamed(name)!).external).toEqual({
        major: { max: um(major), min: um(least) },
        pitchDiameter: { max: um(max), min: um(min) },
      });
    },
  );

  it.each(class2B)('of %s, class 2B, have the minor diameter %d to %d inch', (name, min, max, room) => {
    const { minor } = unifiedLimits(unifiedThreadNamed(name)!).internal;
    expect(Math.abs(minor.min / 25_400 - min)).toBeLessThanOrEqual(room);
    expect(Math.abs(minor.max / 25_400 - max)).toBeLessThanOrEqual(room);
  });

  it('leave every screw room in its nut', () => {
    for (const thread of unifiedThreads) {
      const { external, internal } = unifiedLimits(thread);
      expect(internal.pitchDiameter.min, thread.designation).toBeGreaterThan(external.pitchDiameter.max);
      expect(internal.minor.max, thread.designation).toBeLessThan(external.major.min);
    }
  });
});

describe('unified threads', () => {
  it.each([
    ['2-56', 2184, 454],
    ['6-32', 3505, 794],
    ['10-24', 4826, 1058],
    ['1/4-20', 6350, 1270],
    ['5/16-18', 7938, 1411],
  ])('%s are %d µm over the crests with a pitch of %d', (name, nominal, pitch) => {
    expect(Math.abs(unifiedThreadNamed(name)!.nominal - nominal)).toBeLessThanOrEqual(1);
    expect(unifiedThreadNamed(name)!.pitch).toBe(pitch);
  });

  it('are found by designation and by size, coarse first', () => {
    for (const thread of unifiedThreads) {
      expect(unifiedThreadNamed(thread.designation)).toBe(thread);
      expect(unifiedThreadsOf(thread.size)).toContain(thread);
    }
    expect(unifiedThreadsOf('10').map(thread => thread.designation)).toEqual(['10-24', '10-32']);
  });

  it('take 0.138 inch for number 6: one page has 0.136', () => {
    expect(unifiedThreadNamed('6-32')!.nominal).toBe(um(0.138));
  });

  it.each(['#6-32', '6-33', '7-32', '', 'M3'])('know no thread %j', name => {
    expect(unifiedThreadNamed(name)).toBeUndefined();
  });
});
