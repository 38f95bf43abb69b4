import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['PIN 3X12', 'pin 3x12'],
  ['Zylinderstift 2 m6 x 10', { size: 'pin 2x10', attrs: { type: 'dowel' } }],
  ['Spannstift DIN 1481 3x16', { size: 'pin 3x16', attrs: { type: 'spring' } }],
  ['PIN, COTTER, 1/16 X 1/2', { size: 'pin 1.588x12.7', attrs: { type: 'cotter' } }],
  ['Roll pin Ø2 x 12', { size: 'pin 2x12', attrs: { type: 'spring' } }],
  ['Goupille élastique 3 x 20', { size: 'pin 3x20', attrs: { type: 'spring' } }],
  ['Splint 1,6x16', { size: 'pin 1.6x16', attrs: { type: 'cotter' } }],
  ['スプリングピン 2x8', { size: 'pin 2x8', attrs: { type: 'spring' } }],
  ['PIN HOLDER', undefined],
];
