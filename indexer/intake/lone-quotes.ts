/** Quotes that never close after which the rest of a text is left as it is. */
const mostUnclosed = 50;
/** How far the end of a quoted cell is looked for, in characters. */
const furthest = 65_536;

/**
 * A text of separated values in which a quotation mark that is a whole cell ("as above") is written as the standard
 * would have it (RFC 4180 §2.7), so that it opens nothing: `2,",Washer` becomes `2,"""",Washer`.
 */
export function escapeLoneQuotes(text: string, separator: string): string {
  const pieces: string[] = [];
  let kept = 0;
  let unclosed = 0;
  const ends = (at: number) => at >= text.length || text[at] === separator || /[\r\n]/.test(text[at]!);
  for (let at = text.indexOf('"'); at >= 0; ) {
    const before = text[at - 1];
    const opens = before === undefined || before === separator || before === '\n' || before === '\r';
    let next = at + 1;
    if (opens) {
      const close = closeOf(text, at, ends);
      if (ends(at + 1) && isLone(text, at, close, separator)) {
        pieces.push(text.slice(kept, at), '""""');
        kept = at + 1;
      } else if (close !== null) next = close + 1;
      else {
        unclosed += 1;
        if (unclosed > mostUnclosed) break;
        const line = text.indexOf('\n', at);
        next = line < 0 ? text.length : line + 1;
      }
    }
    at = text.indexOf('"', next);
  }
  return pieces.join('') + text.slice(kept);
}

/** Where the cell that a quote opens is closed: at a single quote before the end of a cell; null if nowhere near. */
function closeOf(text: string, open: number, ends: (at: number) => boolean): number | null {
  for (let at = text.indexOf('"', open + 1); at >= 0 && at - open < furthest; ) {
    if (text[at + 1] === '"') at = text.indexOf('"', at + 2);
    else if (ends(at + 1)) return at;
    else at = text.indexOf('"', at + 1);
  }
  return null;
}

/**
 * Whether a quote before the end of a cell stands for itself. It opens a cell only where that is closed right after a
 * word: on the same line, or, if a line break follows it, before another cell begins.
 */
function isLone(text: string, open: number, close: number | null, separator: string): boolean {
  if (close === null) return true;
  const inside = text.slice(open + 1, close);
  if (!inside || inside.endsWith(separator) || /[\r\n]$/.test(inside)) return inside !== '';
  return /^[\r\n]/.test(inside) ? inside.includes(separator) : /[\r\n]/.test(inside);
}
