/** Lengths that only a list in inches prints: fractions, inch marks, unified threads, three decimals without a zero. */
const inch =
  /\d\s?(?:"|”|″|''|in\.|inch)|(?:^|[^\d/])\d{1,2}\/(?:2|4|8|16|32|64)(?!\d)|#\d{1,2}-\d{2}|(?:^|[\sx×])\.\d{3}\b|\b\d\/\d-\d{2}\b/i;
/** Lengths that only a list in millimetres prints: metric threads, mm, decimal commas, three sizes of bearings and washers. */
const metric =
  /\bM\d+(?:[.,]\d+)?(?:\s?[x×*-]\s?\d|\b)|\d\s?mm\b|\d,\d{1,2}(?:\s?[x×*]|\s?$)|\d\s?[x×*]\s?\d+(?:[.,]\d+)?\s?[x×*]\s?\d|\b(?:DIN|ISO)\s?\d/i;

/** The unit of a document's bare numbers, from all its descriptions; null where they hold too few, or as many of each. */
export function findUnit(descriptions: readonly string[]): 'mm' | 'in' | null {
  let inches = 0;
  let millimetres = 0;
  for (const text of descriptions) {
    if (inch.test(text)) inches += 1;
    else if (metric.test(text)) millimetres += 1;
  }
  if (inches > 1.5 * millimetres) return 'in';
  return millimetres > inches ? 'mm' : null;
}
