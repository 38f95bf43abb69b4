import type { Example } from '../definition.ts';

export const examples: readonly Example[] = [
  ['BALL BEARING 5X11X4 ZZ', 'bearing 5x11x4'],
  ['brg. 11 x 5 x 4', 'bearing 5x11x4'],
  ['623 2RS', 'bearing 3x10x4'],
  ['BEARING CAP', undefined],
  ['Kugellager 8x22x7', 'bearing 8x22x7'],
  ['Rillenkugellager 688 ZZ', { size: 'bearing 8x16x5', attrs: { seal: 'two-shields' } }],
  ['Rillenkugellager 688', { size: null, dims: { bore: 8, od: 16 } }],
  ['SF623ZZ', { size: 'bearing 3x10x4', attrs: { flanged: true, material: 'stainless' } }],
  ['Bearing R188', { size: null, dims: { bore: 6.35, od: 12.7 } }],
  ['ball bearing 3/16 x 1/2 x .196', 'bearing 4.762x12.7x4.978'],
  ['Nadellager HK0810', { size: 'bearing 8x12x10', attrs: { type: 'needle' } }],
  ['Roulement à billes 6x13x5 2RS', 'bearing 6x13x5'],
  ['ボールベアリング 7x11x3', 'bearing 7x11x3'],
  ['Lagerdeckel', undefined],
];
