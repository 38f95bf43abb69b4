/** One word of a printed line with where it stands. */
export interface Word {
  text: string;
  /** Columns from the left edge, tabs reaching to the next eighth column. */
  start: number;
  end: number;
  /** What parts it from the word before: the columns of blank, or 99 for a tab. */
  gap: number;
}

const tabGap = 99;

/** Cuts a line at its blanks. Two blanks or more, or a tab, are a wide gap: often, not always, a column's edge. */
export function cutWords(line: string): Word[] {
  const words: Word[] = [];
  let column = 0;
  let at = 0;
  let last = 0;
  for (const match of line.matchAll(/\S+/g)) {
    const blank = line.slice(at, match.index);
    for (const sign of blank) column = sign === '\t' ? (Math.floor(column / 8) + 1) * 8 : column + 1;
    const start = column;
    column += match[0].length;
    words.push({ text: match[0], start, end: column, gap: blank.includes('\t') ? tabGap : start - last });
    last = column;
    at = match.index + match[0].length;
  }
  return words;
}

export const isWide = (word: Word): boolean => word.gap >= 2;

/** The words from one to another as one text. */
export function joinWords(words: readonly Word[], from: number, to: number): string {
  return words
    .slice(from, to)
    .map(word => word.text)
    .join(' ');
}

/** Words that no wide gap parts, together. */
export function fragments(words: readonly Word[]): { text: string; start: number; end: number }[] {
  const found: { text: string; start: number; end: number }[] = [];
  words.forEach((word, at) => {
    const last = found.at(-1);
    if (!last || (at > 0 && isWide(word))) found.push({ text: word.text, start: word.start, end: word.end });
    else {
      last.text += ` ${word.text}`;
      last.end = word.end;
    }
  });
  return found;
}
