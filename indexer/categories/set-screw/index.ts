import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { withGrades } from '../grades.ts';
import { settleScrew } from '../settle-screw.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { designationOfThread, threadedSizes } from '../threaded-sizes.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
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
  standards: {
    'DIN 913': { drive: 'hex-socket', point: 'flat' },
    'ISO 4026': { drive: 'hex-socket', point: 'flat' },
    'DIN 914': { drive: 'hex-socket', point: 'cone' },
    'ISO 4027': { drive: 'hex-socket', point: 'cone' },
    'DIN 915': { drive: 'hex-socket', point: 'dog' },
    'ISO 4028': { drive: 'hex-socket', point: 'dog' },
    'DIN 916': { drive: 'hex-socket', point: 'cup' },
    'ISO 4029': { drive: 'hex-socket', point: 'cup' },
    'DIN 417': { drive: 'slotted', point: 'dog' },
    'DIN 438': { drive: 'slotted', point: 'cup' },
    'DIN 551': { drive: 'slotted', point: 'flat' },
    'DIN 553': { drive: 'slotted', point: 'cone' },
    'ISO 4766': { drive: 'slotted', point: 'flat' },
    'ISO 7434': { drive: 'slotted', point: 'cone' },
    'ISO 7435': { drive: 'slotted', point: 'dog' },
    'ISO 7436': { drive: 'slotted', point: 'cup' },
    'JIS B 1177': { drive: 'hex-socket' },
  },
  stems: [],
  settle: settleScrew,
  write: writeThreadedLength,
  parse: parseThreadedLength,
  sizes: threadedSizes([2, 3, 4, 5, 6, 8, 10]),
  designations: designationOfThread,
  drawing,
  rules,
  examples,
};
