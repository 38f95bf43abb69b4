import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** Lines composed after build guides and the text between lists (common practice). */
describe('what a sheet says between its parts', () => {
  test.each([
    '1. Print all the parts before you start',
    '2) Press in the bearings',
    '- file off the burrs',
    'Tighten the screws before closing the lid',
    'Serrer les vis',
    'Inserire la molla',
    'Colocar el eje',
    'Schrauben anziehen',
    'Lagers plaatsen',
    'See fig. 3 for screw lengths',
    'siehe Bild 4',
    'includes 12-18',
    'FIG. 4-12. WINCH, HAND, PARTS',
    'GROUP 1304, GEAR CASE',
    'Discontinued',
    'Superseded by 31-204',
    '==== Gears and Shafts ====',
    'Order by part number only',
    'Gesamtgewicht 3,4 kg',
    'Made in small series',
  ])('%s is no part', text => expect(read(text).category).toBe('not-a-part'));

  test.each([
    ['INSERT, THREADED M4', 'plain'],
    ['CHECK NUT M6', 'nut'],
    ['PUSH NUT 5', 'nut'],
    ['PRESS FIT BUSHING 6x8x10', 'bushing'],
    ['SET SCREW M4x6', 'set-screw'],
    ['GUIDE PIN 3x20', 'pin'],
    ['Group 3 screw M3x8', 'screw'],
    ['ballast weight', 'plain'],
  ])('%s is a %s', (text, category) => expect(read(text).category).toBe(category));
});
