import { sql } from 'drizzle-orm';
import { proposeDuty } from '../../indexer/index.ts';
import { storableJson } from '../db/copy-text.ts';
import type { Tx } from '../db/store.ts';
import type { KeyedRow } from '../diagrams/keyed-rows.ts';
import type { Links } from '../diagrams/link-rows.ts';

interface Subject {
  /** The diagram. */
  id: string;
  model: { id: string; name: string };
}

/**
 * Proposes a duty for the model from its name, headings and lines, and for each assembly from its line. A person's
 * answer stands; a model's proposal is never taken away by another reading, only by a person.
 */
export async function proposeDuties(
  tx: Tx,
  { id, model }: Subject,
  rows: KeyedRow[],
  links: Links,
): Promise<void> {
  const ofModel = proposeDuty(model.name) ?? firstProposal(rows);
  if (ofModel)
    await tx.execute(sql`
      insert into duty (workshop, model, duty, standing, word)
      values (this_workshop(), ${model.id}::uuid, ${ofModel.duty}, 'proposed', ${ofModel.word})
      on conflict (workshop, model) do update set word = coalesce(duty.word, excluded.word)`);

  const assemblies = new Set(links.assemblies.map(link => link.parent));
  const ofAssemblies = rows.flatMap(row => {
    const proposal = assemblies.has(row.key) ? proposeDuty(row.description) : null;
    return proposal ? [{ row: row.key, duty: proposal.duty, word: proposal.word }] : [];
  });
  await tx.execute(sql`
    insert into duty (workshop, part, duty, standing, word)
    select distinct on (row.part) this_workshop(), row.part, proposed.duty, 'proposed', proposed.word
    from jsonb_to_recordset(${storableJson(ofAssemblies)}::jsonb) as proposed(row text, duty text, word text)
    join row on row.diagram = ${id} and row.key = proposed.row
    where row.part is not null
    order by row.part, row.position
    on conflict (workshop, part) do update set word = coalesce(duty.word, excluded.word)`);
}

/** Headings first, for they speak of the whole machine; then the lines. */
function firstProposal(rows: KeyedRow[]) {
  for (const wanted of ['skipped', 'taken'])
    for (const row of rows) {
      const proposal = row.outcome === wanted ? proposeDuty(row.description) : null;
      if (proposal) return proposal;
    }
  return null;
}
