import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRing } from '../draw-ring.ts';
import { settleRing } from '../settle-ring.ts';
import { plainSize } from '../size-text.ts';

const labels = {
  id: 'id',
  bore: 'id',
  d: 'id',
  D: 'od',
  od: 'od',
  dia: 'od',
  length: 'length',
  width: 'length',
  height: 'length',
  thickness: 'length',
};

const sizes = [
  [3, 5, 4],
  [4, 6, 4],
  [5, 7, 5],
  [6, 8, 6],
  [6, 9, 6],
  [8, 10, 8],
  [8, 12, 8],
  [10, 12, 10],
  [10, 14, 10],
  [12, 16, 12],
] as const;

export const bushing: CategoryDefinition = {
  name: 'bushing',
  title: 'Bushing',
  plural: 'Bushings',
  dims: [
    { key: 'id', label: 'bore', diameter: true, unit: 'mm', limits: [mm(0.5), mm(150)], near: [1, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1), mm(200)], near: [2, 0.2] },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.5), mm(200)], near: [3, 0.4] },
  ],
  sizeDims: ['id', 'od', 'length'],
  itemAttrs: ['flanged', 'material'],
  labels,
  words: {
    nouns: {
      en: {
        'bushing, bush, plain bearing, sintered bearing, sleeve bearing, sleeve bush, slide bearing, plain bush, self lubricating bush, oilite bush, oilite bushing, sintered bush, bushings, bshg':
          {},
        'bronze bearing, oilite bearing, sintered bronze bearing': { material: 'bronze' },
        'flanged bush, flanged bushing, flange bush, flange bushing, flanged sleeve bearing': {
          flanged: true,
        },
      },
      de: {
        'buchse, gleitlager, lagerbuchse, gleitlagerbuchse, sinterbuchse, sinterlager, führungsbuchse, gleitbuchse, büchse':
          {},
        'bundbuchse, flanschbuchse, bundgleitlager': { flanged: true },
      },
      fr: {
        'coussinet, bague, palier lisse, bague lisse, douille, bague de guidage, coussinet lisse': {},
        'coussinet a collerette, bague a collerette, bague epaulee': { flanged: true },
      },
      it: {
        'boccola, boccole, bronzina, bronzine, bussola': {},
        'boccola flangiata, bussola flangiata, boccola con flangia': { flanged: true },
      },
      es: {
        'casquillo, buje, cojinete de friccion, cojinete liso, cojinete, bocina': {},
        'casquillo con brida, casquillo con valona, buje con brida': { flanged: true },
      },
      nl: {
        'bus, glijlager, lagerbus, bussen, geleidebus': {},
        'kraagbus, flensbus': { flanged: true },
      },
      ja: {
        'ブッシュ, ブッシング, 滑り軸受, メタルブッシュ, すべり軸受, オイレスブッシュ': {},
        'フランジブッシュ, つば付きブッシュ': { flanged: true },
      },
    },
    modifiers: {
      en: { 'flanged, with flange, flange': { flanged: true } },
      de: { 'mit bund, mit flansch': { flanged: true } },
      fr: { 'a collerette, epaulee': { flanged: true } },
      it: { 'flangiata, con flangia': { flanged: true } },
      es: { 'con brida, con valona': { flanged: true } },
      nl: { 'met kraag, met flens': { flanged: true } },
      ja: { 'フランジ付, フランジ付き, つば付き': { flanged: true } },
    },
    plain: {
      en: 'bushing cap, bushing holder, cable bushing, strain relief bushing',
      de: 'buchsenleiste, steckbuchse, distanzbuchse, anschlussbuchse, netzbuchse, gewindebuchse, klinkenbuchse',
      fr: 'bague entretoise, douille de lampe',
      nl: 'afstandsbus',
    },
  },
  standards: attributesOf('bushing'),
  stems: [],
  settle: (claim, line) => settleRing(claim, line, { inside: 'id', outside: 'od', across: 'length' }, labels),
  ...plainSize('id', 'od', 'length'),
  sizes: sizes.map(([id, od, length]) => ({ id: mm(id), od: mm(od), length: mm(length) })),
  designations: () => [],
  drawing: drawRing({ inside: 'id', outside: 'od', across: 'length' }),
  examples: [
    ['BUSHING 5X7X5', 'bushing 5x7x5'],
    ['Bundbuchse 6 x 8 x 6', { size: 'bushing 6x8x6', attrs: { flanged: true } }],
    ['Bronze bush ID 4 OD 6 L 8', { size: 'bushing 4x6x8', attrs: { material: 'bronze' } }],
    ['Gleitlager 8x10x10', 'bushing 8x10x10'],
    ['BUSHING, SLEEVE, .250 ID X .375 OD X .500 LG', 'bushing 6.35x9.525x12.7'],
    ['ブッシュ 3x5x4', 'bushing 3x5x4'],
  ],
};
