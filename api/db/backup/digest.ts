import { createHash, type Hash } from 'node:crypto';

/**
 * Counts the rows of a table as COPY writes it and sums up their digests, so that two tables with the same rows have
 * the same sum whatever the order. Takes the bytes in pieces, cut anywhere.
 */
export class RowDigest {
  rows = 0;
  #sum = 0n;
  #line: Hash | null = null;

  update(piece: Uint8Array): void {
    let from = 0;
    // A newline within a field is escaped, so every newline ends a row.
    for (let at = piece.indexOf(10); at !== -1; at = piece.indexOf(10, from)) {
      const line = this.#line ?? createHash('sha256');
      const digest = line.update(piece.subarray(from, at)).digest();
      this.#sum = BigInt.asUintN(
        128,
        this.#sum + (digest.readBigUInt64BE(0) << 64n) + digest.readBigUInt64BE(8),
      );
      this.#line = null;
      this.rows++;
      from = at + 1;
    }
    if (from < piece.length) {
      this.#line ??= createHash('sha256');
      this.#line.update(piece.subarray(from));
    }
  }

  get digest(): string {
    return this.#sum.toString(16).padStart(32, '0');
  }
}
