import type { Dims } from '../reading/reading.ts';
import { toMm } from '../units/length.ts';
import { everyThread } from './every-thread.ts';

/** A thread as it is drawn after ISO 6410: its crests thick, its roots thin; millimetres. */
export interface DrawnThread {
  outside: number;
  root: number;
  pitch: number;
  /** Written at it: `M3`, `6-32`, `Ø3.5`. */
  text: string;
}

/** The thread of a part, from its name or, for a thread of its own form, its diameter; null where neither is known. */
export function threadToDraw(dims: Dims): DrawnThread | null {
  const { thread, dia, pitch } = dims;
  if (typeof thread === 'string') {
    const known =
      everyThread.find(
        each => each.dims.thread === thread && (pitch === undefined || each.dims.pitch === pitch),
      ) ?? everyThread.find(each => each.dims.thread === thread);
    if (!known) return null;
    const own = typeof pitch === 'number' ? pitch : toMm((known.pitch.min + known.pitch.max) / 2);
    return drawn(toMm(known.nominal), own, thread);
  }
  return typeof dia === 'number' && dia > 0 ? drawn(dia, dia * 0.35, `Ø${dia}`) : null;
}

/** The root of an external thread lies 1.2269 pitches inside its crests over both sides (ISO 68-1: 17/12 H, H = 0.866 P). */
const drawn = (outside: number, pitch: number, text: string): DrawnThread => ({
  outside,
  root: Math.max(outside - 1.2269 * pitch, outside * 0.6),
  pitch,
  text,
});
