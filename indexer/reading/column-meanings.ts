/** What a column of a parts list can hold; `model` counts one model's parts, `other` is kept with the remarks. */
export const columnMeanings = [
  'ref',
  'partNumber',
  'description',
  'qty',
  'unit',
  'remarks',
  'price',
  'size',
  'material',
  'level',
  'model',
  'other',
] as const;

export type ColumnMeaning = (typeof columnMeanings)[number];

/**
 * What a person says that columns hold, for each table of a document in the order of its `tables`, a meaning for each
 * column; a table that is left out or null is read as found.
 */
export type GivenColumns = readonly (readonly ColumnMeaning[] | null | undefined)[];
