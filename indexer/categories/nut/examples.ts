import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['NUT M3', 'nut M3x0.5'],
  ['Hex nut M8x1', { size: 'nut M8x1', attrs: { type: 'hex' } }],
  ['Sechskantmutter DIN 934 M4', { size: 'nut M4x0.7', attrs: { type: 'hex' } }],
  ['Stoppmutter M5', { size: 'nut M5x0.8', attrs: { type: 'lock' } }],
  ['NUT, LOCK, 10-32', { size: 'nut 10-32', attrs: { type: 'lock' } }],
  ['Écrou borgne M6', { size: 'nut M6x1', attrs: { type: 'cap' } }],
  ['2BA nut', 'nut 2BA'],
  ['NUT DRIVER 5.5 mm', undefined],
  ['Einschmelzmutter M3', undefined],
];
