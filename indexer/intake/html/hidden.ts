import type { Attributes } from '../markup.ts';

/** Elements whose content is no text of the page. */
const unseen = new Set(
  'title script style template noscript svg math object iframe select datalist textarea'.split(' '),
);

/** True for what a browser does not show. */
export const isHidden = (name: string, attributes: Attributes): boolean =>
  unseen.has(name) ||
  attributes['hidden'] !== undefined ||
  /(?:^|[;\s])(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse))/i.test(attributes['style'] ?? '');
