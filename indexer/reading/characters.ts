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

const kinds = new Uint8Array(256).fill(has.beyond, 128);
for (const [kind, characters] of [
  [has.markup, '\\*`<&#~]/'],
  [has.comma, ','],
  [has.semicolon, ';'],
  [has.point, '.'],
  [has.underline, '_'],
] as const)
  for (const character of characters) kinds[character.charCodeAt(0)] = kind;

/** A text is looked at whole up to this length. */
export const longestText = 4_096;
/** No character takes more bytes than three for each of its units. */
export const bytes = new Uint8Array(longestText * 3);
const encoder = new TextEncoder();
let encoded = '';
let written = 0;

/** Puts a text of at most {@link longestText} units into {@link bytes}, and tells how many it took: one for each unit where all is ASCII. */
export function encode(text: string): number {
  if (text !== encoded) {
    encoded = text;
    written = encoder.encodeInto(text, bytes).written;
  }
  return written;
}

/** Which of these kinds stand in a text, together; in a long one all may. */
export function charactersIn(text: string): number {
  if (text.length > longestText) return ~0;
  const end = encode(text);
  let found = 0;
  for (let at = 0; at < end; at++) found |= kinds[bytes[at]!]!;
  return found;
}
