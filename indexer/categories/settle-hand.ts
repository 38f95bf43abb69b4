import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';

/** The attributes that left and right are told by: a thread or a spring turns, any other part has a side. */
export const isHandedness = (key: string): boolean => key === 'hand' || key === 'side';

/** Words that make "left hand" one of a thread, whatever part carries it. */
const thread = /thread|gewinde|filet|rosca|draad|pas |ねじ|ネジ/i;

/**
 * Decides whether the left or right that a line says is a hand or a side: of a nut or a spring, and of a screw whose thread is
 * named, it is the hand; of any other part it is which of the two parts it is, unless its thread is spoken of.
 */
export function settleHand(claim: Claim, line: Line): void {
  const { category, attrs } = claim;
  const screw = category === 'screw' || category === 'set-screw';
  const turns = screw || category === 'nut' || category === 'spring' || category === 'gear';
  const { hand, side } = attrs;
  const printed = line.text.slice(...placeOf(claim, 'hand'));
  if (hand !== undefined && !turns && !thread.test(printed)) rename(claim, 'hand', 'side');
  else if (side !== undefined && turns && category !== 'gear' && !(screw && line.threads.length === 0))
    rename(claim, 'side', 'hand');
  if (category === 'plain' && attrs['side'] === undefined) giveLetter(claim, line);
}

function placeOf(claim: Claim, field: string): [start: number, end: number] {
  const span = claim.spans.find(s => s.field === field);
  return span ? [span.start, span.end] : [0, 0];
}

function rename(claim: Claim, from: string, to: string): void {
  const value = claim.attrs[from]!;
  delete claim.attrs[from];
  claim.attr(to, value);
  for (const span of claim.spans) if (span.field === from) span.field = to;
}

/** The L and the R version of a part: `PIN GUIDE L`, `COVER (R)`. */
function giveLetter(claim: Claim, { tokens }: Line): void {
  let at = tokens.length - 1;
  while (tokens[at]?.kind === 'mark') at--;
  const [letter, before] = [tokens[at], tokens[at - 1]];
  if (!letter?.upper || !before || !/^[lr]$/.test(letter.text)) return;
  const alone = before.text === '(' || (letter.gap > 0 && before.kind === 'word');
  if (alone) claim.attr('side', letter.text === 'l' ? 'left' : 'right', letter);
}
