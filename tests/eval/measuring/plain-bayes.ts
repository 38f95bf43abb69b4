import type { Candidate } from '../../../indexer/categories/measurable.ts';
import type { Measurement } from '../../../indexer/measure.ts';
import { type Instrument, insideJawReading } from '../../../indexer/measuring/instruments.ts';
import { limitsOf } from '../../../indexer/measuring/limits.ts';
import { measurableOf } from './draw.ts';
import { deviation, type Noise, others, shank, zero } from './noise.ts';
import type { Session } from './sessions.ts';

/**
 * Bayes as plainly as it can be written, told how the readings truly go wrong: every possible part of every candidate is made, worn
 * and measured, point by point. Slow, and the yardstick for how few sizes a set can hold.
 */
export function plainSetSize(
  session: Session,
  candidates: readonly Candidate[],
  measurements: readonly Measurement[],
  noise: Noise,
): number {
  const offs = noise.calliperOff === 0 ? [0] : [-noise.calliperOff, noise.calliperOff];
  const probabilities = candidates.map(candidate => {
    const prior = noise.asCommon ? candidate.common : 1;
    return prior * offs.reduce((sum, off) => sum + together(session, candidate, measurements, off, noise), 0);
  });
  const sizes = new Map<string, number>();
  candidates.forEach(({ dims }, at) => {
    const key = JSON.stringify(dims);
    sizes.set(key, (sizes.get(key) ?? 0) + probabilities[at]!);
  });
  const sorted = [...sizes.values()].sort((a, b) => b - a);
  const wanted = 0.99 * sorted.reduce((sum, each) => sum + each, 0);
  let [held, count] = [0, 0];
  while (held < wanted && count < sorted.length) held += sorted[count++]!;
  return count;
}

function together(
  session: Session,
  candidate: Candidate,
  measurements: readonly Measurement[],
  off: number,
  noise: Noise,
): number {
  let product = 1;
  for (const measurement of measurements) {
    const all = limitsOf(candidate, measurement.dimension, session.attrs ?? {});
    if (all.length === 0) continue;
    const densities = all.map(({ min, max }) => density(session, measurement, min, max, off, noise));
    product *= densities.reduce((sum, each) => sum + each, 0) / all.length;
    if (product === 0) return 0;
  }
  return product;
}

function density(
  session: Session,
  measurement: Measurement,
  min: number,
  max: number,
  off: number,
  noise: Noise,
): number {
  const { dimension, value, span, pitches, goes } = measurement;
  if (goes !== undefined) return pinChance(session, measurement, min, max, noise);
  const { wear, soft = false } = measurableOf(session, dimension);
  const instrument = measurement.instrument ?? 'calliper-outside';
  const read = span !== undefined ? (1000 * span) / pitches! : 1000 * value!;
  const bells =
    span !== undefined ? counted(pitches!, noise) : errors(instrument, read, soft, off, noise, session);
  const mean = wear ? noise.wear * (wear.mean + (wear.share ?? 0) * max) : 0;
  const narrow = Math.min(...bells.map(bell => bell.deviation));
  const wide = Math.max(...bells.map(bell => bell.deviation));
  if (read < min - 6 * wide - 8 * mean - 700 || read > max + 6 * wide + 8 * mean + 700) return 0;
  const wears =
    mean === 0
      ? [0]
      : quantiles(clamp(Math.ceil((4 * mean) / narrow), 8, 40)).map(q => -Math.log(1 - q) * mean);
  const jaws = instrument === 'calliper-inside' && !soft;
  const lands = jaws ? quantiles(8).map(q => noise.land[0] + q * (noise.land[1] - noise.land[0])) : [0];
  const makes = quantiles(clamp(Math.ceil((2 * (max - min)) / narrow), 4, 60)).map(
    q => min + q * (max - min),
  );
  let sum = 0;
  for (const made of makes)
    for (const amount of wears) {
      const true_ = made + (wear?.grows ? amount : -amount);
      for (const land of lands) {
        const seen = jaws ? insideJawReading(true_, Math.min(land, true_)) : true_;
        for (const bell of bells) {
          const z = (read - seen - bell.off) / bell.deviation;
          if (z > -7 && z < 7) sum += (bell.share * Math.exp(-0.5 * z * z)) / bell.deviation;
        }
      }
    }
  return sum / (makes.length * wears.length * lands.length);
}

/** The chance that a pin does what it did, over every part and every shank. */
function pinChance(
  session: Session,
  { dimension, value, goes }: Measurement,
  min: number,
  max: number,
  noise: Noise,
): number {
  const { wear } = measurableOf(session, dimension);
  const mean = wear ? noise.wear * (wear.mean + (wear.share ?? 0) * max) : 0;
  const unders = quantiles(20).map(q =>
    noise.calliperOff > 0 ? q * shank.most : shank.middle + shank.deviation * normalQuantile(q),
  );
  let entering = 0;
  const [makes, wears] = [quantiles(12), quantiles(12)];
  for (const q of makes)
    for (const w of wears)
      for (const under of unders) {
        const worn = -Math.log(1 - w) * mean * (wear?.grows ? 1 : -1);
        if (1000 * value! - under <= min + q * (max - min) + worn) entering++;
      }
  const share = entering / (makes.length * wears.length * unders.length);
  return goes ? share : 1 - share;
}

interface Bell {
  share: number;
  deviation: number;
  off: number;
}

function counted(pitches: number, noise: Noise): Bell[] {
  const one = 50 / 1.96 / pitches;
  return noise.slips === 0
    ? [{ share: 1, deviation: one, off: 0 }]
    : [
        { share: 1 - noise.slips, deviation: one, off: 0 },
        { share: noise.slips, deviation: 4 * one, off: 0 },
      ];
}

function errors(
  instrument: Instrument,
  value: number,
  soft: boolean,
  off: number,
  noise: Noise,
  session: Session,
): Bell[] {
  const offOf = (used: Instrument) => (used.startsWith('calliper') ? off : 0);
  if (noise.calliperOff > 0) {
    const wrong = noise.wrongInstrument / session.takes.length;
    const taken = others[instrument] ?? [];
    return [
      { share: 1 - wrong, deviation: deviation(instrument, value, soft), off: offOf(instrument) },
      ...taken.map(used => ({
        share: wrong / taken.length,
        deviation: deviation(used, value, soft),
        off: offOf(used),
      })),
    ];
  }
  const own = deviation(instrument, value, soft);
  const whole = soft ? own : Math.hypot(own, zero(instrument));
  return [
    { share: 1 - noise.slips, deviation: whole, off: 0 },
    { share: noise.slips, deviation: Math.max(4 * whole, Math.min(40, 20 * whole)), off: 0 },
  ];
}

/** Near enough: the logistic curve stands in for the normal one. */
const normalQuantile = (q: number) => 0.56 * Math.log(q / (1 - q));
const quantiles = (count: number) => Array.from({ length: count }, (_, at) => (at + 0.5) / count);
const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
