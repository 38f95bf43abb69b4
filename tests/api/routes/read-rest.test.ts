import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DiagramAnswer, DiagramRow, DiagramRowsAnswer, Uploaded } from '../../../api/answers/index.ts';
import type { ReadDocument } from '../../../api/work/read-waiting.ts';
import { readInChild } from '../../../api/work/spawn-reader.ts';
import { makePdf } from '../../documents/make-pdfs.ts';
import { openBench, openService, type TestService } from './bench.ts';

/** A reader that reads two pages at once. */
const readTwoPages: ReadDocument = (bytes, about) => readInChild(bytes, { ...about, limits: { pages: 2 } });

let service: TestService;
beforeAll(async () => {
  service = await openService({ readDocument: readTwoPages });
});
afterAll(() => service.close());

test('pages read before a limit stay, and the rest is read when it is asked for', async () => {
  const bench = await openBench(service);
  const { bytes, list } = await makePdf(
    { name: '', layout: { drawing: 'none', rowsPerPage: 8 }, wish: { lines: 38 } },
    7,
  );
  const body = new FormData();
  body.set('file', new File([Buffer.from(bytes)], 'long.pdf', { type: 'application/pdf' }));
  body.set('maker', 'Brindlow');
  body.set('model', 'Long 5');
  const { diagram } = await bench.good<Uploaded>('/api/diagrams', { method: 'POST', body });
  const path = `/api/diagrams/${diagram.id}`;
  const taken = async () => {
    await service.readAll();
    const { rows, diagram: read } = await bench.good<DiagramRowsAnswer>(`${path}/rows`);
    return { rows: rows.filter(row => row.outcome === 'taken'), faults: read.faults };
  };
  const first = await taken();
  const pages = Math.ceil(list.lines.length / 8);
  expect(pages).toBeGreaterThan(4);
  expect(first.rows.map(row => row.partNumber)).toEqual(list.lines.slice(0, 16).map(line => line.partNumber));
  expect(first.faults).toMatchObject([{ code: 'pages-not-read', page: 3 }]);
  expect(first.faults[0]!.message).toContain(`Pages 3 to ${pages}`);

  const [corrected] = first.rows;
  const said = { category: 'washer', dims: { inside: 3.2, outside: 7, thickness: 0.5 }, attrs: {} };
  await bench.good<DiagramRow>(`${path}/rows/${corrected!.id}/correction`, { method: 'POST', body: said });

  await bench.good<DiagramAnswer>(`${path}/read-rest`, { method: 'POST' });
  const second = await taken();
  expect(second.rows.map(row => row.partNumber)).toEqual(
    list.lines.slice(0, 32).map(line => line.partNumber),
  );
  expect(second.rows[0]).toMatchObject({ id: corrected!.id, correction: { category: 'washer' } });
  expect(second.faults).toMatchObject([{ code: 'pages-not-read', page: 5 }]);

  await bench.good<DiagramAnswer>(`${path}/read-rest`, { method: 'POST' });
  const whole = await taken();
  expect(whole.rows.map(row => row.partNumber)).toEqual(list.lines.map(line => line.partNumber));
  expect(whole.faults).toEqual([]);

  // What was asked for once is read again from then on.
  await bench.good<DiagramAnswer>(`${path}/read-again`, { method: 'POST' });
  expect((await taken()).rows).toHaveLength(list.lines.length);
  expect(await bench.refused(`${path}/read-rest`, { method: 'POST' })).toMatchObject({
    code: 'nothing-left',
  });
});
