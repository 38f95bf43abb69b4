import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import { inUnit, type Measure } from '../reading/measures.ts';
import type { Thread } from '../reading/threads.ts';
import { coarsePitch } from '../standards/iso-261.ts';
import { inch, mm } from '../units/length.ts';
import { settleHead, settleRecess } from './settle-head.ts';
import { giveLabelled, unlabelledGroups } from './settle-labels.ts';
import { giveName, givePitch, giveThread } from './settle-thread.ts';

/** A shoulder screw's diameter is that of its shoulder. */
const shoulderLabels = { length: 'length', dia: 'dia' };

/** Settles thread and length of a screw; a tapping or wood screw has a diameter instead of a thread. */
export function settleScrew(claim: Claim, line: Line): void {
  for (const measure of line.measures) if (measure.label === 'section') measure.label = null;
  settleHead(claim);
  settleRecess(claim, line);
  const used = giveLabelled(
    claim,
    line,
    claim.attrs['head'] === 'shoulder' ? shoulderLabels : { length: 'length' },
  );
  const tapping = claim.attrs['type'] === 'self-tapping' || claim.attrs['type'] === 'wood';
  if (claim.attrs['head'] === 'shoulder' && settleShoulder(claim, line)) return;
  const threaded = giveThread(claim, line, false);
  if (!threaded && claim.features.has('contradiction')) return;
  if (threaded) {
    if (threaded.thread.kind === 'tapping') giveDiameter(claim, threaded.thread);
    if (tapping && opensThread(threaded.thread, claim, line)) {
      claim.texts.delete('thread');
      claim.implied.delete('pitch');
      claim.implied.delete('thread');
      claim.implied.set('dia', threaded.thread.major);
    }
    const shoulder = line.groups.find(g => !g.thread && g.joined && g.measures.length === 2);
    if (claim.attrs['head'] === 'shoulder' && shoulder && threaded.rest.length === 0) {
      claim.measure('dia', shoulder.measures[0]!);
      claim.measure('length', shoulder.measures[1]!);
      return;
    }
    const rest = threaded.rest.filter(m => !used.has(m));
    if (isPitchMisprinted(threaded.thread, rest)) {
      if (!isRoundedPitch(threaded.thread, rest[0]!)) claim.doubt('the pitch printed is none of this thread');
      rest.shift();
    }
    const loose = rest.length > 0 ? rest : looseSizes(line, used, threaded.group.measures);
    if (loose.length > 1 && rest.length > 1) claim.doubt('more sizes than a screw has');
    else if (loose[0] && !claim.has('length')) giveLength(claim, loose[0], isInch(threaded.thread));
    return;
  }
  const group = unlabelledGroups(line, used)[0];
  if (!group) return;
  const [first, second] = group.measures;
  if (group.measures.length === 2 && second) {
    // 1/4 x 2" of a bolt: a diameter whose thread is not said.
    if (first!.fraction && !tapping && claim.attrs['head'] !== 'shoulder')
      claim.implied.set('dia', first!.um);
    else claim.measure('dia', first!);
    claim.measure('length', second);
    claim.features.add('two-sizes');
    return;
  }
  const singles = looseSizes(line, used, []);
  const [dia, length] = singles;
  if (dia && (claim.has('length') || length)) {
    claim.measure('dia', dia);
    if (length) claim.measure('length', length);
    claim.features.add('loose-size');
  } else if (dia && tapping && dia.unitStated && dia.um > thickestTapping) claim.measure('length', dia);
  else if (dia && dia.um >= mm(3) && dia.unitStated) claim.features.add('loose-size');
}

/**
 * A tapping or wood screw has a diameter and no thread of its own, so that #6 or M3 only says how thick it is; one that forms a
 * metric thread has it (DIN 7500).
 */
const opensThread = ({ kind }: Thread, { attrs }: Claim, { text }: Line) =>
  kind === 'number' || (kind === 'metric' && attrs['standard'] === undefined && !forming.test(text));

const forming = /form|furch|trilob|taptite/i;

/**
 * A shoulder screw whose shoulder stands in one size with its thread: M4 x Ø5 x 12; or is written like a thread, and which is the
 * thread is said: M5 x 25 shoulder, M4 thread.
 */
function settleShoulder(claim: Claim, line: Line): boolean {
  const names = new Set(line.threads.map(t => t.name));
  const said = line.threads.find(t => threadWords.has(line.tokens[t.last + 1]?.text ?? ''));
  const group = line.groups.find(g => g.thread && g.measures.length > 0);
  const thread = said ?? (names.size === 1 ? group?.thread : undefined);
  const sizes = group?.measures.filter(m => m.label === null || m.label === 'length') ?? [];
  if (!group?.thread || !thread) return false;
  const [first, second] = sizes;
  const front = line.groups.find(g => !g.thread && !g.joined && g.last < group.first)?.measures[0];
  if (names.size === 1 && sizes.length === 1 && front?.label === null) {
    claim.measure('dia', front);
    claim.measure('length', first!);
  } else if (names.size === 1) {
    if (!first?.diameter || !second) return false;
    claim.measure('dia', first);
    claim.measure('length', second);
  } else {
    if (names.size !== 2 || thread.name === group.thread.name || !first) return false;
    claim.measure('dia', { ...group.thread, um: group.thread.major });
    claim.measure('length', first);
  }
  giveName(claim, thread);
  givePitch(claim, thread);
  return true;
}

const threadWords = new Set('thread threads threaded gewinde filetage filet filetto rosca draad'.split(' '));

/** M6 x 1.75 x 20: of two sizes behind a metric thread the first, a small part of the thread, stands where its pitch does. */
const isPitchMisprinted = ({ kind, major }: Thread, [first, second, third]: readonly Measure[]) =>
  kind === 'metric' &&
  third === undefined &&
  second !== undefined &&
  first!.decimals !== null &&
  first!.um <= major * 0.35 &&
  second.um > first!.um;

/** M2.5 x 0.44: the coarse pitch, rounded otherwise. */
function isRoundedPitch({ major }: Thread, { um }: Measure): boolean {
  const pitch = coarsePitch(major);
  return pitch !== undefined && Math.abs(um - pitch) <= pitch * 0.03;
}

/** A tapping screw's thread is its diameter (ISO 1478): ST3.5. */
function giveDiameter(claim: Claim, thread: Thread): void {
  claim.texts.delete('thread');
  claim.lengths.set('dia', thread.major);
  claim.span('dia', thread);
  claim.attr('type', 'self-tapping', thread);
}

const isInch = ({ kind }: Thread) => kind !== 'metric' && kind !== 'tapping';

/** A single size above this is a wood or tapping screw's length: none is thicker (common practice). */
const thickestTapping = mm(12);

/** Lone sizes of the line, in printed order. */
const looseSizes = (line: Line, used: ReadonlySet<Measure>, not: readonly Measure[]): Measure[] =>
  line.groups
    .filter(g => !g.thread && !g.joined)
    .flatMap(g => g.measures.filter(m => m.label === null && !used.has(m) && !not.includes(m)));

/**
 * Gives the length. Behind an inch thread a bare number is inches while it can be: a decimal, or a whole number up to 4;
 * a larger whole number is millimetres, and a person should look.
 */
function giveLength(claim: Claim, size: Measure, inchThread: boolean): void {
  if (!inchThread || size.unitStated) {
    claim.measure('length', size);
    return;
  }
  if (size.value <= 4) claim.measure('length', inUnit(size, 'in'));
  else {
    claim.measure('length', size);
    claim.doubt('inch thread with a length that can only be millimetres');
  }
  if (claim.lengths.get('length')! < inch(0.03)) claim.doubt('too short for a screw');
}
