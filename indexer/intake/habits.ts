import { cellsOf } from './cells.ts';
import type { Layout } from './column.ts';
import type { GridLine } from './grid.ts';

/** What most lines of a table have, against which a line that lacks it stands out. */
export interface Habits {
  /** Many lines have a reference, a number or a quantity, so words alone are a heading or go on from the line before. */
  numbered: boolean;
  /** Nearly all of those have a quantity. */
  counted: boolean;
  /** The length that hardly a description passes, in characters: near it lines are wrapped. */
  width: number;
}

const sampleSize = 2000;

/** The habits of a table's lines. */
export function habitsOf(lines: readonly GridLine[], layout: Layout): Habits {
  const group = layout[0]!;
  const sample = lines.filter(line => !line.faulted).slice(0, sampleSize);
  const rows = sample.map(line => cellsOf(line, group));
  const full = rows.filter(cells => cells.ref || cells.partNumber || cells.qty);
  const counted = full.filter(cells => cells.qty).length;
  return {
    numbered: full.length >= rows.length * 0.4 && full.length > 0,
    counted: counted > full.length * 0.7,
    width: nearlyAll(full.map(cells => cells.description.trim().length)),
  };
}

/** The number that one in twenty passes. */
function nearlyAll(numbers: number[]): number {
  return numbers.sort((a, b) => a - b)[Math.floor(numbers.length * 0.95)] ?? 0;
}
