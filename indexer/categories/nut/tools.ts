import type { Attrs, Dims } from '../../reading/reading.ts';
import { nutFor, nutsOf } from '../../standards/nuts.ts';
import { toMm } from '../../units/length.ts';
import { distinctTools, type Tool } from '../tool.ts';

/** The spanner of a nut by its standard, else by its type; where neither is stated, that of each type, by standard. */
export function tools({ thread }: Dims, { type, standard }: Attrs): Tool[] {
  if (typeof thread !== 'string') return [];
  const printed = typeof standard === 'string' ? nutFor(standard, thread) : undefined;
  const meant = printed ? [printed] : nutsOf(thread).filter(nut => type === undefined || nut.type === type);
  const widths = new Map<number, string[]>();
  for (const { acrossFlats, standard: of } of meant)
    widths.set(acrossFlats, [...(widths.get(acrossFlats) ?? []), of]);
  return distinctTools(
    [...widths].map(([flats, standards]) => ({
      kind: 'spanner',
      size: String(toMm(flats)),
      // One width for all of them needs no question.
      when: widths.size > 1 ? standards.join(', ') : null,
      source: standards.join(', '),
    })),
  );
}
