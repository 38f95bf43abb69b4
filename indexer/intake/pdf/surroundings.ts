import type { Header } from './headers.ts';
import { boxOf, type Sheet } from './sheet.ts';
import { titleBlocks } from './title-blocks.ts';
import type { Word } from './words.ts';

/**
 * The words round a drawing that are neither a list nor a balloon: zones of its frame, its title block, what was
 * changed when. `headers` are those of the lists on the sheet.
 */
export function surroundings(sheet: Sheet, headers: readonly Header[]): Set<Word> {
  const titles = new Set(headers.flatMap(header => header.titles.flatMap(({ words }) => words)));
  return new Set([...zones(sheet), ...titleBlocks(sheet, titles), ...revisions(sheet, titles)]);
}

/** The share of a page's width and height that its frame with zone letters may take up on each side. */
const margin = 0.06;

/** The letters and numbers of a frame's zones: rows of them run along the edges of the page at even steps. */
function zones({ words, width, height }: Sheet): Word[] {
  const short = words.filter(({ text }) => text.length <= 2 && /^(?:\d{1,2}|[A-Z])$/.test(text));
  const across = (word: Word) => (word.left + word.right) / 2;
  const down = (word: Word) => word.base - 0.36 * word.size;
  const found: Word[] = [];
  for (const [along, aside, length] of [
    [across, down, height],
    [down, across, width],
  ] as const)
    for (const near of [true, false]) {
      const edge = short.filter(word =>
        near ? aside(word) < margin * length : aside(word) > (1 - margin) * length,
      );
      for (const word of edge) {
        const row = edge.filter(other => Math.abs(aside(other) - aside(word)) < 3);
        row.sort((a, b) => along(a) - along(b));
        if (row.length >= 3 && runsOn(row) && isSpread(row.map(along))) found.push(...row);
      }
    }
  return found;
}

/** True for A, B, C or 8, 7, 6. */
function runsOn(row: readonly Word[]): boolean {
  const places = row.map(({ text }) => (/^\d+$/.test(text) ? Number(text) : text.charCodeAt(0)));
  const step = places[1]! - places[0]!;
  return (
    Math.abs(step) >= 1 &&
    Math.abs(step) <= 2 &&
    places.every((place, at) => at === 0 || Math.abs(place - places[at - 1]! - step) <= 1)
  );
}

/** The least width of a zone, in points: those of ISO 5457 are 50 mm wide. */
const narrowest = 34;

/** Zones are as wide as each other, but for the last, which may be cut, and far wider than the lines of a list are high. */
function isSpread(places: readonly number[]): boolean {
  const steps = places.slice(1).map((place, at) => place - places[at]!);
  const usual = [...steps].sort((a, b) => a - b)[steps.length >> 1]!;
  return (
    usual > narrowest &&
    steps.filter(step => Math.abs(step - usual) < 0.15 * usual + 2).length >= steps.length - 1
  );
}

/** Titles of a table of changes, one of which only such a table has (common practice). */
const changeWords =
  /^(?:rev|revision|zone|eco|ecn|ecr|date|change|description|by|approved|appd|chk|checked|index|änderung|datum|name|modification|indice|modifica|fecha)\.?$/i;
const changeSign = /^(?:rev|revision|eco|ecn|ecr|change|änderung|modification|modifica)\.?$/i;

/** The words of a table of changes: its titles, and the lines under them, or above them, as long as they follow. */
function revisions(sheet: Sheet, titles: ReadonlySet<Word>): Word[] {
  const found: Word[] = [];
  sheet.lines.forEach((line, nth) => {
    if (line.length < 3) return;
    const own = line.filter(
      word => word.text.length <= 12 && changeWords.test(word.text) && !titles.has(word),
    );
    if (own.length < 3 || !own.some(({ text }) => changeSign.test(text))) return;
    const box = boxOf(own);
    const { size } = own[0]!;
    found.push(...own);
    for (const way of [1, -1]) {
      let { base } = own[0]!;
      for (let at = nth + way; sheet.lines[at]; at += way) {
        const words = sheet.lines[at]!.filter(
          ({ left, right }) => left > box.left - 3 * size && right < box.right + 8 * size,
        );
        if (words.length === 0) continue;
        if (Math.abs(words[0]!.base - base) > 2.6 * size || words.length < 3) break;
        if (words.some(word => titles.has(word)) || !/^[A-Z\d-]{1,3}$/.test(words[0]!.text)) break;
        if (Math.abs(words[0]!.left - box.left) > 2 * size) break;
        found.push(...words);
        ({ base } = words[0]!);
      }
    }
  });
  return found;
}
