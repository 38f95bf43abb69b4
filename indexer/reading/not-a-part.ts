import { kindBits } from './dictionary.ts';
import { isInstruction } from './instruction.ts';
import type { Line } from './line.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** Whether a line belongs to the sheet: a heading row, a total, a date, a price, a note, a title block. */
export function isNotAPart(line: Line): boolean {
  const { tokens, hits } = line;
  if (tokens.length === 0) return true;
  let sheet = 0;
  let column = 0;
  let parts = 0;
  for (const { kinds } of hits) {
    if (kinds & kindBits.sheet) sheet++;
    if (kinds & kindBits.column) column++;
    if (kinds & naming && !(kinds & (kindBits.column | kindBits.sheet))) parts++;
  }
  if (!tokens.some(token => token.kind !== 'mark')) return true;
  if (
    isHeading(line) ||
    isTitleRow(line) ||
    isTotal(line) ||
    isRuled(line) ||
    isInstruction(line) ||
    isReplaced(line)
  )
    return true;
  if (parts > 0) return (startsWithNote(line) && sheet > 0) || isGroupTitle(line);
  if (isPriceOrDate(line)) return true;
  const words = unknownWords(line);
  if (column >= 2 && words <= Math.floor(column / 3) && line.groups.length === 0) return true;
  // One word of the sheet beside a whole size, as "ditto M3x8", leaves it a part.
  const sized = line.groups.some(g => g.thread && g.measures.length > 0);
  if (sheet > Number(sized) && sheet + column >= words * 2) return true;
  if (startsWithNote(line)) return true;
  return column === 1 && words === 0 && tokens.length <= 3 && line.groups.length === 0;
}

/** Kinds of words that name or describe a part. */
const naming = kindBits.noun | kindBits.modifier;

/** Words of three letters, or one sign of Japanese, that no dictionary holds. */
function unknownWords({ tokens }: Line): number {
  let words = 0;
  for (const token of tokens) if (!token.known && isLongWord(token)) words++;
  return words;
}

const isLongWord = ({ kind, text }: Token) =>
  kind === 'word' && (text.length >= 3 || text.charCodeAt(0) >= 0x3005);

/** Words and a colon with nothing behind it: what follows stands on the next lines. */
function isHeading({ tokens, measures, threads, qty }: Line): boolean {
  const bare = measures.length === 0 && threads.length === 0 && qty === null;
  return bare && tokens.length <= 8 && tokens.length > 1 && tokens.at(-1)!.text === ':';
}

/** What lists group fasteners under, alone: no one part is called so. */
const isGroupTitle = ({ tokens }: Line) => tokens.length === 1 && groupTitles.has(tokens[0]!.text);
const groupTitles = new Set(
  'fasteners hardware visserie boulonnerie bulloneria tornilleria kleinteile normteile bevestigingsmateriaal'.split(
    ' ',
  ),
);

/** Three cells of words and more, no figure among them, half of them titles: Rev | Date | Author | Change. */
function isTitleRow({ tokens, cells, hits }: Line): boolean {
  if (cells.length < 3 || cells.length > mostTitles || tokens.some(t => t.kind === 'number')) return false;
  let titled = 0;
  for (const { first, last } of cells) {
    if (last - first > 3) return false;
    const inside = hits.filter(h => h.first >= first && h.last <= last);
    if (inside.some(h => (h.kinds & naming) !== 0 && (h.kinds & title) === 0)) return false;
    if (inside.some(h => (h.kinds & title) !== 0)) titled++;
  }
  return titled * 2 >= cells.length;
}

/** No list has more columns than this. */
const mostTitles = 30;

const title = kindBits.column | kindBits.sheet;

/** A total begins the row and a number alone ends it; what it names is what was summed: Subtotal screws | | 12.40. */
function isTotal({ tokens, cells, threads, groups }: Line): boolean {
  const first = tokens.find(t => t.kind === 'word');
  if (!first || !totals.has(first.text) || cells.length < 2 || threads.length > 0) return false;
  return !groups.some(g => g.joined);
}

const totals = new Set(
  'total subtotal totals summe gesamt gesamtsumme zwischensumme somme totale subtotale totaal subtotaal 合計 小計'.split(
    ' ',
  ),
);

/** A title between rules, ===== Bearings =====; one in mark-up, ## Bearings; an address of the web alone. */
function isRuled({ text, measures, threads }: Line): boolean {
  if (/^\s*#{1,6}\s+[^\d|]+$/.test(text) || /^\s*(?:https?:\/\/|www\.)\S+\s*$/.test(text)) return true;
  return measures.length === 0 && threads.length === 0 && /^\s*([=#*~_-])\1{2,}[^|]*\1{3,}\s*$/.test(text);
}

/** An entry without a name that only sends to another number: (discontinued) use 24-118. */
function isReplaced({ tokens, sets }: Line): boolean {
  return (
    (sets & replacedWords) !== 0 &&
    tokens.every(t => t.kind !== 'word' || isIn(t, replacedWords) || sendingWords.has(t.text))
  );
}

const replacedWords = wordSet(
  'discontinued obsolete superseded replaced cancelled deleted entfallt entfallen ersetzt remplace supprime sostituito vervallen vervangen',
);
const sendingWords = new Set(
  'use see by no longer available now durch siehe par voir da vedi door zie'.split(' '),
);

const noteWords = new Set(
  'note notes nb hinweis anmerkung nota remarque opmerking warning caution achtung attention 注'.split(' '),
);

/** `Note: …` as the first or second piece of the line. */
function startsWithNote({ tokens }: Line): boolean {
  const at = tokens.findIndex(t => t.kind === 'word');
  if (at < 0 || at > 1 || !noteWords.has(tokens[at]!.text)) return false;
  const mark = tokens[at + 1]?.kind === 'number' ? tokens[at + 2] : tokens[at + 1];
  return noteMarks.has(mark?.text ?? '');
}

const noteMarks = new Set([':', '.', '!', '-']);

const months =
  /^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|januar|februar|marz|maerz|april|mai|juni|juli|august|september|oktober|november|dezember|january|february|march|june|july|october|december|年|月|日)$/;

/** 2019-04-12, 12.04.2019, 2021-03 */
const dates = [
  /^(19|20)\d\d[-/.](0?\d|1[0-2])[-/.]([0-3]?\d)$/,
  /^[0-3]?\d[-/.][0-3]?\d[-/.]((19|20)\d\d|\d\d)$/,
  /^(19|20)\d\d[-/](0\d|1[0-2])$/,
];

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
    const date = tokens.map(t => t.text).join('');
    return dates.some(pattern => pattern.test(date));
  }
  return false;
}
