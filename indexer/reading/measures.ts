import { inch, type LengthUnit, mm, type StatedLength } from '../units/length.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** A number of a line that can be a length, with the unit and the sign of a diameter that belong to it. */
export interface Measure extends StatedLength {
  /** The printed value in its own unit. */
  value: number;
  /** False where the unit is only assumed. */
  unitStated: boolean;
  /** Ø stands before or behind it. */
  diameter: boolean;
  /** What the line calls it: `od`, `length`, … */
  label: string | null;
  /** The label as printed began with a capital: D against d. */
  labelUpper: boolean;
  /** How it was printed: 5, 0.5, 3/16. */
  whole: boolean;
  fraction: boolean;
  first: number;
  last: number;
  start: number;
  end: number;
}

/** Units of length behind a number, as factors to millimetres or inches. */
const units = new Map<string, readonly [unit: LengthUnit, factor: number]>(
  Object.entries({
    mm: ['mm', 1],
    mms: ['mm', 1],
    millimeter: ['mm', 1],
    millimetre: ['mm', 1],
    cm: ['mm', 10],
    um: ['mm', 0.001],
    in: ['in', 1],
    ins: ['in', 1],
    inch: ['in', 1],
    inches: ['in', 1],
    '"': ['in', 1],
    zoll: ['in', 1],
    pouce: ['in', 1],
    pouces: ['in', 1],
    pollici: ['in', 1],
    pulgada: ['in', 1],
    pulgadas: ['in', 1],
    duim: ['in', 1],
    thou: ['in', 0.001],
    mil: ['in', 0.001],
  } as const),
);

/** Units that say a number is no length. */
export const otherUnits = wordSet(
  'kg g gr gram lb lbs oz n nm v w a ma mah hz khz mhz rpm deg ° % $ € £ ml cc cl m ft hr h min ohm uf bar psi ga swg gauge ' +
    'k c f kv awg wt pcs pc off ea',
);

const moneySigns = new Set(['$', '€', '£']);
const unitWords = wordSet(units.keys());
const mayStandBefore = new Set('× ø ( [ { = : " - / + | , ; ~ . < > # \' & ? !'.split(' '));
const fractionBottoms = new Set([2, 4, 8, 16, 32, 64, 128]);

const printedValue = ({ text, decimals }: Token): number =>
  Number(decimals > 0 && text.includes(',') ? text.replace(',', '.') : text);

/** What the line's document says of its bare numbers. */
export interface Assumed {
  unit?: 'mm' | 'in' | undefined;
}

/**
 * Reads the number at a token: a whole or decimal number, a fraction, a mixed number; with its unit. Null where it is a
 * piece of a code (608ZZ, 70-0309) or another quantity (12 V, 100 deg, $3.50).
 *
 * @param isLabel whether the word at a token names a dimension, though it is glued to a number: `L20`, `3ID`, `線径0.5`
 */
export function measureAt(
  tokens: readonly Token[],
  at: number,
  isLabel: (at: number) => boolean,
  assumed: Assumed,
): Measure | null {
  const token = tokens[at]!;
  const before = at > 0 && token.gap === 0 ? tokens[at - 1]! : null;
  if (before) {
    if (before.kind === 'number') return null;
    if (before.kind === 'word' && !isLabel(at - 1) && !isSign(before)) return null;
    if (before.kind === 'mark' && !mayStandBefore.has(before.text)) return null;
  }
  if (isGauge(tokens, at)) return null;
  if (at > 0 && (moneySigns.has(tokens[at - 1]!.text) || isOrdinal(tokens, at))) return null;
  let last = at;
  let value = printedValue(token);
  let fraction = false;
  if (!Number.isFinite(value)) return null;
  const lone = fractionEnd(tokens, at);
  if (lone !== null) {
    value = Number(token.text) / Number(tokens[lone]!.text);
    last = lone;
    fraction = true;
  } else if (token.decimals === 0) {
    const dash = tokens[at + 1]?.text === '-' && tokens[at + 1]!.gap === 0 && tokens[at + 2]?.gap === 0;
    const mixed = dash ? at + 2 : at + 1;
    const bottom =
      (dash || tokens[mixed]?.gap === 1) && tokens[mixed]?.taken === false
        ? fractionEnd(tokens, mixed)
        : null;
    if (bottom !== null) {
      value += Number(tokens[mixed]!.text) / Number(tokens[bottom]!.text);
      last = bottom;
      fraction = true;
    }
  }
  // 5/8-inch
  if (tokens[last + 1]?.text === '-' && hangsUnit(tokens, last + 2)) last++;
  const next = tokens[last + 1];
  let unit: LengthUnit | null = null;
  let factor = 1;
  if (next && next.gap <= 1) {
    const own = isIn(next, unitWords) ? units.get(next.text) : undefined;
    if (own && !(next.text === 'in' && next.gap > 0 && tokens[last + 2]?.kind === 'word')) {
      [unit, factor] = own;
      last++;
      while (tokens[last + 1]?.text === '"' && tokens[last + 1]!.gap === 0) last++;
    } else if (next.text === "'" && tokens[last + 2]?.text === "'" && tokens[last + 2]!.gap === 0) {
      unit = 'in';
      last += 2;
    } else if (
      isIn(next, otherUnits) &&
      !isClass(tokens, last + 1) &&
      !isGrade(tokens, last + 1) &&
      (next.gap === 0 || next.text.length > 1 || next.text === '°')
    )
      return null;
    else if (
      next.gap === 0 &&
      next.kind === 'word' &&
      !isSign(next) &&
      !isLabel(last + 1) &&
      !(before?.text === '×' && shields.has(next.text)) &&
      !isClass(tokens, last + 1)
    )
      return null;
    else if (next.gap === 0 && next.kind === 'number') return null;
  }
  if (isClass(tokens, last + 1)) last += 2;
  const decimals = fraction ? null : token.decimals;
  const pointFirst = token.text.startsWith('.');
  const inches = unit ? unit === 'in' : fraction || pointFirst || assumed.unit === 'in';
  const size = value * factor;
  return {
    value: size,
    um: inches ? inch(size) : mm(size),
    unit: inches ? 'in' : 'mm',
    unitStated: unit !== null || fraction || pointFirst,
    decimals: decimals === null ? null : decimals + (factor < 1 ? 3 : 0),
    diameter: tokens[at - 1]?.text === 'ø' || tokens[last + 1]?.text === 'ø',
    label: null,
    labelUpper: false,
    whole: token.decimals === 0 && !fraction,
    fraction,
    first: at,
    last,
    start: token.start,
    end: tokens[last]!.end,
  };
}

/** A tolerance class behind a size: 14h6, 3m6, 8 H7 (ISO 286). */
function isClass(tokens: readonly Token[], at: number): boolean {
  const [letter, grade] = [tokens[at], tokens[at + 1]];
  if (letter?.kind !== 'word' || letter.text.length > 2 || grade?.gap !== 0) return false;
  return letter.gap <= 1 && classLetters.has(letter.text) && classGrades.has(grade.text);
}

/** Ø, or a sign of Japanese, which stands glued to everything. */
const isSign = ({ text }: Token) => text === 'ø' || text.charCodeAt(0) >= 0x3005;

/** What closes a bearing, glued to the last of its sizes: 4x9x4ZZ. */
const shields = new Set(['zz', 'z', 'rs', 'dd', 'vv', 'llu', 'ddu', 'open']);

const classLetters = new Set('e f g h js j k m n p r'.split(' '));
const classGrades = new Set('4 5 6 7 8 9 10 11'.split(' '));

/** A unit hung on by a dash. */
const hangsUnit = (tokens: readonly Token[], at: number) =>
  tokens[at]?.gap === 0 && tokens[at]!.kind === 'word' && units.has(tokens[at]!.text);

/** A bolt's grade, not grams: `1/4 gr. 8`. */
const isGrade = (tokens: readonly Token[], at: number) =>
  tokens[at]!.text === 'gr' &&
  (tokens[at + 1]?.kind === 'number' || (tokens[at + 1]?.text === '.' && tokens[at + 2]?.kind === 'number'));

/** 2/0 and 3/0 are numbers of a gauge, not halves of nothing. */
const isGauge = (tokens: readonly Token[], at: number): boolean => {
  const zero = tokens[at]!.text === '0' && tokens[at]!.gap === 0 && tokens[at - 1]?.text === '/';
  const [slash, next] = [tokens[at + 1], tokens[at + 2]];
  return zero || (slash?.text === '/' && slash.gap === 0 && next?.gap === 0 && next.text === '0');
};

/** No. 8 is a number of something. */
function isOrdinal(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1]!.text === '.' ? tokens[at - 2]?.text : tokens[at - 1]!.text;
  return before === 'no' || before === 'nr';
}

/** The same number taken in the other unit. */
export function inUnit(measure: Measure, unit: LengthUnit): Measure {
  return { ...measure, unit, um: unit === 'in' ? inch(measure.value) : mm(measure.value) };
}

/** The token of the bottom number when a vulgar fraction of an inch begins at `at`. */
function fractionEnd(tokens: readonly Token[], at: number): number | null {
  const [top, slash, bottom] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (top?.kind !== 'number' || slash?.text !== '/' || bottom?.kind !== 'number') return null;
  if (slash.gap > 0 || bottom.gap > 0 || bottom.taken) return null;
  if (top.decimals > 0 || bottom.decimals > 0) return null;
  if (!fractionBottoms.has(Number(bottom.text)) || Number(top.text) >= Number(bottom.text) * 2) return null;
  if (Number(top.text) === 0 || Number(top.text) % 2 === 0) return null;
  // 5/8/2.5 is three sizes.
  return tokens[at + 3]?.text === '/' && tokens[at + 3]!.gap === 0 ? null : at + 2;
}
