import { mm } from '../../units/length.ts';
import type { CategoryDefinition, CategoryWords, Phrases } from '../definition.ts';
import { settleScrew } from '../settle-screw.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { designationOfThread, threadedSizes } from '../threaded-sizes.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { standards } from './standards.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

/** Property classes and steel grades, as printed in every language (ISO 898-1, ISO 3506-1). */
export const grades: Phrases = {
  en: {
    'a2, a2-70, a2 70, a2-50': { grade: 'A2', material: 'stainless' },
    'a4, a4-80, a4-70, a4 80': { grade: 'A4', material: 'stainless' },
    '8.8, grade 8.8, class 8.8': { grade: '8.8' },
    '10.9': { grade: '10.9' },
    '12.9': { grade: '12.9' },
    '4.8': { grade: '4.8' },
    '5.8': { grade: '5.8' },
    'grade 5, gr 5, gr.5': { grade: '5' },
    'grade 8, gr 8, gr.8': { grade: '8' },
  },
};

/** The words of a category with the grades added to its English modifiers. */
export const withGrades = (own: CategoryWords): CategoryWords => ({
  ...own,
  modifiers: { ...own.modifiers, en: { ...own.modifiers?.en, ...grades.en } },
});

export const screw: CategoryDefinition = {
  name: 'screw',
  title: 'Screw',
  plural: 'Screws',
  dims: [
    { key: 'thread', label: 'thread', unit: 'thread' },
    { key: 'dia', label: 'diameter', diameter: true, unit: 'mm', limits: [mm(0.8), mm(40)] },
    { key: 'pitch', label: 'pitch', unit: 'mm', limits: [mm(0.1), mm(6)] },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.7), mm(500)] },
  ],
  sizeDims: ['thread', 'length'],
  itemAttrs: ['head', 'drive', 'type', 'grade', 'hand', 'material'],
  labels: { length: 'length' },
  words: withGrades(words),
  standards,
  stems: [],
  settle: settleScrew,
  write: writeThreadedLength,
  parse: parseThreadedLength,
  sizes: threadedSizes([3, 4, 5, 6, 8, 10, 12, 16, 20]),
  designations: designationOfThread,
  drawing,
  rules,
  examples,
};
