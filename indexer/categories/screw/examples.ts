import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['SCREW M3X8', 'screw M3x0.5x8'],
  ['Pan head screw M2,5 x 6', { size: 'screw M2.5x0.45x6', attrs: { head: 'pan' } }],
  [
    'M3x0.35x10 socket head cap screw',
    { size: 'screw M3x0.35x10', attrs: { head: 'socket-cap', drive: 'hex-socket' } },
  ],
  ['SCREW, MACHINE, PAN HEAD, 6-32 X 3/8', { size: 'screw 6-32x9.525', attrs: { head: 'pan' } }],
  ['1/4-20 x 1/2 hex bolt', { size: 'screw 1/4-20x12.7', attrs: { head: 'hex' } }],
  [
    'Senkschraube M4x12 DIN 965',
    { size: 'screw M4x0.7x12', attrs: { head: 'countersunk', drive: 'phillips' } },
  ],
  [
    'Zylinderschraube ISO 4762 - M3 x 10 - A2',
    { size: 'screw M3x0.5x10', attrs: { head: 'socket-cap', grade: 'A2' } },
  ],
  ['Blechschraube 2,9 x 9,5', { size: 'screw 2.9x9.5', attrs: { type: 'self-tapping' } }],
  ['3x M4x10', { size: 'screw M4x0.7x10', qty: 3 }],
  ['ナベネジ M2x5', { size: 'screw M2x0.4x5', attrs: { head: 'pan' } }],
  ['Screwdriver PH2', undefined],
  ['Schraubendreher', undefined],
];
