import type { Cell } from './cells.ts';
import { type Hit, kindBits } from './dictionary.ts';
import { letters, tiedLetters } from './labels.ts';
import type { Measure } from './measures.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

const noLabels: ReadonlySet<number> = new Set();
const lettered = wordSet([...letters.keys(), ...tiedLetters.keys()]);

/**
 * Ties labels to the sizes they stand beside, or that stand under them in a table.
 *
 * @param forms tokens that name the form of a standard (ISO 2341 B) and no dimension
 * @returns the tokens that are labels
 */
export function labelSizes(
  tokens: readonly Token[],
  measures: readonly Measure[],
  cells: readonly Cell[],
  hits: readonly Hit[],
  forms: ReadonlySet<number>,
): ReadonlySet<number> {
  if (measures.length === 0) return noLabels;
  const labels = new Set<number>();
  let nextHit = 0;
  let before = 0;
  for (let at = 0; at < tokens.length; at++) {
    const word = tokens[at]!;
    while (nextHit < hits.length && hits[nextHit]!.last < at) nextHit++;
    while (before < measures.length && measures[before]!.last < at - 1) before++;
    if (word.kind === 'mark') continue;
    const hit = hits[nextHit];
    const named = hit && hit.first <= at && (hit.kinds & kindBits.label) !== 0 ? hit : null;
    if ((!named && !isIn(word, lettered)) || forms.has(at)) continue;
    const tied = named ? undefined : tiedLetters.get(word.text);
    const label = named ? labelIn(named) : (letters.get(word.text) ?? tied);
    if (label === undefined) continue;
    const last = named?.first === at ? named.last : at;
    const behind = measureBehind(tokens, last, measures, before);
    if (tied && !behind?.sign) continue;
    const single = word.text.length === 1 && last === at && word.text.charCodeAt(0) < japanese;
    if (single && !behind?.sign && behind?.measure && isSeries(tokens, behind.measure)) continue;
    const front = word.gap <= 1 ? measures[before] : undefined;
    let labelled: Measure;
    if (
      front?.last === at - 1 &&
      front.label === null &&
      !behind?.sign &&
      !(behind?.measure && (front.diameter || (word.gap > 0 && tokens[behind.measure.first]!.gap === 0))) &&
      (!single || (word.gap === 0 && (!behind?.measure || tokens[behind.measure.first]!.gap > 0)))
    )
      labelled = front;
    else if (
      behind?.measure?.label === null &&
      (!single || behind.sign || tokens[behind.measure.first]!.gap <= 1)
    )
      labelled = behind.measure;
    else continue;
    labelled.label = label;
    labelled.labelUpper = word.upper;
    for (let inside = at; inside <= last; inside++) labels.add(inside);
    at = last;
  }
  for (const cell of cells) if (cell.labels.length > 0) labelByHeading(cell, measures);
  return labels;
}

/** A letter that stands off from a whole size names its series, not the first dimension: Rondelle L 4,3x12x1. */
const isSeries = (tokens: readonly Token[], { first, last }: Measure) =>
  tokens[first]!.gap > 0 && tokens[last + 1]?.text === '×' && tokens[last + 2]?.kind === 'number';

/** Words of one sign that are more than a letter begin here. */
const japanese = 0x3005;

function labelIn({ entries }: Hit): string | undefined {
  for (const { meaning } of entries) if (meaning.kind === 'label') return meaning.label;
  return undefined;
}

/** The size that stands directly behind a label: `ID 5`, `L=20`, `Dia. 3`; and whether a sign ties them. */
function measureBehind(
  tokens: readonly Token[],
  last: number,
  measures: readonly Measure[],
  from: number,
): { measure: Measure | undefined; sign: boolean } | null {
  let at = last + 1;
  let sign = false;
  for (; at < tokens.length && at < last + 4; at++) {
    const { text } = tokens[at]!;
    if (text === '=' || text === ':') sign = true;
    else if (text !== '.' && text !== 'ø' && text !== '-') break;
  }
  let index = from;
  while (index < measures.length && measures[index]!.first < at) index++;
  const measure = measures[index]?.first === at ? measures[index] : undefined;
  return measure || sign ? { measure, sign } : null;
}

/** Sizes that a table's heading names: one alone in its cell, or several in the order the heading gives them. */
function labelByHeading({ first, last, labels }: Cell, measures: readonly Measure[]): void {
  const inside = measures.filter(m => m.label === null && m.first >= first && m.last <= last);
  if (labels.length > 1 && inside.length !== labels.length) return;
  inside.forEach((measure, i) => {
    const { label, upper } = labels[labels.length > 1 ? i : 0]!;
    measure.label = label;
    measure.labelUpper = upper;
  });
}

/** Whether the word at a token, though glued to a number, names its dimension: L20, 3ID, 線径0.5. */
export function gluedLabels(tokens: readonly Token[], hits: readonly Hit[]): (at: number) => boolean {
  let named: Uint8Array | null = null;
  for (const { first, last, kinds } of hits) {
    if ((kinds & kindBits.label) === 0) continue;
    named ??= new Uint8Array(tokens.length);
    named.fill(1, first, last + 1);
  }
  return at => named?.[at] === 1 || (letters.has(tokens[at]!.text) && !isInCode(tokens, at));
}

/** A letter with figures glued on both sides, and no other letter on those, is a piece of a code: 24H1909, but D8L90. */
function isInCode(tokens: readonly Token[], at: number): boolean {
  const glued = (i: number, kind: Token['kind']) => tokens[i]?.kind === kind && tokens[i]!.gap === 0;
  const [front, behind] = [tokens[at - 1], tokens[at + 1]];
  if (front?.kind !== 'number' || tokens[at]!.gap > 0 || !behind || !glued(at + 1, 'number')) return false;
  const chained = (front.gap === 0 && tokens[at - 2]?.kind === 'word') || glued(at + 2, 'word');
  return !chained;
}
