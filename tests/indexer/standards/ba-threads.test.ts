import { describe, expect, it } from 'vitest';
import { baThreadNamed, baThreads } from '../../../indexer/standards/ba-threads.ts';

/** BS 93: diameter, pitch, effective and minor diameter in mm, as handbooks print them. */
const published: [string, number, number, number, number][] = [
  ['0BA', 6, 1, 5.4, 4.8],
  ['2BA', 4.7, 0.81, 4.215, 3.73],
  ['4BA', 3.6, 0.66, 3.205, 2.81],
  ['6BA', 2.8, 0.53, 2.48, 2.16],
  ['8BA', 2.2, 0.43, 1.94, 1.68],
  ['10BA', 1.7, 0.35, 1.49, 1.28],
];

describe('baThreadNamed', () => {
  it.each(published)(
    'knows %s as %d over the crests with a pitch of %d',
    (name, nominal, pitch, effective, minor) => {
      const thread = baThreadNamed(name)!;
      expect([thread.nominal, thread.pitch]).toEqual([nominal * 1000, pitch * 1000]);
      // The standard rounds both to 0.005.
      expect(Math.abs(thread.pitchDiameter - effective * 1000)).toBeLessThanOrEqual(2.5);
      expect(Math.abs(thread.minor - minor * 1000)).toBeLessThanOrEqual(4);
    },
  );

  it('finds every thread by its designation, and no other', () => {
    for (const thread of baThreads) expect(baThreadNamed(thread.designation)).toBe(thread);
    expect(baThreadNamed('17BA')).toBeUndefined();
  });

  it('gives 25.38 threads an inch for 0BA and 31.4 for 2BA (published inch table)', () => {
    expect(25_400 / baThreadNamed('0BA')!.pitch).toBeCloseTo(25.4, 1);
    expect(25_400 / baThreadNamed('2BA')!.pitch).toBeCloseTo(31.4, 1);
  });
});
