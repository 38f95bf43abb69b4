/** A serial number as letters before its digits, and the digits; null where it is not of that form. */
function split(serial: string): { letters: string; digits: bigint } | null {
  const parts = /^([\p{L}\s./-]*)(\d+)$/u.exec(serial.trim());
  if (!parts) return null;
  return { letters: parts[1]!.replace(/[^\p{L}]/gu, '').toUpperCase(), digits: BigInt(parts[2]!) };
}

/**
 * Whether a serial number lies in a range, both ends inclusive, either end open. Null where that cannot be told: the
 * serial is unknown, or its letters differ from the range's.
 */
export function inSerialRange(serial: string | null, from: string | null, to: string | null): boolean | null {
  const own = serial === null ? null : split(serial);
  if (!own) return null;
  let inside = true;
  for (const [end, side] of [
    [from, 1n],
    [to, -1n],
  ] as const) {
    if (end === null) continue;
    const limit = split(end);
    if (!limit || limit.letters !== own.letters) return null;
    if ((own.digits - limit.digits) * side < 0n) inside = false;
  }
  return inside;
}
