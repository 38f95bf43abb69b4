import type { Mark } from './pdf/marks.ts';
import { readReference, refParts, refsBetween } from './reference.ts';
import type { Balloon } from './rows.ts';

/**
 * The balloons among the marks of a drawing, tied to the lines whose reference numbers are given: those of the same
 * document, or of another of the same model. Without any reference the drawing alone decides: what is ringed or led to.
 */
export function tieBalloons(marks: readonly Mark[], refs: Iterable<string>): Balloon[] {
  const known = new Map([...refs].map(ref => [fold(ref), ref]));
  const read = marks.map(mark => ({ mark, tied: tie(mark.text, known) }));
  const usual = usualStyles(read);
  return read.flatMap(({ mark, tied }) => {
    const { text, page, x, y, style, ringed, led } = mark;
    const likely = usual.has(style) || (ringed && usual.size === 0);
    const sure = ringed ? likely || led : led && likely;
    if (
      tied.length === 0
        ? !(ringed && likely && /\d/.test(text)) && !(known.size === 0 && sure)
        : !(ringed || led || likely)
    )
      return [];
    if (tied.length > 0 && !ringed && !led && !isOnlyOne(mark, read)) return [];
    const ref = tied.length === 1 ? tied[0]! : shownRef(text);
    return [{ ref, page, x: rounded(x), y: rounded(y), ...(tied.length > 1 && { refs: tied }) }];
  });
}

interface Read {
  mark: Mark;
  tied: string[];
}

const rounded = (share: number): number => Math.round(share * 10_000) / 10_000;
const fold = (ref: string): string => ref.toUpperCase().replace(/\s/g, '');
const shownRef = (text: string): string => readReference(text)?.ref ?? text.replace(/\s/g, '');

/** A number without a line to it is a balloon where no other mark shows that number better. */
const isOnlyOne = (mark: Mark, read: readonly Read[]): boolean =>
  !read.some(
    ({ mark: other }) =>
      other !== mark && fold(other.text) === fold(mark.text) && (other.ringed || other.led),
  );

/** The lines that a mark's text names: one number as the list has it, a range, or several. */
function tie(text: string, known: ReadonlyMap<string, string>): string[] {
  const whole = known.get(fold(text)) ?? known.get(fold(shownRef(text)));
  if (whole !== undefined) return [whole];
  const parts = /^(\d+[A-Za-z]?)\s?([-–~,/])\s?(\d+[A-Za-z]?)$/.exec(text);
  if (!parts) return [];
  const [, from, sign, to] = parts;
  if (sign === ',' || sign === '/') return [from!, to!].flatMap(ref => known.get(fold(ref)) ?? []);
  return refsBetween(from!, to!, known.values());
}

/** The looks that a drawing's balloons have: ringed ones if there are some, and of the others that of most numbers with lines. */
function usualStyles(read: readonly Read[]): ReadonlySet<string> {
  const counts = new Map<string, Set<string>>();
  for (const { mark, tied } of read) {
    if (!mark.ringed && !mark.led) continue;
    if (tied.length === 0 && !refParts(mark.text)) continue;
    const seen = counts.get(mark.style) ?? new Set();
    seen.add(tied[0] ?? mark.text);
    counts.set(mark.style, seen);
  }
  const most = Math.max(0, ...[...counts.values()].map(seen => seen.size));
  return new Set(
    [...counts]
      .filter(([, seen]) => seen.size >= 0.25 * most && seen.size >= Math.min(2, most))
      .map(([style]) => style),
  );
}
