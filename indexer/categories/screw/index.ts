import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { withGrades } from '../grades.ts';
import { settleScrew } from '../settle-screw.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { designationOfThread, threadedSizes } from '../threaded-sizes.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { tools } from './tools.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

export const screw: CategoryDefinition = {
  name: 'screw',
  title: 'Screw',
  plural: 'Screws',
  dims: [
    { key: 'thread', label: 'thread', unit: 'thread' },
    {
      key: 'dia',
      label: 'diameter',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.8), mm(40)],
      near: [0.5, 0.2],
    },
    { key: 'pitch', label: 'pitch', unit: 'mm', limits: [mm(0.1), mm(6)] },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.7), mm(500)], near: [3, 0.25] },
  ],
  sizeDims: ['thread', 'length'],
  itemAttrs: ['head', 'drive', 'type', 'grade', 'hand', 'material'],
  labels: { length: 'length' },
  words: withGrades(words),
  standards: attributesOf('screw'),
  stems: [],
  settle: settleScrew,
  write: writeThreadedLength,
  parse: parseThreadedLength,
  sizes: threadedSizes([3, 4, 5, 6, 8, 10, 12, 16, 20]),
  designations: designationOfThread,
  drawing,
  rules,
  tools,
  examples,
};
