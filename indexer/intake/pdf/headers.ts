import { foldHeader, headerRoles, headerWords, type Role } from '../../reading/column-words.ts';
import { headerOf, strongestRole } from '../header.ts';
import { startsByTitle } from '../lists-beside.ts';
import type { Box } from './matrix.ts';
import { boxOf, type Sheet, textOf } from './sheet.ts';
import type { Word } from './words.ts';

/** One title of a column, with its words. */
export interface Title extends Box {
  text: string;
  words: Word[];
}

/** A line of titles. */
export interface Header {
  titles: Title[];
  /** Which titles begin a list; several stand side by side. */
  starts: number[];
  box: Box;
}

/** Gaps wider than this part of the font's height part titles; narrower ones do so where the words tell. */
const wide = 0.55;

/** The headers on a sheet, top to bottom, lists beside each other from left to right. */
export function findHeaders(sheet: Sheet): Header[] {
  return sheet.lines.flatMap(line => headerIn(line, sheet) ?? []);
}

function headerIn(line: readonly Word[], sheet: Sheet): Header | null {
  if (line.length < 2 || line.length > 80) return null;
  if (!mayHead(line)) return null;
  const cells = cutTitles(line, sheet);
  const known = cells.map(({ text }) => tells(text));
  const first = known.indexOf(true);
  if (first < 0) return null;
  const style = cells[first]!.words[0]!.style;
  const looksAlike = ({ words, text }: Title) => words[0]!.style === style && text.length <= 24;
  const kept = cells.filter((cell, at) => known[at] || looksAlike(cell));
  const titles = trimmed(kept, sheet);
  const texts = titles.map(({ text }) => text);
  if (!isListHeader(texts)) return null;
  return { titles, starts: startsByTitle(texts), box: boxOf(titles) };
}

/** True for a title that says what stands under it, and is no mere word that titles have as well. */
function tells(text: string): boolean {
  const roles = headerRoles(text);
  return roles !== null && strongestRole(roles) !== 'other';
}

/** All the words that titles are made of. */
const titleWords: ReadonlySet<string> = new Set([...headerWords.keys()].flatMap(phrase => phrase.split(' ')));
const unspaced = [...headerWords.keys()].filter(phrase => /[\u3000-\u9fff]/.test(phrase));

/** True for a line with words of titles enough to be looked at closely: most lines of a page have none. */
function mayHead(line: readonly Word[]): boolean {
  let known = 0;
  for (const { text } of line) {
    if (text.length > 40 || /^[\d.,;:()x×/-]+$/.test(text)) continue;
    const parts = foldHeader(text).split(' ');
    if (parts.some(part => titleWords.has(part)) || unspaced.some(phrase => text.includes(phrase)))
      known += 1;
    if (known === 2) return true;
  }
  return false;
}

/** Words of a title block: what stands beside them heads no list. */
const blockWords =
  /^(?:scale|ma(?:ß|ss)stab|échelle|scala|escala|schaal|drawn|gez(?:eichnet)?|dessiné|disegnato|dibujado|getekend|checked|gepr(?:üft)?|vérifié|approved|freigabe|appr'?d|tolerances?|finish|projection|尺度|製図|検図|承認|設計)\b/i;
const naming = new Set<Role>(['description', 'partNumber']);
const counting = new Set<Role>(['ref', 'qty', 'partNumber', 'price', 'model']);

/** True for titles of a parts list: something that names a part, something else that counts or refers. */
function isListHeader(texts: readonly string[]): boolean {
  if (!headerOf(texts) || texts.some(text => blockWords.test(text))) return false;
  const roles = texts.flatMap(text => {
    const found = headerRoles(text);
    return found ? [strongestRole(found)] : [];
  });
  const distinct = new Set(roles);
  if (![...distinct].some(role => naming.has(role)) || ![...distinct].some(role => counting.has(role)))
    return false;
  return [...distinct].filter(role => naming.has(role) || counting.has(role)).length >= 2;
}

/** Titles without those at the ends that are far off and known to no list. */
function trimmed(cells: Title[], sheet: Sheet): Title[] {
  const known = cells.map(({ text }) => headerRoles(text) !== null);
  let start = known.indexOf(true);
  let end = known.lastIndexOf(true);
  const far = 0.12 * sheet.width;
  while (start > 0 && cells[start]!.left - cells[start - 1]!.right < far && isShort(cells[start - 1]!))
    start -= 1;
  while (end < cells.length - 1 && cells[end + 1]!.left - cells[end]!.right < far && isShort(cells[end + 1]!))
    end += 1;
  return cells.slice(start, end + 1);
}

const isShort = ({ text }: Title): boolean => text.length <= 12;

/** Cuts a line into titles, at upright lines, at wide gaps and where known titles stand close together. */
function cutTitles(line: readonly Word[], sheet: Sheet): Title[] {
  const runs: Word[][] = [];
  let last: Word | null = null;
  for (const word of line) {
    if (!last || word.left - last.right > widest(last, word) || ruleBetween(last, word, sheet)) runs.push([]);
    runs.at(-1)!.push(word);
    last = word;
  }
  return runs.flatMap(cutByWords).map(words => ({ text: textOf(words), words, ...boxOf(words) }));
}

/** The widest blank between two words of one title: a typewriter's is as wide as its letters. */
function widest(a: Word, b: Word): number {
  const [pitch, next] = [a, b].map(({ left, right, text }) => (right - left) / text.length) as [
    number,
    number,
  ];
  const even = a.text.length > 1 && b.text.length > 1 && Math.abs(pitch - next) < 0.02 * pitch;
  return even ? Math.max(wide * b.size, 1.3 * pitch) : wide * b.size;
}

function ruleBetween(a: Word, b: Word, { uprights }: Sheet): boolean {
  return uprights.some(
    ({ at, from, to }) =>
      at > a.right - 1 && at < b.left + 1 && from < b.base - 0.2 * b.size && to > b.base - 0.4 * b.size,
  );
}

/** Words of one run that are several known titles: "Qty Part No." */
function cutByWords(words: Word[]): Word[][] {
  if (words.length === 1 || isKnown(words)) return [words];
  const found: Word[][] = [];
  for (let at = 0; at < words.length; ) {
    let length = Math.min(4, words.length - at);
    while (length > 0 && !isKnown(words.slice(at, at + length))) length -= 1;
    if (length === 0) return [words];
    found.push(words.slice(at, at + length));
    at += length;
  }
  return found;
}

const isKnown = (words: readonly Word[]): boolean => headerWords.has(foldHeader(textOf(words)));
