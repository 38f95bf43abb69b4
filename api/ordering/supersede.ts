import type { AskCode, Successor } from './order-list.ts';
import { inSerialRange } from './serial.ts';

/** Where a part's number leads: what to order now, over which numbers, or why a person must decide. */
export interface Succession {
  /** The last part or number that the maker's word reaches without a question; null where it is the part itself. */
  now: { part: string | null; number: string; numberKey: string } | null;
  /** The numbers passed on the way, the first is the successor of the part. */
  through: string[];
  ask: { code: AskCode; text: string } | null;
}

/**
 * Follows the maker's word from a part to the number that is ordered today. One-way; it stops with a question where it
 * branches, where it depends on a serial number that is unknown, and where it comes back on itself.
 */
export function succeed(
  part: string,
  successors: ReadonlyMap<string, Successor[]>,
  serial: string | null,
): Succession {
  const passed = new Set([part]);
  const through: string[] = [];
  let at: string | null = part;
  let now: Succession['now'] = null;
  const stop = (code: AskCode, text: string): Succession => ({ now, through, ask: { code, text } });

  while (at !== null) {
    const next = applying(successors.get(at) ?? [], serial);
    if (next === 'unknown')
      return stop(
        'superseded-on-condition',
        `Superseded for some serial numbers only: ${conditions(successors.get(at) ?? [])}. Which is this machine's?`,
      );
    const numbers = [...new Map(next.map(one => [one.numberKey, one])).values()];
    if (numbers.length === 0) break;
    if (numbers.length > 1)
      return stop(
        'superseded-branches',
        `Superseded by ${numbers.map(one => one.number).join(' and ')}: one of them, or both?`,
      );
    const only = numbers[0]!;
    if (only.part !== null && passed.has(only.part)) {
      const round = [...through, only.number].join(' → ');
      now = null;
      return stop(
        'superseded-in-a-loop',
        `The numbers lead back to where they began: ${round}. Ask the maker.`,
      );
    }
    through.push(only.number);
    now = { part: only.part, number: only.number, numberKey: only.numberKey };
    at = only.part;
    if (at !== null) passed.add(at);
  }
  return { now, through, ask: null };
}

/** The successors that hold for this serial number. */
function applying(all: Successor[], serial: string | null): Successor[] | 'unknown' {
  const held: Successor[] = [];
  for (const one of all) {
    const holds =
      one.serialFrom === null && one.serialTo === null
        ? true
        : inSerialRange(serial, one.serialFrom, one.serialTo);
    if (holds === null) return 'unknown';
    if (holds) held.push(one);
  }
  return held;
}

const conditions = (all: Successor[]) =>
  all
    .filter(one => one.serialFrom !== null || one.serialTo !== null)
    .map(one => `${one.number} for ${serialRange(one.serialFrom, one.serialTo)}`)
    .join('; ');

/** A range of serial numbers in words. */
export function serialRange(from: string | null, to: string | null): string {
  if (from !== null && to !== null) return `serial ${from} to ${to}`;
  return from !== null ? `serial ${from} and up` : `serial up to ${to}`;
}
