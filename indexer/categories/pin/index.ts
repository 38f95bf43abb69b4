import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRod } from '../draw-rod.ts';
import { rodLabels, settleRod } from '../settle-rod.ts';
import { plainSize } from '../size-text.ts';
import { examples } from './examples.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const dowel = { type: 'dowel' };
const springPin = { type: 'spring' };
const grooved = { type: 'grooved' };

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
  standards: {
    'DIN 7': dowel,
    'DIN 6325': dowel,
    'ISO 2338': dowel,
    'ISO 8734': dowel,
    'ISO 8735': dowel,
    'DIN 7979': dowel,
    'DIN 94': { type: 'cotter' },
    'ISO 1234': { type: 'cotter' },
    'DIN 1': { type: 'taper' },
    'ISO 2339': { type: 'taper' },
    'DIN 1481': springPin,
    'DIN 7346': springPin,
    'DIN 7343': springPin,
    'DIN 7344': springPin,
    'ISO 8752': springPin,
    'ISO 13337': springPin,
    'ISO 8750': springPin,
    'DIN 1470': grooved,
    'DIN 1471': grooved,
    'DIN 1473': grooved,
    'ISO 8739': grooved,
    'ISO 8740': grooved,
    'ISO 8744': grooved,
    'DIN 1444': { type: 'clevis' },
    'ISO 2341': { type: 'clevis' },
    'DIN 11024': {},
    'JIS B 1354': dowel,
    'JIS B 2808': springPin,
    'JIS B 1351': { type: 'cotter' },
  },
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
