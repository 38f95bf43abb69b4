/** A calendar date as a person says it: Fri 4 Dec. It has no zone, so it is read as it is written. */
export function dayWords(date: string): string {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return new Date(Date.UTC(year, month - 1, day)).toLocaleDateString('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
  });
}

/** An amount in minor units with its currency once: 80.00 EUR. */
export function moneyWords({ minor, currency }: { minor: number; currency: string }): string {
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  return `${(minor / 10 ** digits).toFixed(digits)} ${currency}`;
}

/** What a person typed as an amount, in minor units; null where it is none. */
export function minorOf(typed: string, currency: string): number | null {
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  const value = Number(typed.trim().replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(value) && value >= 0
    ? Math.round(value * 10 ** digits)
    : null;
}
