import type { Candidate, Made, Measurable, Measuring } from '../categories/measurable.ts';
import type { Attrs } from '../reading/reading.ts';
import { mm, toMm, type Um, writeMillimetres } from '../units/length.ts';
import { crestUncertainty, deviationOfMean, type Instrument, jawBiases, labelOf } from './instruments.ts';
import { type Observation, observe } from './observe.ts';
import type { KnownSize, Measurement, MeasureRequest } from './request.ts';
import { limitsOf, type Weighed, wearOf } from './weigh.ts';

/** A measurement that would help to tell the sizes apart, and what it would show. */
export interface NextMeasurement {
  dimension: string;
  instrument: Instrument;
  /** Of a pitch, how many to count. */
  pitches?: number;
  /** Of a pin, its diameter in millimetres. */
  value?: number;
  /** By size, the millimetres to expect, or what the pin does. */
  expect: Record<string, number | string>;
  /** How much of the doubt it is expected to settle: 1 all of it. */
  settles: number;
  /** The workshop's own sizes that would serve as that pin. */
  own: string[];
  why: string;
}

/** What is to be told apart: a candidate, its share of the probability, and the name it is told by. */
interface Possibility {
  readonly candidate: Candidate;
  readonly share: number;
  readonly name: string;
}

type Names = (weighed: Weighed) => { name: string };

interface Context {
  readonly possible: readonly Possibility[];
  readonly observations: readonly Observation[];
  readonly attrs: Attrs;
  readonly condition: MeasureRequest['condition'];
  readonly known: readonly KnownSize[];
}

/** Tests that settle less than this of the doubt are not worth the trouble. */
const worthwhile = 0.05;
/** How many possibilities a test is weighed on: those behind are too unlikely to matter. */
const considered = 6;

/** The measurements that would best tell the sizes of a set apart, the most telling first, three at most. */
export function nextMeasurements(
  measuring: Measuring,
  observations: readonly Observation[],
  set: readonly Weighed[],
  names: Names,
  { attrs = {}, condition, known = [] }: MeasureRequest,
): NextMeasurement[] {
  if (set.length < 2) return [];
  const few = set.slice(0, considered);
  const total = few.reduce((sum, each) => sum + each.probability, 0);
  const context: Context = {
    possible: shortNames(few, names).map((name, at) => ({
      candidate: few[at]!.candidate,
      share: few[at]!.probability / total,
      name,
    })),
    observations,
    attrs,
    condition,
    known,
  };
  const doubt = entropy(context.possible.map(each => each.share));
  return measuring.measurable
    .filter(each => each.ways.length > 0)
    .flatMap(measurable =>
      measurable.key === 'pitch' ? counting(measurable, context) : handiest(taking(measurable, context)),
    )
    .map(test => ({ ...test, settles: Math.min(1, Math.round((100 * test.settles) / doubt) / 100) }))
    .filter(test => test.settles >= worthwhile)
    .sort((a, b) => b.settles - a.settles)
    .slice(0, 3);
}

/** Of the instruments for one dimension the usual one, unless another tells clearly more; a pin stands by itself. */
function handiest(tests: readonly NextMeasurement[]): NextMeasurement[] {
  const readings = tests.filter(each => each.instrument !== 'pin');
  const most = Math.max(...readings.map(each => each.settles));
  const chosen = readings.find(each => each.settles >= 0.9 * most);
  return [...(chosen ? [chosen] : []), ...tests.filter(each => each.instrument === 'pin')];
}

/** A designation where it tells the sizes apart, else the size. */
function shortNames(few: readonly Weighed[], names: Names): string[] {
  const short = few.map(each => each.candidate.designations[0] ?? names(each).name);
  return short.map((name, at) =>
    short.filter(each => each === name).length > 1 ? names(few[at]!).name : name,
  );
}

const entropy = (shares: readonly number[]) =>
  shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);

/** Limits of a dimension that hold for a possibility, narrowed to what was read of it already. */
function believed(
  { candidate }: Possibility,
  measurable: Measurable,
  { observations, attrs }: Context,
): Made | null {
  const all = limitsOf(candidate, measurable.key, attrs);
  if (all.length === 0) return null;
  let [min, max] = [Math.min(...all.map(each => each.min)), Math.max(...all.map(each => each.max))];
  for (const { measurable: read, read: taken, instrument } of observations) {
    if (read.key !== measurable.key || instrument === 'pin') continue;
    const [low, high] = [taken.value - 1.25 * taken.uncertainty, taken.value + 1.25 * taken.uncertainty];
    const nearest = Math.min(Math.max(taken.value, min), max);
    [min, max] = [Math.min(Math.max(min, low), nearest), Math.max(Math.min(max, high), nearest)];
  }
  return { min, max, source: all[0]!.source };
}

/** Counting over as many pitches as part the nearest two: more than twice the doubt of the length (common practice). */
function counting(measurable: Measurable, context: Context): NextMeasurement[] {
  const pitches = context.possible.map(({ candidate }) => {
    const [made] = limitsOf(candidate, 'pitch', context.attrs);
    return made ? (made.min + made.max) / 2 : 0;
  });
  if (pitches.some(pitch => pitch === 0)) return [];
  const gaps = pitches
    .flatMap((a, at) => pitches.slice(at + 1).map(b => Math.abs(a - b)))
    .filter(gap => gap > 2);
  if (gaps.length === 0) return [];
  const needed = Math.floor((2 * crestUncertainty) / Math.min(...gaps)) + 1;
  if (needed > 60) return [];
  const length = context.observations.find(each => each.measurable.key === 'length')?.read.value;
  const most = Math.max(...pitches);
  // The first and the last thread of a screw are not whole.
  const there = length === undefined ? 10 : Math.max(0, Math.floor(length / most - 1.5));
  const count = Math.max(needed, Math.min(10, there));
  const expect = Object.fromEntries(
    context.possible.map(({ name }, at) => [name, hundredths(pitches[at]! * count)]),
  );
  const short = length !== undefined && count > there;
  const test = { dimension: 'pitch', pitches: count } as const;
  const settles = informationOf(measurable, context, 'calliper-outside', value => ({
    ...test,
    span: (value * count) / 1000,
  }));
  return [
    {
      ...test,
      instrument: 'calliper-outside',
      expect,
      settles,
      own: [],
      why: short
        ? `Count ${count} pitches: ${listed(expect)}. That is ${Math.ceil((count * most) / 1000)} mm of thread, more than this one has: count on a longer one from the same place, or ask where the machine was made.`
        : `Count ${count} pitches: ${listed(expect)}.`,
    },
  ];
}

const hundredths = (um: number) => Math.round(um / 10) / 100;

/** Every instrument that reaches the dimension and tells more than the one already used, pins among them. */
function taking(measurable: Measurable, context: Context): NextMeasurement[] {
  return measurable.ways.flatMap(instrument => {
    if (instrument === 'pin') return trying(measurable, context);
    const before = context.observations.filter(
      each => each.measurable.key === measurable.key && each.instrument !== 'pin',
    );
    if (before.some(each => each.read.uncertainty <= 1.5 * deviationOfMean(instrument, 1) * 1.96)) return [];
    const expected = context.possible.map(each => expectedReading(each, measurable, instrument, context));
    if (expected.some(each => each === null)) return [];
    const expect = Object.fromEntries(
      context.possible.map(({ name }, at) => [name, hundredths(expected[at]!)]),
    );
    const settles = informationOf(measurable, context, instrument, value => ({
      dimension: measurable.key,
      value: value / 1000,
      instrument,
    }));
    const why = `Measure the ${measurable.label} with the ${labelOf(instrument)}: ${listed(expect)}.`;
    return [{ dimension: measurable.key, instrument, expect, settles, own: [], why }];
  });
}

function expectedReading(
  possibility: Possibility,
  measurable: Measurable,
  instrument: Instrument,
  context: Context,
): Um | null {
  const made = believed(possibility, measurable, context);
  if (made === null) return null;
  const middle = (made.min + made.max) / 2;
  if (instrument !== 'calliper-inside' || measurable.soft) return middle;
  const biases = jawBiases(middle, null);
  return middle - biases.reduce((sum, bias) => sum + bias, 0) / biases.length;
}

/** Points of a possibility's readings: where in its limits the part lies, and the error in standard deviations, with weights. */
const places = [1 / 6, 1 / 2, 5 / 6];
const errors = [
  [-Math.sqrt(3), 1 / 6],
  [0, 2 / 3],
  [Math.sqrt(3), 1 / 6],
] as const;

/** The expected information, in bits, of a reading of this dimension: how much of the doubt it takes away. */
function informationOf(
  measurable: Measurable,
  context: Context,
  instrument: Instrument,
  measurementOf: (value: Um) => Measurement,
): number {
  const limits = context.possible.map(each => believed(each, measurable, context));
  if (limits.some(each => each === null)) return 0;
  const all = limits as Made[];
  const wears = all.map(made => wearOf(measurable, made, context.condition));
  let information = 0;
  context.possible.forEach((possibility, own) => {
    const { min, max } = all[own]!;
    const middle = expectedReading(possibility, measurable, instrument, context)!;
    const deviation = observe(measurementOf(middle), measurable, '').read.uncertainty / 1.96;
    for (const place of places)
      for (const [error, weight] of errors) {
        const value = middle + (place - 0.5) * (max - min) + error * deviation;
        const reading = observe(measurementOf(Math.max(1, value)), measurable, '');
        const densities = all.map((made, at) => reading.likelihood(made, wears[at]!));
        const whole = densities.reduce((sum, each, at) => sum + each * context.possible[at]!.share, 0);
        if (densities[own]! > 0)
          information += (possibility.share * weight * Math.log2(densities[own]! / whole)) / places.length;
      }
  });
  return Math.max(0, information);
}

/** What one outcome adds: the sum over possibilities of p(outcome, possibility) log2 of p(possibility | outcome) over its share. */
function gained(joint: readonly number[], possible: readonly Possibility[]): number {
  const whole = joint.reduce((sum, share) => sum + share, 0);
  if (whole <= 0) return 0;
  return joint.reduce(
    (sum, share, at) => (share > 0 ? sum + share * Math.log2(share / whole / possible[at]!.share) : sum),
    0,
  );
}

/** Pins to try: the tenths between the smallest and the largest possible bore, and the workshop's own. */
function trying(measurable: Measurable, context: Context): NextMeasurement[] {
  const limits = context.possible.map(each => believed(each, measurable, context));
  if (limits.some(each => each === null)) return [];
  const bores = limits as Made[];
  const [least, most] = [Math.min(...bores.map(b => b.min)), Math.max(...bores.map(b => b.max))];
  if (most - least < 20) return [];
  const own = ownPins(context.known);
  const tenths: Um[] = [];
  for (let pin = Math.ceil(least / 100) * 100; pin <= most + 10 && tenths.length < 40; pin += 100)
    tenths.push(pin);
  const sizes = [...new Set([...tenths, ...own.map(each => each.dia)])].filter(
    pin => pin > least && pin <= most + 10,
  );
  const tests = sizes.map(pin => ({ pin, ...tried(pin, measurable, context, bores) }));
  const best = tests.sort((a, b) => b.settles - a.settles)[0];
  if (!best) return [];
  const value = toMm(best.pin);
  return [
    {
      dimension: measurable.key,
      instrument: 'pin',
      value,
      expect: best.expect,
      settles: best.settles,
      own: own.filter(each => Math.abs(each.dia - best.pin) <= 10).map(each => each.size),
      why: `Try a ${value.toFixed(value * 10 === Math.round(value * 10) ? 1 : 3)} mm pin or drill shank: ${listed(best.expect)}.`,
    },
  ];
}

function tried(pin: Um, measurable: Measurable, context: Context, bores: readonly Made[]) {
  const outcome = (goes: boolean) =>
    observe({ dimension: measurable.key, value: pin / 1000, instrument: 'pin', goes }, measurable, '');
  const [enters, refused] = [outcome(true), outcome(false)];
  const chances = bores.map(made => {
    const wear = wearOf(measurable, made, context.condition);
    return [enters.likelihood(made, wear), refused.likelihood(made, wear)] as const;
  });
  const joint = (which: 0 | 1) => chances.map((chance, at) => chance[which] * context.possible[at]!.share);
  return {
    settles: Math.max(0, gained(joint(0), context.possible) + gained(joint(1), context.possible)),
    expect: Object.fromEntries(
      context.possible.map(({ name }, at) => {
        const chance = chances[at]![0];
        return [name, chance > 0.8 ? 'goes in' : chance < 0.2 ? 'does not go in' : 'may go in'];
      }),
    ),
  };
}

/** Round parts of the workshop that would serve as a pin, with their diameters. */
function ownPins(known: readonly KnownSize[]): { size: string; dia: Um }[] {
  return known.flatMap(({ size }) => {
    const dia = /^(?:pin|shaft|ball) (\d+(?:\.\d+)?)(?:x|$)/.exec(size)?.[1];
    return dia === undefined ? [] : [{ size, dia: mm(Number(dia)) }];
  });
}

/** `13.05 if M2.5, 13.15 if 3-56`; possibilities that show the same are said together. */
function listed(expect: Record<string, number | string>): string {
  const together = new Map<number | string, string[]>();
  for (const [name, what] of Object.entries(expect))
    together.set(what, [...(together.get(what) ?? []), name]);
  return [...together]
    .map(([what, who]) => `${typeof what === 'number' ? written(what) : what} if ${who.join(' or ')}`)
    .join(', ');
}

const written = (value: number) =>
  Number.isInteger(value * 100) ? value.toFixed(2) : writeMillimetres(value);
