import { describe, expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import { formats, kinds, makeDocument } from '../../documents/make-lists.ts';
import { score, sum } from '../../documents/score.ts';
import { unread } from './unread.ts';

const seeds = [1, 2, 3, 4, 5, 6, 7, 8];

/** Lists that chance makes and lays out, in every format: what each must give stands beside it. */
describe('of invented lists every line is found once, in order, and nothing else', () => {
  for (const kind of kinds)
    test(kind.name, () => {
      for (const format of formats.filter(one => !kind.not?.includes(one))) {
        const scores = seeds.map(seed => {
          const { list, bytes } = makeDocument(kind, format, seed);
          return score(list.lines, readRows(bytes, 'list', unread));
        });
        const { lines, found, extra, inversions, qty, description, relations, variants, wrong } = sum(scores);
        const told = `${format}: ${wrong.slice(0, 5).join('\n')}`;
        // With single blanks a number that holds blanks runs into a size beside it: nobody could part some of them.
        const least = format === 'single blanks' ? 0.95 : 0.99;
        expect(found / lines, told).toBeGreaterThanOrEqual(least);
        expect(extra / lines, told).toBeLessThanOrEqual(1 - least);
        expect(inversions, told).toBe(0);
        expect(qty / lines, told).toBeGreaterThanOrEqual(least);
        expect(description / lines, told).toBeGreaterThanOrEqual(least - 0.04);
        if (relations[1] > 0)
          expect(relations[0] / relations[1], told).toBeGreaterThanOrEqual(Math.min(0.97, least));
        if (variants[1] > 0) expect(variants[0] / variants[1], told).toBeGreaterThanOrEqual(0.97);
      }
    });
});
