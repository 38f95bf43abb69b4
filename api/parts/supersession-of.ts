import { sql } from 'drizzle-orm';
import type { SupersessionAnswer } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import type { Successor } from '../ordering/order-list.ts';
import { succeed } from '../ordering/supersede.ts';

/** Direct successors of these parts and of all that they lead to, by the part that is superseded. */
export async function successorsOf(tx: Tx, parts: Iterable<string>): Promise<Map<string, Successor[]>> {
  const successors = new Map<string, Successor[]>();
  const asked = new Set(parts);
  let next = [...asked];
  while (next.length > 0) {
    const rows = await tx.execute<Successor & { of: string } & Record<string, unknown>>(sql`
      select distinct supersession.part as of, supersession.successor_number as number,
             supersession.successor_key as "numberKey", successor.id as part,
             supersession.serial_from as "serialFrom", supersession.serial_to as "serialTo"
      from supersession
      join part on part.id = supersession.part
      left join part as successor
        on successor.maker = part.maker and successor.number_key = supersession.successor_key
      where supersession.part in ${next}
      order by 2, 5, 6`);
    for (const { of, ...row } of rows) successors.set(of, [...(successors.get(of) ?? []), row]);
    next = [...new Set(rows.flatMap(row => row.part ?? []))].filter(id => !asked.has(id));
    for (const id of next) asked.add(id);
  }
  return successors;
}

/** Where a part's number leads in the maker's words, and which numbers lead here. */
export async function supersessionOf(tx: Tx, part: string): Promise<SupersessionAnswer> {
  const successors = await successorsOf(tx, [part]);
  const numbers = await tx.execute<{ id: string; number: string | null }>(
    sql`select id, number from part where id in ${[part, ...successors.keys()]}`,
  );
  const numberOf = new Map(numbers.map(row => [row.id, row.number ?? '']));
  const { now, ask } = succeed(part, successors, null);
  const replaced = await tx.execute<{ number: string }>(sql`
    select distinct former.number
    from part as own
    join supersession on supersession.successor_key = own.number_key
    join part as former on former.id = supersession.part and former.maker = own.maker
    where own.id = ${part} and own.number is not null and former.number is not null
    order by 1`);
  return {
    links: [...successors].flatMap(([from, to]) =>
      to.map(one => ({
        from: numberOf.get(from) ?? '',
        to: one.number,
        part: one.part,
        serialFrom: one.serialFrom,
        serialTo: one.serialTo,
      })),
    ),
    current: ask ? null : (now?.number ?? numberOf.get(part) ?? null) || null,
    asks: ask?.text ?? null,
    replaces: replaced.map(row => row.number),
  };
}
