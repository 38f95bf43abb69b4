import { headerRoles } from '../reading/column-words.ts';
import { runs } from './assign-roles.ts';
import { partNumberLike } from './cell-kinds.ts';
import { columnCells, type GridLine } from './grid.ts';
import { strongestRole } from './header.ts';
import { readQuantity } from './quantity.ts';
import { readReference } from './reference.ts';

/** Columns of a list at least, and the share of lines in which a column that is one of several lists has something. */
const fewest = 3;
const leastFilled = 0.4;

/** Where each of the lists side by side begins: at the first title's next appearance. */
export function startsByTitle(titles: readonly string[]): number[] {
  const first = titles.find(title => title !== '');
  const starts = titles.flatMap((title, at) => (title === first ? [at] : []));
  const descriptions = titles.filter(title => {
    const roles = headerRoles(title);
    return roles && strongestRole(roles) === 'description';
  });
  if (starts.length < 2) return [0];
  const eachDescribes = descriptions.length === starts.length;
  return eachDescribes || comesAgain(titles, starts) ? [0, ...starts.slice(1)] : [0];
}

/** Whether a row of titles, three or more of which one may head names, is printed over and over. */
function comesAgain(titles: readonly string[], [first, second]: readonly number[]): boolean {
  const one = titles.slice(first, second).filter(Boolean);
  const all = titles.filter(Boolean);
  return (
    one.length >= fewest &&
    all.length % one.length === 0 &&
    all.every((title, at) => title === one[at % one.length]) &&
    one.some(title => headerRoles(title)?.description !== undefined)
  );
}

/** The same by what stands in the columns: the kinds of cells come again in the same order, and references run on. */
export function startsByContent(sample: readonly GridLine[], width: number): number[] {
  const columns = Array.from({ length: width }, (_, at) => ({ at, cells: columnCells(at, sample) })).filter(
    ({ cells }) => cells.length > 0,
  );
  if (columns.some(({ cells }) => cells.length < leastFilled * sample.length)) return [0];
  const kinds = columns.map(({ cells }) => usualKind(cells));
  for (const groups of [4, 3, 2]) {
    const size = columns.length / groups;
    if (!Number.isInteger(size) || size < fewest) continue;
    const alike = kinds.every((kind, at) => kind === kinds[at % size]);
    const words = kinds.slice(0, size).filter(kind => kind === 'words').length;
    const counted = columns.filter(({ cells }, at) => kinds[at] === 'number' && runs(cells)).length;
    if (alike && words === 1 && counted >= groups)
      return Array.from({ length: groups }, (_, nth) => (nth === 0 ? 0 : columns[nth * size]!.at));
  }
  return [0];
}

type Kind = 'number' | 'partNumber' | 'words';

/** What most cells of a column are. */
function usualKind(cells: readonly string[]): Kind {
  const counts: Record<Kind, number> = { number: 0, partNumber: 0, words: 0 };
  for (const cell of cells) counts[kindOf(cell)] += 1;
  return (Object.entries(counts) as [Kind, number][]).reduce((a, b) => (b[1] > a[1] ? b : a))[0];
}

function kindOf(cell: string): Kind {
  if (partNumberLike(cell) === 2) return 'partNumber';
  return readReference(cell) || readQuantity(cell).understood ? 'number' : 'words';
}
