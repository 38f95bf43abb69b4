/** A pattern's source that any of these meets. Longer phrases stand before their beginnings. */
export const any = (...phrases: string[]): string => `(?:${phrases.join('|')})`;

/** No letter before: where a phrase may begin. */
export const begins = String.raw`(?<![\p{L}])`;
