import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import { inUnit, type Measure } from '../../reading/measures.ts';
import type { Dims } from '../../reading/reading.ts';
import { oRings, oRingsOfSection } from '../../standards/o-rings.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { meetNearest, meets, mm, toMm, type Um } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { giveLabelled, unlabelledGroups } from '../settle-labels.ts';
import { plainSize } from '../size-text.ts';
import { designationAt, stems } from './designations.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const labels = {
  id: 'id',
  d: 'id',
  od: 'od',
  D: 'od',
  section: 'cs',
  thickness: 'cs',
  wire: 'cs',
  width: 'cs',
  dia: 'id',
};
const sections: readonly Um[] = [...new Set(oRings.map(r => r.cs))];

function settle(claim: Claim, line: Line): void {
  if (claim.has('id')) return;
  const used = giveLabelled(claim, line, labels);
  for (const { measures } of unlabelledGroups(line, used)) {
    const sizes = measures.map(m => (isInches(measures) ? inUnit(m, 'in') : m));
    if (sizes.length >= 2 && !claim.has('id') && !claim.has('od')) givePair(claim, sizes);
    else if (sizes.length === 1) giveLone(claim, sizes[0]!);
    break;
  }
  const [id, cs, od] = ['id', 'cs', 'od'].map(key => claim.lengths.get(key));
  if (id !== undefined && cs !== undefined && od !== undefined && Math.abs(id + 2 * cs - od) > 60)
    claim.doubt('inside diameter, section and outside diameter do not agree');
  if (id === undefined && cs !== undefined && od !== undefined) claim.implied.set('id', od - 2 * cs);
  if (cs === undefined && id !== undefined && od !== undefined && od > id)
    claim.implied.set('cs', (od - id) / 2);
  snap(claim, line);
}

/** Bare decimals such as 0.364 x 0.070: inches, where both are published inch sizes. */
const isInches = (measures: readonly Measure[]) =>
  measures.length === 2 &&
  measures.every(m => !m.unitStated && (m.decimals ?? 0) >= 3 && m.value < 12) &&
  oRings.some(
    r =>
      r.standard === 'AS568' &&
      meets(inUnit(measures[0]!, 'in'), r.id) &&
      meets(inUnit(measures[1]!, 'in'), r.cs),
  );

/** Inside diameter and section; with three sizes, inside, outside and section. */
function givePair(claim: Claim, sizes: readonly Measure[]): void {
  const [a, b, c] = sizes as [Measure, Measure, Measure | undefined];
  if (c) {
    const sorted = [...sizes].sort((x, y) => x.um - y.um) as [Measure, Measure, Measure];
    claim.measure('cs', sorted[0]);
    claim.measure('id', sorted[1]);
    claim.measure('od', sorted[2]);
    claim.features.add('three-sizes');
    return;
  }
  claim.features.add('two-sizes');
  const swapped = b.um > a.um && sections.some(s => meets(a, s));
  claim.measure('id', swapped ? b : a);
  claim.measure('cs', swapped ? a : b);
  if (swapped) claim.notes.push('section printed first');
}

function giveLone(claim: Claim, size: Measure): void {
  claim.measure(claim.has('id') || claim.has('od') ? 'cs' : 'id', size);
  claim.features.add('one-size');
}

/** The published ring that was meant, where inside diameter and section both mean it: 9.25x1.78 is AS568-012. */
function snap(claim: Claim, line: Line): void {
  const stated = (key: string) => {
    const start = claim.spans.find(s => s.field === key)?.start;
    if (start === undefined) return undefined;
    for (const { measures } of line.groups)
      for (const measure of measures) if (measure.start === start) return measure;
    return line.measures.find(m => m.start === start);
  };
  const [id, cs] = [stated('id'), stated('cs')];
  if (!id || !cs || claim.lengths.get('id') !== id.um) return;
  const section = meetNearest(cs, sections);
  if (!section) return;
  const inside = meetNearest(
    id,
    oRingsOfSection(section.um).map(r => r.id),
  );
  if (!inside) return;
  claim.lengths.set('id', inside.um);
  claim.lengths.set('cs', section.um);
  claim.features.add('listed');
  if (inside.doubt) claim.doubt('two published rings lie within the last printed digit');
}

export const oRing: CategoryDefinition = {
  name: 'o-ring',
  title: 'O-ring',
  plural: 'O-rings',
  dims: [
    { key: 'id', label: 'inside', diameter: true, unit: 'mm', limits: [mm(0.5), mm(700)], near: [1, 0.15] },
    { key: 'cs', label: 'section', diameter: true, unit: 'mm', limits: [mm(0.4), mm(12)], near: [0.5, 0.3] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1.5), mm(720)] },
  ],
  sizeDims: ['id', 'cs'],
  itemAttrs: ['material'],
  labels,
  words,
  standards: attributesOf('o-ring'),
  stems,
  designationAt,
  settle,
  ...plainSize('id', 'cs'),
  sizes: oRings.map(({ id, cs }) => ({ id, cs })),
  designations: (dims: Dims) =>
    oRings
      .filter(r => r.designation !== null && toMm(r.id) === dims['id'] && toMm(r.cs) === dims['cs'])
      .map(r => r.designation!),
  drawing,
  rules,
  examples,
};
