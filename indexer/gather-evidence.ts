import type { Choice } from './choice.ts';
import type { Claim } from './reading/claim.ts';
import { kindBits } from './reading/dictionary.ts';
import type { Line } from './reading/line.ts';
import { type Measure, otherUnits } from './reading/measures.ts';
import { isIn } from './reading/vocabulary.ts';
import { mm } from './units/length.ts';

/**
 * Adds to a claim's features what a person would look at to trust it: whether its sizes are all there, what of the line no field
 * came from, and which words nobody knows. {@link evidence} says what each means.
 *
 * @param sizeDims the dimensions that make the category's size
 */
export function gatherEvidence(claim: Claim, line: Line, choice: Choice, sizeDims: readonly string[]): void {
  const { features } = claim;
  const { head, unknownWords, others } = choice;
  if (claim.review) features.add('review');
  if (speaksOfSheet(line)) features.add('sheet-word');
  if (claim.category === 'plain') {
    if (head === null) features.add('guessed-plain');
    if (line.groups.some(g => g.thread ?? g.joined)) features.add('plain-sized');
    if (others.length > 0) features.add('plain-other-noun');
    if (unknownWords > 0) features.add('plain-unknown-words');
    if (head?.unknownBehind) features.add('plain-unknown-behind');
    return;
  }
  if (head?.unknownBehind) features.add('unknown-behind');
  if (head?.unknownFirst) features.add('unknown-first');
  if (others.length > 0) features.add('other-noun');
  if (unknownWords === 1) features.add('unknown-word');
  if (unknownWords > 1) features.add('unknown-words');
  if (line.measures.length === 0 && line.threads.length === 0 && !features.has('designation'))
    features.add('name-alone');
  else if (sizeDims.length > 0 && sizeDims.every(key => claim.has(key))) features.add('complete');
  else if (!features.has('designation')) features.add('incomplete');
  if (line.measures.some(m => isSize(m, line) && !isGiven(claim, m))) features.add('size-left');
  if (hasFigureLeft(line, claim)) features.add('figure-left');
}

/** Whether a word of the sheet stands in the line: see, figure, end of. Small words that join say nothing. */
const speaksOfSheet = ({ tokens, hits }: Line): boolean =>
  hits.some(({ first, kinds }) => (kinds & kindBits.sheet) !== 0 && !joiningWords.has(tokens[first]!.text));

const joiningWords = new Set(['and', 'the', 'by']);

const isGiven = ({ spans }: Claim, { start, end }: { start: number; end: number }) =>
  spans.some(span => span.start <= start && span.end >= end);

/** Whether a number may be a size: not the reference in front of a name, and not longer than any part. */
const isSize = ({ first, last, whole, unitStated, um }: Measure, { tokens }: Line): boolean => {
  const next = tokens[last + 1];
  const reference = first === 0 && whole && !unitStated && next?.kind === 'word' && next.gap > 0;
  return !reference && um < longest;
};

const longest = mm(3_000);

/** Whether a figure stands in the line that is neither size nor quantity, weight, reference, price, standard or known phrase. */
function hasFigureLeft({ tokens, measures }: Line, claim: Claim): boolean {
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.kind !== 'number' || token.known || token.taken) continue;
    const next = tokens[at + 1];
    const told = measures.some(({ first, last }) => first <= at && at <= last);
    if (!told && !(next && isIn(next, otherUnits)) && !isGiven(claim, token)) return true;
  }
  return false;
}
