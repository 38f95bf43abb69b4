import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { TransactionSql } from 'postgres';

/**
 * Sends the pieces to a `COPY … FROM STDIN`, and waits until PostgreSQL has taken them. What it refuses is thrown, as is
 * what the source of the pieces throws.
 */
export async function copyFrom(
  client: TransactionSql,
  statement: string,
  pieces: AsyncIterable<string | Uint8Array>,
): Promise<void> {
  const query = client.unsafe(statement) as ReturnType<typeof client.unsafe> & {
    reject(error: unknown): void;
  };
  // Once all is sent the driver no longer ties an error to its stream, which would then never finish.
  const refused = new Promise<never>((_, reject) => {
    const rejectQuery = query.reject;
    query.reject = error => {
      reject(error);
      rejectQuery(error);
    };
  });
  refused.catch(() => {});
  const sent = pipeline(Readable.from(pieces), await query.writable());
  sent.catch(() => {});
  await Promise.race([sent, refused]);
}
