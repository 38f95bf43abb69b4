/**
 * Fits the weights of evidence to labelled lines and writes them to `indexer/reading/evidence-weights.ts`:
 * `npx tsx tests/eval/fit-certainty.ts`. A logistic regression with a ridge, on the lines of `lines/bench-*.jsonl`, which
 * were written apart from the reader. Lines by which the reader has since been mended make it too sure: add new ones first. Prints what held-out tenths say: the calibration in bins, its expected error, the Brier score
 * beside the base rate's, and the share of lines given 0.95 and more with how many of those are wrong.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readWithEvidence } from '../../indexer/read.ts';
import { evidence } from '../../indexer/reading/evidence.ts';
import { type LabelledLine, score } from './score.ts';

interface Case {
  features: string[];
  right: boolean;
}

/** How strongly weights are held towards nought: a feature seen in a few lines alone says little. */
const ridge = 1;
const base = 'base';
const folds = 10;
const rounds = 1500;

const folder = fileURLToPath(new URL('./lines/', import.meta.url));
const target = fileURLToPath(new URL('../../indexer/reading/evidence-weights.ts', import.meta.url));

const cases: Case[] = readdirSync(folder)
  .filter(name => name.startsWith('bench-'))
  .sort()
  .flatMap(name =>
    readFileSync(folder + name, 'utf8')
      .trim()
      .split('\n'),
  )
  .map(text => JSON.parse(text) as LabelledLine)
  .filter(line => !line.expect.review && line.expect.category !== 'unsure')
  .flatMap(line => {
    const { reading, features } = readWithEvidence(line.text, { context: line.context });
    if (reading.category === 'unsure') return [];
    const told = features.names.filter(feature => feature in evidence);
    return [{ features: [base, ...told], right: score(line, reading).whole }];
  });

const logistic = (sum: number) => 1 / (1 + Math.exp(-sum));
const chance = (weights: Map<string, number>, { features }: Case) =>
  logistic(features.reduce((sum, feature) => sum + (weights.get(feature) ?? 0), 0));

/** Gradient descent on the log-loss, with the ridge on all but the base. */
function fitWeights(some: readonly Case[]): Map<string, number> {
  const weights = new Map<string, number>([[base, 3]]);
  const step = 4 / some.length;
  for (let round = 0; round < rounds; round++) {
    const slope = new Map<string, number>();
    for (const one of some) {
      const miss = chance(weights, one) - Number(one.right);
      for (const feature of one.features) slope.set(feature, (slope.get(feature) ?? 0) + miss);
    }
    for (const [feature, sum] of slope) {
      const weight = weights.get(feature) ?? 0;
      weights.set(feature, weight - step * (sum + (feature === base ? 0 : ridge * weight)));
    }
  }
  return weights;
}

/** Each line's chance by weights that were fitted without its tenth. */
const heldOut = Array.from({ length: folds }, (_, fold) => {
  const weights = fitWeights(cases.filter((_, index) => index % folds !== fold));
  return cases.filter((_, index) => index % folds === fold).map(one => ({ one, said: chance(weights, one) }));
}).flat();

const mean = (numbers: readonly number[]) =>
  numbers.reduce((sum, number) => sum + number, 0) / Math.max(1, numbers.length);
const rights = (some: typeof heldOut) => mean(some.map(({ one }) => Number(one.right)));
let error = 0;
for (let bin = 0; bin < 10; bin++) {
  const some = heldOut.filter(({ said }) => Math.min(9, Math.floor(said * 10)) === bin);
  if (some.length === 0) continue;
  const said = mean(some.map(held => held.said));
  error += (some.length / cases.length) * Math.abs(said - rights(some));
  console.log(
    `${bin / 10}–${(bin + 1) / 10}  n ${some.length}  said ${said.toFixed(3)}  right ${rights(some).toFixed(3)}`,
  );
}
const baseRate = rights(heldOut);
const brier = mean(heldOut.map(({ one, said }) => (said - Number(one.right)) ** 2));
const sure = heldOut.filter(({ said }) => said >= 0.945);
console.log(
  `held out: calibration error ${error.toFixed(4)}; Brier ${brier.toFixed(4)}, the base rate's ${(baseRate * (1 - baseRate)).toFixed(4)}; ` +
    `sure ${((100 * sure.length) / cases.length).toFixed(1)} %, of them wrong ${(100 * (1 - rights(sure))).toFixed(2)} %`,
);

const fitted = [...fitWeights(cases)].sort(([a], [b]) => (a === base ? -1 : b === base ? 1 : a < b ? -1 : 1));
const rows = fitted.map(([feature, weight]) => `  '${feature}': ${weight.toFixed(2)},`).join('\n');
writeFileSync(
  target,
  `/**
 * What speaks for and against a reading, and how much: log-odds that category and dimensions are right. Written by
 * \`npx tsx tests/eval/fit-certainty.ts\` from labelled lines; not changed by hand.
 */
export const weights: Readonly<Record<string, number>> = {
${rows}
};
`,
);
