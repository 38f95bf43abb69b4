import type { Line } from './line.ts';

/** Whether a line belongs to the sheet: a heading row, a total, a date, a price, a note, a title block. */
export function isNotAPart(line: Line): boolean {
  const { tokens, hits } = line;
  if (tokens.length === 0) return true;
  let sheet = 0;
  let column = 0;
  let words = 0;
  let parts = 0;
  const covered = new Uint8Array(tokens.length);
  for (const hit of hits) {
    const kinds = new Set(hit.entries.map(e => e.meaning.kind));
    covered.fill(1, hit.first, hit.last + 1);
    if (kinds.has('sheet')) sheet++;
    if (kinds.has('column')) column++;
    const named = kinds.has('noun') || kinds.has('modifier');
    if (named && !kinds.has('column') && !kinds.has('sheet')) parts++;
  }
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (
      token.kind === 'word' &&
      !covered[at] &&
      !(token.text.length < 3 && token.text.charCodeAt(0) < 0x3005)
    )
      words++;
  }
  if (!tokens.some(token => token.kind !== 'mark')) return true;
  if (isHeading(line)) return true;
  if (parts > 0) return startsWithNote(line) && sheet > 0;
  if (isPriceOrDate(line)) return true;
  if (column >= 2 && words <= Math.floor(column / 3) && line.groups.length === 0) return true;
  if (sheet > 0 && sheet + column >= words * 2) return true;
  if (startsWithNote(line)) return true;
  return column === 1 && words === 0 && tokens.length <= 3 && line.groups.length === 0;
}

/** Words and a colon with nothing behind it: what follows stands on the next lines. */
function isHeading({ tokens, measures, threads, qty }: Line): boolean {
  const bare = measures.length === 0 && threads.length === 0 && qty === null;
  return bare && tokens.length <= 8 && tokens.length > 1 && tokens.at(-1)!.text === ':';
}

const noteWords =
  /^(note|notes|nb|hinweis|anmerkung|nota|remarque|opmerking|warning|caution|achtung|attention|注)$/;

const startsWithNote = (line: Line) =>
  noteWords.test(line.tokens.find(t => t.kind === 'word')?.text ?? '') &&
  line.tokens.findIndex(t => t.kind === 'word') < 2 &&
  /^[:.!-]$/.test(line.tokens[line.tokens.findIndex(t => t.kind === 'word') + 1]?.text ?? '');

const months =
  /^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|januar|februar|marz|maerz|april|mai|juni|juli|august|september|oktober|november|dezember|january|february|march|june|july|october|december|年|月|日)$/;

/** A price or a date alone: $3.50, 12.04.2019, 2021-03-01, March 1987. */
function isPriceOrDate(line: Line): boolean {
  const { tokens } = line;
  const words = tokens.filter(t => t.kind === 'word');
  const numbers = tokens.filter(t => t.kind === 'number');
  if (numbers.length === 0) return false;
  const money =
    tokens.some(t => /^[$€£¥]$/.test(t.text)) || words.some(w => /^(eur|usd|gbp|chf|yen|円)$/.test(w.text));
  if (
    money &&
    words.every(w => /^(eur|usd|gbp|chf|yen|円|each|ea|per|incl|vat)$/.test(w.text)) &&
    numbers.length <= 2
  )
    return true;
  if (words.every(w => months.test(w.text))) {
    if (words.length > 0) return true;
    return (
      /^(19|20)\d\d[-/.](0?\d|1[0-2])[-/.]([0-3]?\d)$|^[0-3]?\d[-/.][0-3]?\d[-/.]((19|20)\d\d|\d\d)$/.test(
        line.text.trim(),
      ) || /^(19|20)\d\d[-/](0\d|1[0-2])$/.test(line.text.trim())
    );
  }
  return false;
}
