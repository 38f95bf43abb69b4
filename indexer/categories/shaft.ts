import { attributesOf } from '../standards/part-standards.ts';
import { mm } from '../units/length.ts';
import type { CategoryDefinition } from './definition.ts';
import { drawRod } from './draw-rod.ts';
import { rodLabels, settleRod } from './settle-rod.ts';
import { plainSize } from './size-text.ts';

export const shaft: CategoryDefinition = {
  name: 'shaft',
  title: 'Shaft',
  plural: 'Shafts',
  dims: [
    {
      key: 'dia',
      label: 'diameter',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.3), mm(120)],
      near: [0.5, 0.2],
    },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(2), mm(6000)], near: [5, 0.2] },
  ],
  sizeDims: ['dia', 'length'],
  itemAttrs: ['material'],
  labels: rodLabels,
  words: {
    nouns: {
      en: {
        'shaft, axle, spindle, main spindle, gearshaft, camshaft, spindle shaft, main shaft, drive shaft, smooth rod, linear rod, precision shaft, linear shaft, rods, rod, shafts, gear shaft, pinion shaft, axle shaft, idler shaft, crank shaft, crankshaft, round bar, hardened rod, precision rod, polished rod, motor shaft, worm shaft, output shaft, input shaft, countershaft, spool shaft, handle shaft':
          {},
      },
      de: {
        'welle, achse, antriebswelle, wellen, hauptwelle, kurbelwelle, präzisionswelle, rundstahl, rundstange, wellenstange, führungsstange, getriebewelle, ritzelwelle, abtriebswelle, stahlwelle, achswelle, spulenachse':
          {},
      },
      fr: {
        'arbre, axe, arbre principal, arbre moteur, tige lisse, barre ronde, axe lisse, arbre lisse, vilebrequin, essieu':
          {},
      },
      it: {
        'albero, asse, alberino, albero motore, barra tonda, alberi, barra liscia, albero principale': {},
      },
      es: {
        'eje, arbol, varilla lisa, eje principal, ejes, eje motriz, barra lisa, barra redonda, ciguenal': {},
      },
      nl: { 'as, aandrijfas, assen, hoofdas, geleidestang, krukas, as staal': {} },
      ja: { 'シャフト, 軸, アクスル, メインシャフト, 主軸, ハンドル軸, スプール軸, 車軸': {} },
    },
    plain: {
      en: 'shaft collar, shaft coupler, shaft coupling, shaft holder, shaft key, rod tip, rod holder, rod end plate, threaded rod, all thread, allthread, rod clamp, flexible shaft, shaft cover, shaft support, shaft housing, shaft clamp, connecting rod, push rod, pushrod, tie rod, brake rod, welding rod, shaft assembly, shaft assy',
      de: 'gewindestange, wellenkupplung, achshalter, achsschenkel, wellenbock, wellengehäuse, stellring, schubstange, pleuelstange, zugstange',
      fr: "tige filetee, manchon d'arbre",
      it: 'barra filettata, asta filettata',
      es: 'varilla roscada',
      nl: 'draadstang, draadeind, askoppeling',
      ja: '寸切り, 寸切りボルト, 全ネジ, シャフトホルダー, カップリング',
    },
  },
  standards: attributesOf('shaft'),
  stems: [],
  settle: settleRod,
  ...plainSize('dia', 'length'),
  sizes: [3, 4, 5, 6, 8, 10, 12].flatMap(d =>
    [20, 30, 48, 60, 100, 150, 300].map(l => ({ dia: mm(d), length: mm(l) })),
  ),
  designations: () => [],
  drawing: drawRod,
  examples: [
    ['SHAFT 6X48', 'shaft 6x48'],
    ['Welle Ø8 x 120', 'shaft 8x120'],
    ['8 mm smooth rod, 300 mm long', 'shaft 8x300'],
    ['MAIN SHAFT', { size: null, dims: {} }],
    ['Axe 5 x 60', 'shaft 5x60'],
    ['Threaded rod M8 x 1000', undefined],
    ['Shaft collar 8 mm', undefined],
  ],
};
