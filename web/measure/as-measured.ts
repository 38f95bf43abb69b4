import type { CandidateAnswer, CategoryName, Dims, Drawing } from '../../indexer/index.ts';
import { drawingOf } from '../drawing/of-size.ts';
import { readLengths } from './read-lengths.ts';
import type { Taken } from './taken.ts';

/** Usual proportions of a part, in millimetres, to draw what was not measured yet. */
export const samples: Partial<Record<CategoryName, Record<string, number>>> = {
  screw: { dia: 3, length: 8 },
  'set-screw': { dia: 3, length: 6 },
  nut: { dia: 3, thickness: 2.4 },
  bearing: { bore: 5, od: 11, width: 4 },
  washer: { id: 3.2, od: 7, thickness: 0.5 },
  shim: { id: 8, od: 14, thickness: 0.3 },
  'retaining-ring': { dia: 8, thickness: 0.8 },
  'o-ring': { id: 9, cs: 1.8 },
  pin: { dia: 3, length: 12 },
  ball: { dia: 4 },
  spring: { wire: 0.8, od: 6, length: 18 },
  bushing: { id: 5, od: 7, length: 5 },
};

/** What is drawn once it is measured, and else by the standard or the usual proportions. */
const drawnOnceMeasured: Partial<Record<CategoryName, readonly string[]>> = {
  screw: ['headDiameter', 'headHeight', 'acrossFlats'],
  nut: ['acrossFlats'],
};

/** The dimension of the drawing that a measurement is of, where it has another name there. */
const drawnAs: Record<string, string> = { major: 'dia', shaft: 'dia', housing: 'dia', minor: 'dia' };

export const drawnKey = (category: CategoryName, dimension: string): string =>
  category === 'retaining-ring' || dimension === 'major' || dimension === 'minor'
    ? (drawnAs[dimension] ?? dimension)
    : dimension;

/**
 * The part drawn from what is typed. What is not typed yet is taken from the likeliest size, or else stands in the usual proportion
 * to what is, and has a question mark for its figure. Null where the readings do not make one part.
 */
export function drawAsMeasured(
  category: CategoryName,
  { typed, attrs }: Taken,
  best: CandidateAnswer | undefined,
): Drawing | null {
  const sample = samples[category] ?? {};
  const measured: Record<string, number> = {};
  for (const [dimension, text] of Object.entries(typed)) {
    const values = readLengths(text);
    const key = drawnKey(category, dimension);
    const drawn = key in sample || (drawnOnceMeasured[category] ?? []).includes(key);
    if (values && values.length > 0 && drawn)
      measured[key] = Math.round((1000 * values.reduce((sum, each) => sum + each, 0)) / values.length) / 1000;
  }
  const scale = scaleOf(measured, sample);
  const rest = Object.entries(sample).map(([key, usual]) => {
    const likely = best?.dims[key];
    return [key, typeof likely === 'number' ? likely : Math.round(usual * scale * 100) / 100];
  });
  const dims: Dims = { ...Object.fromEntries(rest), ...measured };
  const drawing =
    drawingOf({ category, dims, implied: {}, attrs }) ??
    drawingOf({ category, dims: { ...scaled(sample, scale), ...measured }, implied: {}, attrs });
  if (!drawing) return null;
  return {
    ...drawing,
    dimensions: drawing.dimensions.map(line =>
      measuredHere(line.key, measured) ? line : { ...line, text: line.text.replace(/[\d.]+/, '?') },
    ),
  };
}

const measuredHere = (key: string, measured: Record<string, number>) =>
  (key === 'thread' ? 'dia' : key) in measured;

function scaleOf(measured: Record<string, number>, sample: Record<string, number>): number {
  const key = Object.keys(measured).find(each => each in sample);
  return key === undefined ? 1 : measured[key]! / sample[key]!;
}

const scaled = (sample: Record<string, number>, scale: number) =>
  Object.fromEntries(
    Object.entries(sample).map(([key, usual]) => [key, Math.round(usual * scale * 100) / 100]),
  );
