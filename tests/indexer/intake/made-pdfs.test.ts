import { describe, expect, test } from 'vitest';
import { makePdf, type PdfKind, pdfKinds } from '../../documents/make-pdfs.ts';
import { randomKind } from '../../documents/random-pdf.ts';
import { readMadePdf } from '../../documents/read-made-pdf.ts';
import { sum } from '../../documents/score.ts';

async function expectAllFound(made: readonly { kind: PdfKind; seed: number }[]): Promise<void> {
  const scores = [];
  const balloons = { drawn: 0, hit: 0, found: 0, wrong: [] as string[] };
  for (const { kind, seed } of made) {
    const one = await readMadePdf(await makePdf(kind, seed));
    scores.push(one.rows);
    balloons.drawn += one.balloons.drawn;
    balloons.hit += one.balloons.hit;
    balloons.found += one.balloons.found;
    balloons.wrong.push(...one.balloons.wrong);
  }
  const { lines, found, extra, inversions, qty, description, relations, variants, wrong } = sum(scores);
  const told = wrong.slice(0, 5).join('\n');
  expect(found / lines, told).toBeGreaterThanOrEqual(0.99);
  expect(extra / lines, told).toBeLessThanOrEqual(0.01);
  expect(inversions, told).toBe(0);
  expect(qty / lines, told).toBeGreaterThanOrEqual(0.98);
  expect(description / lines, told).toBeGreaterThanOrEqual(0.98);
  if (relations[1] > 0) expect(relations[0] / relations[1], told).toBeGreaterThanOrEqual(0.95);
  if (variants[1] > 0) expect(variants[0] / variants[1], told).toBeGreaterThanOrEqual(0.95);
  const drawn = balloons.wrong.slice(0, 5).join('\n');
  expect(balloons.hit / balloons.drawn, drawn).toBeGreaterThanOrEqual(0.97);
  expect((balloons.found - balloons.hit) / balloons.found, drawn).toBeLessThanOrEqual(0.02);
}

/** PDFs that chance makes: what each must give stands beside it. `npm run eval -- documents` tries many more. */
describe('of printed lists every line is found once, in order, and every balloon', () => {
  for (const kind of pdfKinds)
    test(kind.name, { timeout: 60_000 }, () => expectAllFound([1, 2, 3].map(seed => ({ kind, seed }))));

  test('laid out by chance, every property with any other', { timeout: 120_000 }, () =>
    expectAllFound(Array.from({ length: 40 }, (_, nth) => ({ kind: randomKind(nth + 1), seed: nth + 1 }))),
  );
});
