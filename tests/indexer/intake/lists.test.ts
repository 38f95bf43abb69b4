import { describe, expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import type { Row } from '../../../indexer/intake/rows.ts';
import { type ListCase, lists } from './lists.ts';
import { unread } from './unread.ts';

const line = ({ ref, partNumber, description, qty, remarks }: Row) =>
  `${ref} | ${partNumber} | ${description} | ${qty ?? '-'} | ${remarks}`.trimEnd();

function check(list: ListCase): void {
  const found = readRows(Buffer.from(list.text, list.latin ? 'latin1' : 'utf8'), 'list', unread);
  const taken = found.rows.filter(row => row.outcome === 'taken');
  expect(taken.map(line)).toEqual(list.rows.map(row => row.trimEnd()));
  if (list.skipped)
    expect(found.rows.filter(row => row.outcome === 'skipped').map(row => row.reason)).toEqual(list.skipped);
  expect(found.faults.map(fault => fault.code)).toEqual(list.faults ?? []);
  if (list.relations) expect(found.relations).toEqual(list.relations);
  if (list.parents)
    expect(Object.fromEntries(taken.filter(row => row.parent).map(row => [row.ref, row.parent]))).toEqual(
      list.parents,
    );
  if (list.variants)
    expect(
      Object.fromEntries(
        taken.map(row => [row.ref, Object.fromEntries(row.variants.map(({ model, qty }) => [model, qty]))]),
      ),
    ).toEqual(list.variants);
  if (list.language) expect(found.document.language).toBe(list.language);
  if (list.unit !== undefined) expect(found.document.unit).toBe(list.unit);
}

describe('a list gives its rows, once each and in order', () => {
  for (const list of lists) test(list.title, () => check(list));
});
