import type { Box } from './matrix.ts';

/** Text that was drawn in one stroke of the pen: no blank within, points of the shown page from its top left. */
export interface Piece {
  text: string;
  /** The ends of its base line. */
  x: number;
  y: number;
  endX: number;
  endY: number;
  /** Height of its font. */
  size: number;
  /** Degrees that the writing is turned clockwise: 0, 90, 180, 270, or -1 for any other. */
  angle: number;
  /** Font and its height, as one name. */
  style: string;
  colour: number | null;
  /** How many things were painted before it. */
  order: number;
  /** False for what is drawn to be found and not to be seen, or is cut away. */
  shown: boolean;
  /** A blank follows it. */
  blankAfter: boolean;
}

/** A straight line along the page's edges. */
export interface Rule {
  upright: boolean;
  /** Its distance from the left edge where it is upright, from the top where it is level. */
  at: number;
  from: number;
  to: number;
}

/** What covers all that was painted under it. */
export interface Cover {
  box: Box;
  /** Corners, x and y in turn; null where it fills its box. */
  outline: number[] | null;
  /** Null where it has more than one colour, as an image has. */
  colour: number | null;
  order: number;
  /** An image rather than a fill. */
  picture: boolean;
}

/** A circle or a similar small closed line. */
export interface Ring {
  x: number;
  y: number;
  box: Box;
  /** A true circle. */
  round: boolean;
}

/** What stands on one page, as it is shown: turned upright, y downwards, in points. */
export interface PageContent {
  width: number;
  height: number;
  pieces: Piece[];
  rules: Rule[];
  covers: Cover[];
  rings: Ring[];
  /** Ends of straight strokes: x1, y1, x2, y2 in turn. */
  strokes: number[];
  /** Points of curves that are not closed, each twice: what a circle drawn in pieces is found by. */
  arcs: number[];
}
