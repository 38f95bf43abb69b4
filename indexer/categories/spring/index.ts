import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import type { Measure } from '../../reading/measures.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { giveLabelled, unlabelledGroups } from '../settle-labels.ts';
import { settleRing } from '../settle-ring.ts';
import { plainSize } from '../size-text.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { words } from './words.ts';

const labels = {
  wire: 'wire',
  d: 'wire',
  od: 'od',
  D: 'od',
  dia: 'od',
  id: 'id',
  length: 'length',
  free: 'length',
  height: 'length',
  thickness: 'thickness',
};

/** Wire, outside diameter and free length; the usual printed order, the wire by far the thinnest. */
function settle(claim: Claim, line: Line): void {
  const { type } = claim.attrs;
  if (type === 'belleville' || type === 'wave') {
    if (byOutside(claim, line)) return;
    settleRing(
      claim,
      line,
      { inside: 'id', outside: 'od', across: 'thickness' },
      { ...labels, length: 'height', height: 'height' },
    );
    claim.lengths.delete('height');
    return;
  }
  const flat = type === 'leaf';
  const used = giveLabelled(claim, line, flat ? { ...labels, width: 'width' } : labels);
  for (const { measures, joined } of unlabelledGroups(line, used)) {
    if (flat) break;
    if (measures.length === 3 && !claim.has('wire') && !claim.has('od') && !claim.has('length')) {
      const [a, b, c] = measures as [(typeof measures)[0], (typeof measures)[0], (typeof measures)[0]];
      const wireFirst = a.um < b.um;
      claim.measure('wire', wireFirst ? a : b);
      claim.measure('od', wireFirst ? b : a);
      claim.measure('length', c);
      claim.features.add('three-sizes');
      if (!wireFirst) claim.notes.push('outside diameter printed before the wire');
    } else if (measures.length === 2) settlePair(claim, measures);
    else if (measures[0]!.diameter && claim.has('wire') && !claim.has('od'))
      claim.measure('od', measures[0]!);
    else if (joined && claim.has('wire') && claim.has('od') && !claim.has('length'))
      claim.measure('length', measures[0]!);
    else claim.features.add('loose-size');
    break;
  }
  const [wire, od] = [claim.lengths.get('wire'), claim.lengths.get('od')];
  if (wire === undefined || od === undefined || wire * 2 < od) return;
  claim.contradict('the wire is too thick for the outside diameter');
  claim.lengths.clear();
}

/** One size of a disc spring is its outside diameter, by which DIN 2093 names it (A 12.5); of a wave spring it may be any. */
function byOutside(claim: Claim, line: Line): boolean {
  const [lone] = line.measures;
  if (line.measures.length !== 1 || lone!.label !== null) return false;
  if (claim.attrs['type'] === 'belleville') claim.measure('od', lone!);
  else claim.features.add('loose-size');
  return true;
}

/** Two sizes tell less: with a wire known they are outside diameter and length; alone they are wire and outside, or outside and length. */
function settlePair(claim: Claim, measures: readonly Measure[]): void {
  const open = ['wire', 'od', 'length'].filter(key => !claim.has(key));
  const [a, b] = orderOf(measures);
  if (open.length === 2) {
    claim.measure(open[0]!, a);
    claim.measure(open[1]!, b);
  } else if (open.length === 3) {
    // Nothing is wound 2.5 thick over: a first size so thin and much less than the second is the wire.
    const wired = a.um <= mm(2.5) && b.um >= a.um * 4;
    claim.measure(wired ? 'wire' : 'od', a);
    claim.measure(wired ? 'od' : 'length', b);
  }
  claim.features.add('two-sizes');
}

const orderOf = (measures: readonly Measure[]) => [measures[0]!, measures[1]!] as const;

const sizes = [
  [0.3, 3, 10],
  [0.5, 5, 15],
  [0.8, 6, 20],
  [1, 8, 25],
  [1.2, 8, 7],
] as const;

export const spring: CategoryDefinition = {
  name: 'spring',
  title: 'Spring',
  plural: 'Springs',
  dims: [
    { key: 'wire', label: 'wire', diameter: true, unit: 'mm', limits: [mm(0.08), mm(12)], near: [0.1, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(0.6), mm(150)], near: [1, 0.2] },
    { key: 'length', label: 'free length', unit: 'mm', limits: [mm(1), mm(500)], near: [3, 0.25] },
    { key: 'id', label: 'inside', diameter: true, unit: 'mm', limits: [mm(0.4), mm(150)] },
    { key: 'thickness', label: 'thickness', unit: 'mm', limits: [mm(0.05), mm(20)] },
  ],
  sizeDims: ['wire', 'od', 'length'],
  itemAttrs: ['type', 'hand', 'material'],
  labels,
  words,
  standards: attributesOf('spring'),
  stems: [],
  settle,
  ...plainSize('wire', 'od', 'length'),
  sizes: sizes.map(([wire, od, length]) => ({ wire: mm(wire), od: mm(od), length: mm(length) })),
  designations: () => [],
  drawing,
  examples,
};
