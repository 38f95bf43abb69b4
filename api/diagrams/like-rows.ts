import { and, eq, isNull, sql } from 'drizzle-orm';
import { type Lesson, learn, lessonOf, type Said } from '../../indexer/index.ts';
import { correction, reading, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';

type RowRead = { row: typeof row.$inferSelect; reading: typeof reading.$inferSelect | null };

/** A row that a word on another puts right, and what it is then. */
export interface Taught {
  row: { key: string };
  said: Said;
}

/**
 * Rows of the same document that a person's word on one puts right as well: written like it, and misread or in doubt
 * like it. A row that a person has spoken of, or that was read surely in another way, is left alone.
 */
export async function likeRows(tx: Tx, taughtOn: RowRead, said: Said): Promise<Taught[]> {
  const { reading: read } = taughtOn;
  if (!read) return [];
  const lesson = lessonOf(read.text, said, read);
  if (!lesson) return [];
  // What the reading itself would teach: a row that it is true of was misread in the same way.
  const mistake = read.category === 'unsure' ? null : lessonOf(read.text, read, read);
  const others = await tx
    .select({ row: { key: row.key }, reading })
    .from(row)
    .innerJoin(reading, eq(reading.row, row.id))
    .leftJoin(
      correction,
      and(eq(correction.diagram, row.diagram), eq(correction.rowKey, row.key), isNull(correction.undoneAt)),
    )
    .where(and(eq(row.diagram, taughtOn.row.diagram), isNull(correction.id), sql`${row.outcome} = 'taken'`))
    .orderBy(row.position);
  return others.flatMap(other => {
    const like = learn(lesson, other.reading.text, other.reading);
    if (!like || !wantsPutting(other.reading, like, read, mistake)) return [];
    return [{ row: other.row, said: like }];
  });
}

type Read = typeof reading.$inferSelect;

function wantsPutting(own: Read, like: Said, taughtOn: Read, mistake: Lesson | null): boolean {
  // What is right already is confirmed only where it was in doubt for the same reason.
  if (isSame(own, like)) return own.review && reasons(own) === reasons(taughtOn);
  if (own.review) return true;
  const misread = mistake && learn(mistake, own.text, own);
  return misread !== null && isSame(own, misread);
}

const isSame = (a: Said, b: Said): boolean =>
  a.category === b.category && sameEntries(a.dims, b.dims) && sameEntries(a.attrs, b.attrs);

function sameEntries(a: object, b: object): boolean {
  const [first, second] = [a, b].map(one => JSON.stringify(Object.entries(one).sort()));
  return first === second;
}

/** Why a reading is in doubt, its own numbers aside. */
const reasons = ({ notes }: Read) => notes.map(note => note.replace(/\d+(?:[.,]\d+)?/g, '#')).join('; ');
