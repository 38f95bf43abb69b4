import { openRows } from '../../indexer/intake/document.ts';
import type { DocumentRows } from '../../indexer/intake/rows.ts';
import { Unreadable } from '../../indexer/intake/unreadable.ts';
import { unread } from '../indexer/intake/unread.ts';
import { type Score, score } from './score.ts';
import { type BalloonScore, scoreBalloons } from './score-balloons.ts';
import type { MadePdf } from './write-pdf.ts';

const nothing: DocumentRows = {
  document: { name: '', pages: 0, language: null, unit: null },
  tables: [],
  rows: [],
  relations: [],
  balloons: [],
  faults: [],
};

/** What is read; a document that is refused gives nothing. */
async function rowsOf(bytes: Uint8Array): Promise<DocumentRows> {
  try {
    const { rows, rowsTotal: _, ...rest } = await openRows(bytes, 'list.pdf', unread);
    return { ...rest, rows: [...rows()] };
  } catch (error) {
    if (error instanceof Unreadable) return nothing;
    throw error;
  }
}

/** Reads a made PDF, and its drawing where that is a document of its own, and compares both with what is on them. */
export async function readMadePdf({
  list,
  bytes,
  drawing,
  callouts,
}: MadePdf): Promise<{ rows: Score; balloons: BalloonScore }> {
  const found = await rowsOf(bytes);
  const drawn = drawing ? await rowsOf(drawing) : found;
  return { rows: score(list.lines, found), balloons: scoreBalloons(callouts, drawn.balloons) };
}
