import type { Measure } from './measures.ts';
import type { Thread } from './threads.ts';
import type { Token } from './tokens.ts';

/** Sizes printed together: `5x11x4`, `M3x0.5x8`, `Ø3 x 16`. A lone number is a group of one. */
export interface Group {
  /** The thread it begins with. */
  thread: Thread | null;
  measures: Measure[];
  first: number;
  last: number;
  /** False for a lone number or thread. */
  joined: boolean;
}

interface Part {
  first: number;
  last: number;
  thread: Thread | null;
  measure: Measure | null;
}

const timesWords = new Set(['by', 'mal', 'per', 'par', 'op', 'por']);

/** How the tokens between two sizes join them: by a times sign, by a dash or slash, or not at all. */
function joint(
  tokens: readonly Token[],
  left: Part,
  right: Part,
  skip: ReadonlySet<number>,
): '×' | '-' | '/' | null {
  let sign: '×' | '-' | '/' | null = null;
  let words = 0;
  for (let at = left.last + 1; at < right.first; at++) {
    const { text, kind } = tokens[at]!;
    if (skip.has(at) || /^[ø=:.~"]$/.test(text)) continue;
    const joins =
      text === '×' || timesWords.has(text) ? '×' : text === '-' || text === '/' ? (text as '-' | '/') : null;
    if (joins && sign === null) sign = joins;
    else if (kind === 'word' && sign === null && ++words <= 3) continue;
    else return null;
  }
  return words > 0 && sign !== '×' ? null : sign;
}

/** A dash or slash joins sizes only in company: `7-11-3`, `5/8/2.5`, `M4-0.7 x 10`. Two numbers alone are a range or a code. */
function joinsByDash(
  parts: readonly Part[],
  at: number,
  tokens: readonly Token[],
  skip: ReadonlySet<number>,
): boolean {
  const [a, b, c] = [parts[at]!, parts[at + 1]!, parts[at + 2]];
  if (a.thread) return true;
  const sign = joint(tokens, a, b, skip);
  const before = at > 0 ? joint(tokens, parts[at - 1]!, a, skip) : null;
  const after = c ? joint(tokens, b, c, skip) : null;
  const sizes = [a, b].every(p => p.measure && p.measure.value < 500 && !/^0\d/.test(tokens[p.first]!.text));
  const diameters = a.measure?.diameter === true && b.measure?.diameter === true;
  return sizes && (before === sign || after === sign || (sign === '/' && (after === '×' || diameters)));
}

/** Puts threads and measures, in printed order, into groups. */
export function groupSizes(
  tokens: readonly Token[],
  threads: readonly Thread[],
  measures: readonly Measure[],
  /** Tokens that only label a size. */
  skip: ReadonlySet<number>,
): Group[] {
  const parts: Part[] = [
    ...threads.map(thread => ({ first: thread.first, last: thread.last, thread, measure: null })),
    ...measures.map(measure => ({ first: measure.first, last: measure.last, thread: null, measure })),
  ].sort((a, b) => a.first - b.first);
  const groups: Group[] = [];
  let open: Group | null = null;
  for (let at = 0; at < parts.length; at++) {
    const part = parts[at]!;
    const sign = at > 0 ? joint(tokens, parts[at - 1]!, part, skip) : null;
    const joins =
      open && part.measure && sign !== null && (sign === '×' || joinsByDash(parts, at - 1, tokens, skip));
    if (open && joins) {
      open.measures.push(part.measure!);
      open.last = part.last;
      open.joined = true;
    } else {
      open = {
        thread: part.thread,
        measures: part.measure ? [part.measure] : [],
        first: part.first,
        last: part.last,
        joined: false,
      };
      groups.push(open);
    }
  }
  return groups;
}

/** A unit printed once holds for the group: 5x11x4 mm, 1/8 x 1/2 in. */
export function spreadUnit(group: Group, inUnit: (measure: Measure, unit: 'mm' | 'in') => Measure): void {
  const stated = group.measures.filter(m => m.unitStated);
  if (stated.length === 0 || stated.length === group.measures.length) return;
  const unit = stated.at(-1)!.unit;
  if (stated.some(m => m.unit !== unit)) return;
  group.measures = group.measures.map(m => (m.unitStated ? m : { ...inUnit(m, unit), unitStated: true }));
}
