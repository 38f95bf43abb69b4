/**
 * Fits the weights of evidence to labelled lines and writes them to `indexer/reading/evidence-weights.ts`:
 * `npx tsx tests/eval/fit-certainty.ts`. A logistic regression with a ridge, on the lines of `lines/bench-*.jsonl`, which
 * were written apart from the reader. Prints the calibration of held-out fifths.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readWithEvidence } from '../../indexer/read.ts';
import { type LabelledLine, score } from './score.ts';

interface Case {
  features: string[];
  right: boolean;
}

/** How strongly weights are held towards nought: a feature seen in a few lines alone says little. */
const ridge = 1;
const base = 'base';

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
    return [{ features: [base, ...features], right: score(line, reading).whole }];
  });

const logistic = (sum: number) => 1 / (1 + Math.exp(-sum));
const chance = (weights: Map<string, number>, { features }: Case) =>
  logistic(features.reduce((sum, feature) => sum + (weights.get(feature) ?? 0), 0));

/** Gradient descent on the log-loss, with the ridge on all but the base. */
function fitWeights(some: readonly Case[]): Map<string, number> {
  const weights = new Map<string, number>();
  for (let round = 0; round < 3000; round++) {
    const slope = new Map<string, number>();
    for (const one of some) {
      const miss = chance(weights, one) - Number(one.right);
      for (const feature of one.features) slope.set(feature, (slope.get(feature) ?? 0) + miss);
    }
    for (const [feature, sum] of slope) {
      const weight = weights.get(feature) ?? 0;
      weights.set(
        feature,
        weight - (0.8 / Math.sqrt(some.length)) * 0.2 * (sum + (feature === base ? 0 : ridge * weight)),
      );
    }
  }
  return weights;
}

/** Each line's chance by weights that were fitted without its fifth. */
const heldOut = cases.map((one, index) => ({ one, fold: index % 5 }));
const bins = Array.from({ length: 10 }, () => ({ count: 0, said: 0, right: 0 }));
let sure = 0;
let sureWrong = 0;
for (let fold = 0; fold < 5; fold++) {
  const weights = fitWeights(heldOut.filter(held => held.fold !== fold).map(held => held.one));
  for (const { one } of heldOut.filter(held => held.fold === fold)) {
    const said = chance(weights, one);
    const bin = bins[Math.min(9, Math.floor(said * 10))]!;
    bin.count++;
    bin.said += said;
    bin.right += Number(one.right);
    if (said >= 0.95) sure++;
    if (said >= 0.95 && !one.right) sureWrong++;
  }
}
let error = 0;
for (const [index, { count, said, right }] of bins.entries()) {
  if (count === 0) continue;
  error += (count / cases.length) * Math.abs(said / count - right / count);
  console.log(
    `${index / 10}–${(index + 1) / 10}  n ${count}  said ${(said / count).toFixed(3)}  right ${(right / count).toFixed(3)}`,
  );
}
console.log(
  `calibration error ${error.toFixed(4)}; sure ${((100 * sure) / cases.length).toFixed(1)} %, of them wrong ${((100 * sureWrong) / sure).toFixed(2)} %`,
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
