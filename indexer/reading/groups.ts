import { inUnit, type Measure } from './measures.ts';
import type { Thread } from './threads.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

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

/** One of the sizes of a line: a thread or a number. */
type Part = Thread | Measure;

const isMeasure = (part: Part): part is Measure => 'um' in part;

type Sign = '×' | '-' | '/';

const times = wordSet('× by mal per par op por');
/** Marks that may stand between two sizes and join nothing. */
const idle = wordSet('ø = : . ~ "');

/** How the tokens between two sizes join them: by a times sign, by a dash or slash, or not at all. */
function joint(tokens: readonly Token[], left: Part, right: Part, skip: ReadonlySet<number>): Sign | null {
  let sign: Sign | null = null;
  let words = 0;
  for (let at = left.last + 1; at < right.first; at++) {
    const token = tokens[at]!;
    if (isIn(token, idle) || skip.has(at)) continue;
    const { text, kind } = token;
    const joins: Sign | null = isIn(token, times) ? '×' : text === '-' || text === '/' ? text : null;
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
  if (!isMeasure(a)) return true;
  const sign = joint(tokens, a, b, skip);
  const before = at > 0 ? joint(tokens, parts[at - 1]!, a, skip) : null;
  const after = c ? joint(tokens, b, c, skip) : null;
  const diameters = a.diameter && isMeasure(b) && b.diameter;
  return (
    isSmall(a, tokens) &&
    isSmall(b, tokens) &&
    (before === sign || after === sign || (sign === '/' && (after === '×' || diameters)))
  );
}

/** Whether a part may be one size of several: no thread, not long, no number that begins with a nought. */
const isSmall = (part: Part, tokens: readonly Token[]) =>
  isMeasure(part) && part.value < 500 && !/^0\d/.test(tokens[part.first]!.text);

/** Puts threads and measures, in printed order, into groups. */
export function groupSizes(
  tokens: readonly Token[],
  threads: readonly Thread[],
  measures: readonly Measure[],
  /** Tokens that only label a size. */
  skip: ReadonlySet<number>,
): Group[] {
  const parts = inOrder(threads, measures);
  const groups: Group[] = [];
  let open: Group | null = null;
  for (let at = 0; at < parts.length; at++) {
    const part = parts[at]!;
    const sign = at > 0 ? joint(tokens, parts[at - 1]!, part, skip) : null;
    const joins = sign !== null && (sign === '×' || joinsByDash(parts, at - 1, tokens, skip));
    if (open && joins && isMeasure(part)) {
      open.measures.push(part);
      open.last = part.last;
      open.joined = true;
    } else {
      open = {
        thread: isMeasure(part) ? null : part,
        measures: isMeasure(part) ? [part] : [],
        first: part.first,
        last: part.last,
        joined: false,
      };
      groups.push(open);
    }
  }
  return groups;
}

/** The sizes of all groups, as they stand in the line. */
export function measuresOf(groups: readonly Group[]): Measure[] {
  const all: Measure[] = [];
  for (const { measures } of groups) for (const measure of measures) all.push(measure);
  return all;
}

/** Threads and measures as they stand in the line. */
function inOrder(threads: readonly Thread[], measures: readonly Measure[]): readonly Part[] {
  if (threads.length === 0) return measures;
  const parts: Part[] = [];
  let nextThread = 0;
  for (const measure of measures) {
    for (; nextThread < threads.length && threads[nextThread]!.first < measure.first; nextThread++)
      parts.push(threads[nextThread]!);
    parts.push(measure);
  }
  for (; nextThread < threads.length; nextThread++) parts.push(threads[nextThread]!);
  return parts;
}

/**
 * 6 x 10 x .2: one figure behind a point that has none in front, beside whole numbers that are no inches: millimetres whose nought
 * was left out.
 */
const isBarePoint = (measures: readonly Measure[]) =>
  measures.every(m =>
    m.unitStated ? !m.fraction && m.decimals === 1 && m.value < 1 : m.whole && m.value >= 4,
  );

/** A unit printed once holds for the group: 5x11x4 mm, 1/8 x 1/2 in. */
export function spreadUnit(group: Group): void {
  let unit: 'mm' | 'in' | null = null;
  let stated = 0;
  for (const measure of group.measures) {
    if (!measure.unitStated) continue;
    if (unit !== null && measure.unit !== unit) return;
    unit = measure.unit;
    stated++;
  }
  if (unit === null || stated === group.measures.length) return;
  if (unit === 'in' && isBarePoint(group.measures)) {
    group.measures = group.measures.map(m => (m.unitStated ? { ...inUnit(m, 'mm'), unitStated: false } : m));
    return;
  }
  const spread = unit;
  group.measures = group.measures.map(m => (m.unitStated ? m : { ...inUnit(m, spread), unitStated: true }));
}

/** 1.125, 2.375: three figures behind the point that make sixty-fourths are inches; 12.000 is a drawing's millimetre. */
const isInchDecimal = ({ value, decimals, fraction }: Measure) =>
  !fraction &&
  (decimals === 3 || decimals === 4) &&
  value > 1 &&
  value < 8 &&
  value % 1 !== 0 &&
  Math.abs(value * 64 - Math.round(value * 64)) < 0.004;

/** In a line whose stated sizes are all inches, bare decimals are inches too: .035 wire, .250 OD, 1.50 LG. */
export function spreadInches(groups: readonly Group[]): void {
  let stated = false;
  for (const { thread, measures } of groups) {
    if (thread?.kind === 'metric') return;
    for (const { unitStated, unit } of measures) {
      if (unitStated && unit === 'mm') return;
      stated ||= unitStated;
    }
  }
  if (!stated && !groups.some(g => g.measures.some(isInchDecimal))) return;
  for (const group of groups)
    group.measures = group.measures.map(m =>
      m.unitStated || m.whole ? m : { ...inUnit(m, 'in'), unitStated: true },
    );
}
