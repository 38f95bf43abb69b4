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

export const setScrew: CategoryDefinition = {
  name: 'set-screw',
  title: 'Set screw',
  plural: 'Set screws',
  dims: [
    { key: 'thread', label: 'thread', unit: 'thread' },
    { key: 'pitch', label: 'pitch', unit: 'mm', limits: [mm(0.1), mm(6)] },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.7), mm(200)], near: [3, 0.25] },
  ],
  sizeDims: ['thread', 'length'],
  itemAttrs: ['point', 'drive', 'type', 'grade', 'hand', 'material'],
  labels: { length: 'length' },
  words: withGrades(words),
  standards: attributesOf('set-screw'),
  stems: [],
  settle: settleScrew,
  write: writeThreadedLength,
  parse: parseThreadedLength,
  sizes: threadedSizes([2, 3, 4, 5, 6, 8, 10]),
  designations: designationOfThread,
  drawing,
  rules,
  tools,
  examples,
};
