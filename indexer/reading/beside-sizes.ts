import type { Measure } from './measures.ts';
import type { Stretch } from './prose.ts';
import type { Token } from './tokens.ts';
import { wordSet } from './vocabulary.ts';

/**
 * Leaves out the numbers that look like sizes of the part and are none: a bare number in brackets beside a size with its unit
 * (Pin 4 mm (2 per side)), one that is only roughly so (~6 mm), the size of its flange, and what a cell of prose tells.
 */
export function dropBeside(
  tokens: readonly Token[],
  prose: readonly Stretch[],
  measures: readonly Measure[],
): Measure[] {
  const sized = measures.some(m => m.unitStated);
  const kept: Measure[] = [];
  let rough: Measure | null = null;
  for (const measure of measures) {
    if (sized && isBracketed(tokens, measure)) continue;
    if (prose.some(cell => cell.first <= measure.first && measure.first <= cell.last)) continue;
    if (isRough(tokens, measure) || (rough && follows(tokens, rough, measure))) rough = measure;
    else if (!isOfFlange(tokens, measure) && !isAcrossFlats(tokens, measure)) kept.push(measure);
  }
  return kept.length === measures.length ? (measures as Measure[]) : kept;
}

/** A whole number without a unit that begins a bracket, with a word behind it. */
function isBracketed(tokens: readonly Token[], { first, last, whole, unitStated }: Measure): boolean {
  if (!whole || unitStated || first !== last) return false;
  for (let at = first - 1, words = 0; at >= 0 && words < 2; at--) {
    if (tokens[at]!.text === '(')
      return tokens[first + 1]?.kind === 'word' || tokens[first + 1]?.text === ':';
    if (tokens[at]!.kind !== 'word' || tokens[at]!.text.length < 3) return false;
    words++;
  }
  return false;
}

const roughly = new Set(
  '~ ≈ ca circa approx approximately about etwa env environ roughly ongeveer 約'.split(' '),
);

function isRough(tokens: readonly Token[], { first, diameter }: Measure): boolean {
  let at = first - 1;
  if (diameter && tokens[at]?.text === 'ø') at--;
  if (tokens[at]?.text === '.') at--;
  return at >= 0 && roughly.has(tokens[at]!.text);
}

/** Another rough size by a slash or dash: circa 90 / 120 mm. */
const follows = (tokens: readonly Token[], one: Measure, other: Measure) =>
  other.first === one.last + 2 && /^[/-]$/.test(tokens[one.last + 1]!.text);

/** A size that a wrench or the words across flats stand behind is the hexagon's: 10 mm spanner, 5.5 mm A/F. */
const isAcrossFlats = (tokens: readonly Token[], { last }: Measure) =>
  wrenches.has(tokens[last + 1]?.text ?? '');
const wrenches = new Set('spanner wrench af sw schlusselweite'.split(' '));

const flanges = new Set('flange flansch collerette flangia brida flens フランジ'.split(' '));
const between = new Set('ø = : . od dia diameter'.split(' '));

/** A size directly behind the word flange, and no whole size: flange 22 mm OD, flange dia 12. */
function isOfFlange(tokens: readonly Token[], { first, last }: Measure): boolean {
  if (tokens[last + 1]?.text === '×') return false;
  let at = first - 1;
  while (at > 0 && between.has(tokens[at]!.text)) at--;
  return at >= 0 && flanges.has(tokens[at]!.text);
}

/** What stands in every line that prints a number beside a size, unless prose does. */
export const besideSizes = wordSet([...roughly, ...flanges, ...wrenches, '(']);
