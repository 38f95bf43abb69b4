import type { Cell } from './cells.ts';
import { count, countIn, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import type { Token } from './tokens.ts';

/** What stands under a heading of quantities; two that say otherwise leave it open. */
export function byColumn(tokens: readonly Token[], cells: readonly Cell[]): Quantity | null {
  if (cells.length < 2) return null;
  let found: Quantity | null = null;
  for (const cell of cells) {
    const counted = cell.column === 'qty' ? countIn(tokens, cell) : null;
    if (!counted) continue;
    if (found && found.value !== counted.value) return null;
    found ??= only(counted.value, counted.at);
  }
  return found;
}

/** The first cell in which a part is named; cells and hits both stand in order. */
function firstNamed(cells: readonly Cell[], hits: readonly Hit[]): number {
  let at = 0;
  for (const { first, last, nouns } of hits) {
    if (nouns.length === 0) continue;
    while (at < cells.length && cells[at]!.last < first) at++;
    if (at < cells.length && cells[at]!.first <= first && last <= cells[at]!.last) return at;
  }
  return -1;
}

/** A number alone in its cell. */
interface Alone {
  value: number;
  index: number;
  at: number;
}

/** A number alone in front of a row that has no other counts where it is so small: most lists want one or two, and few items are so numbered. */
const mostInFront = 4;

/** The small number alone in a cell behind the description; or, of two in front of it, the second. */
export function byCell(
  tokens: readonly Token[],
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  if (cells.length < 2 || cells.some(c => c.column !== null && c.column !== 'sheet')) return null;
  const named = firstNamed(cells, hits);
  const described = named >= 0 ? named : cells.findIndex(c => c.last > c.first);
  let before = 0;
  let front: Alone | null = null;
  let second: Alone | null = null;
  for (let index = 0; index < cells.length; index++) {
    const { first, last } = cells[index]!;
    const value = first === last ? count(tokens[first]) : null;
    if (value === null) continue;
    if (index > described && value < 1000) return only(value, first);
    if (index >= described) continue;
    before++;
    if (before === 1) front = { value, index, at: first };
    else if (before === 2) second = { value, index, at: first };
  }
  const early = front !== null && front.index === 0 && front.value > mostInFront;
  const beside: Alone | null = before === 2 ? second : early ? null : front;
  if (beside && beside.value < 1000) return only(beside.value, beside.at);
  if (before > 0) return null;
  // "M3x15mm      2 Tapered screw head": a column run into the next
  const run = cells.find(({ first, last }, index) => {
    const next = tokens[first + 1];
    return (
      index > 0 &&
      first < last &&
      count(tokens[first]) !== null &&
      next?.kind === 'word' &&
      next.gap > 0 &&
      next.text.length > 2
    );
  });
  return run ? only(count(tokens[run.first]), run.first) : null;
}
