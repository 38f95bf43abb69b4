import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['GRUB SCREW M3X4', 'set-screw M3x0.5x4'],
  ['Set screw M4 x 5 cup point', { size: 'set-screw M4x0.7x5', attrs: { point: 'cup' } }],
  [
    'Gewindestift DIN 913 M3x3',
    { size: 'set-screw M3x0.5x3', attrs: { point: 'flat', drive: 'hex-socket' } },
  ],
  ['Madenschraube M5 x 6', 'set-screw M5x0.8x6'],
  ['SCREW, SET, 8-32 X 1/4', 'set-screw 8-32x6.35'],
  ['Prisionero M3x5', 'set-screw M3x0.5x5'],
  ['イモネジ M3x3', 'set-screw M3x0.5x3'],
];
