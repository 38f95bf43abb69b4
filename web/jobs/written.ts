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

/** Decimals of a currency: two of the euro, none of the yen (ISO 4217). */
const decimalsOf = (currency: string): number =>
  new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** An amount in minor units as a person writes it, without its currency: 80.00. */
export function amountWords({ minor, currency }: { minor: number; currency: string }): string {
  const decimals = decimalsOf(currency);
  return (minor / 10 ** decimals).toFixed(decimals);
}

/** The same with its currency once: 80.00 EUR. */
export const moneyWords = (money: { minor: number; currency: string }): string =>
  `${amountWords(money)} ${money.currency}`;

/** What a person typed as an amount, in minor units; null where it is none. */
export function minorOf(typed: string, currency: string): number | null {
  const value = Number(typed.trim().replace(',', '.'));
  if (typed.trim() === '' || !Number.isFinite(value) || value < 0) return null;
  return Math.round(value * 10 ** decimalsOf(currency));
}
