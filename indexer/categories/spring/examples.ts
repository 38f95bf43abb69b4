import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['SPRING 1.2X8X7', 'spring 1.2x8x7'],
  ['Druckfeder 0,5 x 5 x 15', { size: 'spring 0.5x5x15', attrs: { type: 'compression' } }],
  [
    'SPRING, COMPRESSION, .020 WIRE, .180 OD, .50 LG',
    { size: 'spring 0.508x4.572x12.7', attrs: { type: 'compression' } },
  ],
  ['Bail spring', { size: null, dims: {} }],
  [
    'Tellerfeder 8,2 x 16 x 0,9',
    { size: null, dims: { id: 8.2, od: 16, thickness: 0.9 }, attrs: { type: 'belleville' } },
  ],
  ['Ressort de traction', { size: null, attrs: { type: 'extension' } }],
  ['圧縮バネ 0.4x4x12', { size: 'spring 0.4x4x12', attrs: { type: 'compression' } }],
  ['Spring seat', undefined],
  ['spring steel sheet 0.5', undefined],
];
