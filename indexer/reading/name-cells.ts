import type { Cell, Column } from './cells.ts';
import type { Columns } from './columns.ts';
import { countIn } from './count.ts';
import { respelled, type Token } from './tokens.ts';

/**
 * Gives each cell the column it stands under. A row may end early, or lack what stands in front: then the cells go where
 * their figures can stand. A row that was run together is cut as the names stand, and given back so.
 */
export function nameCells(cells: Cell[], { columns, parted }: Columns, tokens: readonly Token[]): Cell[] {
  if (columns.length === 0 || (columns.length === 1 && (columns[0]!.labels.length < 2 || cells.length > 1)))
    return cells;
  if (parted === 'blank') return (cells.length === 1 && spread(tokens, columns)) || cells;
  if (cells.length === columns.length) return under(cells, columns, tokens);
  if (cells.length < 2) return cells;
  if (cells.length > columns.length) {
    const rest = cells.slice(columns.length);
    return rest.every(isEmpty) && mayStand(cells, columns, tokens) ? under(cells, columns, tokens) : cells;
  }
  const front = columns.slice(0, cells.length);
  if (mayStand(cells, front, tokens)) return under(cells, front, tokens);
  const back = columns.slice(-cells.length);
  return mayStand(cells, back, tokens) ? under(cells, back, tokens) : cells;
}

const under = (cells: readonly Cell[], columns: readonly Column[], tokens: readonly Token[]): Cell[] =>
  cells.map((cell, i) => {
    const named = { ...cell, ...columns[i] };
    return named.column === 'ref' && holdsWords(tokens, cell) ? { ...named, column: 'description' } : named;
  });

/** A column of items holds their numbers or their names: S01, but lock nut M4. */
function holdsWords(tokens: readonly Token[], { first, last }: Place): boolean {
  for (let at = first; at <= last; at++) {
    const { kind, text, gap } = tokens[at]!;
    if (kind === 'word' && (text.length > 3 || (text.length === 3 && gap > 0 && at > first))) return true;
  }
  return false;
}

/**
 * Silences what stands under a heading of uses, sources and pictures: it tells where a part goes or comes from, and its
 * words and figures are of other parts.
 */
export function silenceAsides(tokens: Token[], cells: readonly Cell[]): void {
  for (const { first, last, column } of cells) {
    if (column !== 'aside') continue;
    for (let at = first; at <= last; at++) tokens[at] = respelled(tokens[at]!, 'mark', '·');
  }
}

const isEmpty = ({ first, last }: Cell) => last < first;

/** Whether every cell could hold what its column says; a column of quantities must be among them. */
const mayStand = (cells: readonly Cell[], columns: readonly Column[], tokens: readonly Token[]): boolean =>
  columns.some(c => c.column === 'qty') &&
  columns.every((column, i) => {
    const cell = cells[i]!;
    if (isEmpty(cell)) return column.column !== 'qty';
    if (column.column === 'qty') return countIn(tokens, cell) !== null;
    if (column.column === 'price') return hasNumber(tokens, cell);
    return column.column !== 'ref' || cell.last - cell.first < 3;
  });

const hasNumber = (tokens: readonly Token[], { first, last }: Place) => {
  for (let at = first; at <= last; at++) if (tokens[at]!.kind === 'number') return true;
  return false;
};

interface Place {
  first: number;
  last: number;
}

/** Cuts a row run together: what each column from the left, then each from the right, can hold; the rest is the name. */
function spread(tokens: readonly Token[], columns: readonly Column[]): Cell[] | null {
  const pieces = gluedPieces(tokens);
  const named = new Map<number, Place>();
  let left = 0;
  let from = 0;
  for (; left < columns.length && from < pieces.length; left++) {
    if (!fits(tokens, pieces[from]!, columns[left]!)) break;
    named.set(left, pieces[from++]!);
  }
  let right = columns.length - 1;
  let to = pieces.length - 1;
  for (; right > left; right--) {
    if (to < from || !fits(tokens, pieces[to]!, columns[right]!)) continue;
    named.set(right, pieces[to--]!);
  }
  const counted = columns.findIndex(c => c.column === 'qty');
  if (!named.has(counted)) return null;
  const rest = columns[left];
  if (from <= to && rest) named.set(left, { first: pieces[from]!.first, last: pieces[to]!.last });
  else if (from <= to) return null;
  return [...named].sort(([a], [b]) => a - b).map(([i, place]) => ({ ...place, ...columns[i]! }));
}

/** Tokens with no blank between them. */
function gluedPieces(tokens: readonly Token[]): Place[] {
  const pieces: Place[] = [];
  for (let at = 0; at < tokens.length; at++) {
    if (tokens[at]!.gap === 0 && pieces.length > 0) pieces.at(-1)!.last = at;
    else pieces.push({ first: at, last: at });
  }
  return pieces;
}

/** Whether a piece could stand in a column of a row that was run together. */
function fits(tokens: readonly Token[], piece: Place, { column, labels }: Column): boolean {
  const alone = piece.first === piece.last;
  const { kind, text } = tokens[piece.first]!;
  if (column === 'qty') return countIn(tokens, piece) !== null;
  if (column === 'ref') return kind === 'number' && piece.last - piece.first < 4;
  if (column === 'partNumber') return hasNumber(tokens, piece) && (!alone || text.length > 3);
  if (column === 'price' || column === 'weight')
    return hasNumber(tokens, piece) && piece.last - piece.first < 3;
  if (column === 'size' || labels.length > 0) return hasNumber(tokens, piece);
  return false;
}
