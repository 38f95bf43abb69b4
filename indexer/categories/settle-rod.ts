import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import type { StatedLength } from '../units/length.ts';
import type { LabelMeanings } from './definition.ts';
import { giveLabelled, unlabelledGroups } from './settle-labels.ts';

/** What a length or thickness is called on a rod, pin or shaft. */
export const rodLabels: LabelMeanings = {
  dia: 'dia',
  od: 'dia',
  d: 'dia',
  length: 'length',
  free: 'length',
  width: 'length',
};

/** Whether of two sizes the one is so much longer that it can be no rod's diameter (common practice). */
export const plainly = (a: StatedLength, b: StatedLength) => Math.max(a.um, b.um) >= 3 * Math.min(a.um, b.um);

/** Settles diameter and length of a round part. The smaller is the diameter where the larger is printed first. */
export function settleRod(claim: Claim, line: Line): void {
  const used = giveLabelled(claim, line, rodLabels);
  const groups = unlabelledGroups(line, used);
  const whole = groups.some(({ measures, joined }) => joined && measures.length === 2);
  for (const thread of line.threads) {
    // M8 of a smooth rod may be its diameter or a thread on it; beside a whole size it is neither.
    if (thread.kind !== 'metric' || claim.has('dia') || whole) continue;
    // … of a pin by its standard the diameter: DIN 7 M3 x 10
    if (claim.category === 'shaft' || claim.attrs['standard'] !== undefined)
      claim.measure('dia', { ...thread, um: thread.major });
    else claim.implied.set('dia', thread.major);
    claim.notes.push(`${thread.name} may be a diameter of ${thread.major / 1000} mm or a thread on it`);
    claim.features.add('thread-for-diameter');
  }
  for (const { measures, joined } of groups) {
    const open = ['dia', 'length'].filter(key => !claim.has(key) && !claim.implied.has(key));
    if (open.length === 0 || measures.length > 3) break;
    const marked = measures.find(m => m.diameter);
    if (measures.length >= 2 && open.length === 2) {
      let [dia, length] = measures as [(typeof measures)[0], (typeof measures)[0]];
      const printed = plainly(dia, length) || marked ? undefined : line.orders?.[claim.category];
      if (printed) {
        if (dia.um > length.um || printed === 'length dia')
          line.taught.push(
            `read as ${printed.replace(' ', ' × ')}, the order in which this list prints its sizes`,
          );
        if (printed === 'length dia') [dia, length] = [length, dia];
      } else if (marked && marked !== dia) [dia, length] = [marked, dia];
      else if (!marked && dia.um > length.um) {
        [dia, length] = [length, dia];
        claim.features.add('swapped');
        claim.notes.push('length printed first');
      }
      claim.measure('dia', dia);
      claim.measure('length', length);
      claim.features.add('two-sizes');
      if (measures.length === 3) claim.doubt('more sizes than this part has');
    } else if (measures.length === 1 || open.length === 1) {
      claim.measure(marked && open.includes('dia') ? 'dia' : open[0]!, marked ?? measures[0]!);
      claim.features.add('one-size');
    }
    if (joined) break;
  }
}
