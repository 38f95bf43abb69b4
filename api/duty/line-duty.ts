import { type SQL, sql } from 'drizzle-orm';
import { type Duty, isCritical } from '../../indexer/index.ts';
import type { DutyAnswer } from '../answers/index.ts';
import { anyOf, planned } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';

/** What is known of a line or model before anybody has said anything. */
export const notStated: DutyAnswer = {
  duty: 'not-stated',
  standing: 'not-stated',
  from: 'nothing',
  word: null,
  critical: false,
};

interface Said {
  duty: Duty;
  standing: 'proposed' | 'confirmed';
  word: string | null;
}

/** A duty as it is answered. A proposed one counts until a person answers. */
export function dutyAnswer(said: Said | null, from: DutyAnswer['from']): DutyAnswer {
  if (!said) return notStated;
  return { ...said, from, critical: isCritical(said.duty) };
}

/** How deep an assembly may stand in another; a list that says more is circling. */
const deepest = 8;

/**
 * The duty of each line that `which` (a condition on `row` and `diagram`) picks, by the line's id: what a person
 * confirmed for the part, else for the nearest assembly that it ships with, else for the model; and until the model's
 * question is answered, what a word on its lists proposes.
 */
export async function lineDuties(tx: Tx, which: SQL): Promise<Map<string, DutyAnswer>> {
  return new Map((await told(tx, which)).map(({ line, duty }) => [line, duty]));
}

/** Those of the parts that a critical line names. */
export async function criticalParts(tx: Tx, parts: string[]): Promise<Set<string>> {
  if (parts.length === 0) return new Set();
  const lines = await told(tx, sql`row.part = ${anyOf(parts)}`);
  return new Set(lines.filter(({ duty }) => duty.critical).map(({ part }) => part!));
}

async function told(tx: Tx, which: SQL): Promise<{ line: string; part: string | null; duty: DutyAnswer }[]> {
  const rows = await planned<{ line: string; part: string | null; depth: number | null } & Partial<Said>>(
    tx,
    sql`
    with recursive line as (
      select row.id, row.diagram, row.key, row.part, diagram.model
      from row join diagram on diagram.id = row.diagram
      where ${which}
    ),
    up as (
      select id as line, diagram, key, part, 0 as depth from line
      union all
      select up.line, parent.diagram, parent.key, parent.part, up.depth + 1
      from up
      join assembly on assembly.diagram = up.diagram and assembly.child_key = up.key
      join row as parent on parent.diagram = up.diagram and parent.key = assembly.parent_key
      where up.depth < ${deepest}
    ),
    nearest as (
      select distinct on (up.line) up.line, up.depth, duty.duty, duty.standing, duty.word
      from up join duty on duty.part = up.part and duty.standing = 'confirmed'
      order by up.line, up.depth, duty.duty = 'ordinary'
    ),
    -- Asked once for each list, however many lines of it there are.
    list as (select distinct diagram, model from line),
    spoken_of as (
      select diagram, model from list
      union
      select list.diagram, model_column.model from list join model_column on model_column.diagram = list.diagram
    ),
    of_list as (
      select distinct on (spoken_of.diagram) spoken_of.diagram, duty.duty, duty.standing, duty.word
      from spoken_of join duty on duty.model = spoken_of.model
      -- A list for several models has one answer for its own name and may have one for each: the gravest counts.
      order by spoken_of.diagram, duty.duty in ('ordinary', 'not-stated'), duty.standing <> 'confirmed', duty.model
    )
    select line.id as line, line.part, nearest.depth,
           coalesce(nearest.duty, of_list.duty) as duty,
           coalesce(nearest.standing, of_list.standing) as standing,
           case when nearest.line is null then of_list.word else nearest.word end as word
    from line
    left join nearest on nearest.line = line.id
    left join of_list on of_list.diagram = line.diagram`,
  );
  return rows.map(({ line, part, depth, duty, standing, word }) => {
    const from = depth === null ? 'model' : depth === 0 ? 'part' : 'assembly';
    const said = duty && standing ? { duty, standing, word: word ?? null } : null;
    return { line, part, duty: dutyAnswer(said, from) };
  });
}

/** The duty that counts where several lines take one part: a critical one before any other, a stated before none. */
export function gravest(duties: Iterable<DutyAnswer>): DutyAnswer {
  const weight = (duty: DutyAnswer) => (duty.critical ? 2 : duty.standing === 'not-stated' ? 0 : 1);
  let worst = notStated;
  for (const duty of duties) if (weight(duty) > weight(worst)) worst = duty;
  return worst;
}
