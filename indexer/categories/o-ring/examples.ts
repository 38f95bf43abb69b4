import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['O-RING 9.25X1.78', 'o-ring 9.246x1.778'],
  ['AS568-012', 'o-ring 9.246x1.778'],
  ['O-ring P10A NBR', { size: 'o-ring 9.8x2.4', attrs: { material: 'nitrile' } }],
  ['O-Ring 10 x 2', 'o-ring 10x2'],
  ['Joint torique 12x1,5', 'o-ring 12x1.5'],
  ['Rundring 2 x 10', 'o-ring 10x2'],
  ['O-ring ID 8 CS 1.5', 'o-ring 8x1.5'],
  ['Oリング P6', 'o-ring 5.8x1.9'],
  ['O-ring kit', undefined],
];
