import { narrows } from './agree.ts';
import type { Claim, Place } from './claim.ts';
import { type Entry, type Hit, kindBits, type Meaning } from './dictionary.ts';
import type { Line } from './line.ts';
import type { Attrs, CategoryName } from './reading.ts';
import type { StandardName } from './standards.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** Words that turn to what the part is for: the rest of their phrase is about something else. */
const purpose = wordSet('for fur fuer zu zum zur pour para voor fits holds secures attaches');
const stops = new Set(', ; : ( ) | [ ]'.split(' '));

/** Tokens that only say what the part is for: 1 for each. Null where no word says so. */
function aside({ tokens, sets }: Line): Uint8Array | null {
  if ((sets & purpose) === 0) return null;
  let out: Uint8Array | null = null;
  let on = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.gap >= 9 || stops.has(token.text)) on = false;
    if (at > 0 && isIn(token, purpose)) on = true;
    if (!on) continue;
    out ??= new Uint8Array(tokens.length);
    out[at] = 1;
  }
  return out;
}

/** The kinds of words that state attributes. */
const stating = kindBits.noun | kindBits.modifier;

/**
 * Gathers the attributes that the line states for the claim's category: by its nouns, its modifiers, words of any category
 * (materials, hands), and its standard. What excludes each other is a doubt, and so is a standard that says otherwise than the words.
 *
 * @param only which attributes are looked for
 */
export function gatherAttrs(
  claim: Claim,
  line: Line,
  standards: Readonly<Record<string, Attrs>>,
  standard: StandardName | null,
  only: (key: string) => boolean = () => true,
): void {
  const out = aside(line);
  let materials: Map<string, Place> | null = null;
  let suggested: string | null = null;
  for (const hit of line.hits) {
    // pz counts pieces in Italian, and is a cross recess elsewhere.
    if (line.qty && hit.first >= line.qty.first && hit.last <= line.qty.last) continue;
    if ((hit.kinds & stating) === 0) continue;
    const specific = describes(hit, claim.category);
    if (line.prose.some(p => p.first <= hit.first && hit.last <= p.last)) continue;
    // A phrase such as "for bore" is an attribute itself.
    if (out?.[hit.first] && !specific && !hit.nouns.some(e => isOf(e, claim.category))) continue;
    const place = { start: line.tokens[hit.first]!.start, end: line.tokens[hit.last]!.end };
    for (const meaning of said(hit, claim.category, specific)) {
      for (const key in meaning.attrs) {
        if (!only(key) || (isHandedness(key) && isElsewhere(line, hit))) continue;
        const value = meaning.attrs[key]!;
        if (key === 'material') {
          if (isInCode(line, hit)) continue;
          materials ??= new Map();
          materials.set(String(value), place);
        } else if (meaning.kind === 'modifier' && suggested === key) {
          suggested = null;
          // "cap screw, hexagon head": what a word describes outweighs what the name alone suggests.
          claim.attrs[key] = value;
          claim.span(key, place);
        } else {
          if (meaning.kind === 'noun' && suggests(value) && claim.attrs[key] === undefined) suggested = key;
          claim.attr(key, value, place);
        }
      }
    }
  }
  if (materials) giveMaterial(claim, materials);
  const first = line.standards[0];
  if (first && (standard || claim.features.has('noun'))) claim.attr('standard', first.name, first);
  if (standard) byStandard(claim, standard, standards[standard.name] ?? {});
  checkClass(claim);
}

type Stating = Extract<Meaning, { attrs: Attrs }>;

/** What a phrase says of a part of the category: by its nouns first, then by what describes it alone, or else any part. */
function said(hit: Hit, category: CategoryName, specific: boolean): Stating[] {
  const meanings: Stating[] = [];
  for (const { meaning } of hit.nouns)
    if (meaning.kind === 'noun' && meaning.category === category) meanings.push(meaning);
  if ((hit.kinds & kindBits.modifier) === 0) return meanings;
  const of = specific ? category : null;
  for (const { meaning } of hit.entries)
    if (meaning.kind === 'modifier' && meaning.category === of) meanings.push(meaning);
  return meanings;
}

/** Whether a phrase describes parts of this category and no other. */
function describes({ kinds, entries }: Hit, category: CategoryName): boolean {
  if ((kinds & kindBits.modifier) === 0) return false;
  for (const { meaning } of entries)
    if (meaning.kind === 'modifier' && meaning.category === category) return true;
  return false;
}

/** A material's two letters in front of figures are the beginning of a number: MS28775, CU4012. */
const isInCode = ({ tokens }: Line, { first, last }: Hit) =>
  first === last &&
  tokens[first]!.text.length <= 2 &&
  tokens[first + 1]?.gap === 0 &&
  (tokens[first + 1]!.kind === 'number' ||
    (tokens[first + 1]!.text === '-' &&
      tokens[first + 2]?.gap === 0 &&
      tokens[first + 2]!.kind === 'number'));

/** What the section's title that names the part says of it besides: Button head screws, Federringe. A table's may group several. */
export function gatherFromHeading(claim: Claim, { heading }: Line): void {
  if (heading.columns.columns.length > 1) return;
  for (const hit of heading.hits)
    for (const { attrs } of said(hit, claim.category, describes(hit, claim.category)))
      for (const [key, value] of Object.entries(attrs)) if (!isHandedness(key)) claim.attrs[key] ??= value;
}

/** Left and right are said of one line, never of all under a heading. */
const isHandedness = (key: string) => key === 'hand' || key === 'side';

/** Whether a left or right stands among other words in a cell behind the part's: it says where the part goes. */
function isElsewhere({ tokens, cells, hits }: Line, hit: Hit): boolean {
  if (cells.length < 2) return false;
  const cell = cells.find(c => c.first <= hit.first && hit.last <= c.last);
  const named = hits.find(h => h.nouns.length > 0);
  if (!cell || !named || named.first >= cell.first) return false;
  const words = tokens.slice(cell.first, cell.last + 1).filter(t => t.kind === 'word');
  return words.length > mostWordsOfHand;
}

/** LH, left hand thread. */
const mostWordsOfHand = 3;

/** Whether a noun names a part of the category. */
const isOf = ({ meaning }: Entry, category: CategoryName) =>
  meaning.kind === 'noun' && meaning.category === category;

/** A cap screw or an Allen screw has a socket head, unless the line describes another. */
const suggests = (value: string | boolean) => value === 'socket-cap';

/** Metals, of which a part is one; a metal with a plastic or rubber is made of both, and neither is given. */
const metals = /^(steel|stainless|brass|bronze|copper|aluminium|titanium)$/;

function giveMaterial(claim: Claim, materials: ReadonlyMap<string, Place>): void {
  const exact = [...materials].filter(
    ([value]) => ![...materials.keys()].some(other => narrows('material', value, other)),
  );
  const [only, ...others] = exact;
  if (only && others.length === 0) claim.attr('material', ...only);
  const said = exact.map(([value]) => value).filter(value => metals.test(value));
  if (said.length > 1) claim.contradict(`the material is said to be ${said.join(' and ')}`);
}

/** What a standard says by itself: more exact than the words it stands; against them a person looks. */
function byStandard(claim: Claim, standard: StandardName, says: Attrs): void {
  for (const [key, value] of Object.entries(says)) {
    const stated = claim.attrs[key];
    if (stated === undefined) claim.attr(key, value, standard);
    else if (narrows(key, stated, value)) claim.attrs[key] = value;
    else if (stated !== value && !(stated === 'lock' && locking.test(String(value))))
      claim.contradict(`${standard.name} is ${String(value)}, but the words say ${String(stated)}`);
  }
}

/** Spring, toothed and wave washers lock. */
const locking = /^(spring|star|wave)$/;

/** Property classes are of carbon and alloy steel (ISO 898-1): no part of another metal has one. */
function checkClass(claim: Claim): void {
  const { grade, material } = claim.attrs;
  if (grade === undefined) return;
  if (/^\d+\.\d$/.test(String(grade)) && material !== undefined && material !== 'steel')
    claim.contradict(`class ${grade} is of steel, not ${material}`);
}
