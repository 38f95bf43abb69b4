import type { Reading } from '../../../indexer/index.ts';
import type { Teach } from '../../../indexer/intake/document.ts';
import { teach } from '../../../indexer/teaching/index.ts';

/** Reads nothing into a line: what is tested here is which lines there are. */
export const unread: Teach = document => ({ ...teach(document), reader: () => ({ read: () => nothing }) });

const nothing: Reading = {
  category: 'plain',
  dims: {},
  attrs: {},
  implied: {},
  qty: null,
  size: null,
  item: null,
  certainty: 1,
  review: false,
  alternatives: [],
  spans: [],
  notes: [],
};
