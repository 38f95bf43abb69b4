import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['CIRCLIP 8', 'retaining-ring 8'],
  ['E-RING E-3', { size: 'retaining-ring 3', attrs: { type: 'e-clip' } }],
  ['E-clip 1.5', { size: 'retaining-ring 1.5', attrs: { type: 'e-clip' } }],
  [
    'Sicherungsring DIN 471 - 10 x 1',
    { size: 'retaining-ring 10', attrs: { type: 'external' }, dims: { dia: 10, thickness: 1 } },
  ],
  ['Sicherungsring für Bohrungen 13', { size: 'retaining-ring 13', attrs: { type: 'internal' } }],
  ['DIN 6799 - 3,2', { size: 'retaining-ring 3.2', attrs: { type: 'e-clip' } }],
  ['RING, RETAINING, EXTERNAL, 6 mm', { size: 'retaining-ring 6', attrs: { type: 'external' } }],
  ['Anello elastico per fori 16', { size: 'retaining-ring 16', attrs: { type: 'internal' } }],
  ['Eリング 2.5', { size: 'retaining-ring 2.5', attrs: { type: 'e-clip' } }],
  ['Circlip pliers', undefined],
];
