import { standardsOf } from './categories/index.ts';
import type { Choice } from './choice.ts';
import { byShape, isSprung, wordsUnknown } from './choose-by-shape.ts';
import { correctionIn, designationsIn, type FoundDesignation } from './find-designations.ts';
import { finerNoun } from './finer-noun.ts';
import { count } from './reading/count.ts';
import type { Hit } from './reading/dictionary.ts';
import { asking } from './reading/doubts.ts';
import { findHead, type Head } from './reading/head.ts';
import type { Line } from './reading/line.ts';
import { isNotAPart } from './reading/not-a-part.ts';
import type { CategoryName, LineContext } from './reading/reading.ts';
import type { Token } from './reading/tokens.ts';

/** Chooses the category from the noun, the standard, a designation, the heading, and the shape of the sizes, in that order. */
export function chooseCategory(line: Line, context: LineContext): Choice {
  const none: Choice = {
    category: 'unsure',
    head: null,
    designation: null,
    designations: [],
    features: [],
    notes: correctionIn(line) < 0 ? [] : ['the line corrects itself'],
    others: [],
    unknownWords: wordsUnknown(line),
  };
  const open = leftOpen(line);
  if (open) return { ...none, features: ['left-open'], notes: [open] };
  if (isNotAPart(line)) return { ...none, category: 'not-a-part', features: ['sheet-words'] };
  const under = partsUnder(line);
  if (under.length > 1)
    return { ...none, features: ['left-open'], notes: [`the row holds ${under.join(' and ')}`] };
  const found = under.length === 1 ? null : findHead(line, context.lang);
  const heading = under.length !== 1 && (!found || found.aside) ? headingHead(line, context) : null;
  // "M3 | 20 | with lock nuts" under "Cap screws": what comes with the part does not name it.
  const head = found?.aside && heading && heading.category !== 'plain' ? null : found;
  const designations = designationsIn(line);
  const sure = designations.find(d => d.designation.sure) ?? null;
  const standard = line.standards.map(s => standardsOf.get(s.name)).find(d => d !== undefined);
  const named = (category: CategoryName, features: string[], of: FoundDesignation | null = null): Choice => ({
    ...none,
    category,
    head,
    designation: of?.definition.name === category ? of : null,
    designations,
    features: of?.definition.name === category ? [...features, 'designation'] : features,
    others: othersOf(category, head, sure),
  });
  if (head?.category === 'plain')
    return sure && namedApart(line, sure, head)
      ? named(sure.definition.name, ['sure-designation'], sure)
      : named('plain', ['known-plain-noun']);
  if (under.length === 1)
    return named(
      under[0]!,
      ['noun-from-heading'],
      designations.find(d => d.definition.name === under[0]) ?? null,
    );
  if (standard) {
    const agrees =
      !head || head.category === standard.name || narrows[head.category]?.includes(standard.name);
    const verdict = named(
      standard.name,
      head?.category === standard.name ? ['standard', 'noun'] : ['standard'],
      designations.find(d => d.definition === standard) ?? sure,
    );
    return agrees
      ? verdict
      : { ...verdict, notes: [`the standard is of a ${standard.name}, the words say ${head.category}`] };
  }
  if (head) {
    const byNumber = sure && refines(head.category, sure, line) ? sure.definition.name : head.category;
    const finer = finerNoun(head, line) ?? byNumber;
    return named(finer, ['noun'], designations.find(d => d.definition.name === finer) ?? null);
  }
  const { unknownWords } = none;
  if (sure && sure.definition.name !== 'o-ring')
    return named(
      sure.definition.name,
      ['sure-designation', ...(unknownWords > 1 ? ['unknown-first'] : [])],
      sure,
    );
  const kinds = headingKinds(line);
  if (heading?.category === 'plain' && isSprung(line)) return named('spring', ['labelled']);
  if (heading && kinds.length > 1) return byHeadings(line, kinds, named, none);
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

/** A row whose first cell is a designation: `688ZZ,4,idler stack`. What a later cell names is where it goes. */
function namedApart(line: Line, { designation }: FoundDesignation, head: Head): boolean {
  const cell = line.cells.find(c => c.first <= designation.first && designation.last <= c.last);
  return cell !== undefined && cell.last < head.hit.first;
}

/** Categories that the line names besides the one chosen. */
function othersOf(category: CategoryName, head: Head | null, sure: FoundDesignation | null): CategoryName[] {
  const others: CategoryName[] = [];
  const add = (other: CategoryName) => {
    if (other !== category && other !== 'plain' && !others.includes(other)) others.push(other);
  };
  if (head) for (const other of head.others) add(other);
  if (sure) add(sure.definition.name);
  return others;
}

/** A heading that names several kinds: a thread with a length is a screw where screws are among them, else a person chooses. */
function byHeadings(
  line: Line,
  kinds: readonly CategoryName[],
  named: (category: CategoryName, features: string[]) => Choice,
  none: Choice,
): Choice {
  const sized = line.groups.some(g => g.thread && g.measures.length > 0);
  if (sized && kinds.includes('screw'))
    return { ...named('screw', ['noun-from-heading', 'thread-and-length']), head: null };
  return { ...none, features: ['nothing-known'], notes: [`the heading names ${kinds.join(' and ')}`] };
}

/** Why a line cannot be read by itself: it asks, repeats the line above, or is two lines run together. */
function leftOpen({ tokens, sets, hits, groups }: Line): string | null {
  if (tokens.length === 0) return null;
  if ((sets & asking) !== 0 && hits.every(h => h.nouns.length === 0) && groups.length === 0)
    return 'the line itself asks';
  if (tokens.every(t => t.text === '"')) return 'the same as the line above';
  return isTwoLines(tokens, hits) ? 'two lines run together' : null;
}

/** 40 IDLER GEAR 36T 1 41 PINION 12T 1: the next reference stands alone between two names. */
function isTwoLines(tokens: readonly Token[], hits: readonly Hit[]): boolean {
  const reference = count(tokens[0]);
  if (hits.length < 2 || reference === null || reference === 0) return false;
  const named = hits.filter(hit => hit.nouns.length > 0);
  if (named.length < 2) return false;
  const following = String(reference + 1);
  const next = tokens.findIndex(
    (t, at) =>
      at > 2 &&
      t.gap > 0 &&
      t.text === following &&
      tokens[nameBehind(tokens, at)]?.kind === 'word' &&
      tokens[at + 1]!.gap > 0,
  );
  const behind = nameBehind(tokens, next);
  return next > 0 && named.some(h => h.last < next) && named.some(h => h.first === behind);
}

/** Where a name may stand behind its reference: in the next cell, or in the same. */
const nameBehind = (tokens: readonly Token[], at: number) => (tokens[at + 1]?.text === '|' ? at + 2 : at + 1);

/** Standards that are a finer kind of what a general word says. */
const narrows: Readonly<Partial<Record<CategoryName, readonly CategoryName[]>>> = {
  screw: ['set-screw', 'pin'],
  washer: ['shim', 'spring', 'retaining-ring', 'seal'],
  shaft: ['pin'],
  seal: ['o-ring'],
  nut: ['screw'],
};

/** A bearing's word with a roller clutch's number is a roller clutch; a bushing's with a linear bearing's (LM8UU) is that bearing. */
const refines = (noun: CategoryName, { definition, designation }: FoundDesignation, { tokens }: Line) =>
  (noun === 'bearing' && definition.name === 'roller-clutch') ||
  (noun === 'bushing' && definition.name === 'bearing' && tokens[designation.first]!.text.startsWith('lm'));

/** The part that the heading is about, where it names one. */
function headingHead({ heading }: Line, { lang }: LineContext): Head | null {
  if (heading.naming.length === 0) return null;
  const { tokens, naming: hits } = heading;
  const cells = [{ first: 0, last: tokens.length - 1, column: null, labels: [] }];
  return findHead({ tokens, cells, hits, labels: new Set(), groups: [] }, lang);
}

/**
 * What the cells hold that stand under a part's name and give its size: `M5x16` under Vite. A cell that names its own part, and
 * one whose row names it under a heading of descriptions, is none.
 */
function partsUnder({ cells, groups, hits, heading }: Line): CategoryName[] {
  if (heading.columns.columns.length < 2 || cells.length > mostColumns) return [];
  const parts: CategoryName[] = [];
  for (const { part, first, last } of cells) {
    if (part === undefined) continue;
    const within = (m: { first: number; last: number }) => m.first >= first && m.last <= last;
    const sized = groups.some(g => (g.thread ?? g.joined) && within(g));
    if (sized && !hits.some(h => h.nouns.length > 0 && within(h)) && !parts.includes(part)) parts.push(part);
  }
  return parts;
}

/** No list has more. */
const mostColumns = 60;

/** The kinds of part that the heading names; in a row of column names the first that is one. */
function headingKinds({ heading }: Line): CategoryName[] {
  const kinds = heading.hits.flatMap(({ entries }) => {
    const meaning = entries[0]?.meaning;
    return meaning?.kind === 'noun' && meaning.category !== 'plain' ? [meaning.category] : [];
  });
  return heading.columns.columns.length > 1 ? kinds.slice(0, 1) : [...new Set(kinds)];
}
