/**
 * How well parts are named from measurements: `npm run eval -- measure [PARTS]`. Parts are drawn at random from the standards'
 * tolerances, measured with two kinds of noise, and named; beside it what a person with a chart would do, the nearest nominal, and a
 * plainly written Bayes that is told the true noise.
 */

import { everyThread } from '../../indexer/categories/every-thread.ts';
import type { Candidate } from '../../indexer/categories/measurable.ts';
import type { Measurement } from '../../indexer/measure.ts';
import { type MeasureAnswer, measure } from '../../indexer/measure.ts';
import { limitsOf } from '../../indexer/measuring/limits.ts';
import { chanceFrom } from './measuring/chance.ts';
import { candidatesOf, draw, type Part } from './measuring/draw.ts';
import { foreign, type Noise, own } from './measuring/noise.ts';
import { plainSetSize } from './measuring/plain-bayes.ts';
import { type Session, sessions } from './measuring/sessions.ts';

interface Named {
  inTable: boolean;
  inSet: boolean;
  setSize: number;
  plainSize: number;
  top: number;
  topRight: boolean;
  saidNone: boolean;
  nearestRight: boolean;
}

const same = (a: Candidate['dims'], b: Candidate['dims']) =>
  Object.entries(a).every(([key, value]) => b[key] === value);

function name(
  session: Session,
  candidates: readonly Candidate[],
  part: Part,
  noise: Noise,
  plain: boolean,
): Named {
  const { category, attrs, known } = session;
  const answer = measure({ category, attrs, known, measurements: part.measurements });
  const { truth } = part;
  const best = answer.candidates[0];
  const saidNone = best === undefined || answer.noneOfThese > best.probability;
  const right = truth !== null && best !== undefined && same(truth.dims, best.dims);
  return {
    inTable: truth !== null,
    inSet: truth !== null && stated(answer, truth),
    setSize: answer.cannotTellApart.length,
    plainSize: truth === null || !plain ? 0 : plainSetSize(session, candidates, part.measurements, noise),
    top: saidNone ? answer.noneOfThese : best.probability,
    topRight: saidNone ? truth === null : right,
    saidNone,
    nearestRight: truth !== null && same(truth.dims, nearest(session, candidates, part.measurements).dims),
  };
}

function stated(answer: MeasureAnswer, truth: Candidate): boolean {
  const found = answer.candidates.find(
    each => same(truth.dims, each.dims) && each.attrs.type === truth.attrs?.type,
  );
  if (!found) return false;
  return [found.size, `${found.size} ${found.attrs.type}`].some(each =>
    answer.cannotTellApart.includes(each),
  );
}

/** What a person with a chart of nominal sizes does: the size whose nominals are nearest in all. */
function nearest(
  session: Session,
  candidates: readonly Candidate[],
  measurements: readonly Measurement[],
): Candidate {
  const off = (candidate: Candidate) =>
    measurements.reduce((sum, { dimension, value, span, pitches }) => {
      const read = span !== undefined ? span / pitches! : value!;
      return sum + (read - nominal(session, candidate, dimension)) ** 2;
    }, 0);
  return candidates.reduce((a, b) => (off(b) < off(a) ? b : a));
}

const nominals = new Map(everyThread.map(thread => [thread.designation, thread.nominal / 1000]));

function nominal(session: Session, candidate: Candidate, dimension: string): number {
  const dim = candidate.dims[dimension];
  if (typeof dim === 'number') return dim;
  if (dimension === 'major') return nominals.get(candidate.designations[0]!)!;
  const [made] = limitsOf(candidate, dimension, session.attrs ?? {});
  return made ? (made.min + made.max) / 2000 : 0;
}

const mean = (all: readonly number[]) =>
  all.length === 0 ? 0 : all.reduce((sum, each) => sum + each, 0) / all.length;
const share = (all: readonly Named[], is: (one: Named) => boolean) => mean(all.map(one => (is(one) ? 1 : 0)));
const percent = (part: number) => (100 * part).toFixed(1).padStart(6);

/** Expected calibration error of the best answer, "none of these" among them, in ten bins. */
function calibrationError(all: readonly Named[]): number {
  const bins = Array.from({ length: 10 }, (_, bin) =>
    all.filter(one => Math.min(9, Math.floor(one.top * 10)) === bin),
  );
  return bins.reduce(
    (sum, bin) =>
      sum +
      (bin.length / all.length) * Math.abs(mean(bin.map(one => one.top)) - share(bin, one => one.topRight)),
    0,
  );
}

function line(title: string, all: readonly Named[]): string {
  const inTable = all.filter(one => one.inTable);
  const special = all.filter(one => !one.inTable);
  const ratio = mean(inTable.map(one => one.setSize)) / mean(inTable.map(one => one.plainSize));
  return [
    title.padEnd(32),
    String(all.length).padStart(6),
    percent(share(inTable, one => one.inSet)),
    percent(share(inTable, one => one.topRight)),
    percent(share(inTable, one => one.nearestRight)),
    mean(inTable.map(one => one.setSize))
      .toFixed(2)
      .padStart(7),
    mean(inTable.map(one => one.plainSize))
      .toFixed(2)
      .padStart(7),
    ratio.toFixed(2).padStart(6),
    calibrationError(all).toFixed(3).padStart(7),
    percent(share(special, one => one.saidNone)),
    percent(share(inTable, one => one.saidNone)),
  ].join(' ');
}

const heading = `${''.padEnd(32)}  parts in set    top nearest    set   plain  ratio     ECE   none  false none (%, said of parts in no table and of others)`;

/** Parts of one session, drawn and named. `plain` works out how few sizes a set could hold, too, which takes long. */
function drawn(at: number, parts: number, noise: Noise, plain: boolean): Named[] {
  const session = sessions[at]!;
  const candidates = candidatesOf(session);
  const chance = chanceFrom(1000 + at);
  return Array.from({ length: parts }, () =>
    name(session, candidates, draw(session, candidates, noise, chance), noise, plain),
  );
}

/** What the stated set, the calibration and "none of these" come to over all sessions, as parts of one. */
export function figures(parts: number, noise: Noise) {
  const all = sessions.flatMap((_, at) => drawn(at, parts, noise, false));
  const inTable = all.filter(one => one.inTable);
  const special = all.filter(one => !one.inTable);
  return {
    inSet: share(inTable, one => one.inSet),
    calibrationError: calibrationError(all),
    none: share(special, one => one.saidNone),
    falseNone: share(inTable, one => one.saidNone),
    right: share(inTable, one => one.topRight),
    nearestRight: share(inTable, one => one.nearestRight),
  };
}

/** Draws, names and prints. */
export function evaluate(parts: number): void {
  for (const noise of [own, foreign]) {
    console.log(`\nWith ${noise.name}\n${heading}`);
    const every = sessions.map((session, at) => {
      const named = drawn(at, parts, noise, true);
      console.log(line(session.name, named));
      return named;
    });
    console.log(line('all', every.flat()));
  }
}
