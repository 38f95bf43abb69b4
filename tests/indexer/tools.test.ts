import { expect, test } from 'vitest';
import { type CategoryName, read, toolsOf } from '../../indexer/index.ts';

const toolsFor = (text: string) => {
  const { category, dims, attrs } = read(text);
  return toolsOf(category as CategoryName, dims, attrs).map(({ kind, size, when }) =>
    [kind, size, when && `(${when})`].filter(Boolean).join(' '),
  );
};

test.each([
  // Suppliers' tables of ISO 4762, 7380-1 and 10642: one M3 thread takes 2.5 in a cap head, 2 in the lower ones.
  ['socket head cap screw M3x8', ['hex key 2.5 mm']],
  ['DIN 912 M4x10', ['hex key 3 mm']],
  ['button head socket screw M3x8', ['hex key 2 mm']],
  ['socket countersunk screw M3x8', ['hex key 2 mm']],
  // ISO 4026 to 4029: M3 takes 1.5.
  ['set screw M3x4 hex socket', ['hex key 1.5 mm']],
  ['set screw M3x4', ['hex key 1.5 mm (hexagon socket)', 'blade 0.4 mm (slotted)']],
  // ISO 4766: the slot of M4 is 0.6 (from memory).
  ['slotted set screw M4x6', ['blade 0.6 mm']],
  // ISO 7045: cross recess number 1 on M3, 2 on M4, 0 on M2; form Z is marked PZ.
  ['pan head phillips screw M3x8', ['cross driver PH1']],
  ['pan head phillips screw M4x8', ['cross driver PH2']],
  ['ISO 7045 M2x6 screw', ['cross driver PH0']],
  ['pan head pozidriv screw M4x8', ['cross driver PZ2']],
  // ISO 14583: T10 on M3.
  ['pan head torx screw M3x8', ['hexalobular driver T10']],
  // ISO 1207: the slot of M3 is 0.8.
  ['cheese head slotted screw M3x8', ['blade 0.8 mm']],
  // ISO 4017: M6 is 10 across flats; ISO 4032 the same; DIN 934 M10 is 17 where ISO 4032 has 16.
  ['hex head bolt M6x20', ['spanner 10']],
  ['hex nut M3', ['spanner 5.5']],
  ['nut M10 DIN 934', ['spanner 17']],
  ['nut M10 ISO 4032', ['spanner 16']],
  // ASME B18.3: no. 6 takes 7/64 in a cap head.
  ['socket head cap screw 6-32 x 3/8', ['hex key 7/64 in']],
  // Pliers DIN 5254 A0 serve shafts 3 to 10, DIN 5256 J1 bores 12 to 25, in suppliers' lists.
  ['external circlip 8', ['ring pliers A0']],
  ['internal circlip 22', ['ring pliers J1']],
  ['E-clip 4', ['clip fork or small blade']],
  ['ball bearing 5x11x4', []],
])('%s: %j', (text, tools) => expect(toolsFor(text)).toEqual(tools));

test('where head and drive are open, each form names its own', () => {
  const tools = toolsFor('screw M3x8');
  expect(tools).toContain('hex key 2.5 mm (socket cap head, hexagon socket)');
  expect(tools).toContain('cross driver PH1 (pan head, phillips)');
  expect(tools).toContain('spanner 5.5 (hex head)');
});
