import type { Dims } from '../../reading/reading.ts';
import { inchHexKey } from '../../standards/hex-keys.ts';
import { type Point, pointDiameter, setScrew, setScrewStandards } from '../../standards/set-screws.ts';
import { mm } from '../../units/length.ts';
import { type AnyThread, inchSizeOf } from '../every-thread.ts';
import { about, inProportion, type Made, type Measurable, type Measuring } from '../measurable.ts';
import { parseThreadedLength, writeThreadedLength } from '../settle-thread.ts';
import { length, major, measuredThreads, pitch } from '../threaded-measuring.ts';

/** The length is over all, socket chamfer and point included. */
const measurable: readonly Measurable[] = [
  major,
  pitch,
  length,
  { key: 'key', label: 'hexagon key', ways: ['calliper-outside'], wear: null, range: [mm(0.6), mm(14)] },
  {
    key: 'pointDiameter',
    label: 'point diameter',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 30 },
    range: [mm(0.2), mm(20)],
  },
];

/** Key and points of a set screw (ISO 4026 to 4029, ASME B18.3); metric points are made h14 (memory). */
function ends(thread: AnyThread): Readonly<Record<string, readonly Made[]>> {
  const known = thread.system === 'metric' ? metricEnds(String(thread.dims.thread)) : inchEnds(thread);
  return {
    key: [...known.key, inProportion(thread.nominal, 0.35, 0.7)],
    pointDiameter: [...known.pointDiameter, inProportion(thread.nominal, 0.2, 0.9)],
  };
}

interface Ends {
  readonly key: readonly Made[];
  readonly pointDiameter: readonly Made[];
}

function metricEnds(thread: string): Ends {
  const screw = setScrew(thread);
  if (!screw) return { key: [], pointDiameter: [] };
  const points = Object.keys(setScrewStandards) as Point[];
  return {
    key: [about(screw.key, 20, 60, 'ISO 4026 to 4029')],
    pointDiameter: points.flatMap(point => {
      const diameter = pointDiameter(screw, point);
      return diameter === null ? [] : [about(diameter, 250, 0, setScrewStandards[point][0], { point })];
    }),
  };
}

function inchEnds(thread: AnyThread): Ends {
  const key = thread.system === 'inch' ? inchHexKey('set', inchSizeOf(thread)) : undefined;
  return { key: key === undefined ? [] : [about(key, 20, 60, 'ASME B18.3')], pointDiameter: [] };
}

const threads = measuredThreads(ends);

export const measuring: Measuring = {
  category: 'set-screw',
  measurable,
  candidates: measured => threads.candidates(measured.has('length')),
  known: (dims: Dims) => threads.known(dims),
  write: writeThreadedLength,
  parse: parseThreadedLength,
};
