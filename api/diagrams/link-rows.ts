import type { Relation } from '../../indexer/intake/rows.ts';
import { grouped } from './grouped.ts';
import type { KeyedRow } from './keyed-rows.ts';

/** How the lines hang together, by the keys of their rows. */
export interface Links {
  /** Child and assembly. */
  assemblies: { parent: string; child: string }[];
  supersessions: { row: string; number: string; from: string | null; to: string | null }[];
  facts: { row: string; kind: string; from: string | null; to: string | null; mirror: string | null }[];
}

/**
 * Ties relations, which speak of reference numbers, to rows. A reference may stand on several pages; then the nearest
 * row of the same page is meant. Several relations of one kind for a reference belong to its rows in printed order.
 */
export function linkRows(rows: KeyedRow[], relations: Relation[]): Links {
  const taken = rows.filter(row => row.outcome === 'taken');
  const byRef = grouped(
    taken.filter(row => row.ref !== ''),
    row => row.ref,
  );
  const byNumber = grouped(
    taken.filter(row => row.partNumber !== ''),
    row => row.partNumber,
  );
  const byBoth = grouped(taken, row => `${row.ref}\n${row.partNumber}`);

  const links: Links = { assemblies: [], supersessions: [], facts: [] };
  const hold = assembler(links);
  for (const row of taken)
    if (row.parent !== null) {
      const candidates = byRef.get(row.parent) ?? [];
      const parent = candidates[nearest(candidates, row, 'before')];
      if (parent) hold(parent, row);
    }

  const turns = new Map<string, number>();
  for (const relation of relations) {
    const { kind, ref, of = '', from = null, to = null } = relation;
    // A list without reference numbers speaks of its lines by their part numbers.
    const all = (ref === '' ? byNumber.get(of) : byRef.get(ref)) ?? [];
    const own = of === '' ? all : (byBoth.get(`${ref}\n${of}`) ?? all);
    const row = turnOf(own, relation, turns);
    if (!row) continue;
    if (kind === 'includes') {
      for (const childRef of relation.refs ?? [])
        for (const child of run(byRef.get(childRef) ?? [], row)) hold(row, child);
    } else if (kind === 'superseded-by') {
      if (relation.partNumber)
        links.supersessions.push({ row: row.key, number: relation.partNumber, from, to });
    } else {
      const mirrors = byRef.get(relation.refs?.[0] ?? '') ?? [];
      const mirror = kind === 'left-right' ? (mirrors[nearest(mirrors, row, 'after')]?.key ?? null) : null;
      links.facts.push({ row: row.key, kind, from, to, mirror });
    }
  }
  return links;
}

/** Notes that a child ships with an assembly, once. */
function assembler(links: Links) {
  const seen = new Set<string>();
  return (parent: KeyedRow, child: KeyedRow) => {
    const pair = `${parent.key} ${child.key}`;
    if (parent === child || seen.has(pair)) return;
    seen.add(pair);
    links.assemblies.push({ parent: parent.key, child: child.key });
  };
}

/** The row that a relation is about: the first, or for a range of serials the next in turn. */
function turnOf(rows: KeyedRow[], relation: Relation, turns: Map<string, number>): KeyedRow | undefined {
  if (rows.length <= 1 || (relation.from === undefined && relation.to === undefined)) return rows[0];
  const turn = `${relation.kind}\n${relation.ref}\n${relation.of ?? ''}`;
  const nth = turns.get(turn) ?? 0;
  turns.set(turn, nth + 1);
  return rows[nth];
}

/** The row nearest to `row` in a list in printed order, one of the same page first; -1 where there is none. */
function nearest(rows: KeyedRow[], row: KeyedRow, side: 'before' | 'after'): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.position < row.position) low = middle + 1;
    else high = middle;
  }
  const before = low - 1;
  const after = rows[low] === row ? low + 1 : low;
  const order = side === 'before' ? [before, after] : [after, before];
  const there = order.filter(index => rows[index] !== undefined);
  return there.find(index => rows[index]!.page === row.page) ?? there[0] ?? -1;
}

/** A run of one reference longer than this is no list of alternatives. */
const longestRun = 20;

/** The rows of a reference that stand together, such as one for each range of serials: the run nearest to `row`. */
function run(rows: KeyedRow[], row: KeyedRow): KeyedRow[] {
  const at = nearest(rows, row, 'after');
  if (at < 0) return [];
  const position = (index: number) => rows[index]?.position ?? Number.NaN;
  const follows = (index: number) => position(index) - position(index - 1) === 1;
  let [first, last] = [at, at];
  while (at - first < longestRun && follows(first)) first -= 1;
  while (last - at < longestRun && follows(last + 1)) last += 1;
  return last - first < longestRun ? rows.slice(first, last + 1) : [rows[at]!];
}
