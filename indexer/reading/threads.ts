import { inch, mm, type Um } from '../units/length.ts';
import { standardAt } from './standards.ts';
import { isWhole, type Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** A thread's name as printed: M3, 6-32, 1/4-20, 2BA, ST3.5 of a tapping screw, or the bare number size #6. */
export interface Thread {
  /** As written in a size: `M2.5`, `6-32`, `1/4-20`, `2BA`, `#6`. */
  name: string;
  kind: 'metric' | 'unified' | 'number' | 'ba' | 'tapping';
  /** Nominal outside diameter. */
  major: Um;
  first: number;
  last: number;
  start: number;
  end: number;
}

const fractionBottoms = new Set([2, 4, 8, 16, 32, 64]);
const seriesWords = new Set(['unc', 'unf', 'un', 'unef', 'uns', 'nc', 'nf', 'bsf', 'bsw']);
const classWords = new Set(['a', 'b']);

/** Number sizes of the unified thread: 0.060 in and 0.013 in for each number (ASME B1.1). */
const numberSizeMajor = (number: number): Um => inch(0.06 + 0.013 * number);

/** A British Association major diameter: 6 p^1.2 with p = 0.9^number, to two figures (BS 93). */
const baMajor = (number: number): Um => mm(Number((6 * 0.9 ** (1.2 * number)).toPrecision(2)));

/** Reads one thread that begins at a token, or null. A number pair counts only where its pitch suits its diameter. */
export function threadAt(tokens: readonly Token[], at: number): Thread | null {
  if (!mayBegin(tokens, at)) return null;
  const made =
    metricAt(tokens, at) ??
    fractionAt(tokens, at) ??
    inchAt(tokens, at) ??
    numberAt(tokens, at) ??
    baAt(tokens, at) ??
    tappingAt(tokens, at);
  if (!made) return null;
  const last = tail(tokens, made.last, made.kind);
  const { name, kind, major } = made;
  return { name, kind, major, first: at, last, start: tokens[at]!.start, end: tokens[made.last]!.end };
}

/** A quick look that spares most tokens the rest. */
function mayBegin(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]!;
  if (token.kind !== 'number') return isIn(token, beginnings);
  const next = tokens[at + 1];
  return next !== undefined && isIn(next, behindNumber);
}

const beginnings = wordSet('m no nr ba st #');
const behindNumber = wordSet('/ - " ba');
/** What stands in every line that prints a thread. */
export const beginThread = beginnings | behindNumber;

type Found = Pick<Thread, 'name' | 'kind' | 'major' | 'last'>;

function metricAt(tokens: readonly Token[], at: number): Found | null {
  const letter = tokens[at]!;
  const number = tokens[at + 1];
  if (letter.text !== 'm' || letter.kind !== 'word' || number?.kind !== 'number') return null;
  if (number.gap > 0 && !(number.gap === 1 && letter.upper)) return null;
  const before = tokens[at - 1];
  if (before && letter.gap === 0 && before.kind !== 'mark') return null;
  // 2 m6 x 10: a small m behind a size is its tolerance class, but behind a standard a thread: din 912 m6x10
  if (
    before?.kind === 'number' &&
    !letter.upper &&
    !endsStandard(tokens, at - 1) &&
    /^[4-9]$/.test(number.text) &&
    tokens[at + 2]?.text === '×'
  )
    return null;
  const after = tokens[at + 2];
  if (after?.gap === 0 && after.kind === 'word' && after.text.length > 1) return null;
  const value = Number(number.text.replace(',', '.'));
  // M07 is an item's number.
  if (!(value >= 1 && value <= 64) || number.text.startsWith('0') || /\d[.,]\d\d/.test(number.text))
    return null;
  if (value % 1 !== 0 && !brokenMetric.has(value)) return null;
  return { name: `M${value}`, kind: 'metric', major: mm(value), last: at + 1 };
}

/** Metric threads whose size is no whole number (ISO 261, and older Japanese ones); M 4,3 is a washer of series M. */
const brokenMetric = new Set([1.1, 1.2, 1.4, 1.6, 1.7, 1.8, 2.2, 2.3, 2.5, 2.6, 3.5, 4.5, 5.5]);

/** Whether a number is a standard's: its body stands in front of it. */
const endsStandard = (tokens: readonly Token[], at: number) => at > 0 && standardAt(tokens, at - 1) !== null;

/** `1/4-20`, `1/4"-20`, `5/16 - 18` */
function fractionAt(tokens: readonly Token[], at: number): Found | null {
  const top = wholeAt(tokens, at);
  const bottom = wholeAt(tokens, at + 2);
  if (top === null || bottom === null || tokens[at + 1]!.text !== '/' || tokens[at + 2]!.gap > 0) return null;
  if (!fractionBottoms.has(bottom) || top >= bottom) return null;
  let dash = at + 3;
  while (tokens[dash]?.text === '"') dash++;
  const threads = wholeAt(tokens, dash + 1);
  const joined = tokens[dash]?.text === '-' || (tokens[dash]?.text === '×' && seriesBehind(tokens, dash + 2));
  if (!joined || threads === null || threads < 8 || threads > 80 || continues(tokens, dash + 2)) return null;
  return { name: `${top}/${bottom}-${threads}`, kind: 'unified', major: inch(top / bottom), last: dash + 1 };
}

/** `1-8 UNC`, `1"-8`: a whole inch, with its series or its sign (ASME B1.1: 8 UNC, 12 UNF, 14 UNS). */
function inchAt(tokens: readonly Token[], at: number): Found | null {
  if (tokens[at]!.text !== '1' || (tokens[at]!.gap === 0 && at > 0)) return null;
  const marked = tokens[at + 1]?.text === '"';
  const dash = marked ? at + 2 : at + 1;
  const threads = wholeAt(tokens, dash + 1);
  if (tokens[dash]?.text !== '-' || (threads !== 8 && threads !== 12 && threads !== 14)) return null;
  if (!marked && !seriesBehind(tokens, dash + 2)) return null;
  return { name: `1-${threads}`, kind: 'unified', major: inch(1), last: dash + 1 };
}

/** `6-32`, `#6-32`, `No. 8-36`, and `#6` alone */
function numberAt(tokens: readonly Token[], at: number): Found | null {
  let number = at;
  let marked = false;
  if (tokens[at]!.text === '#') {
    marked = true;
    number = at + 1;
  } else if (/^(no|nr)$/.test(tokens[at]!.text) && tokens[at + 1]) {
    marked = true;
    number = tokens[at + 1]!.text === '.' ? at + 2 : at + 1;
  } else if (at > 0 && tokens[at]!.gap === 0 && !/^[(×|,;:]$/.test(tokens[at - 1]!.text)) return null;
  const size = wholeAt(tokens, number);
  if (size === null || size > 14 || (tokens[number]!.text.startsWith('0') && size > 0)) return null;
  const dash = tokens[number + 1];
  const threads = wholeAt(tokens, number + 2);
  if (dash && threads !== null && !continues(tokens, number + 3)) {
    const spaced = dash.gap > 0 || tokens[number + 2]!.gap > 0;
    const separator = dash.text === '-' || (dash.text === '/' && marked) || (dash.text === '×' && marked);
    if (separator && (marked || !spaced) && suits(size, threads))
      return { name: `${size}-${threads}`, kind: 'unified', major: numberSizeMajor(size), last: number + 2 };
  }
  // No. 6 alone may be an item; before a length it is a size.
  if (tokens[at]!.text !== '#' ? !marked || !timesFollows(tokens, number + 1) : isDriver(tokens, at, number))
    return null;
  return { name: `#${size}`, kind: 'number', major: numberSizeMajor(size), last: number };
}

/** Whether a times sign stands behind, with no more than three words between: No6 cs wood x 25. */
function timesFollows(tokens: readonly Token[], from: number): boolean {
  let at = from;
  while (at < from + 3 && tokens[at]?.kind === 'word') at++;
  return tokens[at]?.text === '×';
}

/** #2 behind a drive is the driver's size; a number that stands off from its sign is an item's. */
const isDriver = (tokens: readonly Token[], at: number, number: number) =>
  tokens[number]!.gap > 0 || driveWords.has(tokens[at - 1]?.text ?? '');

const driveWords = new Set(
  'drive ph phillips philips pozi pozidriv pz square robertson torx recess'.split(' '),
);

/** ST3.5 and ST 3.5: the thread of a tapping screw by its outside diameter (ISO 1478). */
function tappingAt(tokens: readonly Token[], at: number): Found | null {
  const number = tokens[at + 1];
  if (tokens[at]!.text !== 'st' || number?.kind !== 'number' || number.gap > 1) return null;
  const value = Number(number.text.replace(',', '.'));
  if (!(value >= 1.5 && value <= 9.5) || (number.gap > 0 && !/[.,]/.test(number.text))) return null;
  return { name: `ST${value}`, kind: 'tapping', major: mm(value), last: at + 1 };
}

function baAt(tokens: readonly Token[], at: number): Found | null {
  const first = tokens[at]!;
  const second = tokens[at + 1];
  const number =
    first.text === 'ba' ? wholeAt(tokens, at + 1) : second?.text === 'ba' ? wholeAt(tokens, at) : null;
  if (number === null || number > 16 || (second?.gap ?? 9) > 1) return null;
  return { name: `${number}BA`, kind: 'ba', major: baMajor(number), last: at + 1 };
}

const wholeAt = (tokens: readonly Token[], at: number): number | null =>
  tokens[at] && isWhole(tokens[at]) && tokens[at].text.length <= 2 ? Number(tokens[at].text) : null;

/** A pitch between 13 and 24 in a hundred of the diameter: all of UNC, UNF and the usual specials, and few part numbers. */
function suits(size: number, threads: number): boolean {
  const ratio = inch(1 / threads) / numberSizeMajor(size);
  return threads % 2 === 0 && ratio > 0.13 && ratio < 0.24;
}

/** A chain such as 10-32-4711 is no thread. */
const continues = (tokens: readonly Token[], at: number): boolean => {
  const next = tokens[at];
  if (next?.gap !== 0) return false;
  if (next.kind === 'word') return !seriesWords.has(next.text) && next.text !== 'x';
  return (
    /^[-/]$/.test(next.text) &&
    tokens[at + 1]?.gap === 0 &&
    tokens[at + 1]?.kind === 'number' &&
    !isClass(tokens, at + 1)
  );
};

const seriesBehind = (tokens: readonly Token[], at: number) => seriesWords.has(tokens[at]?.text ?? '');

const isClass = (tokens: readonly Token[], at: number) =>
  /^[123]$/.test(tokens[at]?.text ?? '') &&
  classWords.has(tokens[at + 1]?.text ?? '') &&
  tokens[at + 1]!.gap === 0;

/** What may follow the name and belongs to it: `UNC`, `-3A`, `-6g`. */
function tail(tokens: readonly Token[], last: number, kind: Thread['kind']): number {
  let end = last;
  if (kind === 'unified') {
    if (tokens[end + 1]?.text === '-' && seriesBehind(tokens, end + 2)) end++;
    if (seriesBehind(tokens, end + 1)) end++;
    const dash = tokens[end + 1]?.text === '-' ? end + 2 : end + 1;
    if (isClass(tokens, dash)) end = dash + 1;
  } else if (kind === 'metric' && tokens[end + 1]?.text === '-') {
    const letter = tokens[end + 3];
    if (/^[4-8]$/.test(tokens[end + 2]?.text ?? '') && letter?.gap === 0 && /^[gh]$/.test(letter.text))
      end += 3;
  }
  return end;
}
