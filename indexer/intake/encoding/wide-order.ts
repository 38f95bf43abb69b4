const sampleLength = 65_536;

/** What the pairs of bytes are in one order. */
interface Pairs {
  /** Printed signs of ASCII, tabs and ends of line. */
  plain: number;
  ends: number;
  /** Latin letters, kana, Chinese characters, full and half width. */
  known: number;
}

/**
 * The order of UTF-16 without a mark; null for what is none. Every list has digits, separators and ends of line, which
 * are zero bytes beside plain ones in one order, and far-off signs in the other.
 */
export function wideOrder(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (bytes.length % 2 === 1 || !bytes.includes(0)) return null;
  const pairs = Math.min(bytes.length, sampleLength) >> 1;
  const little = look(bytes, pairs, 1);
  const big = look(bytes, pairs, 0);
  const [order, own, other] =
    little.plain >= big.plain ? (['utf-16le', little, big] as const) : (['utf-16be', big, little] as const);
  const sound = own.plain + own.known >= 0.95 * pairs && other.plain <= 0.1 * own.plain;
  return sound && (own.ends > 0 || own.plain > 0.4 * pairs) ? order : null;
}

/** Counts what the pairs are when the byte at `high` (0 or 1) of each is the higher. */
function look(bytes: Uint8Array, pairs: number, high: 0 | 1): Pairs {
  const found: Pairs = { plain: 0, ends: 0, known: 0 };
  for (let at = 0; at < 2 * pairs; at += 2) {
    const code = bytes[at + high]! * 256 + bytes[at + 1 - high]!;
    if (code === 10 || code === 13) found.ends += 1;
    if ((code >= 32 && code < 127) || code === 9 || code === 10 || code === 13) found.plain += 1;
    else if ((code >= 0xa0 && code < 0x250) || (code >= 0x2000 && code < 0x2700) || isEastern(code))
      found.known += 1;
  }
  return found;
}

const isEastern = (code: number): boolean =>
  (code >= 0x3000 && code < 0x3100) || (code >= 0x4e00 && code < 0xa000) || code >= 0xff00;
