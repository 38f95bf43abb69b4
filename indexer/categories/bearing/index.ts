import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import { inUnit, type Measure } from '../../reading/measures.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition, LabelMeanings } from '../definition.ts';
import { settleRing } from '../settle-ring.ts';
import { plainSize } from '../size-text.ts';
import { designationAt, stems } from './designations.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { designations, isPublished, publishedFor, sizes } from './sizes.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const labels: LabelMeanings = {
  id: 'bore',
  bore: 'bore',
  d: 'bore',
  D: 'od',
  od: 'od',
  width: 'width',
  thickness: 'width',
  height: 'width',
  length: 'width',
  dia: 'od',
};

const keys = { inside: 'bore', outside: 'od', across: 'width' };
function settle(claim: Claim, line: Line): void {
  const designated = new Map(claim.lengths);
  claim.lengths.clear();
  const lone = line.measures.filter(
    m => m.label !== null || line.groups.some(g => g.joined && g.measures.includes(m)),
  );
  takeInches(line);
  const odd =
    /^(rod-end|block|spherical)$/.test(String(claim.attrs['type'])) &&
    !line.groups.some(g => g.measures.length === 3);
  if (givesOutside(claim, line, designated)) return;
  if ((designated.size === 0 || lone.length > 0) && !(odd && line.groups.some(g => g.joined)))
    settleRing(claim, line, keys, labelsFor(line), isPublished);
  agree(claim, designated);
  if (designated.size === 0) snap(claim, line);
}

/** A diameter without more is the bore, unless the bore is named beside it. */
const labelsFor = (line: Line): LabelMeanings =>
  line.measures.some(m => m.label === 'bore' || m.label === 'id') ? labels : { ...labels, dia: 'bore' };

/** Bare decimals that are a published size only when taken as inches are inches: 0.1875 x 0.5 x 0.196. */
function takeInches(line: Line): void {
  for (const group of line.groups) {
    if (!group.joined || group.measures.length < 3 || group.measures.some(m => m.unitStated)) continue;
    if (!group.measures.every(m => m.value < 2)) continue;
    const inches = group.measures.map(m => inUnit(m, 'in'));
    if (isPublished(inches[0]!, inches[1]!, inches[2]!)) group.measures = inches;
  }
}

/** LM6UU (12 x 19 mm): a pair that repeats outside diameter and width of the designation leaves the bore to it. */
function givesOutside(claim: Claim, line: Line, designated: ReadonlyMap<string, number>): boolean {
  const pair = line.groups.find(g => g.joined && !g.thread && g.measures.length === 2)?.measures;
  const keys = ['od', 'width'];
  const repeats = (measure: Measure, key: string) => Math.abs(measure.um - (designated.get(key) ?? 0)) <= 30;
  if (!pair || !keys.every((key, i) => repeats(pair[i]!, key))) return false;
  for (const [i, key] of keys.entries()) claim.measure(key, pair[i]!);
  const bore = line.measures.find(m => !pair.includes(m) && repeats(m, 'bore'));
  if (bore) claim.measure('bore', bore);
  agree(claim, designated);
  return true;
}

/** Printed sizes and a designation must say the same; where they differ a person looks, and the digits stand. */
function agree(claim: Claim, designated: ReadonlyMap<string, number>): void {
  for (const [key, um] of designated) {
    const printed = claim.lengths.get(key);
    if (printed !== undefined && Math.abs(printed - um) > 30) {
      claim.doubt(`printed ${key} ${printed / 1000} mm, but the designation says ${um / 1000}`);
      claim.features.add('contradiction');
    } else {
      claim.lengths.set(key, um);
      if (printed !== undefined) claim.features.add('agrees');
    }
  }
}

/** Takes the published size for what was printed of it, where bore, outside and width mean just one. */
function snap(claim: Claim, line: Line): void {
  const stated = (key: string) => {
    const start = claim.spans.find(s => s.field === key)?.start;
    if (start === undefined) return undefined;
    const um = claim.lengths.get(key);
    const means = (measure: Measure) => measure.start === start && measure.um === um;
    return line.measures.find(means) ?? line.groups.map(g => g.measures.find(means)).find(Boolean);
  };
  const [bore, od, width] = [stated('bore'), stated('od'), stated('width')];
  if (!bore) return;
  const found = publishedFor(bore, od, width);
  if (found.length === 0) {
    if (od && width) claim.features.add('unlisted');
    return;
  }
  if (od && width) claim.features.add('listed');
  for (const key of ['bore', 'od', 'width'] as const) {
    const values = new Set(found.map(s => s[key]));
    if (values.size === 1 && claim.lengths.has(key)) claim.lengths.set(key, [...values][0]!);
  }
}

export const bearing: CategoryDefinition = {
  name: 'bearing',
  title: 'Ball bearing',
  plural: 'Ball bearings',
  dims: [
    { key: 'bore', label: 'bore', diameter: true, unit: 'mm', limits: [mm(0.5), mm(200)], near: [1, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1.5), mm(400)], near: [2, 0.2] },
    { key: 'width', label: 'width', unit: 'mm', limits: [mm(0.5), mm(120)], near: [1.5, 0.5] },
  ],
  sizeDims: ['bore', 'od', 'width'],
  itemAttrs: ['type', 'flanged', 'seal', 'clearance', 'material'],
  labels,
  words,
  standards: attributesOf('bearing'),
  stems,
  designationAt,
  settle,
  ...plainSize('bore', 'od', 'width'),
  sizes: sizes.map(({ bore, od, width }) => ({ bore, od, width })),
  designations,
  drawing,
  rules,
  examples,
};
