import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';

/**
 * Bytes that are sent at once. The driver writes them as text of twice the length and copies that as it grows, so that a
 * whole document of 25 MiB would take this process hundreds.
 */
export const piece = 2 * 1024 * 1024;

/** Puts the bytes of a document, longer than a piece, into its diagram: piece by piece, joined in the database. */
export async function storeBytes(tx: Tx, diagram: string, bytes: Uint8Array): Promise<void> {
  await tx.execute(sql`create temporary table piece (nth integer, bytes bytea) on commit drop`);
  for (let from = 0; from < bytes.byteLength; from += piece)
    await tx.execute(
      sql`insert into piece values (${from}, ${bufferOf(bytes.subarray(from, from + piece))})`,
    );
  await tx.execute(sql`
    update diagram set bytes = (select string_agg(bytes, ''::bytea order by nth) from piece) where id = ${diagram}`);
  await tx.execute(sql`drop table piece`);
}

/** The same bytes, not a copy. */
export const bufferOf = ({ buffer, byteOffset, byteLength }: Uint8Array): Buffer =>
  Buffer.from(buffer, byteOffset, byteLength);
