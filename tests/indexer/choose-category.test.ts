import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';

/** Lines composed after open hardware lists, parts books and drawings (common practice). */
describe('which kind of part a line is', () => {
  test.each([
    // A word that is a part by itself describes the one named before it.
    ['Screw M3 cap x 20mm', 'screw'],
    ['M3 × 5, cone | 6', 'set-screw'],
    ['END CAP M4', 'plain'],
    // The name of an inverted line stands before its comma.
    ['SHAFT, idler gear, 1¼″ × .4375″', 'shaft'],
    ['SPRING, brake rod, ⅛″ wire', 'spring'],
    ['ROD, CONNECTING', 'plain'],
    // An unknown word in front of a thread may be the name, one behind it describes.
    ['Pillar hex M3 x 20mm brass', 'plain'],
    ['#5-40 x 5/16 binding head', 'screw'],
    // Where a row begins with a designation, what follows is where it goes.
    ['688ZZ,4,idler stack', 'bearing'],
    ['608ZZ holder', 'plain'],
    // A thread with its length is a part, whatever it is for.
    ['M4 × 10 mm | 6 × | for the base plate', 'screw'],
    // Perno is a pin in Italian and a bolt in Spanish: a bolt has a thread.
    ['Perno 6x28', 'pin'],
    ['Perno M6x28', 'screw'],
    ['pair of bearings 5x11x4', 'bearing'],
    ['Thrust needle washer AS1024 | 2', 'washer'],
  ])('%s is a %s', (text, category) => expect(read(text).category).toBe(category));

  test('a bearing named by its bore alone has the rest by the standard: GE8E is 8 x 16 x 8 (ISO 12240-1)', () => {
    expect(read('Spherical bearing GE8')).toMatchObject({ dims: { bore: 8 }, implied: { od: 16, width: 8 } });
    expect(read('needle cage K6x9x8').dims).toEqual({ bore: 6, od: 9, width: 8 });
  });

  test('the figure behind a nut and a dash is its property class (ISO 898-2)', () => {
    expect(read('ISO 4032 - M5 - 8')).toMatchObject({ dims: { thread: 'M5' }, attrs: { grade: '8' } });
    expect(read('Nut M8 half x 4mm').dims).toEqual({ thread: 'M8', thickness: 4 });
  });
});
