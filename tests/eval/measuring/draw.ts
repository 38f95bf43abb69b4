import type { Candidate, Made, Measurable } from '../../../indexer/categories/measurable.ts';
import type { Measurement } from '../../../indexer/measure.ts';
import { measurings } from '../../../indexer/measuring/categories.ts';
import { type Instrument, insideJawReading } from '../../../indexer/measuring/instruments.ts';
import { withKnown } from '../../../indexer/measuring/known.ts';
import { limitsOf } from '../../../indexer/measuring/limits.ts';
import type { Chance } from './chance.ts';
import { deviation, type Noise, others, shank, zero } from './noise.ts';
import type { Session, Take } from './sessions.ts';

/** A part with its true size, or null for one in no table, and what was measured on it. */
export interface Part {
  readonly truth: Candidate | null;
  readonly measurements: readonly Measurement[];
}

/** The candidates of a session, of its attributes alone. */
export function candidatesOf({ category, attrs = {}, takes, known = [] }: Session): readonly Candidate[] {
  const measuring = measurings.get(category)!;
  const published = measuring.candidates(new Set(takes.map(([dimension]) => dimension)));
  // A ball bearing is told from needles by eye: what hardly suits what is seen is not drawn.
  const suits = measuring.suits ?? (() => 1);
  return withKnown(measuring, published, known).candidates.filter(
    each => (attrs.type === undefined || each.attrs?.type === attrs.type) && suits(each, attrs) > 0.01,
  );
}

export const measurableOf = ({ category }: Session, key: string): Measurable =>
  measurings.get(category)!.measurable.find(each => each.key === key)!;

/** Draws a part and measures it. */
export function draw(session: Session, candidates: readonly Candidate[], noise: Noise, chance: Chance): Part {
  if (chance.even() < noise.ofNoTable) {
    const dims = special(session, candidates, chance);
    return { truth: null, measurements: measured(session, key => dims.get(key)!, noise, chance) };
  }
  const truth = noise.asCommon ? common(candidates, chance) : chance.one(candidates);
  const made = (key: string) => chance.one(limitsOf(truth, key, session.attrs ?? {}));
  const value = (key: string) => {
    const { min, max } = made(key);
    return chance.between(min, max) + worn(measurableOf(session, key), max, noise, chance);
  };
  return { truth, measurements: measured(session, value, noise, chance) };
}

function common(candidates: readonly Candidate[], chance: Chance): Candidate {
  let left = chance.even() * candidates.reduce((sum, each) => sum + each.common, 0);
  for (const each of candidates) {
    left -= each.common;
    if (left < 0) return each;
  }
  return candidates[0]!;
}

function worn({ wear }: Measurable, max: number, noise: Noise, chance: Chance): number {
  if (!wear) return 0;
  const amount = noise.wear * (wear.mean + (wear.share ?? 0) * max) * chance.exponential();
  return wear.grows ? amount : -amount;
}

/**
 * Dimensions of a part in no table: near those of one, every dimension off by up to an eighth, and not such that it lies within
 * the limits of a size and the doubt of the instruments: that one nobody could know for a special.
 */
function special(session: Session, candidates: readonly Candidate[], chance: Chance): Map<string, number> {
  for (;;) {
    const like = chance.one(candidates);
    const dims = new Map(
      session.takes.map(([key]) => {
        const { min, max } = chance.one(limitsOf(like, key, session.attrs ?? {}));
        return [key, ((min + max) / 2) * Math.exp(chance.between(-0.125, 0.125))] as const;
      }),
    );
    const could = (candidate: Candidate) =>
      session.takes.every(take => {
        const room = 3 * roomOf(session, take, dims.get(take[0])!);
        return limitsOf(candidate, take[0], session.attrs ?? {}).some(
          ({ min, max }: Made) => dims.get(take[0])! > min - room && dims.get(take[0])! < max + room,
        );
      });
    if (!candidates.some(could)) return dims;
  }
}

/** What cannot be told in a dimension: the instrument's deviation, wear and the jaws. */
function roomOf(session: Session, [key, instrument, pitches]: Take, value: number): number {
  const { wear, soft = false } = measurableOf(session, key);
  if (pitches !== undefined) return 50 / 1.96 / pitches;
  // Pins in tenths leave a tenth between them.
  if (instrument === 'pin') return 50;
  const jaws =
    instrument === 'calliper-inside' && !soft ? value - insideJawReading(value, Math.min(700, value)) : 0;
  return Math.hypot(
    deviation(instrument, value, soft),
    jaws / 3,
    (wear?.mean ?? 0) + (wear?.share ?? 0) * value,
  );
}

function measured(
  session: Session,
  value: (key: string) => number,
  noise: Noise,
  chance: Chance,
): Measurement[] {
  const off = noise.calliperOff * (chance.even() < 0.5 ? -1 : 1);
  const wrong = chance.even() < noise.wrongInstrument ? Math.floor(chance.even() * session.takes.length) : -1;
  const land = chance.between(...noise.land);
  return session.takes.flatMap(([key, instrument, pitches], at): Measurement | Measurement[] => {
    if (instrument === 'pin') return pinned(key, value(key), noise, chance);
    const soft = measurableOf(session, key).soft === true;
    const used = at === wrong ? chance.one(others[instrument] ?? [instrument]) : instrument;
    const true_ = value(key);
    if (pitches !== undefined) {
      const slip = chance.even() < noise.slips ? 4 : 1;
      const span = true_ * pitches + (slip * 50 * chance.normal()) / 1.96;
      return { dimension: key, pitches, span: mm(span) };
    }
    const seen = used === 'calliper-inside' && !soft ? insideJawReading(true_, Math.min(land, true_)) : true_;
    return { dimension: key, instrument, value: mm(seen + error(used, true_, soft, off, noise, chance)) };
  });
}

/** The largest pin in tenths that goes in, and the next, which does not. */
function pinned(dimension: string, true_: number, noise: Noise, chance: Chance): Measurement[] {
  const under =
    noise.calliperOff > 0 ? chance.between(0, shank.most) : shank.middle + shank.deviation * chance.normal();
  const goes = Math.floor((true_ + under) / 100) / 10;
  return [
    { dimension, value: goes, instrument: 'pin', goes: true },
    { dimension, value: Math.round(goes * 10 + 1) / 10, instrument: 'pin', goes: false },
  ];
}

function error(
  used: Instrument,
  value: number,
  soft: boolean,
  off: number,
  noise: Noise,
  chance: Chance,
): number {
  const own = deviation(used, value, soft);
  if (noise.calliperOff > 0) return own * chance.normal() + (used.startsWith('calliper') ? off : 0);
  const whole = soft ? own : Math.hypot(own, zero(used));
  const slip = chance.even() < noise.slips ? Math.max(4 * whole, Math.min(40, 20 * whole)) : whole;
  return slip * chance.normal();
}

const mm = (um: number) => Math.max(0.001, um / 1000);
