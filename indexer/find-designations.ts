import type { CategoryDefinition, Designation } from './categories/definition.ts';
import { standardsOf, stemsOf } from './categories/index.ts';
import type { Line } from './reading/line.ts';

export interface FoundDesignation {
  definition: CategoryDefinition;
  designation: Designation;
}

/** Every designation that begins at a piece one of the categories knows. */
export function designationsIn(line: Line): FoundDesignation[] {
  const found: FoundDesignation[] = [];
  const corrected = correctionIn(line);
  const end = corrected < 0 ? line.tokens.length : corrected;
  for (let at = 0; at < end; at++) {
    const definitions = stemsOf.get(line.tokens[at]!.text);
    if (definitions === undefined || isNumberOfStandard(line, at)) continue;
    for (const definition of definitions) {
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
export const correctionIn = ({ tokens }: Line): number =>
  tokens.findIndex(
    ({ text }, at) => at > 0 && (text === 'not' || text === 'was') && tokens[at + 1]?.kind === 'number',
  );

/** The 625 of DIN 625 is no bearing's number. */
const isNumberOfStandard = ({ standards }: Line, at: number) =>
  standards.some(s => s.first < at && at <= s.last && standardsOf.has(s.name));
