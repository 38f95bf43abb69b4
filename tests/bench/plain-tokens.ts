/** A piece of a line as anyone would cut it: what kind it is and where it stands, nothing understood. */
export interface PlainToken {
  kind: 'word' | 'number' | 'unit' | 'mark';
  text: string;
  start: number;
  end: number;
}

const pieces = /(\d+(?:[.,/]\d+)*)|(\p{L}+)|\S/gu;
const units = new Set(['mm', 'cm', 'in', 'inch', '"', '°']);

/** Plain tokenising: words, numbers, units and single marks with their places. The floor under any reader. */
export function tokenise(line: string): PlainToken[] {
  const tokens: PlainToken[] = [];
  for (const { 0: text, 1: number, 2: word, index } of line.matchAll(pieces)) {
    const kind =
      number !== undefined
        ? 'number'
        : units.has(text.toLowerCase())
          ? 'unit'
          : word !== undefined
            ? 'word'
            : 'mark';
    tokens.push({ kind, text, start: index, end: index + text.length });
  }
  return tokens;
}
