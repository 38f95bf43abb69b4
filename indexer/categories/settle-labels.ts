import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import type { Measure } from '../reading/measures.ts';
import type { LabelMeanings } from './definition.ts';

/** The dimension a labelled size is, in one category; undefined where the label says nothing here. */
function meaningOf(measure: Measure, labels: LabelMeanings): string | undefined {
  if (measure.label === null) return undefined;
  return (measure.labelUpper ? labels[measure.label.toUpperCase()] : undefined) ?? labels[measure.label];
}

/**
 * Gives a claim every dimension that the line labels: `ID 5`, `20 mm long`.
 *
 * @param given a size that is given already
 * @returns those used
 */
export function giveLabelled(
  claim: Claim,
  line: Line,
  labels: LabelMeanings,
  given?: Measure,
): ReadonlySet<Measure> {
  let used: Set<Measure> | null = given ? new Set([given]) : null;
  for (const measure of line.measures) {
    const key = measure.label === null ? undefined : meaningOf(measure, labels);
    if (key === undefined || claim.has(key) || measure === given) continue;
    claim.measure(key, measure);
    claim.features.add('labelled');
    used ??= new Set();
    used.add(measure);
  }
  return used ?? none;
}

const none: ReadonlySet<Measure> = new Set();

/** Sizes of one group that no label names. */
export interface Unlabelled {
  measures: readonly Measure[];
  joined: boolean;
  threaded: boolean;
}

const isOpen = (measure: Measure, used: ReadonlySet<Measure>) => measure.label === null && !used.has(measure);

const isFalling = (groups: readonly Unlabelled[]) =>
  groups.every(({ measures }, at) => at === 0 || measures.length <= groups[at - 1]!.measures.length);

/** Sizes without a label, group by group, the largest group first; a label of no meaning here takes its size out. */
export function unlabelledGroups(line: Line, used: ReadonlySet<Measure>): Unlabelled[] {
  const groups: Unlabelled[] = [];
  for (const { measures, joined, thread } of line.groups) {
    const open = measures.every(m => isOpen(m, used)) ? measures : measures.filter(m => isOpen(m, used));
    if (open.length > 0) groups.push({ measures: open, joined, threaded: thread !== null });
  }
  return isFalling(groups) ? groups : groups.sort((a, b) => b.measures.length - a.measures.length);
}
