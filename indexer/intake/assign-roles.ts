import { headerRoles, type Role } from '../reading/column-words.ts';
import { suits } from './cell-kinds.ts';
import type { Column } from './column.ts';
import { columnCells, type GridLine } from './grid.ts';
import { readReference, refParts } from './reference.ts';

/** Roles that at most one column of a group has, the surest first. */
const single: Role[] = [
  'description',
  'ref',
  'partNumber',
  'qty',
  'price',
  'remarks',
  'size',
  'material',
  'unit',
  'level',
];
/** Roles that content alone can show. */
const shownByContent = new Set<Role>(['description', 'ref', 'partNumber', 'qty', 'price', 'remarks']);

type Scores = Partial<Record<Role, number>>;

/** For one column, how well each role fits: the header's word first, then what stands below it. */
export function scoreRoles(column: Column, sample: readonly GridLine[], named: boolean): Scores {
  const cells = columnCells(column.at, sample);
  const words = column.title ? headerRoles(column.title) : null;
  const scores: Scores = {};
  const fill = sample.length === 0 ? 0 : cells.length / sample.length;
  for (const role of single) {
    const word = words?.[role] ?? 0;
    if (!word && (words || !shownByContent.has(role))) continue;
    if (!word && cells.length === 0) continue;
    let content = cells.reduce((sum, cell) => sum + suits(cell, role), 0) / Math.max(cells.length, 1);
    if (role === 'ref') content += runs(cells) ? 2 : -1;
    if (role === 'qty' && cells.length > 4 && runs(cells)) content -= 3;
    if (role === 'partNumber') content += 2 * (new Set(cells).size / Math.max(cells.length, 1)) - 1;
    if (role === 'description') content += Math.min(averageLength(cells) / 10, 2) + 3 * fill - 2;
    if (role === 'remarks') content += (named ? 0.5 : 0) - fill;
    scores[role] = 6 * word + Math.max(content, word ? -5 : -6);
  }
  return scores;
}

const averageLength = (cells: readonly string[]): number =>
  cells.reduce((sum, cell) => sum + cell.length, 0) / Math.max(cells.length, 1);

/** True for numbers that run on as a list's references do: each a little above the one before, few twice. */
export function runs(cells: readonly string[]): boolean {
  const numbers = cells.flatMap(cell => {
    const ref = readReference(cell);
    const parts = ref && refParts(ref.ref);
    return parts ? [parts.number] : [];
  });
  if (numbers.length < 3 || numbers.length < cells.length * 0.6) return false;
  const steps = numbers
    .slice(1)
    .filter((number, at) => number >= numbers[at]! && number - numbers[at]! <= 20);
  return steps.length >= 0.7 * (numbers.length - 1) && new Set(numbers).size > 0.6 * numbers.length;
}

/** One role for each column, each role once, with the greatest sum. */
export function assignRoles(scores: readonly Scores[]): (Role | undefined)[] {
  let bestSum = -1;
  let bestRoles: (Role | undefined)[] = [];
  const chosen: (Role | undefined)[] = scores.map(() => undefined);
  const candidates = single.map(role =>
    scores
      .map((score, at) => ({ at, score: score[role] ?? 0 }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score)
      .slice(0, 4),
  );
  // The most that the roles from each one on can still add: what cannot beat the best is not tried.
  const most = candidates.map(found => found[0]?.score ?? 0);
  for (let nth = most.length - 2; nth >= 0; nth -= 1) most[nth]! += most[nth + 1]!;
  const choose = (nth: number, sum: number) => {
    if (sum + (most[nth] ?? 0) <= bestSum) return;
    if (nth === single.length) {
      if (sum > bestSum) {
        bestSum = sum;
        bestRoles = [...chosen];
      }
      return;
    }
    for (const { at, score } of candidates[nth]!) {
      if (chosen[at] !== undefined) continue;
      chosen[at] = single[nth];
      choose(nth + 1, sum + score);
      chosen[at] = undefined;
    }
    choose(nth + 1, sum);
  };
  choose(0, 0);
  return bestRoles;
}
