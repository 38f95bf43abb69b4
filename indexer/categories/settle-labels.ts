import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import type { Measure } from '../reading/measures.ts';
import type { LabelMeanings } from './definition.ts';

/** The dimension a labelled size is, in one category; undefined where the label says nothing here. */
export function meaningOf(measure: Measure, labels: LabelMeanings): string | undefined {
  if (measure.label === null) return undefined;
  return (measure.labelUpper ? labels[measure.label.toUpperCase()] : undefined) ?? labels[measure.label];
}

/** Gives a claim every dimension that the line labels: `ID 5`, `20 mm long`. Returns those used. */
export function giveLabelled(claim: Claim, line: Line, labels: LabelMeanings): Set<Measure> {
  const used = new Set<Measure>();
  for (const measure of line.measures) {
    const key = meaningOf(measure, labels);
    if (key === undefined) continue;
    if (claim.has(key)) continue;
    claim.measure(key, measure);
    claim.features.add('labelled');
    used.add(measure);
  }
  return used;
}

/** Sizes without a label, group by group, the largest group first; a label of no meaning here takes its size out. */
export function unlabelledGroups(
  line: Line,
  used: ReadonlySet<Measure>,
): { measures: Measure[]; joined: boolean; threaded: boolean }[] {
  return line.groups
    .map(g => ({
      measures: g.measures.filter(m => !used.has(m) && m.label === null),
      joined: g.joined,
      threaded: g.thread !== null,
    }))
    .filter(g => g.measures.length > 0)
    .sort((a, b) => b.measures.length - a.measures.length);
}
