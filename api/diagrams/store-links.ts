import { sql } from 'drizzle-orm';
import { foldNumber } from '../../indexer/index.ts';
import { storableJson } from '../db/copy-text.ts';
import type { Tx } from '../db/store.ts';
import type { Links } from './link-rows.ts';

/** Stores how a document's lines hang together: assemblies, supersessions, and what else it says of a line. */
export async function storeLinks(tx: Tx, diagram: string, links: Links): Promise<void> {
  await tx.execute(sql`
    insert into assembly (workshop, diagram, parent_key, child_key)
    select this_workshop(), ${diagram}::uuid, parent, child
    from jsonb_to_recordset(${storableJson(links.assemblies)}::jsonb) as link(parent text, child text)`);
  const supersessions = links.supersessions.map(link => ({ ...link, folded: foldNumber(link.number) }));
  await tx.execute(sql`
    insert into supersession (workshop, diagram, part, successor_number, successor_key, serial_from, serial_to)
    select distinct on (row.part, link.folded, link."from", link."to")
           this_workshop(), ${diagram}::uuid, row.part, link.number, link.folded, link."from", link."to"
    from jsonb_to_recordset(${storableJson(supersessions)}::jsonb)
         as link(row text, number text, folded text, "from" text, "to" text)
    join row on row.diagram = ${diagram} and row.key = link.row
    where row.part is not null and link.folded <> ''`);
  await tx.execute(sql`
    insert into row_fact (workshop, diagram, row_key, kind, serial_from, serial_to, mirror_key)
    select this_workshop(), ${diagram}::uuid, fact.row, fact.kind, fact."from", fact."to", fact.mirror
    from jsonb_to_recordset(${storableJson(links.facts)}::jsonb)
         as fact(row text, kind text, "from" text, "to" text, mirror text)`);
}
