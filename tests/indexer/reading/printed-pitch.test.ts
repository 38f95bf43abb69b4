import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** Pitches of ISO 261: M4 coarse 0.7, M8 coarse 1.25, M5 coarse 0.8. */
describe('a pitch printed behind its thread', () => {
  test.each([
    ['M4-0.7 x 16 mm socket head cap screw', { thread: 'M4', pitch: 0.7, length: 16 }],
    ['Screw M5 x 0.8 mm Thread, 12 mm Long', { thread: 'M5', pitch: 0.8, length: 12 }],
    ['M8 x 1.25 x 30 bolt', { thread: 'M8', pitch: 1.25, length: 30 }],
  ])('%s', (text, dims) => expect(read(text)).toMatchObject({ category: 'screw', dims, review: false }));

  test('one that the thread does not have leaves the length, and a person looks', () => {
    const { dims, review } = read('M5 x 1.25 x 25 bolt');
    expect(dims).toEqual({ thread: 'M5', length: 25 });
    expect(review).toBe(true);
  });

  test('a shoulder screw has its shoulder for diameter', () =>
    expect(read('Shoulder screw, dia 6 mm, length 10 mm, M5').dims).toMatchObject({
      thread: 'M5',
      dia: 6,
      length: 10,
    }));
});
