import { createHash } from 'node:crypto';
import type { Relation, Row } from '../../indexer/intake/rows.ts';

/** A row with the key that stays the same when its document is read again. */
export interface KeyedRow extends Row {
  key: string;
  position: number;
}

/** Gives each row its key: page, reference, number and words, and which of its like it is. */
export function keyRows(rows: Row[]): KeyedRow[] {
  const likes = new Map<string, number>();
  return rows.map((row, position) => {
    const like = JSON.stringify([row.page, row.ref, row.partNumber, row.description]);
    const nth = likes.get(like) ?? 0;
    likes.set(like, nth + 1);
    const key = createHash('sha256').update(`${like}${nth}`).digest('base64url').slice(0, 24);
    return { ...row, key, position };
  });
}

/** How the lines hang together, by the keys of their rows. */
export interface Links {
  /** Child and assembly. */
  assemblies: { parent: string; child: string }[];
  supersessions: { row: string; number: string; from: string | null; to: string | null }[];
  facts: { row: string; kind: string; from: string | null; to: string | null; mirror: string | null }[];
}

/**
 * Ties relations, which speak of reference numbers, to rows. A reference may stand on several pages; then the row of
 * the same page is meant. Several relations of one kind for a reference belong to its rows in printed order.
 */
export function linkRows(rows: KeyedRow[], relations: Relation[]): Links {
  const byRef = new Map<string, KeyedRow[]>();
  for (const row of rows)
    if (row.outcome === 'taken' && row.ref !== '') byRef.set(row.ref, [...(byRef.get(row.ref) ?? []), row]);
  const named = (ref: string | undefined) => (ref === undefined ? [] : (byRef.get(ref) ?? []));
  const ofNumber = new Map<string, KeyedRow[]>();
  for (const row of rows)
    if (row.outcome === 'taken' && row.partNumber !== '')
      ofNumber.set(row.partNumber, [...(ofNumber.get(row.partNumber) ?? []), row]);

  const pairs = new Map<string, { parent: string; child: string }>();
  const holds = (parent: KeyedRow, child: KeyedRow) => {
    if (parent.key !== child.key)
      pairs.set(`${parent.key} ${child.key}`, { parent: parent.key, child: child.key });
  };
  for (const row of rows)
    if (row.outcome === 'taken' && row.parent !== null) {
      const parent = sameFirst(named(row.parent), row).at(0);
      if (parent) holds(parent, row);
    }

  const links: Links = { assemblies: [], supersessions: [], facts: [] };
  const turns = new Map<string, number>();
  for (const relation of relations) {
    const { kind, ref, from = null, to = null } = relation;
    // A list without reference numbers speaks of its lines by their part numbers.
    const all = ref === '' ? (ofNumber.get(relation.of ?? '') ?? []) : named(ref);
    if (kind === 'includes') {
      const parent = all.at(0);
      if (parent)
        for (const childRef of relation.refs ?? [])
          for (const child of onOnePage(named(childRef), parent)) holds(parent, child);
      continue;
    }
    const meant = rowsMeant(all, relation, turns);
    for (const row of meant) {
      if (kind === 'superseded-by') {
        if (relation.partNumber)
          links.supersessions.push({ row: row.key, number: relation.partNumber, from, to });
      } else {
        const mirror = kind === 'left-right' ? (named(relation.refs?.[0]).at(0)?.key ?? null) : null;
        links.facts.push({ row: row.key, kind, from, to, mirror });
      }
    }
  }
  links.assemblies = [...pairs.values()];
  return links;
}

/** The row that a relation's number names; without one, each relation of a kind takes the next row of its reference. */
function rowsMeant(all: KeyedRow[], relation: Relation, turns: Map<string, number>): KeyedRow[] {
  if (relation.of !== undefined) {
    const own = all.filter(row => row.partNumber === relation.of);
    if (own.length > 0) return own;
  }
  if (all.length <= 1 || (relation.from === undefined && relation.to === undefined)) return all.slice(0, 1);
  const turn = `${relation.kind} ${relation.ref}`;
  const nth = turns.get(turn) ?? 0;
  turns.set(turn, nth + 1);
  return all.slice(nth, nth + 1);
}

const onOnePage = (rows: KeyedRow[], with_: KeyedRow) => {
  const near = rows.filter(row => row.page === with_.page);
  return near.length > 0 ? near : rows;
};

/** Rows of the same page first, of them the nearest before `row`. */
function sameFirst(rows: KeyedRow[], row: KeyedRow): KeyedRow[] {
  const distance = (other: KeyedRow) =>
    (other.page === row.page ? 0 : 1e9) +
    (other.position <= row.position ? row.position - other.position : 1e6 + other.position - row.position);
  return [...rows].sort((a, b) => distance(a) - distance(b));
}
