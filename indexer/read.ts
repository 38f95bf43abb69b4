import type { CategoryDefinition, Designation } from './categories/definition.ts';
import { dictionary } from './categories/dictionary.ts';
import { categories, standardsOf, stemsOf } from './categories/index.ts';
import { gatherAttrs } from './reading/attributes.ts';
import { Claim } from './reading/claim.ts';
import { doubtsOf } from './reading/doubts.ts';
import { certaintyOf } from './reading/evidence.ts';
import { findHead, type Head } from './reading/head.ts';
import { analyse, type Line } from './reading/line.ts';
import { isNotAPart } from './reading/not-a-part.ts';
import type { Alternative, CategoryName, LineContext, ReadAs, Reading } from './reading/reading.ts';
import { writeItem, writeSize } from './size.ts';

/**
 * Reads one printed line of a parts list: what kind of part it is, its dimensions and attributes, each with the characters it
 * came from, and how certain that is. What the text does not determine is absent. Never throws; linear in the line's length.
 *
 * @param context the heading or column names the line stood under, its language, and its document's unit, where known
 */
export function read(text: string, context: LineContext = {}): Reading {
  const line = analyse(text, context, dictionary);
  const verdict = judge(line, context);
  if (verdict.category === 'not-a-part' || verdict.category === 'unsure') return noPart(line, verdict);
  return finish(line, settle(line, verdict), verdict);
}

interface FoundDesignation {
  definition: CategoryDefinition;
  designation: Designation;
}

/** Which category a line is of, and why. */
interface Verdict {
  category: ReadAs;
  head: Head | null;
  designation: FoundDesignation | null;
  features: string[];
  notes: string[];
  others: CategoryName[];
}

/** Every designation that begins at a piece one of the categories knows. */
function designationsIn(line: Line): FoundDesignation[] {
  const found: FoundDesignation[] = [];
  for (let at = 0; at < line.tokens.length; at++) {
    for (const definition of stemsOf.get(line.tokens[at]!.text) ?? []) {
      const designation = definition.designationAt!(line, at);
      if (!designation) continue;
      found.push({ definition, designation });
      at = designation.last;
      break;
    }
  }
  return found;
}

/** Chooses the category from the noun, the standard, a designation, the heading, and the shape of the sizes, in that order. */
function judge(line: Line, context: LineContext): Verdict {
  const none: Verdict = {
    category: 'unsure',
    head: null,
    designation: null,
    features: [],
    notes: [],
    others: [],
  };
  if (isNotAPart(line)) return { ...none, category: 'not-a-part', features: ['sheet-words'] };
  const head = findHead(line, context.lang);
  const designations = designationsIn(line);
  const sure = designations.find(d => d.designation.sure) ?? null;
  const standard = line.standards.map(s => standardsOf.get(s.name)).find(d => d !== undefined);
  const named = (
    category: CategoryName,
    features: string[],
    of: FoundDesignation | null = null,
  ): Verdict => ({
    ...none,
    category,
    head,
    designation: of?.definition.name === category ? of : null,
    features: of?.definition.name === category ? [...features, 'designation'] : features,
    others: [...new Set([...(head?.others ?? []), ...(sure ? [sure.definition.name] : [])])].filter(
      c => c !== category && c !== 'plain',
    ),
  });
  if (head && head.category === 'plain') return named('plain', ['known-plain-noun']);
  if (standard)
    return named(standard.name, head?.category === standard.name ? ['standard', 'noun'] : ['standard'], sure);
  if (head) {
    const finer = sure && refines(head.category, sure.definition.name) ? sure.definition.name : head.category;
    return named(finer, ['noun'], designations.find(d => d.definition.name === finer) ?? null);
  }
  const unknownWords = wordsUnknown(line);
  if (sure && sure.definition.name !== 'o-ring')
    return named(
      sure.definition.name,
      ['sure-designation', ...(unknownWords > 1 ? ['unknown-first'] : [])],
      sure,
    );
  const heading = headingHead(line, context);
  if (heading && heading.others.some(c => c !== heading.category))
    return byHeadings(line, heading, named, none);
  if (heading)
    return {
      ...named(
        heading.category,
        ['noun-from-heading'],
        designations.find(d => d.definition.name === heading.category) ?? null,
      ),
      head: null,
    };
  if (sure) return named(sure.definition.name, ['sure-designation'], sure);
  return byShape(line, named, none, designations, unknownWords);
}

/** A heading that names several kinds: a thread with a length is a screw where screws are among them, else a person chooses. */
function byHeadings(
  line: Line,
  heading: Head,
  named: (category: CategoryName, features: string[]) => Verdict,
  none: Verdict,
): Verdict {
  const kinds = [...new Set([heading.category, ...heading.others])];
  const sized = line.groups.some(g => g.thread && g.measures.length > 0);
  if (sized && kinds.includes('screw'))
    return { ...named('screw', ['noun-from-heading', 'thread-and-length']), head: null };
  return { ...none, features: ['nothing-known'], notes: [`the heading names ${kinds.join(' and ')}`] };
}

/** A bearing's word with a roller clutch's number is a roller clutch. */
const refines = (noun: CategoryName, designated: CategoryName) =>
  noun === 'bearing' && designated === 'roller-clutch';

/** The part that the heading is about, where it names one. */
function headingHead(line: Line, context: LineContext): Head | null {
  if (line.heading.hits.length === 0) return null;
  const whole = [{ first: 0, last: line.heading.tokens.length - 1, column: null }];
  const hits = line.heading.hits.filter(h => !h.entries.some(e => e.meaning.kind === 'column'));
  return findHead(
    { tokens: line.heading.tokens, cells: whole, hits, labels: new Set(), groups: [] },
    context.lang,
  );
}

/** Words of three letters and more that no dictionary holds. */
function wordsUnknown(line: Line): number {
  const known = new Uint8Array(line.tokens.length);
  for (const hit of line.hits) known.fill(1, hit.first, hit.last + 1);
  line.tokens.forEach((t, at) => {
    if (/^(iso|din|jis|ansi|type|typ|no|nr)$/.test(t.text)) known[at] = 1;
  });
  for (const t of [...line.threads, ...line.standards, ...line.measures]) known.fill(1, t.first, t.last + 1);
  return line.tokens.filter(
    (t, at) => t.kind === 'word' && !known[at] && (t.text.length >= 3 || t.text.charCodeAt(0) >= 0x3005),
  ).length;
}

/** Without a noun: a thread and a length are a screw, a known number alone a bearing; words alone are some other part. */
function byShape(
  line: Line,
  named: (category: CategoryName, features: string[], of?: FoundDesignation | null) => Verdict,
  none: Verdict,
  designations: readonly FoundDesignation[],
  unknownWords: number,
): Verdict {
  const thread = line.groups.find(g => g.thread);
  const hinted = hintedBy(line);
  const long = thread && (thread.measures.length > 0 || line.measures.some(m => m.label === 'length'));
  if (long && unknownWords <= 1) return named(hinted ?? 'screw', ['thread-and-length']);
  if (thread && hinted) return named(hinted, ['thread-alone']);
  const bare = designations.find(d => d.definition.name === 'bearing');
  if (bare && unknownWords === 0) return named('bearing', ['bare-designation'], bare);
  if (unknownWords > 0) return named('plain', ['unknown-words-only']);
  const notes =
    line.groups.length > 0
      ? ['sizes without a word that says what they are of']
      : ['nothing here that names a part'];
  return { ...none, features: ['nothing-known'], notes };
}

/** The category that most of the line's describing words belong to. */
function hintedBy(line: Line): CategoryName | null {
  const votes = new Map<CategoryName, number>();
  for (const hit of line.hits) {
    const own = new Set(
      hit.entries.flatMap(e =>
        e.meaning.kind === 'modifier' && e.meaning.category ? [e.meaning.category] : [],
      ),
    );
    for (const category of own) votes.set(category, (votes.get(category) ?? 0) + 1 / own.size);
  }
  for (const category of votes.keys())
    if (category !== 'screw' && category !== 'set-screw' && category !== 'nut' && category !== 'washer')
      votes.delete(category);
  const ranked = [...votes].sort(
    (a, b) => b[1] - a[1] || Number(b[0] === 'screw') - Number(a[0] === 'screw'),
  );
  return ranked[0]?.[0] ?? null;
}

/** Fills a claim of the verdict's category from the line. */
function settle(line: Line, verdict: Verdict): Claim {
  const definition = categories.get(verdict.category as CategoryName)!;
  const claim = new Claim(definition.name);
  for (const feature of verdict.features) claim.features.add(feature);
  const standard = line.standards.find(s => definition.standards[s.name]) ?? null;
  if (verdict.head && verdict.head.category === definition.name)
    claim.span('category', line.tokens.length > 0 ? placeOf(line, verdict.head.hit) : { start: 0, end: 0 });
  if (definition.name === 'plain') return claim;
  gatherAttrs(claim, line, definition.standards, standard);
  const others = designationsIn(line).filter(d => d.definition.name === definition.name);
  if (verdict.designation) {
    const { designation } = verdict.designation;
    const different = others.filter(d => d.designation.key !== designation.key);
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

/** The figures of a designation are no sizes. */
function dropInside(line: Line, { first, last }: Designation): void {
  const outside = <T extends { first: number }>(m: T) => m.first < first || m.first > last;
  line.measures = line.measures.filter(outside);
  line.groups = line.groups
    .map(g => ({ ...g, measures: g.measures.filter(outside) }))
    .filter(g => g.thread || g.measures.length > 0);
}

function checkLimits(claim: Claim, definition: CategoryDefinition): void {
  for (const { key, label, limits } of definition.dims) {
    const um = claim.lengths.get(key);
    if (um !== undefined && limits && (um < limits[0] || um > limits[1]))
      claim.doubt(`a ${label} of ${um / 1000} mm is not believable`);
  }
}

/** Writes a settled claim as a reading. */
function finish(line: Line, claim: Claim, verdict: Verdict): Reading {
  const definition = categories.get(claim.category)!;
  const doubts = definition.name === 'plain' ? [] : doubtsOf(line);
  for (const doubt of doubts) claim.doubt(doubt);
  const { head } = verdict;
  if (head?.unknownBehind) claim.features.add('unknown-behind');
  if (head?.unknownFirst && head.category !== 'plain') claim.features.add('unknown-first');
  if (verdict.others.length > 0) claim.features.add('other-noun');
  if (claim.review) claim.features.add('review');
  const dims = claim.dims(definition.dims.map(d => d.key));
  const implied = claim.impliedDims();
  if (Object.keys(dims).length === 0) claim.features.add('no-sizes');
  const certainty = certaintyOf(claim.features);
  const size = writeSize(claim.category, dims, implied);
  const review = claim.review || certainty < 0.7;
  if (review && !claim.review) claim.notes.push('not certain enough');
  if (line.qty) claim.span('qty', placeOf(line, line.qty));
  return {
    category: claim.category,
    dims,
    attrs: claim.attrs,
    implied,
    qty: line.qty?.value ?? null,
    size,
    item: size === null ? null : writeItem(claim.category, dims, implied, claim.attrs),
    certainty,
    review,
    alternatives: verdict.others.map(category => alternative(category, 'its name stands in the line too')),
    spans: claim.spans.sort((a, b) => a.start - b.start || a.end - b.end),
    notes: claim.notes,
  };
}

const alternative = (category: ReadAs, why: string): Alternative => ({
  category,
  dims: {},
  attrs: {},
  size: null,
  why,
});

/** A line of the sheet, or one that only a person can decide. */
function noPart(line: Line, verdict: Verdict): Reading {
  const unsure = verdict.category === 'unsure';
  return {
    category: verdict.category,
    dims: {},
    attrs: {},
    implied: {},
    qty: unsure ? (line.qty?.value ?? null) : null,
    size: null,
    item: null,
    certainty: unsure ? 0.3 : certaintyOf(verdict.features),
    review: unsure,
    alternatives: unsure ? byGuess(line) : [],
    spans: unsure && line.qty ? [{ field: 'qty', ...placeOf(line, line.qty) }] : [],
    notes: verdict.notes,
  };
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
    const dims = claim.dims(definition.dims.map(d => d.key));
    return {
      category,
      dims,
      attrs: {},
      size: writeSize(category, dims, claim.impliedDims()),
      why: 'sizes of this shape',
    };
  });
}
