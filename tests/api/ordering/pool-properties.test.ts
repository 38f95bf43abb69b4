import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OrderList, Pool } from '../../../api/ordering/order-list.ts';
import { poolNeeds } from '../../../api/ordering/pool.ts';
import { poolOf } from './pool-of.ts';

const jobNames = ['a', 'b', 'c'];
const items = [null, 'bearing 5x11x4', 'bearing 5x11x4 two-shields', 'screw M3x0.5x8 pan'];

/** A list of lines, each in one of the earlier ones or in none, and needs of three jobs for them. */
const pools: fc.Arbitrary<Pool> = fc
  .record({
    lines: fc.array(
      fc.record({
        parent: fc.option(fc.nat(9)),
        qty: fc.option(fc.integer({ min: 1, max: 4 })),
        facts: fc.subarray(['not-sold-separately', 'reference-only', 'as-required', 'option']),
        item: fc.constantFrom(...items),
        critical: fc.boolean(),
      }),
      { minLength: 1, maxLength: 10 },
    ),
    needs: fc.array(
      fc.tuple(fc.constantFrom(...jobNames), fc.nat(9), fc.option(fc.integer({ min: 1, max: 9 }))),
      { maxLength: 12 },
    ),
    successors: fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 4 }),
    serial: fc.constantFrom(null, '100', '900'),
  })
  .map(({ lines, needs, successors, serial }) => {
    const at = (index: number) => `L${index % lines.length}`;
    const superseded: Record<string, { part: string }[]> = {};
    for (const [from, to] of successors)
      superseded[at(from)] = [...(superseded[at(from)] ?? []), { part: at(to) }];
    return poolOf({
      jobs: { a: { serial }, b: {}, c: {} },
      parts: Object.fromEntries(lines.map(({ item }, index) => [`L${index}`, { item }])),
      lines: Object.fromEntries(
        lines.map(({ parent, qty, facts, critical }, index) => [
          `L${index}`,
          {
            qty,
            critical,
            facts,
            ...(parent === null || index === 0 ? {} : { parent: `L${parent % index}` }),
          },
        ]),
      ),
      needs: needs.map(([job, line, qty]) => [job, at(line), qty]),
      superseded,
    });
  });

/** Pieces by item. Whether a line is the maker's alone can hang on another job's need, so it does not part them here. */
function totals({ lines }: OrderList): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { item, total } of lines) sums[item] = (sums[item] ?? 0) + total;
  return sums;
}

describe('poolNeeds, whatever the lists and jobs', () => {
  test('loses no need and doubles none', () => {
    fc.assert(
      fc.property(pools, pool => {
        const { lines, leftOut } = poolNeeds(pool);
        const seen = [...lines.flatMap(line => line.needs), ...leftOut.map(left => left.need)];
        expect(seen.sort()).toEqual(pool.needs.map(need => need.id).sort());
      }),
    );
  });

  test('gives the same totals in whatever order the needs were written down', () => {
    fc.assert(
      fc.property(pools, pool => {
        const turned = { ...pool, needs: [...pool.needs].reverse() };
        expect(totals(poolNeeds(turned))).toEqual(totals(poolNeeds(pool)));
      }),
    );
  });

  test('gives for all jobs the sum of what it gives for each', () => {
    fc.assert(
      fc.property(pools, pool => {
        const each: Record<string, number> = {};
        for (const job of pool.jobs)
          for (const [item, total] of Object.entries(totals(poolNeeds({ ...pool, jobs: [job] }))))
            each[item] = (each[item] ?? 0) + total;
        expect(totals(poolNeeds(pool))).toEqual(each);
      }),
    );
  });

  test('sums what each job needs into the line’s total', () => {
    fc.assert(
      fc.property(pools, pool => {
        for (const line of poolNeeds(pool).lines)
          expect(line.jobs.reduce((sum, job) => sum + (job.qty ?? 0), 0)).toBe(line.total);
      }),
    );
  });

  test('never orders a line and what it ships in for one job', () => {
    const plain = pools.map(pool => ({
      ...pool,
      // Each part its own item and nothing superseded, so that an order line is one line of the list.
      parts: new Map([...pool.parts].map(([id, part]) => [id, { ...part, item: null, size: null }])),
      successors: new Map(),
    }));
    fc.assert(
      fc.property(plain, pool => {
        for (const job of pool.jobs) {
          const ordered = new Set(
            poolNeeds({ ...pool, jobs: [job] }).lines.flatMap(line => line.numbers.map(one => one.part)),
          );
          for (const id of ordered)
            for (let at = pool.lines.get(id!)!.parent; at !== null; at = pool.lines.get(at)!.parent)
              expect(ordered.has(at)).toBe(false);
        }
      }),
    );
  });
});
