import { blankMarkup } from './blank-markup.ts';
import { charactersIn, has } from './characters.ts';

/**
 * Gives a line's outer marks one form before it is cut: a separator of cells becomes a bar, and quotes, mark-up, leaders
 * and a drawing file's ending become blanks. Nothing moves: every character keeps its offset.
 *
 * @param columns how many columns the line's heading names, where it names them between commas
 */
export function markCells(text: string, columns = 0): string {
  const found = charactersIn(text);
  let marked = blankMarkup(text, (found & (has.markup | has.beyond)) !== 0);
  if ((found & has.point) !== 0) {
    if (marked.includes('...') || marked.includes('. . .'))
      marked = blank(marked, /\.{3,}|(?:\. ){3,}\.?|…+/g);
    if (/\.[a-z0-9]{3,6}\s*$/i.test(marked)) marked = blank(marked, fileEnding);
  }
  if ((found & has.underline) !== 0 && isNamed(marked)) marked = marked.replace(/(?<=\d)_(?=\d)/g, '.');
  if ((found & has.semicolon) !== 0) marked = separated(marked, ';', columns);
  return (found & has.comma) !== 0 ? separated(marked, ',', columns) : marked;
}

/** A file's name with its times signs between underlines, where one between figures is a point: screw_M3_5_x_15. */
const isNamed = (text: string) => text.includes('_x_') && !/\s/.test(text.trim());
const fileEnding = /\.(?:stl|step|stp|3mf|dxf|dwg|obj|scad|iges|igs|f3d|ipt|sldprt|fcstd|pdf)\s*$/gi;

const blank = (text: string, what: RegExp) => text.replace(what, found => ' '.repeat(found.length));

/** Turns a separator into bars where the line is a row of a table written as text; otherwise gives it back as it was. */
function separated(text: string, separator: string, columns: number): string {
  if (!isRow(text, separator) && !(columns > 1 && pieces(text, separator) === columns)) return text;
  if (!text.includes('"')) return text.replaceAll(separator, '|');
  const last = text.trimEnd().length - 1;
  let quoted = false;
  let begins = true;
  let marked = '';
  for (let at = 0; at < text.length; at++) {
    const character = text[at]!;
    const opens: boolean = character === '"' && !quoted && begins;
    const closes = character === '"' && quoted && (at === last || text[at + 1] === separator);
    begins = character === separator || (begins && isBlank(character));
    if (opens || closes) {
      quoted = opens;
      marked += ' ';
    } else marked += character === separator && !quoted ? '|' : character;
  }
  return marked;
}

/** A blank of any width; the end of a printed line is none. */
const isBlank = (character: string) =>
  character === ' ' ||
  ((character < '!' || character > '~') && character !== '\n' && character.trim() === '');
/** Figures of any width. */
const isFigure = (character: string) =>
  (character >= '0' && character <= '9') || (character >= '\uff10' && character <= '\uff19');

/**
 * A row has its separators glued on both sides, and not only as decimal commas; a comma of prose has a blank behind it.
 * A quoted cell settles it.
 */
function isRow(text: string, separator: string): boolean {
  if (text.includes('"')) {
    if (text.includes(`"${separator}`) && text.trimStart().startsWith('"')) return true;
    if (text.includes(`${separator}"`) && (text.includes(`"${separator}`) || text.endsWith('"'))) return true;
  }
  let glued = false;
  const end = text.trimEnd().length;
  for (let at = text.indexOf(separator); at >= 0; at = text.indexOf(separator, at + 1)) {
    const before = at > 0 ? text[at - 1]! : ' ';
    const after = at + 1 < end ? text[at + 1]! : separator;
    if (separator === ',' && isBlank(after)) return false;
    const decimal = separator === ',' && isFigure(before) && isFigure(after) && !isPointed(text, at);
    if (!decimal && !isBlank(before) && !isBlank(after)) glued ||= at + 1 < end || after === separator;
  }
  return glued;
}

/** A number has one decimal mark: behind 8.8 a comma parts cells. */
const isPointed = (text: string, comma: number) => /\d\.\d+$/.test(text.slice(Math.max(0, comma - 8), comma));

/** How many cells the separator parts, outside brackets. */
function pieces(text: string, separator: string): number {
  let depth = 0;
  let count = 1;
  for (const character of text) {
    if (character === '(') depth++;
    else if (character === ')') depth--;
    else if (character === separator && depth <= 0) count++;
  }
  return count;
}
