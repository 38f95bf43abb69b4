/** Characters that make a reader look closer, each kind as a bit. */
export const has = {
  /** What only mark-up, a link or a path has: * ` < & # ~ ] / and a backslash. */
  markup: 1,
  comma: 2,
  semicolon: 4,
  point: 8,
  underline: 16,
  /** Anything beyond ASCII. */
  beyond: 32,
} as const;

const kinds = new Uint8Array(128);
for (const [kind, characters] of [
  [has.markup, '\\*`<&#~]/'],
  [has.comma, ','],
  [has.semicolon, ';'],
  [has.point, '.'],
  [has.underline, '_'],
] as const)
  for (const character of characters) kinds[character.charCodeAt(0)] = kind;

const bytes = new Uint8Array(12_288);
const encoder = new TextEncoder();

/** Which of these kinds stand in a text, together; in a long one all may. */
export function charactersIn(text: string): number {
  const { length } = text;
  if (length * 3 > bytes.length) return ~0;
  const { written } = encoder.encodeInto(text, bytes);
  let found = 0;
  for (let at = 0; at < written; at++) found |= bytes[at]! < 128 ? kinds[bytes[at]!]! : has.beyond;
  return found;
}
