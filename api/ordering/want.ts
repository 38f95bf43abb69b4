import type { Ask, LeftOut, Pool, PoolJob, PoolLine, PoolNeed, PoolPart } from './order-list.ts';

/** A need on its way to the order: which line and part it has become by now, and what was found on the way. */
export interface Want {
  needs: string[];
  job: PoolJob;
  line: PoolLine | null;
  part: PoolPart | null;
  item: PoolNeed['item'];
  takenAs: PoolNeed['takenAs'];
  /** Where the maker's word leads to a number that stands on no list here. */
  number: { maker: string; number: string; numberKey: string } | null;
  qty: number | null;
  because: string[];
  asks: Ask[];
}

/** What a step makes of the wants: those that go on, and those that end here. */
export interface Step {
  wants: Want[];
  leftOut: LeftOut[];
}

/** The needs as they were written down. A need of a job that is not pooled is not looked at. */
export function wantsOf(pool: Pool): Want[] {
  const jobs = new Map(pool.jobs.map(job => [job.id, job]));
  return pool.needs.flatMap(need => {
    const job = jobs.get(need.job);
    if (!job) return [];
    const line = need.line === null ? null : (pool.lines.get(need.line) ?? null);
    const part = need.part === null ? null : (pool.parts.get(need.part) ?? null);
    return [
      {
        needs: [need.id],
        job,
        line,
        part,
        item: need.item,
        takenAs: need.takenAs,
        number: null,
        qty: need.qty,
        because: [],
        asks: [],
      },
    ];
  });
}

/** What a person calls it: reference and name, or the item. */
export function called(want: Want): string {
  if (!want.part) return want.item?.name ?? '';
  return want.line?.ref ? `${want.line.ref} ${want.part.name}` : want.part.name;
}

export const leave = (want: Want, why: string): LeftOut[] =>
  want.needs.map(need => ({ need, job: want.job.id, what: called(want), why }));

export const hasFact = (line: PoolLine | null, kind: string) =>
  line?.facts.some(fact => fact.kind === kind) ?? false;

/** The assemblies that a line ships with, the nearest first. A list that circles is followed once round at most. */
export function assembliesOver(line: PoolLine, lines: Pool['lines']): PoolLine[] {
  const over: PoolLine[] = [];
  const passed = new Set([line.id]);
  let at = line.parent;
  while (at !== null && !passed.has(at)) {
    passed.add(at);
    const assembly = lines.get(at);
    if (!assembly) break;
    over.push(assembly);
    at = assembly.parent;
  }
  return over;
}

/** Pieces of a line in one of the job's machines, or in one of its assembly; null where the list does not say. */
export const piecesOf = (line: PoolLine, { model }: PoolJob): number | null =>
  (model === null ? undefined : line.qtyByModel[model]) ?? line.qty;

/**
 * Pieces of the innermost line of a chain of assemblies in one of the outermost's parent; null where a quantity on the
 * way is not stated.
 */
export function piecesInOne(chain: PoolLine[], job: PoolJob): number | null {
  const each = chain.map(line => piecesOf(line, job));
  return each.includes(null) ? null : each.reduce((pieces: number, qty) => pieces * qty!, 1);
}

/** A sum of quantities, without what binary fractions leave behind. */
export const sum = (amounts: number[]) =>
  Math.round(amounts.reduce((total, amount) => total + amount, 0) * 1e6) / 1e6;
