import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import type { Dims } from '../../reading/reading.ts';
import type { StandardName } from '../../reading/standards.ts';
import { metricThreadsOf } from '../../standards/iso-261.ts';
import { type Washer, washerFor, washers, washerWithHole } from '../../standards/iso-7089.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRing } from '../draw-ring.ts';
import { unlabelledGroups } from '../settle-labels.ts';
import { flatRingLabels, loneThickness, settleRing } from '../settle-ring.ts';
import { giveName } from '../settle-thread.ts';
import { plainSize } from '../size-text.ts';
import { examples } from './examples.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const keys = { inside: 'id', outside: 'od', across: 'thickness' };

function settle(claim: Claim, line: Line, standard: StandardName | null): void {
  if (new Set(line.threads.map(t => t.name)).size > 1) {
    claim.doubt('more than one thread');
    claim.features.add('contradiction');
    return;
  }
  const thread = line.threads[0];
  const named = standard?.name ?? line.standards.find(s => namedByScrew.test(s.name))?.name;
  if (named !== undefined && byStandard(claim, line, named)) return;
  if (thread) {
    giveName(claim, thread);
    byThread(claim, line, thread.major);
    return;
  }
  if (byScrew.has(String(claim.attrs['type'])) && bySpringNumber(claim, line)) return;
  if (isBoltSize(line)) return;
  settleRing(claim, line, keys, flatRingLabels);
  loneThickness(claim);
}

/** `DIN 125 A 4,3` names the hole, `ISO 7089 M4` and `ISO 7089 - 4` the screw. */
function byStandard(claim: Claim, line: Line, name: string): boolean {
  const thread = line.threads[0];
  const lone = line.groups.find(g => !g.thread && !g.joined)?.measures[0];
  const form = line.tokens.find(
    (t, at) =>
      /^[ab]$/.test(t.text) && at > 0 && line.standards.some(s => at === s.last + 1 || at === s.last + 2),
  );
  const formed = form ? `${name}-${form.text.toUpperCase()}` : name;
  let washer: Washer | undefined;
  if (thread) washer = washerFor(formed, thread.name) ?? washerFor(name, thread.name);
  else if (lone) {
    const by = lone.whole ? washerFor(formed, `M${lone.value}`) : undefined;
    washer =
      by ??
      washerWithHole(formed, lone.um) ??
      washerWithHole(name, lone.um) ??
      washerFor(formed, `M${lone.value}`);
    if (washer && by) claim.text('thread', `M${lone.value}`, lone);
    else if (washer) claim.measure('id', lone, washer.d1);
  }
  if (!washer && lone && namedByScrew.test(name)) {
    claim.implied.set('thread', `M${lone.value}`);
    return true;
  }
  if (!washer) return false;
  // A sprung washer's standard gives it as it is made, and its name says the screw alone.
  const sprung = byScrew.has(String(claim.attrs['type']));
  const give = (key: string, um: Um) => (sprung ? claim.implied.set(key, um) : claim.designated(key, um));
  if (!claim.has('id')) give('id', washer.d1);
  give('od', washer.d2);
  give('thickness', washer.h);
  if (thread) claim.text('thread', thread.name, thread);
  claim.features.add('designation');
  return true;
}

/** Standards whose washers are named by their screw alone. */
const namedByScrew = /^(?:JIS B 125\d|(?:ASME|ANSI) B18\.\d+M)$/;

/** Behind a thread stand outside diameter and thickness; one alone is the one that it can be. */
function byThread(claim: Claim, line: Line, major: number): void {
  const rest = line.groups.find(g => g.thread)?.measures.filter(m => m.label === null) ?? [];
  for (const m of line.measures) {
    const key = m.label === null ? undefined : flatRingLabels[m.label];
    if (key) claim.measure(key, m);
  }
  const sizes =
    rest.length > 0 ? rest : (unlabelledGroups(line, new Set()).find(g => !g.threaded)?.measures ?? []);
  if (sizes.length === 1) claim.measure(sizes[0]!.um > major ? 'od' : 'thickness', sizes[0]!);
  else if (sizes.length >= 2) {
    if (sizes.length === 3 && sizes[0]!.um >= major && sizes[0]!.um < sizes[1]!.um)
      claim.measure('id', sizes[0]!);
    const [od, thickness] = sizes.slice(-2) as [(typeof sizes)[0], (typeof sizes)[0]];
    claim.measure(od.um >= thickness.um ? 'od' : 'thickness', od);
    claim.measure(od.um >= thickness.um ? 'thickness' : 'od', thickness);
    claim.features.add('two-sizes');
  }
}

/** Washers that are named by their screw, not by their hole. */
const byScrew = new Set(['spring', 'lock', 'star', 'wave']);

/** An inch alone, `LOCKWASHER, 5/16 IN.`, is the bolt's size, and the hole is larger. */
function isBoltSize({ measures }: Line): boolean {
  const [lone] = measures;
  return measures.length === 1 && lone!.label === null && lone!.unit === 'in' && !lone!.diameter;
}

/** A spring washer is named by its screw: Federring B 4 is for M4 (DIN 127, DIN 128). */
function bySpringNumber(claim: Claim, line: Line): boolean {
  const at = line.tokens.findIndex(
    (t, i) => t.kind === 'number' && !t.taken && /^[ab]$/.test(line.tokens[i - 1]?.text ?? ''),
  );
  const lone = line.measures.length === 1 && line.measures[0]!.label === null ? line.measures[0] : undefined;
  const named = line.tokens[at] ?? (lone?.whole && !lone.unitStated && !lone.diameter ? lone : undefined);
  const number = line.tokens[at] ? Number(line.tokens[at].text.replace(',', '.')) : lone?.value;
  if (!named || number === undefined || number > 24) return false;
  const isThread = metricThreadsOf(mm(number)).length > 0;
  // A4,3 is the hole: no screw is M4.3.
  if (isThread) claim.text('thread', `M${number}`, named);
  else {
    claim.lengths.set('id', mm(number));
    claim.span('id', named);
  }
  return true;
}

export const washer: CategoryDefinition = {
  name: 'washer',
  title: 'Washer',
  plural: 'Washers',
  dims: [
    { key: 'id', label: 'hole', diameter: true, unit: 'mm', limits: [mm(0.5), mm(200)], near: [0.6, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1), mm(400)], near: [2, 0.25] },
    { key: 'thickness', label: 'thickness', unit: 'mm', limits: [mm(0.02), mm(30)], near: [0.3, 0.5] },
    { key: 'thread', label: 'for thread', unit: 'thread' },
  ],
  sizeDims: ['id', 'od', 'thickness'],
  itemAttrs: ['type', 'material'],
  labels: flatRingLabels,
  words,
  standards: attributesOf('washer'),
  stems: [],
  settle,
  ...plainSize('id', 'od', 'thickness'),
  sizes: washers.map(({ d1, d2, h }) => ({ id: d1, od: d2, thickness: h })),
  designations: (dims: Dims) =>
    washers
      .filter(w => toMm(w.d1) === dims['id'] && toMm(w.d2) === dims['od'] && toMm(w.h) === dims['thickness'])
      .map(w => `${w.standard} ${w.thread}`),
  drawing: drawRing({ inside: 'id', outside: 'od', across: 'thickness' }),
  rules,
  examples,
};
