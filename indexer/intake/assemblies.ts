import { type Entry, subjectOf } from './entry.ts';
import type { Relation } from './rows.ts';

/** Assemblies that indents or references with a point or colon (12:3) draw. */
export function drawnAssemblies(taken: readonly Entry[], stated: readonly Relation[]): Relation[] {
  const children = new Map<Entry, string[]>();
  const spoken = new Set(stated.filter(({ kind }) => kind === 'includes').map(({ ref }) => ref));
  const byRef = new Map(taken.map(entry => [entry.row.ref, entry]));
  const indented = taken.some(({ depth }) => depth !== null);
  const open: { depth: number; entry: Entry }[] = [];
  for (const entry of taken) {
    const depth = entry.depth ?? 0;
    while (open.length > 0 && open.at(-1)!.depth >= depth) open.pop();
    const base = /^(\d+)[.:]\d+$/.exec(entry.row.ref)?.[1];
    const parent = base !== undefined ? byRef.get(base) : indented ? open.at(-1)?.entry : undefined;
    if (indented) open.push({ depth, entry });
    if (!parent?.row.ref || parent === entry) continue;
    entry.row.parent = parent.row.ref;
    if (entry.row.ref) children.set(parent, [...(children.get(parent) ?? []), entry.row.ref]);
  }
  return [...children]
    .filter(([parent]) => !spoken.has(parent.row.ref))
    .map(([parent, refs]) => ({ kind: 'includes', ...subjectOf(parent.row), refs: [...new Set(refs)] }));
}

/** Each row's nearest assembly: of those that include it, the one with the fewest parts. */
export function setParents(taken: readonly Entry[], relations: readonly Relation[]): void {
  const nearest = new Map<string, { ref: string; size: number }>();
  for (const { kind, ref, refs } of relations) {
    if (kind !== 'includes' || !ref) continue;
    for (const child of refs!)
      if (refs!.length < (nearest.get(child)?.size ?? Number.POSITIVE_INFINITY))
        nearest.set(child, { ref, size: refs!.length });
  }
  for (const { row } of taken) row.parent ??= nearest.get(row.ref)?.ref ?? null;
}
