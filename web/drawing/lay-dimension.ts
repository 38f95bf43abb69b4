import type { DimensionLine } from '../../indexer/index.ts';
import type { Place } from './path.ts';
import { pixelsPerMm } from './scale.ts';

export interface Stretch {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

/** One dimension laid out in pixels, after ISO 129-1. */
export interface LaidDimension {
  /** The dimension line itself and its two extension lines. */
  lines: Stretch[];
  /** Tips of the arrows; `turn` in degrees, 0 points right. */
  arrows: { x: number; y: number; turn: number }[];
  text: { x: number; y: number; anchor: 'start' | 'middle'; turn: 0 | -90; words: string };
  /** What all of it covers, with the figure. */
  box: Stretch;
}

/** Below this many pixels the arrows stand outside. */
const narrow = 26;
/** Of the 15 px figures. */
const letterWidth = 7.8;
const letterHeight = 13;

/** Where the two points, the line and the figure of a dimension lie along (u) and across (v) its direction. */
interface Run {
  from: number;
  to: number;
  /** How far from the part the points lie, each at its own. */
  start: number;
  end: number;
  line: number;
}

/**
 * Lays out one dimension: extension lines from just off the outline, the line between closed arrows, the figure above it,
 * read from below or from the right. A gap too small for its arrows has them outside; a figure too wide stands beyond.
 */
export function layDimension({ from, to, offset, text }: DimensionLine, place: Place): LaidDimension {
  const [a, b] = [place(from), place(to)];
  const along = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]);
  const [u, v] = along ? [0, 1] : [1, 0];
  const [low, high] = a[u]! <= b[u]! ? [a, b] : [b, a];
  const off = offset * pixelsPerMm;
  const run: Run = {
    from: low[u]!,
    to: high[u]!,
    start: low[v]!,
    end: high[v]!,
    line: off >= 0 ? Math.max(a[v]!, b[v]!) + off : Math.min(a[v]!, b[v]!) + off,
  };
  return along ? layAlong(run, text) : layAcross(run, text);
}

function measure({ from, to }: Run, text: string) {
  const width = text.length * letterWidth;
  const small = to - from < narrow;
  const inside = width + (small ? 0 : 6) <= to - from;
  const beyond = inside ? (small ? 18 : 0) : width + (small ? 20 : 10);
  return { width, small, inside, first: small ? from - 18 : from, last: to + beyond };
}

function layAlong(run: Run, words: string): LaidDimension {
  const { small, inside, first, last } = measure(run, words);
  const y = run.line;
  const lines = [
    { x1: run.from, y1: clear(run.start, y), x2: run.from, y2: past(run.start, y) },
    { x1: run.to, y1: clear(run.end, y), x2: run.to, y2: past(run.end, y) },
    { x1: first, y1: y, x2: last, y2: y },
  ];
  return {
    lines,
    arrows: [
      { x: run.from, y, turn: small ? 0 : 180 },
      { x: run.to, y, turn: small ? 180 : 0 },
    ],
    text: {
      x: inside ? (run.from + run.to) / 2 : run.to + (small ? 16 : 8),
      y: y - 5,
      anchor: inside ? 'middle' : 'start',
      turn: 0,
      words,
    },
    box: cover(lines, { x1: first, y1: y - 5 - letterHeight, x2: last, y2: y + 5 }),
  };
}

function layAcross(run: Run, words: string): LaidDimension {
  const { width, small, inside, first, last } = measure(run, words);
  const x = run.line;
  const lines = [
    { x1: clear(run.start, x), y1: run.from, x2: past(run.start, x), y2: run.from },
    { x1: clear(run.end, x), y1: run.to, x2: past(run.end, x), y2: run.to },
    { x1: x, y1: first, x2: x, y2: last },
  ];
  return {
    lines,
    arrows: [
      { x, y: run.from, turn: small ? 90 : -90 },
      { x, y: run.to, turn: small ? -90 : 90 },
    ],
    text: {
      x: x - 5,
      y: inside ? (run.from + run.to) / 2 : run.to + (small ? 16 : 8) + width,
      anchor: inside ? 'middle' : 'start',
      turn: -90,
      words,
    },
    box: cover(lines, { x1: x - 5 - letterHeight, y1: first, x2: x + 5, y2: last }),
  };
}

/** Just off the outline, towards the dimension line. */
const clear = (outline: number, line: number) => outline + (line < outline ? -2 : 2);
/** Just past the dimension line. */
const past = (outline: number, line: number) => line + (line < outline ? -5 : 5);

function cover(lines: Stretch[], more: Stretch): Stretch {
  const all = [...lines, more];
  return {
    x1: Math.min(...all.flatMap(({ x1, x2 }) => [x1, x2])),
    y1: Math.min(...all.flatMap(({ y1, y2 }) => [y1, y2])),
    x2: Math.max(...all.flatMap(({ x1, x2 }) => [x1, x2])),
    y2: Math.max(...all.flatMap(({ y1, y2 }) => [y1, y2])),
  };
}
