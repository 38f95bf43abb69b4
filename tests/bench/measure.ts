import { type MeasureRequest, measure } from '../../indexer/measure.ts';
import { measurings } from '../../indexer/measuring/categories.ts';
import { inTurns, type Measured } from './measured.ts';

/** A screw measured three ways: every thread in every length is a candidate, so more than 5,000. */
const request: MeasureRequest = {
  category: 'screw',
  attrs: { head: 'pan' },
  measurements: [
    { dimension: 'major', value: 2.44, instrument: 'calliper-outside' },
    { dimension: 'pitch', pitches: 6, span: 2.71, uncertainty: 0.05 },
    { dimension: 'length', values: [5.9, 5.88] },
  ],
};

/** Whole answers, the workshop's list joined once as a page does it, beside a person's chart: the nearest of all nominals. */
export async function benchMeasure(): Promise<Measured[]> {
  const published = measurings.get('screw')!.candidates(new Set(['length']));
  // The sizes a busy workshop knows besides: lengths cut to its own.
  const known = Array.from({ length: Math.max(0, 5200 - published.length) }, (_, at) => ({
    size: `screw M${[2, 3, 4, 5, 6][at % 5]}x${[0.4, 0.5, 0.7, 0.8, 1][at % 5]}x${(3.1 + at / 50).toFixed(2)}`,
    count: 1,
  }));
  const sizes = published.length + known.length;
  const chart = published.map(({ dims }) => [Number(dims.length), Number(dims.pitch ?? 0.5)] as const);
  const rates = inTurns(
    {
      answers: () => {
        measure({ ...request, known });
        return 1;
      },
      charts: () => {
        chart.reduce(
          (best, [length, pitch], at) => {
            const off = (length - 5.89) ** 2 + (pitch - 0.452) ** 2;
            return off < best[0] ? ([off, at] as const) : best;
          },
          [Number.POSITIVE_INFINITY, 0] as const,
        );
        return 1;
      },
    },
    2,
  );
  const { answers = 0, charts = 0 } = rates;
  return [
    {
      what: `whole answers over ${sizes.toLocaleString('en')} candidate sizes`,
      perSecond: answers,
      unit: 'answers',
      note: `${(1000 / answers).toFixed(2)} ms each`,
    },
    {
      what: 'nearest nominal alone',
      perSecond: charts,
      unit: 'answers',
      note: `${(1000 / charts).toFixed(3)} ms each`,
    },
  ];
}
