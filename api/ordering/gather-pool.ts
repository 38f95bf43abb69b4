import { and, inArray, isNull, sql } from 'drizzle-orm';
import type { Attrs, Dims } from '../../indexer/index.ts';
import { type CategoryName, openOf, parseSize } from '../../indexer/index.ts';
import { anyOf } from '../db/planned.ts';
import { job, part } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { lineDuties } from '../duty/line-duty.ts';
import { agreedQty, ofModel, qtyByModel } from '../models/model-lines.ts';
import { successorsOf } from '../parts/supersession-of.ts';
import { notFound } from '../refusal.ts';
import type { Pool, PoolJob, PoolLine, PoolPart } from './order-list.ts';
import { itemAttrs, itemOf } from './taken-as.ts';

/** Everything that pooling these jobs looks at, in plain data. Without ids: every open job. */
export async function gatherPool(tx: Tx, jobIds: string[] | null): Promise<Pool> {
  const jobs = await poolJobs(tx, jobIds);
  const ids = jobs.map(one => one.id);
  const needs = ids.length === 0 ? [] : await poolNeedsOf(tx, ids);
  const lines = await poolLines(tx, [...new Set(needs.flatMap(one => one.list ?? []))]);
  const wanted = new Set<string>();
  for (const one of needs) {
    if (one.part) wanted.add(one.part);
    const line = one.line === null ? undefined : lines.get(one.line);
    for (const id of line ? [line.id, ...line.sameRef, ...upwards(line, lines)] : []) {
      const named = lines.get(id)?.part;
      if (named) wanted.add(named);
    }
  }
  const successors = await successorsOf(tx, wanted);
  for (const one of [...successors.values()].flat()) if (one.part) wanted.add(one.part);
  return { jobs, needs, lines, parts: await poolParts(tx, [...wanted], lines), successors };
}

async function poolJobs(tx: Tx, ids: string[] | null): Promise<PoolJob[]> {
  const which = ids === null ? isNull(job.closedAt) : inArray(job.id, ids);
  const rows =
    ids?.length === 0
      ? []
      : await tx
          .select({ id: job.id, number: job.number, owner: job.owner, model: job.model, serial: job.serial })
          .from(job)
          .where(and(which))
          .orderBy(job.number);
  const missing = ids?.find(id => !rows.some(row => row.id === id));
  if (missing) throw notFound('job', missing);
  return rows;
}

/** Needs with their line: the one they were picked from, else the only one of the part on the job's model. */
async function poolNeedsOf(tx: Tx, jobs: string[]) {
  const rows = await tx.execute<{
    id: string;
    job: string;
    qty: number | null;
    part: string | null;
    item: string | null;
    takenAs: string | null;
    list: string | null;
    line: string | null;
  }>(sql`
    select need.id, need.job, need.qty, need.part, need.item, need.taken_as as "takenAs",
           coalesce(picked.diagram, sole.diagram) as list,
           coalesce(picked.id, sole.id) as line
    from need
    join job on job.id = need.job
    left join row as picked on picked.diagram = need.diagram and picked.key = need.row_key
    left join lateral (
      select min(row.id::text)::uuid as id, min(row.diagram::text)::uuid as diagram
      from row join diagram on diagram.id = row.diagram
      ${ofModel}
      where row.part = need.part and of_model.model = job.model
      having count(*) = 1
    ) as sole on picked.id is null
    where need.job in ${jobs}
    order by need.created_at, need.id`);
  return rows.map(({ item, takenAs, ...row }) => ({
    ...row,
    item: item === null ? null : itemOf(item),
    takenAs: takenAs === null ? null : itemOf(takenAs),
  }));
}

/** How many lines that serial numbers tell apart one reference has at most; more is no list of alternatives. */
const mostAlternatives = 20;

/** Every line of these lists, with assembly, facts and duty. */
async function poolLines(tx: Tx, lists: string[]): Promise<Map<string, PoolLine>> {
  if (lists.length === 0) return new Map();
  const rows = await tx.execute<
    Omit<PoolLine, 'critical' | 'sameRef'> & { list: string } & Record<string, unknown>
  >(sql`
    select row.id, row.diagram as list, row.ref, coalesce(correction.qty, row.qty, ${agreedQty}, reading.qty) as qty,
           ${qtyByModel} as "qtyByModel", row.part,
           (select parent.id from assembly
            join row as parent on parent.diagram = row.diagram and parent.key = assembly.parent_key
            where assembly.diagram = row.diagram and assembly.child_key = row.key
            order by parent.position desc limit 1) as parent,
           coalesce((select jsonb_agg(jsonb_build_object('kind', kind, 'from', serial_from, 'to', serial_to))
                     from row_fact where row_fact.diagram = row.diagram and row_fact.row_key = row.key), '[]') as facts
    from row
    left join reading on reading.row = row.id
    left join correction on correction.diagram = row.diagram and correction.row_key = row.key
                         and correction.undone_at is null
    where row.diagram in ${lists} and row.outcome = 'taken'
    order by row.position`);
  const duties = await lineDuties(tx, sql`row.diagram = ${anyOf(lists)}`);
  const bySerial = new Map<string, string[]>();
  const place = (row: { list: string; ref: string }) => `${row.list} ${row.ref}`;
  for (const row of rows) {
    if (row.ref === '' || !row.facts.some(fact => fact.kind === 'serial')) continue;
    const group = bySerial.get(place(row));
    if (!group) bySerial.set(place(row), [row.id]);
    else if (group.length < mostAlternatives) group.push(row.id);
  }
  return new Map(
    rows.map(({ list, ...row }) => {
      const alternatives = bySerial.get(place({ list, ref: row.ref })) ?? [];
      const critical = duties.get(row.id)?.critical ?? false;
      return [row.id, { ...row, sameRef: alternatives.filter(id => id !== row.id), critical }];
    }),
  );
}

function upwards(line: PoolLine, lines: Map<string, PoolLine>): string[] {
  const over: string[] = [];
  for (let at = line.parent; at !== null && !over.includes(at); at = lines.get(at)?.parent ?? null)
    over.push(at);
  return over;
}

async function poolParts(
  tx: Tx,
  ids: string[],
  lines: Map<string, PoolLine>,
): Promise<Map<string, PoolPart>> {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .select({ part, maker: sql<string>`(select maker.name from maker where maker.id = part.maker)` })
    .from(part)
    .where(inArray(part.id, ids));
  const duties = await lineDuties(tx, sql`row.part = ${anyOf(ids)}`);
  const partOfLine = await tx.execute<{ id: string; part: string }>(
    sql`select id, part from row where part in ${ids}`,
  );
  const critical = new Set(
    partOfLine
      .filter(line => duties.get(line.id)?.critical || lines.get(line.id)?.critical)
      .map(one => one.part),
  );
  return new Map(
    rows.map(({ part: one, maker }) => [
      one.id,
      {
        id: one.id,
        maker,
        number: one.number,
        numberKey: one.numberKey,
        name: one.name,
        size: one.size,
        item: one.item,
        attrs: itemAttrs(one.category as CategoryName, one.attrs),
        side: sideOf(one.attrs),
        doubtful: one.review,
        critical: critical.has(one.id),
      },
    ]),
  );
}

/** What of an article nothing states; nothing where it has no size. */
export function openAttrs(category: string, dims: Dims, attrs: Attrs, size: string | null): string[] {
  const parsed = size === null ? null : parseSize(size);
  return parsed ? openOf(category as CategoryName, dims, parsed.implied, attrs) : [];
}

const sideOf = ({ side }: Attrs) => (side === 'left' || side === 'right' ? side : null);
