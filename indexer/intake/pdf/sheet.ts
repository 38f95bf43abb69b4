import type { Box } from './matrix.ts';
import type { PageContent, Piece, Rule } from './page-content.ts';
import { white } from './painting.ts';
import { linesOf, turned, type Word, wordsOf } from './words.ts';

/** A page turned so that one direction of its writing runs to the right: what a table is looked for in. */
export interface Sheet {
  angle: number;
  width: number;
  height: number;
  words: Word[];
  /** The same words by lines, top to bottom. */
  lines: Word[][];
  uprights: Rule[];
  /** Level lines, and the upper and lower edges of coloured bands. */
  levels: Rule[];
}

/** A direction of writing with fewer words than this holds no table. */
const fewestWords = 6;

/** The sheets of a page, the direction with the most words first. */
export function sheetsOf(content: PageContent, pieces: readonly Piece[]): Sheet[] {
  return [0, 90, 180, 270]
    .map(angle => ({ angle, words: wordsOf(pieces, angle, content) }))
    .filter(({ words }) => words.length >= fewestWords)
    .sort((a, b) => b.words.length - a.words.length)
    .map(({ angle, words }) => sheetOf(content, angle, words));
}

function sheetOf(content: PageContent, angle: number, words: Word[]): Sheet {
  const aside = angle % 180 === 90;
  const turn = ruleTurner(content, angle);
  const rules = [...content.rules, ...bandEdges(content, aside)].map(turn);
  return {
    angle,
    width: aside ? content.height : content.width,
    height: aside ? content.width : content.height,
    words,
    lines: linesOf(words),
    uprights: rules.filter(rule => rule.upright).sort((a, b) => a.at - b.at),
    levels: rules.filter(rule => !rule.upright).sort((a, b) => a.at - b.at),
  };
}

/** The least height of a coloured band, in points. */
const leastBand = 5;

/** The edges of coloured bands along the writing part rows as lines do. */
function bandEdges({ covers, width, height }: PageContent, aside: boolean): Rule[] {
  const edges: Rule[] = [];
  for (const { box, outline, colour, picture } of covers) {
    if (outline || picture || colour === null || colour === white) continue;
    const { left, top, right, bottom } = box;
    if (bottom - top < leastBand || right - left < leastBand) continue;
    if ((right - left) * (bottom - top) > 0.5 * width * height) continue;
    if (aside) for (const at of [left, right]) edges.push({ upright: true, at, from: top, to: bottom });
    else for (const at of [top, bottom]) edges.push({ upright: false, at, from: left, to: right });
  }
  return edges;
}

function ruleTurner(page: PageContent, angle: number): (rule: Rule) => Rule {
  if (angle === 0) return rule => rule;
  return ({ upright, at, from, to }) => {
    const [x1, y1] = upright ? turned(at, from, angle, page) : turned(from, at, angle, page);
    const [x2, y2] = upright ? turned(at, to, angle, page) : turned(to, at, angle, page);
    const stands = Math.abs(y2 - y1) > Math.abs(x2 - x1);
    return stands
      ? { upright: true, at: x1, from: Math.min(y1, y2), to: Math.max(y1, y2) }
      : { upright: false, at: y1, from: Math.min(x1, x2), to: Math.max(x1, x2) };
  };
}

/** The box round some words. */
export function boxOf(words: readonly Box[]): Box {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const word of words) {
    box.left = Math.min(box.left, word.left);
    box.top = Math.min(box.top, word.top);
    box.right = Math.max(box.right, word.right);
    box.bottom = Math.max(box.bottom, word.bottom);
  }
  return box;
}

export const textOf = (words: readonly Word[]): string => words.map(({ text }) => text).join(' ');

/** The number that half of the others are below. */
export function median(numbers: readonly number[]): number {
  return [...numbers].sort((a, b) => a - b)[numbers.length >> 1] ?? 0;
}
