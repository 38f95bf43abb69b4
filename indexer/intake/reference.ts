import { narrow } from './clean.ts';

/** A reference number as the drawing shows it, and a quantity printed with it ("2X 37", "37 (2)"). */
export interface Reference {
  ref: string;
  qty: number | null;
}

const core = String.raw`(?:\d{1,4}(?:\s?[A-Za-z]{1,2}|[-.:/]\d{1,3}[A-Za-z]?)?|[A-Za-z]{1,2}[-.]?\d{1,3}|[A-Z]{1,2})`;
const plain = new RegExp(`^[([*•\\-–\\s]{0,3}(${core})[\\])*.:\\s]{0,3}$`);
const before = new RegExp(`^(\\d{1,3})[xX×]\\s(${core})$`);
const after = new RegExp(`^(${core})\\s?\\((\\d{1,3})\\)$`);

/** The reference number in a cell; null where it holds none. Brackets, a closing point and a star are left out. */
export function readReference(cell: string): Reference | null {
  const text = narrow(cell.trim()).replace(/[①-⑳]/g, sign => String(sign.charCodeAt(0) - 0x245f));
  const simple = plain.exec(text);
  if (simple) return { ref: simple[1]!.replace(/\s/, ''), qty: null };
  const first = before.exec(text);
  if (first) return { ref: first[2]!, qty: Number(first[1]) };
  const last = after.exec(text);
  return last ? { ref: last[1]!, qty: Number(last[2]) } : null;
}

/** The number a reference begins with and what follows it: `24A` is 24 and `a`; null where it begins with a letter. */
export function refParts(ref: string): { number: number; suffix: string } | null {
  const found = /^(\d+)(.*)$/.exec(ref);
  return found ? { number: Number(found[1]), suffix: found[2]!.toLowerCase() } : null;
}

/** The list's references that lie within a printed range, ends counted in, suffixed ones (24A) with their number. */
export function refsBetween(from: string, to: string, refs: Iterable<string>): string[] {
  const start = refParts(from);
  const end = refParts(to);
  if (!start || !end || start.number > end.number) return [];
  return [...refs].filter(ref => {
    const at = refParts(ref);
    if (!at || at.number < start.number || at.number > end.number) return false;
    if (at.number === start.number && start.suffix && at.suffix < start.suffix) return false;
    return !(at.number === end.number && end.suffix && at.suffix > end.suffix);
  });
}
