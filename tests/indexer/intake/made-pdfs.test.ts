import { describe, expect, test } from 'vitest';
import { openRows } from '../../../indexer/intake/document.ts';
import type { Balloon, DocumentRows } from '../../../indexer/intake/rows.ts';
import type { Callout } from '../../documents/draw-balloons.ts';
import { makePdf, pdfKinds } from '../../documents/make-pdfs.ts';
import { score, sum } from '../../documents/score.ts';
import { unread } from './unread.ts';

const seeds = [1, 2, 3];

/** Numbers on the drawing that have a balloon of their number within a fortieth of the page, each balloon once. */
function hits(callouts: readonly Callout[], balloons: readonly Balloon[]): number {
  const left = [...balloons];
  return callouts.filter(({ ref, page, x, y }) => {
    const at = left.findIndex(b => b.ref === ref && b.page === page && Math.hypot(b.x - x, b.y - y) <= 0.025);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  }).length;
}

/** PDFs that chance makes, of every layout: what each must give stands beside it. */
describe('of printed lists every line is found once, in order, and every balloon', () => {
  for (const kind of pdfKinds)
    test(kind.name, { timeout: 60_000 }, async () => {
      const scores = [];
      const balloons = { drawn: 0, hit: 0, found: 0 };
      for (const seed of seeds) {
        const { list, bytes, callouts } = await makePdf(kind, seed);
        const { rows, rowsTotal: _, ...rest } = await openRows(bytes, 'list.pdf', unread);
        const found: DocumentRows = { ...rest, rows: [...rows()] };
        scores.push(score(list.lines, found));
        balloons.drawn += callouts.length;
        balloons.hit += hits(callouts, found.balloons);
        balloons.found += found.balloons.length;
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
      expect(balloons.hit / balloons.drawn).toBeGreaterThanOrEqual(0.97);
      expect((balloons.found - balloons.hit) / balloons.found).toBeLessThanOrEqual(0.02);
    });
});
