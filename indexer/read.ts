import type { CategoryDefinition, Designation } from './categories/definition.ts';
import { dictionary } from './categories/dictionary.ts';
import { categories, dimKeysOf } from './categories/index.ts';
import { isHandedness, settleHand } from './categories/settle-hand.ts';
import type { Choice } from './choice.ts';
import { chooseCategory } from './choose-category.ts';
import type { FoundDesignation } from './find-designations.ts';
import { gatherEvidence } from './gather-evidence.ts';
import { readCanonical } from './read-canonical.ts';
import { gatherAttrs, gatherFromHeading } from './reading/attributes.ts';
import { Claim } from './reading/claim.ts';
import type { Entry } from './reading/dictionary.ts';
import { differing, doubtsOf } from './reading/doubts.ts';
import { certaintyOf, Features } from './reading/evidence.ts';
import { analyse, type Line, longestLine } from './reading/line.ts';
import type { Alternative, CategoryName, LineContext, ReadAs, Reading, Span } from './reading/reading.ts';
import { itemOf, writeSize } from './size.ts';

/**
 * Reads one printed line of a parts list: what kind of part it is, its dimensions and attributes, each with the characters it
 * came from, and how certain that is. What the text does not determine is absent. Never throws; linear in the line's length.
 *
 * @param context the heading or column names the line stood under, its language, and its document's unit, where known
 */
export function read(text: string, context: LineContext = {}): Reading {
  return readWithEvidence(text, context).reading;
}

/** A reading and what spoke for and against it, for the script that fits the weights. */
export interface Evidenced {
  reading: Reading;
  features: Features;
  /** The line cut up; null for a size written as we write it, which is not cut. */
  line: Line | null;
}

export function readWithEvidence(text: string, context: LineContext = {}): Evidenced {
  const canonical = readCanonical(text);
  if (canonical) return { reading: canonical, features: new Features(['written-as-a-size']), line: null };
  const line = analyse(text, context, dictionary);
  const choice = chooseCategory(line, context);
  if (choice.category === 'not-a-part' || choice.category === 'unsure') return noPart(line, choice);
  return finish(line, settle(line, choice), choice);
}

/** Fills a claim of the choice's category from the line. */
function settle(line: Line, choice: Choice): Claim {
  const definition = categories.get(choice.category as CategoryName)!;
  const claim = new Claim(definition.name);
  for (const feature of choice.features) claim.features.add(feature);
  for (const note of choice.notes) claim.doubt(note);
  const standard = line.standards.find(s => definition.standards[s.name]) ?? null;
  if (choice.head && choice.head.category === definition.name)
    claim.span('category', line.tokens.length > 0 ? placeOf(line, choice.head.hit) : { start: 0, end: 0 });
  if (definition.name === 'plain') {
    gatherAttrs(claim, line, {}, null, isHandedness);
    settleHand(claim, line);
    return claim;
  }
  if (choice.designation) dropWordsInside(line, choice.designation);
  gatherAttrs(claim, line, definition.standards, standard);
  if (choice.features.includes('noun-from-heading')) gatherFromHeading(claim, line);
  settleHand(claim, line);
  if (choice.designation) {
    const { designation } = choice.designation;
    const different = choice.designations.filter(
      d => d.definition.name === definition.name && d.designation.key !== designation.key,
    );
    if (different.length > 0 && different.every(d => d.designation.first > designation.last)) {
      claim.doubt('more than one designation in one line');
      claim.features.add('contradiction');
      return claim;
    }
    designation.apply(claim);
    claim.span('designation', placeOf(line, designation));
    dropInside(line, designation);
  }
  definition.settle(claim, line, standard);
  checkLimits(claim, definition);
  return claim;
}

const placeOf = (line: Line, { first, last }: { first: number; last: number }) => ({
  start: line.tokens[first]!.start,
  end: line.tokens[last]!.end,
});

/** The letters and figures of a designation are no words: the A-2 of R4A-2RS is no grade. */
function dropWordsInside(line: Line, { definition, designation: { first, last } }: FoundDesignation): void {
  const own = ({ meaning }: Entry) => meaning.kind === 'modifier' && meaning.category === definition.name;
  line.hits = line.hits.filter(h => h.last < first || h.first > last || h.entries.some(own));
}

/** The figures of a designation are no sizes. */
function dropInside(line: Line, { first, last }: Designation): void {
  const outside = <T extends { first: number }>(m: T) => m.first < first || m.first > last;
  line.measures = line.measures.filter(outside);
  line.groups = line.groups
    .map(g => ({ ...g, measures: g.measures.filter(outside) }))
    .filter(g => g.thread || g.measures.length > 0);
}

/** So many times the most that is believed is no size at all, but a number of something. */
const beyondBelief = 4;

function checkLimits(claim: Claim, definition: CategoryDefinition): void {
  for (const { key, label, limits } of definition.dims) {
    const um = claim.lengths.get(key);
    if (um === undefined || !limits || (um >= limits[0] && um <= limits[1])) continue;
    claim.doubt(`a ${label} of ${um / 1000} mm is not believable`);
    if (um > limits[1] * beyondBelief) claim.lengths.delete(key);
  }
  const inside = claim.lengths.get('bore') ?? claim.lengths.get('id');
  const outside = claim.lengths.get('od');
  if (inside === undefined || outside === undefined || outside > inside) return;
  claim.doubt(`an outside of ${outside / 1000} mm does not go round an inside of ${inside / 1000} mm`);
  for (const { key } of definition.dims) claim.lengths.delete(key);
}

/** What is said of a line too long to be one. */
const onlyBeginning = `only the first ${longestLine} characters of this line are read`;

/** Writes a settled claim as a reading. */
function finish(line: Line, claim: Claim, choice: Choice): Evidenced {
  const definition = categories.get(claim.category)!;
  if (definition.name !== 'plain') claim.notes.push(...line.taught);
  if (line.cut) claim.doubt(onlyBeginning);
  const doubts = definition.name === 'plain' ? [] : doubtsOf(line);
  for (const doubt of doubts) claim.doubt(doubt);
  const twice = differing(line);
  if (twice.length > 0) claim.withdraw(twice);
  const alternatives = choice.others.map(category =>
    alternative(category, 'its name stands in the line too'),
  );
  if (line.misread.length > 0) alternatives.unshift(...asMended(line, claim));
  const dims = claim.dims(dimKeysOf(claim.category));
  if (choice.features.includes('thread-and-length') && dims.length === undefined && !line.ranged)
    claim.doubt('a thread without a length, and no word that says what has it');
  const implied = claim.impliedDims();
  gatherEvidence(claim, line, choice, definition.sizeDims);
  const certainty = certaintyOf(claim.features.names);
  const size = writeSize(claim.category, dims, implied);
  const review = claim.review || certainty < 0.7;
  if (review && !claim.review) claim.notes.push('not certain enough');
  if (line.qty) claim.span('qty', placeOf(line, line.qty));
  const reading: Reading = {
    category: claim.category,
    dims,
    attrs: claim.attrs,
    implied,
    qty: line.qty?.value ?? null,
    size,
    item: size === null ? null : itemOf(size, claim.category, claim.attrs),
    certainty,
    review,
    alternatives,
    spans: inOrder(claim.spans),
    notes: claim.notes,
  };
  return { reading, features: claim.features, line };
}

/** Spans as they stand in the text. They are few, and mostly stand so already. */
function inOrder(spans: Span[]): Span[] {
  for (let next = 1; next < spans.length; next++) {
    const span = spans[next]!;
    let at = next;
    for (; at > 0 && isBefore(span, spans[at - 1]!); at--) spans[at] = spans[at - 1]!;
    spans[at] = span;
  }
  return spans;
}

const isBefore = (a: Span, b: Span) => a.start < b.start || (a.start === b.start && a.end < b.end);

/** The reading with misread figures mended: another way to mean the line, whose mended sizes the claim itself does not give. */
function asMended(line: Line, claim: Claim): Alternative[] {
  const dims = claim.dims(dimKeysOf(claim.category));
  const size = writeSize(claim.category, dims, claim.impliedDims());
  if (!claim.withdraw(line.misread)) return [];
  const printed = line.misread.map(p => line.text.slice(p.start, p.end)).join(', ');
  return [
    { category: claim.category, dims, attrs: { ...claim.attrs }, size, why: `${printed} taken for figures` },
  ];
}

const alternative = (category: ReadAs, why: string): Alternative => ({
  category,
  dims: {},
  attrs: {},
  size: null,
  why,
});

/** What a line is given that nobody could read for sure. */
const unsureCertainty = 0.3;

/** A line of the sheet, or one that only a person can decide. */
function noPart(line: Line, choice: Choice): Evidenced {
  const unsure = choice.category === 'unsure';
  const features = new Features(choice.features);
  // Two lines run together have two quantities.
  const counted = unsure && line.qty !== null && !features.has('left-open');
  const reading: Reading = {
    category: choice.category,
    dims: {},
    attrs: {},
    implied: {},
    qty: counted ? line.qty!.value : null,
    size: null,
    item: null,
    certainty: unsure ? unsureCertainty : certaintyOf(choice.features),
    review: unsure,
    alternatives: unsure ? byGuess(line) : [],
    spans: counted ? [{ field: 'qty', ...placeOf(line, line.qty!) }] : [],
    notes: line.cut ? [...choice.notes, onlyBeginning] : choice.notes,
  };
  return { reading, features, line };
}

/** What sizes alone could be of. */
function byGuess(line: Line): Alternative[] {
  const group = line.groups.find(g => g.joined) ?? line.groups[0];
  if (!group) return [];
  const guesses: CategoryName[] = group.thread
    ? ['screw', 'nut', 'washer']
    : group.measures.length === 3
      ? ['bearing', 'washer', 'bushing']
      : group.measures.length === 2
        ? ['pin', 'o-ring', 'washer']
        : ['retaining-ring', 'ball'];
  return guesses.map(category => {
    const claim = new Claim(category);
    const definition = categories.get(category)!;
    definition.settle(claim, line, null);
    const dims = claim.dims(dimKeysOf(category));
    return {
      category,
      dims,
      attrs: {},
      size: writeSize(category, dims, claim.impliedDims()),
      why: 'sizes of this shape',
    };
  });
}
