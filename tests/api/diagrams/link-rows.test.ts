import { describe, expect, test } from 'vitest';
import { keyRows } from '../../../api/diagrams/keyed-rows.ts';
import { linkRows } from '../../../api/diagrams/link-rows.ts';
import type { Relation, Row } from '../../../indexer/intake/rows.ts';

const row = (given: Partial<Row>): Row => ({
  page: 1,
  ref: '',
  partNumber: '',
  description: 'PART',
  qty: 1,
  qtyText: '1',
  remarks: '',
  place: '',
  parent: null,
  variants: [],
  outcome: 'taken',
  ...given,
});

/** The links of rows written as `page ref number`, by position. */
function linked(lines: (string | Partial<Row>)[], relations: Relation[]) {
  const rows = keyRows(
    lines.map(line => {
      if (typeof line !== 'string') return row(line);
      const [page, ref, partNumber = ''] = line.split(' ');
      return row({ page: Number(page), ref: ref === '-' ? '' : ref!, partNumber });
    }),
  );
  const position = new Map(rows.map(one => [one.key, one.position]));
  const links = linkRows(rows, relations);
  return {
    assemblies: links.assemblies.map(link => [position.get(link.parent), position.get(link.child)]),
    supersessions: links.supersessions.map(link => [position.get(link.row), link.number]),
    facts: links.facts.map(fact => [position.get(fact.row), fact.kind, fact.from ?? fact.to ?? fact.mirror]),
  };
}

describe('keyRows(rows)', () => {
  test('gives equal rows keys of their own, and the same ones each time', () => {
    const rows = [row({}), row({}), row({ ref: '1' })];
    const keys = keyRows(rows).map(one => one.key);
    expect(new Set(keys).size).toBe(3);
    expect(keyRows(rows).map(one => one.key)).toEqual(keys);
  });

  test('a row keeps its key when another is put before it', () => {
    const [before] = keyRows([row({ ref: '7' })]);
    expect(keyRows([row({ ref: '6' }), row({ ref: '7' })])[1]!.key).toBe(before!.key);
  });
});

describe('linkRows(rows, relations)', () => {
  test('ties children to their assembly', () => {
    const { assemblies } = linked(
      ['1 15', '1 16', '1 17'],
      [{ kind: 'includes', ref: '15', refs: ['16', '17', '99'] }],
    );
    expect(assemblies).toEqual([
      [0, 1],
      [0, 2],
    ]);
  });

  test('keeps to the page where a reference stands on several', () => {
    const lines = ['1 15', '1 16', '2 15', '2 16'];
    expect(linked(lines, [{ kind: 'includes', ref: '15', refs: ['16'] }]).assemblies).toEqual([[0, 1]]);
    const indented = ['1 15', '2 15', { page: 2, ref: '16', parent: '15' }];
    expect(linked(indented, []).assemblies).toEqual([[1, 2]]);
  });

  test('takes both lines of a serial break as children', () => {
    const { assemblies } = linked(
      ['1 15', '1 16 A', '1 16 B'],
      [{ kind: 'includes', ref: '15', refs: ['16'] }],
    );
    expect(assemblies).toEqual([
      [0, 1],
      [0, 2],
    ]);
  });

  test('never ties a row to itself, nor twice', () => {
    const lines = ['1 15', { ref: '16', parent: '15' }, { ref: '17', parent: '17' }];
    const relations: Relation[] = [
      { kind: 'includes', ref: '15', refs: ['15', '16', '16'] },
      { kind: 'includes', ref: '15', refs: ['16'] },
    ];
    expect(linked(lines, relations).assemblies).toEqual([[0, 1]]);
  });

  test('goes by the row’s own number where two share a reference', () => {
    const lines = ['1 7 A-1', '1 7 A-2'];
    const { supersessions, facts } = linked(lines, [
      { kind: 'superseded-by', ref: '7', of: 'A-2', partNumber: 'A-3' },
      { kind: 'serial', ref: '7', of: 'A-1', to: '4999' },
      { kind: 'serial', ref: '7', of: 'A-2', from: '5000' },
    ]);
    expect(supersessions).toEqual([[1, 'A-3']]);
    expect(facts).toEqual([
      [0, 'serial', '4999'],
      [1, 'serial', '5000'],
    ]);
  });

  test('goes in printed order where the relations bear no numbers', () => {
    const { facts } = linked(
      ['1 7', '1 7'],
      [
        { kind: 'serial', ref: '7', to: '4999' },
        { kind: 'serial', ref: '7', from: '5000' },
      ],
    );
    expect(facts).toEqual([
      [0, 'serial', '4999'],
      [1, 'serial', '5000'],
    ]);
  });

  test('goes by numbers alone in a list without references', () => {
    const { supersessions } = linked(
      ['1 - A-1', '1 - A-2'],
      [{ kind: 'superseded-by', ref: '', of: 'A-2', partNumber: 'A-3' }],
    );
    expect(supersessions).toEqual([[1, 'A-3']]);
  });

  test('a hundred thousand lines of one reference take no more than a moment', () => {
    const lines = Array.from({ length: 100_000 }, () => ({ ref: '1', parent: '1' }));
    const relations = Array.from(
      { length: 10_000 },
      (): Relation => ({ kind: 'includes', ref: '1', refs: ['1'] }),
    );
    const start = performance.now();
    linkRows(keyRows(lines.map(row)), relations);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});
