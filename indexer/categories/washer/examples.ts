import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['WASHER 3.2X7X0.5', 'washer 3.2x7x0.5'],
  ['Unterlegscheibe 4,3 x 9 x 0,8', 'washer 4.3x9x0.8'],
  ['DIN 125 A 4,3', 'washer 4.3x9x0.8'],
  ['ISO 7089 M3', 'washer 3.2x7x0.5'],
  ['Scheibe DIN 9021 M4', 'washer 4.3x12x1'],
  ['Federring M4', { size: null, dims: { thread: 'M4' }, attrs: { type: 'spring' } }],
  ['Washer M3 x 7 x 0.5', { dims: { thread: 'M3', od: 7, thickness: 0.5 } }],
  ['WASHER, FLAT, .125 ID X .250 OD X .032 THK', 'washer 3.175x6.35x0.813'],
  ['Rondelle plate 5x10x1', { size: 'washer 5x10x1', attrs: { type: 'flat' } }],
  ['Riemenscheibe', undefined],
  ['Bremsscheibe 160 mm', undefined],
];
