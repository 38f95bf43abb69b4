import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRod } from '../draw-rod.ts';
import { rodLabels, settleRod } from '../settle-rod.ts';
import { plainSize } from '../size-text.ts';
import { examples } from './examples.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

export const pin: CategoryDefinition = {
  name: 'pin',
  title: 'Pin',
  plural: 'Pins',
  dims: [
    {
      key: 'dia',
      label: 'diameter',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.3), mm(60)],
      near: [0.5, 0.2],
    },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.8), mm(400)], near: [3, 0.25] },
  ],
  sizeDims: ['dia', 'length'],
  itemAttrs: ['type', 'material'],
  labels: rodLabels,
  words,
  standards: attributesOf('pin'),
  stems: [],
  settle: settleRod,
  ...plainSize('dia', 'length'),
  sizes: [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12].flatMap(d =>
    [4, 6, 8, 10, 12, 16, 20, 24, 30].map(l => ({ dia: mm(d), length: mm(l) })),
  ),
  designations: () => [],
  drawing: drawRod,
  rules,
  examples,
};
