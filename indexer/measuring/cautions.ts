import { type Duty, isCritical } from '../duty.ts';

/**
 * What stands with every answer that rests on measurements: agreement is a suggestion; where someone could be hurt, not even
 * that.
 */
export function standingCautions(duty: Duty | undefined): string[] {
  return [
    ...(duty !== undefined && isCritical(duty)
      ? ['What hangs on this part asks for the maker’s part only: agreement of sizes is not an approval.']
      : []),
    'A measured match is a suggestion; the maker’s instructions come first.',
  ];
}
