import type { Dims } from '../../reading/reading.ts';
import { inchBalls, metricBalls, usualInchBalls } from '../../standards/balls.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

const measurable: readonly Measurable[] = [
  {
    key: 'dia',
    label: 'diameter',
    ways: ['micrometer', 'calliper-outside'],
    wear: { grows: false, mean: 2 },
    range: [mm(0.3), mm(30)],
  },
];

/** Balls of grade 100 and better lie within 2.5 micrometres (ISO 3290-1, from memory); loose balls of the trade within 10. */
const candidate = (diameter: Um, name: string, common: number): Candidate => ({
  dims: { dia: toMm(diameter) },
  designations: [name],
  common,
  made: { dia: about(diameter, 10, 10, 'ISO 3290') },
});

/** A metric and an inch ball of one diameter are one size. */
const sizes: readonly Candidate[] = [
  ...metricBalls.map(diameter => candidate(diameter, `${toMm(diameter)} mm`, 1)),
  ...inchBalls
    .filter(ball => !metricBalls.includes(ball.diameter))
    .map(ball =>
      candidate(ball.diameter, `${ball.fraction} in`, usualInchBalls.includes(ball.diameter) ? 1 : 0.5),
    ),
];

export const measuring: Measuring = {
  category: 'ball',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => (typeof dims.dia === 'number' ? candidate(mm(dims.dia), `${dims.dia} mm`, 1) : null),
  ...plainSize('dia'),
};
