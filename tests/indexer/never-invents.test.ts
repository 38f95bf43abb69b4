import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';

/** What the characters of a line leave open stays out of its dimensions; what a standard alone gives is implied. */
describe('a reading never invents', () => {
  test.each([
    // A number size names a diameter, not a thread: 8-32 and 8-36 are both No. 8 (ASME B1.1).
    ['flat washer #10', {}, { thread: '#10' }],
    ['screw, wood, #8 x 1-1/4"', { length: 31.75 }, { dia: 4.166 }],
    ['Screw No6 cs wood x 25mm', { length: 25 }, { dia: 3.505 }],
    // A bolt in inches without its threads to the inch may be coarse or fine.
    ['carriage bolt 1/4 x 2"', { length: 50.8 }, { dia: 6.35 }],
    // M3 of a pin may be its diameter or a thread to pull it by (ISO 8735).
    ['pin M3 x 10', { length: 10 }, { dia: 3 }],
    ['o-ring OD 12 x 1.5', { od: 12, cs: 1.5 }, { id: 9 }],
    ['V-seal for 12 shaft', {}, {}],
    ['LOCKWASHER, 5/16 IN.', {}, {}],
    ['hitch pin 2.5', {}, {}],
  ])('%s', (text, dims, implied) => expect(read(text)).toMatchObject({ dims, implied }));

  test('a spring washer is named by its screw, and its standard gives the rest: DIN 127 B 6 is 6.1 x 11.8 x 1.6', () => {
    expect(read('spring washer 6 DIN 127 B')).toMatchObject({
      dims: { thread: 'M6' },
      implied: { id: 6.1, od: 11.8, thickness: 1.6 },
    });
    expect(read('Federscheibe 5').dims).toEqual({ thread: 'M5' });
  });

  test('a flat washer named by its screw has the size that its standard defines: ISO 7089 M4 is 4.3 x 9 x 0.8', () => {
    expect(read('plain washer 4 ISO 7089').dims).toEqual({ id: 4.3, od: 9, thickness: 0.8, thread: 'M4' });
    expect(read('Scheibe DIN 125 A 4,3').dims).toEqual({ id: 4.3, od: 9, thickness: 0.8 });
  });

  test('a reference, a figure index and the size of a driver are no sizes', () => {
    expect(read('8 SNAP RING 20 REF').dims).toEqual({ dia: 20 });
    expect(read('-23 WASHER, THRUST, BRONZE').dims).toEqual({});
    expect(read('Screw, pan, square drive #2 | 8-32 × 3/4 | 20').dims).toMatchObject({
      thread: '8-32',
      length: 19.05,
    });
  });

  test('a tapping screw by its thread ST (ISO 1478) has a diameter and a length', () => {
    expect(read('Tapping screw ISO 7049 - ST3.5 x 9.5 - C - H').dims).toEqual({ dia: 3.5, length: 9.5 });
  });

  test('bare decimals that make sixty-fourths are inches: 1.125 is 1 1/8', () => {
    expect(read('RING, RETAINING, INTERNAL: FOR 1.125 BORE').dims).toEqual({ dia: 28.575 });
    expect(read('Pin 3.175 x 12.000').dims).toEqual({ dia: 3.175, length: 12 });
  });
});
