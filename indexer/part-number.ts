/** A part number for comparing: letters and digits alone, capitals, full-width forms made plain. `70-0309 a` is `700309A`. */
export function foldNumber(partNumber: string): string {
  return partNumber
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}
