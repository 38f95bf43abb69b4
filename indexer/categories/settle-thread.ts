import type { Claim } from '../reading/claim.ts';
import type { Group } from '../reading/groups.ts';
import type { Line } from '../reading/line.ts';
import type { Measure } from '../reading/measures.ts';
import type { Dims } from '../reading/reading.ts';
import type { Thread } from '../reading/threads.ts';
import { coarsePitch, metricThreadsOf, olderJapaneseThreads } from '../standards/iso-261.ts';
import { inch, mm, toMm, type Um } from '../units/length.ts';

/** Whether a size behind a metric thread is one of its pitches: ISO 261, or the older Japanese ones. */
function isPitch(thread: Thread, size: Measure): boolean {
  if (thread.kind !== 'metric' || size.fraction) return false;
  return (
    metricThreadsOf(thread.major).some(t => t.pitch === size.um) ||
    olderJapaneseThreads.some(t => t.nominal === thread.major && t.pitch === size.um)
  );
}

/** Gives the line's thread, and the pitch where it is printed. Returns the sizes of its group that are left. */
export function giveThread(
  claim: Claim,
  line: Line,
  pitchAlone: boolean,
): { thread: Thread; rest: Measure[]; group: Group } | null {
  if (line.threads.length === 0) return null;
  const groups = line.groups.filter(g => g.thread);
  const group = groups.find(g => g.measures.length > 0) ?? groups[0];
  const thread = group?.thread;
  if (!group || !thread) return null;
  if (line.threads.some(t => t.name !== thread.name)) {
    const names = new Set(line.threads.map(t => t.name));
    claim.doubt(`more than one thread: ${[...names].join(', ')}`);
    claim.features.add('contradiction');
    return null;
  }
  giveName(claim, thread);
  if (groups.length > 1 && areSeveral(groups)) {
    claim.doubt('more than one size of one thread');
    givePitch(claim, thread);
    return { thread, rest: [], group: { ...group, measures: line.measures } };
  }
  let rest = group.measures.filter(m => m.label === null || m.label === 'pitch');
  const labelled = line.measures.find(m => m.label === 'pitch');
  const first = rest[0];
  if (labelled) claim.measure('pitch', labelled);
  else if (
    first &&
    isPitch(thread, first) &&
    (!first.unitStated || pitchAlone || rest.length > 1 || line.measures.some(m => m.label === 'length')) &&
    (rest.length > 1 || pitchAlone || first.um < mm(1.6))
  )
    claim.measure('pitch', first);
  if (claim.has('pitch'))
    rest = rest.filter(m => m.um !== claim.lengths.get('pitch') || m !== (labelled ?? first));
  givePitch(claim, thread);
  return { thread, rest, group };
}

/** Whether groups that hold sizes hold different ones. */
const areSeveral = (groups: readonly Group[]): boolean =>
  new Set(groups.filter(g => g.measures.length > 0).map(g => g.measures.map(m => m.um).join('x'))).size > 1;

/** The thread's name. A number alone (#8) names a diameter and leaves the thread open: it is implied, not given. */
export function giveName(claim: Claim, thread: Thread): void {
  if (thread.kind === 'number') claim.implied.set('thread', thread.name);
  else claim.text('thread', thread.name, thread);
  claim.features.add('thread');
}

/** The pitch that an inch thread's name holds (6-32: 32 to the inch), or the coarse one a bare metric thread means (ISO 261). */
export function givePitch(claim: Claim, thread: Thread): void {
  if (claim.has('pitch')) return;
  const named = pitchNamed(thread.name);
  if (named !== null) claim.designated('pitch', named);
  if (thread.kind !== 'metric') return;
  const pitch = coarsePitch(thread.major);
  if (pitch !== undefined) claim.implied.set('pitch', pitch);
}

/** The pitch in the name of a unified thread, its threads to the inch behind the dash; null for other names. */
function pitchNamed(name: string): Um | null {
  const threads = name.includes('-') ? /^[\d/]+-(\d{1,3})$/.exec(name)?.[1] : undefined;
  return threads === undefined ? null : inch(1 / Number(threads));
}

/** A thread as a size writes it: `M3x0.5`, `6-32`, `2BA`; null where the pitch is not known. */
export function writeThread(dims: Dims, implied: Dims): string | null {
  const { thread } = dims;
  if (typeof thread !== 'string' || thread === '') return null;
  if (!thread.startsWith('M')) return thread.startsWith('#') ? null : thread;
  const pitch = dims['pitch'] ?? implied['pitch'];
  return typeof pitch === 'number' && pitch > 0 ? `${thread}x${pitch}` : null;
}

/** The inverse: the thread in front of a size's text, and the rest behind it. A coarse pitch counts as implied. */
export function parseThread(text: string): { dims: Dims; implied: Dims; rest: string } | null {
  const metric = /^(M\d+(?:\.\d{1,2})?)x(\d+(?:\.\d{1,3})?)(?:x|$)/.exec(text);
  if (metric) {
    const [all, thread, pitch] = metric as unknown as [string, string, string];
    const coarse: Um | undefined = coarsePitch(mm(Number(thread.slice(1))));
    const isCoarse = coarse !== undefined && toMm(coarse) === Number(pitch);
    return {
      dims: isCoarse ? { thread } : { thread, pitch: Number(pitch) },
      implied: isCoarse ? { pitch: Number(pitch) } : {},
      rest: text.slice(all.length),
    };
  }
  const unified = /^(\d{1,2}(?:\/\d{1,2})?-\d{1,3}|\d{1,2}BA)(?:x|$)/.exec(text);
  if (!unified) return null;
  const thread = unified[1]!;
  const pitch = pitchNamed(thread);
  const dims: Dims = pitch === null ? { thread } : { thread, pitch: toMm(pitch) };
  return { dims, implied: {}, rest: text.slice(unified[0].length) };
}

/** Size of a threaded part with a length: `M2.5x0.45x6`, `6-32x9.525`; without a thread, `3.5x16`. */
export function parseThreadedLength(text: string): { dims: Dims; implied: Dims } | null {
  const threaded = parseThread(text);
  if (threaded) {
    if (!/^\d+(\.\d{1,3})?$/.test(threaded.rest) || !(Number(threaded.rest) > 0)) return null;
    return { dims: { ...threaded.dims, length: Number(threaded.rest) }, implied: threaded.implied };
  }
  const bare = /^(\d+(?:\.\d{1,3})?)x(\d+(?:\.\d{1,3})?)$/.exec(text);
  if (!bare || !(Number(bare[1]) > 0) || !(Number(bare[2]) > 0)) return null;
  return { dims: { dia: Number(bare[1]), length: Number(bare[2]) }, implied: {} };
}

export function writeThreadedLength(dims: Dims, implied: Dims): string | null {
  const { length, dia } = dims;
  if (typeof length !== 'number' || !(length > 0)) return null;
  const front =
    writeThread(dims, implied) ??
    (dims['thread'] === undefined && typeof dia === 'number' && dia > 0 ? `${dia}` : null);
  return front === null ? null : `${front}x${length}`;
}
