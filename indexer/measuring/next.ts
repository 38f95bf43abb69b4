import type { Measurable, Measuring } from '../categories/measurable.ts';
import { countPitches } from './count-pitches.ts';
import { type Context, entropy, expectedReading, informationOf } from './doubt.ts';
import { deviationOfMean, labelOf } from './instruments.ts';
import { hundredths, listed, type NextMeasurement } from './next-measurement.ts';
import type { Observation } from './observation.ts';
import type { MeasureRequest } from './request.ts';
import { tryPin } from './try-pin.ts';
import type { Weighed } from './weigh.ts';

type Names = (weighed: Weighed) => { name: string };

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
    .filter(({ ways, ofForm }) => ways.length > 0 && (ofForm === undefined || attrs[ofForm] !== undefined))
    .flatMap(measurable =>
      measurable.key === 'pitch' ? countPitches(measurable, context) : handiest(taking(measurable, context)),
    )
    .map(test => ({ ...test, settles: Math.min(1, Math.round((100 * test.settles) / doubt) / 100) }))
    .filter(test => test.settles >= worthwhile && new Set(Object.values(test.expect)).size > 1)
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

/** Every instrument that reaches the dimension and tells more than the one already used, pins among them. */
function taking(measurable: Measurable, context: Context): NextMeasurement[] {
  return measurable.ways.flatMap(instrument => {
    if (instrument === 'pin') return tryPin(measurable, context);
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
