import type {
  LineFact,
  Pool,
  PoolJob,
  PoolLine,
  PoolNeed,
  PoolPart,
  Successor,
} from '../../../api/ordering/order-list.ts';
import { itemOf } from '../../../api/ordering/taken-as.ts';

interface LineGiven {
  part?: string;
  qty?: number | null;
  qtyByModel?: Record<string, number>;
  parent?: string;
  critical?: boolean;
  facts?: (string | (Partial<LineFact> & { kind: string }))[];
  ref?: string;
}

interface Given {
  jobs?: Record<string, { serial?: string | null; model?: string }>;
  /** `brindlow 12-1` → what it is. The part's id is its key. */
  parts?: Record<string, Partial<PoolPart>>;
  lines?: Record<string, LineGiven>;
  /** Job, line (or `part:` or `item:` something) and quantity. */
  needs: [job: string, what: string, qty: number | null, takenAs?: string][];
  superseded?: Record<string, Partial<Successor>[]>;
}

/** A pool written in a few words. Jobs are numbered in their order; a line names the part of its own name unless said. */
export function poolOf({ jobs = { a: {} }, parts = {}, lines = {}, needs, superseded = {} }: Given): Pool {
  const partOf = (id: string, given: Partial<PoolPart> = {}): PoolPart => ({
    id,
    maker: 'Brindlow',
    number: id,
    numberKey: id.replace(/\W/g, '').toUpperCase(),
    name: id,
    size: given.item?.split(' ').slice(0, 2).join(' ') ?? null,
    item: null,
    attrs: given.item ? itemOf(given.item).attrs : {},
    side: null,
    doubtful: false,
    critical: false,
    ...given,
  });
  const allParts = new Map<string, PoolPart>();
  for (const [id, given] of Object.entries(parts)) allParts.set(id, partOf(id, given));
  for (const [id, line] of Object.entries(lines)) {
    const part = line.part ?? id;
    if (!allParts.has(part)) allParts.set(part, partOf(part));
  }
  const allLines = new Map<string, PoolLine>();
  for (const [id, line] of Object.entries(lines)) {
    const ref = line.ref ?? id;
    allLines.set(id, {
      id,
      ref,
      qty: line.qty === undefined ? 1 : line.qty,
      qtyByModel: line.qtyByModel ?? {},
      part: line.part ?? id,
      parent: line.parent ?? null,
      critical: line.critical ?? false,
      facts: (line.facts ?? []).map(fact =>
        typeof fact === 'string' ? { kind: fact, from: null, to: null } : { from: null, to: null, ...fact },
      ),
      sameRef: Object.entries(lines)
        .filter(([other, { ref: otherRef }]) => other !== id && (otherRef ?? other) === ref)
        .map(([other]) => other),
    });
  }
  const poolJobs: PoolJob[] = Object.entries(jobs).map(([id, job], index) => ({
    id,
    number: index + 1,
    owner: `owner of ${id}`,
    model: job.model ?? null,
    serial: job.serial ?? null,
  }));
  const poolNeeds: PoolNeed[] = needs.map(([job, what, qty, takenAs], index) => {
    const [kind, name] = what.includes(':') ? (what.split(':') as [string, string]) : ['line', what];
    return {
      id: `need ${index + 1}`,
      job,
      qty,
      line: kind === 'line' ? name : null,
      part: kind === 'line' ? (allLines.get(name)?.part ?? null) : kind === 'part' ? name : null,
      item: kind === 'item' ? itemOf(name) : null,
      takenAs: takenAs === undefined ? null : itemOf(takenAs),
    };
  });
  const successors = new Map(
    Object.entries(superseded).map(([of, all]) => [
      of,
      all.map(one => ({
        number: one.part ?? '?',
        numberKey: (one.number ?? one.part ?? '?').replace(/\W/g, '').toUpperCase(),
        part: null,
        serialFrom: null,
        serialTo: null,
        ...one,
      })),
    ]),
  );
  return { jobs: poolJobs, needs: poolNeeds, lines: allLines, parts: allParts, successors };
}
