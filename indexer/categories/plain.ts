import { attributesOf } from '../standards/part-standards.ts';
import type { CategoryDefinition } from './definition.ts';

/** A part of no measured kind: its maker and part number are its item. */
export const plain: CategoryDefinition = {
  name: 'plain',
  title: 'Other part',
  plural: 'Other parts',
  dims: [],
  sizeDims: [],
  itemAttrs: [],
  labels: {},
  words: { nouns: {} },
  standards: attributesOf('plain'),
  stems: [],
  settle: () => {},
  write: () => null,
  parse: () => null,
  sizes: [],
  designations: () => [],
  examples: [
    ['SIDE PLATE', { size: null, dims: {} }],
    ['Gehäusedeckel', { size: null, dims: {} }],
    ['Poignée', { size: null, dims: {} }],
    ['Passfeder DIN 6885 3x3x10', { size: null, dims: {} }],
  ],
};
