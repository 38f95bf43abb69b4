/**
 * A length as the inch fraction that it is, to the 64th: 9.525 is `3/8`, 38.1 is `1 1/2`. Null where it is none within
 * 3 µm, or as likely a metric length (a multiple of half a millimetre).
 */
export function inchFraction(mm: number): string | null {
  const parts = Math.round((mm / 25.4) * 64);
  if (parts === 0 || Math.abs((parts * 25.4) / 64 - mm) > 0.003 || Number.isInteger(mm * 2)) return null;
  const [whole, rest] = [Math.floor(parts / 64), parts % 64];
  if (rest === 0) return String(whole);
  const common = divisor(rest, 64);
  return `${whole > 0 ? `${whole} ` : ''}${rest / common}/${64 / common}`;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
