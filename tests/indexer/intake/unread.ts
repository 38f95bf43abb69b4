import type { ReadLine } from '../../../indexer/intake/document.ts';

/** Reads nothing into a line: what is tested here is which lines there are. */
export const unread: ReadLine = () => ({
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
});
