import type { CategoryDefinition, Designation } from './categories/definition.ts';
import { standardsOf, stemsOf } from './categories/index.ts';
import type { Line } from './reading/line.ts';
import { former } from './reading/take-codes.ts';
import { isIn, wordSet } from './reading/vocabulary.ts';

export interface FoundDesignation {
  definition: CategoryDefinition;
  designation: Designation;
}

const stems = wordSet(stemsOf.keys());
const corrections = wordSet('not was');

const none: readonly FoundDesignation[] = [];

/** Every designation that begins at a piece one of the categories knows. */
export function designationsIn(line: Line): readonly FoundDesignation[] {
  if ((line.sets & stems) === 0) return none;
  const found: FoundDesignation[] = [];
  const corrected = correctionIn(line);
  const end = corrected < 0 ? line.tokens.length : corrected;
  for (let at = 0; at < end; at++) {
    if (!isIn(line.tokens[at]!, stems) || isNumberOfStandard(line, at)) continue;
    if (isFormer(line, at)) continue;
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

/** Where a line says what its part is not, or was: 608 (not 688). */
export const correctionIn = ({ tokens, sets }: Line): number =>
  (sets & corrections) === 0
    ? -1
    : tokens.findIndex(
        (token, at) => at > 0 && isIn(token, corrections) && tokens[at + 1]?.kind === 'number',
      );

/** Whether a bracket says that the part was that before: 608ZZ (formerly 688ZZ). */
function isFormer({ tokens, sets }: Line, at: number): boolean {
  if ((sets & former) === 0) return false;
  for (let i = at - 1; i > 0 && i > at - 4; i--)
    if (isIn(tokens[i]!, former) && tokens[i - 1]!.text === '(') return true;
  return false;
}

/** The 625 of DIN 625 is no bearing's number. */
const isNumberOfStandard = ({ standards }: Line, at: number) =>
  standards.some(s => s.first < at && at <= s.last && standardsOf.has(s.name));
