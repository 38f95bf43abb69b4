/** A share as it is printed: `99.42 %`, or a dash of nothing. */
export const percent = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(2)} %`;
