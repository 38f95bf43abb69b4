import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  DiagramAnswer,
  DiagramRow,
  DiagramRowsAnswer,
  Found,
  ModelAnswer,
  Models,
  PartAnswer,
  Uploaded,
} from '../../../api/answers/index.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
beforeAll(async () => {
  service = await openService();
});
afterAll(() => service.close());

const list = [
  '1,BR-100,HOUSING,1,',
  '2,BR-201,BALL BEARING 5X11X4 ZZ,2,',
  '3,BR-202,WASHER 3.2X7X0.5,4,',
  '4,,KNOB,1,',
];

const rowsOf = (bench: TestBench, diagram: string, query = '') =>
  bench.good<DiagramRowsAnswer>(`/api/diagrams/${diagram}/rows${query}`);
const partOf = async (bench: TestBench, diagram: string, ref: string) => {
  const { rows } = await rowsOf(bench, diagram);
  return bench.good<PartAnswer>(`/api/parts/${rows.find(row => row.ref === ref)!.part}`);
};

describe('a list taken in', () => {
  test('waits, is read, and gives its rows in printed order with their parts', async () => {
    const bench = await openBench(service);
    const { diagram, known } = await bench.good<Uploaded>('/api/diagrams/text', {
      method: 'POST',
      body: {
        maker: 'Brindlow',
        model: 'Tern 40',
        text: ['Ref,Part No,Description,Qty', ...list].join('\n'),
      },
    });
    expect(known).toBe(false);
    expect(diagram).toMatchObject({
      state: 'waiting',
      model: { name: 'Tern 40', maker: { name: 'Brindlow' } },
    });
    await service.readAll();
    const answer = await rowsOf(bench, diagram.id);
    expect(answer.diagram).toMatchObject({
      state: 'ready',
      rowsDone: answer.rows.length,
      counts: { taken: 4 },
    });
    const taken = answer.rows.filter(row => row.outcome === 'taken');
    expect(taken.map(row => row.description)).toEqual(list.map(line => line.split(',')[2]));
    expect(taken.every(row => row.part !== null)).toBe(true);
    expect(taken[1]!.reading).toMatchObject({ category: 'bearing', size: 'bearing 5x11x4' });
    const part = await bench.good<PartAnswer>(`/api/parts/${taken[1]!.part}`);
    expect(part).toMatchObject({ number: 'BR-201', size: 'bearing 5x11x4', designations: ['MR115'] });
    expect(part.evidence).toMatchObject([{ kind: 'printed', detail: expect.stringContaining('5X11X4') }]);
    expect(part.lines).toMatchObject([{ ref: '2', qty: 2, model: { name: 'Tern 40' } }]);
  });

  test('as a file, too; and the same document again answers what is there', async () => {
    const bench = await openBench(service);
    const form = () => {
      const data = new FormData();
      data.set(
        'file',
        new File([`Ref,Part No,Description,Qty\n${list.join('\n')}`], '../x/Tern "40".csv', {
          type: 'text/csv',
        }),
      );
      data.set('maker', 'Brindlow');
      data.set('model', 'Tern 40');
      return data;
    };
    const first = await bench.ask('/api/diagrams', { method: 'POST', body: form() });
    expect(first.status).toBe(201);
    const { diagram } = (await first.json()) as Uploaded;
    const second = await bench.ask('/api/diagrams', { method: 'POST', body: form() });
    expect(second.status).toBe(200);
    expect(await second.json()).toMatchObject({ known: true, diagram: { id: diagram.id } });
    const file = await bench.ask(`/api/diagrams/${diagram.id}/file`);
    expect(file.headers.get('Content-Type')).toBe('application/octet-stream');
    expect(file.headers.get('Content-Disposition')).toMatch(/^attachment; filename\*=UTF-8''[\w.%-]+$/);
    expect(await file.text()).toContain('BALL BEARING');
  });

  test('several at once with the same document end as one diagram', async () => {
    const bench = await openBench(service);
    const body = { maker: 'Brindlow', model: 'Tern 40', text: list.join('\n') };
    const answers = await Promise.all(
      [1, 2, 3, 4].map(() => bench.good<Uploaded>('/api/diagrams/text', { method: 'POST', body })),
    );
    expect(new Set(answers.map(answer => answer.diagram.id)).size).toBe(1);
    expect(answers.filter(answer => !answer.known)).toHaveLength(1);
  });

  test('that cannot be read is refused as a whole, with the remedy', async () => {
    const bench = await openBench(service);
    const data = new FormData();
    data.set('file', new File([new Uint8Array([0, 1, 2, 3, 255, 254, 0, 0])], 'photo.bin'));
    data.set('maker', 'Brindlow');
    data.set('model', 'Tern 40');
    const { diagram } = await bench.good<Uploaded>('/api/diagrams', { method: 'POST', body: data });
    await service.readAll();
    const answer = await bench.good<DiagramAnswer>(`/api/diagrams/${diagram.id}`);
    expect(answer.state).toBe('refused');
    expect(answer.refusal!.remedy.length).toBeGreaterThan(10);
  });

  test('a document of many pieces is kept byte for byte', async () => {
    const bench = await openBench(service);
    const bytes = new Uint8Array(5_000_001).map((_, at) => (at * 7919) % 251);
    const data = new FormData();
    data.set('file', new File([bytes], 'long.bin'));
    data.set('maker', 'Brindlow');
    data.set('model', 'Tern 41');
    const { diagram } = await bench.good<Uploaded>('/api/diagrams', { method: 'POST', body: data });
    const kept = new Uint8Array(await (await bench.ask(`/api/diagrams/${diagram.id}/file`)).arrayBuffer());
    expect(Buffer.compare(kept, bytes)).toBe(0);
  });

  test('tells how its reading goes on, and ends when it is ready', async () => {
    const bench = await openBench(service);
    const { diagram } = await bench.good<Uploaded>('/api/diagrams/text', {
      method: 'POST',
      body: { maker: 'Brindlow', model: 'Tern 40', text: list.join('\n') },
    });
    const stream = await bench.ask(`/api/diagrams/${diagram.id}/progress`);
    expect(stream.headers.get('Content-Type')).toContain('text/event-stream');
    const text = stream.text();
    await service.readAll();
    const events = (await text)
      .split('\n')
      .filter(line => line.startsWith('data: '))
      .map(line => JSON.parse(line.slice(6)));
    expect(events[0].state).toBe('waiting');
    expect(events.at(-1)).toMatchObject({ state: 'ready', refusal: null });
  });

  test('with a heading and a doubtful line gives that first where it is asked', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', [
      ...list,
      '9,BR-9,BALL BEARING 11X5X9 OR 5X11X3?,1,',
    ]);
    const { rows, diagram: about } = await rowsOf(bench, diagram, '?first=doubtful');
    const doubtful = rows.filter(row => row.doubtful);
    expect(about.counts.doubtful).toBe(doubtful.length);
    expect(rows.slice(0, doubtful.length)).toEqual(doubtful);
    const page = await rowsOf(bench, diagram, '?limit=2');
    expect(page.rows).toHaveLength(2);
    expect(page.next).toBe(2);
    expect((await rowsOf(bench, diagram, '?limit=2&offset=4')).next).toBeNull();
  });
});

describe('reading again', () => {
  test('leaves neither loss nor doubles, and rows and parts keep their ids', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const before = await rowsOf(bench, diagram);
    await bench.good(`/api/diagrams/${diagram}/read-again`, { method: 'POST' });
    await service.readAll();
    const after = await rowsOf(bench, diagram);
    expect(after.rows).toEqual(before.rows);
    const part = await partOf(bench, diagram, '2');
    expect(part.evidence).toHaveLength(1);
    expect(part.lines).toHaveLength(1);
  });

  test('two at once: each document is stored once', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const other = await bench.take('Brindlow', 'Tern 60', list);
    for (let round = 0; round < 4; round++) {
      await Promise.all(
        [diagram, other].map(id => bench.good(`/api/diagrams/${id}/read-again`, { method: 'POST' })),
      );
      await Promise.all([service.readAll(), service.readAll(), service.readAll()]);
    }
    for (const id of [diagram, other])
      expect((await rowsOf(bench, id)).rows.filter(row => row.outcome === 'taken')).toHaveLength(4);
    const part = await partOf(bench, diagram, '2');
    expect(part.lines.map(line => line.model.name)).toEqual(['Tern 40', 'Tern 60']);
    expect(part.evidence).toHaveLength(2);
  });

  test('one that lost its lease stores nothing', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    await bench.good(`/api/diagrams/${diagram}/read-again`, { method: 'POST' });
    const { readWaiting } = await import('../../../api/work/read-waiting.ts');
    const { readDocument } = await import('../../../indexer/intake/index.ts');
    await readWaiting(service.store, async (bytes, { name }) => {
      await bench.good(`/api/diagrams/${diagram}/read-again`, { method: 'POST' });
      return readDocument(Buffer.concat([bytes, Buffer.from('\n99,BR-999,STOLEN,1,')]), name);
    });
    expect((await bench.good<DiagramAnswer>(`/api/diagrams/${diagram}`)).state).toBe('waiting');
    await service.readAll();
    expect(JSON.stringify(await rowsOf(bench, diagram))).not.toContain('STOLEN');
  });

  test('a failure of ours lets the document wait, and one that fails again and again is refused', async () => {
    const bench = await openBench(service);
    await service.readAll();
    const { diagram } = await bench.good<Uploaded>('/api/diagrams/text', {
      method: 'POST',
      body: { maker: 'Brindlow', model: 'Tern 40', text: list.join('\n') },
    });
    const { mostAttempts, readWaiting } = await import('../../../api/work/read-waiting.ts');
    const broken = () => readWaiting(service.store, () => Promise.reject(new Error('out of luck')));
    for (let attempt = 0; attempt < mostAttempts; attempt++)
      await expect(broken()).rejects.toThrow('out of luck');
    await broken();
    expect(await bench.good<DiagramAnswer>(`/api/diagrams/${diagram.id}`)).toMatchObject({
      state: 'refused',
      refusal: { code: 'reader-lost' },
    });
  });
});

describe('a correction', () => {
  const said = { category: 'bearing', dims: { bore: 5, od: 13, width: 4 }, attrs: {} };

  test('wins over the reading, stays when the document is read again, and can be taken back', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const line = async () => (await rowsOf(bench, diagram)).rows.find(row => row.ref === '2')!;
    const path = `/api/diagrams/${diagram}/rows/${(await line()).id}/correction`;

    const corrected = await bench.good<DiagramRow>(path, { method: 'POST', body: said });
    expect(corrected.correction).toMatchObject({ size: 'bearing 5x13x4', category: 'bearing' });
    expect(corrected.reading!.size).toBe('bearing 5x11x4');
    const sizes = async () => {
      const part = await partOf(bench, diagram, '2');
      return [part.size, part.evidence.map(one => one.kind)];
    };
    expect(await sizes()).toEqual(['bearing 5x13x4', ['corrected']]);

    await bench.good(`/api/diagrams/${diagram}/read-again`, { method: 'POST' });
    await service.readAll();
    expect((await line()).correction).toMatchObject({ size: 'bearing 5x13x4' });
    expect(await sizes()).toEqual(['bearing 5x13x4', ['corrected']]);

    const undone = await bench.good<DiagramRow>(path, { method: 'DELETE' });
    expect(undone.correction).toBeNull();
    expect(await sizes()).toEqual(['bearing 5x11x4', ['printed']]);
    await bench.good(path, { method: 'DELETE' });
  });

  test('of a thread needs no pitch: the coarse one is meant', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const row = (await rowsOf(bench, diagram)).rows.find(one => one.ref === '4')!;
    const corrected = await bench.good<DiagramRow>(`/api/diagrams/${diagram}/rows/${row.id}/correction`, {
      method: 'POST',
      body: { category: 'screw', dims: { thread: 'M3', length: 8 }, attrs: { head: 'pan' } },
    });
    // ISO 261: the coarse pitch of M3 is 0.5.
    expect(corrected.correction).toMatchObject({ size: 'screw M3x0.5x8' });
  });

  test('to no part at all takes the part away, and back', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const row = (await rowsOf(bench, diagram)).rows.find(one => one.ref === '4')!;
    const path = `/api/diagrams/${diagram}/rows/${row.id}/correction`;
    const none = await bench.good<DiagramRow>(path, {
      method: 'POST',
      body: { category: 'not-a-part', dims: {}, attrs: {} },
    });
    expect(none.part).toBeNull();
    await bench.refused(`/api/parts/${row.part}`);
    expect((await bench.good<DiagramRow>(path, { method: 'DELETE' })).part).not.toBeNull();
  });

  test('of a row that was skipped is refused', async () => {
    const bench = await openBench(service);
    const diagram = await bench.take('Brindlow', 'Tern 40', list);
    const row = (await rowsOf(bench, diagram)).rows.find(one => one.outcome === 'skipped')!;
    const problem = await bench.refused(`/api/diagrams/${diagram}/rows/${row.id}/correction`, {
      method: 'POST',
      body: said,
    });
    expect(problem.code).toBe('not-a-line');
  });

  test('sets the disagreement of two lists right', async () => {
    const bench = await openBench(service);
    await bench.take('Brindlow', 'Tern 40', ['2,BR-201,BALL BEARING 5X11X4,2,']);
    const second = await bench.take('Brindlow', 'Tern 60', ['7,BR-201,BALL BEARING 5X13X4,1,']);
    const part = await partOf(bench, second, '7');
    expect(part.review).toBe(true);
    expect(part.disagreement).toContain('5x13x4');
    const row = (await rowsOf(bench, second)).rows.find(one => one.ref === '7')!;
    await bench.good(`/api/diagrams/${second}/rows/${row.id}/correction`, { method: 'POST', body: said });
    expect(await partOf(bench, second, '7')).toMatchObject({
      size: 'bearing 5x13x4',
      review: false,
      disagreement: null,
    });
  });
});

describe('a hostile list', () => {
  test('is kept as it is and harms nothing', async () => {
    const bench = await openBench(service);
    const name = `<script>alert(1)</script> '; drop table part; -- ${'x'.repeat(3000)}`;
    const diagram = await bench.take('Brindlow', 'Tern 40', [
      `1,H-1,"${name}",1,`,
      '2,H-2,"a\tb \\N \\. \uD800 ☃",1,',
      '3,=1+1,"=cmd|calc",1,',
    ]);
    const { rows } = await rowsOf(bench, diagram);
    expect(rows.filter(row => row.outcome === 'taken').map(row => row.ref)).toEqual(['1', '2', '3']);
    expect(rows.find(row => row.ref === '1')!.description).toContain("'; drop table part; --");
    await bench.good<Found>('/api/find?q=drop%20table');
  });
});

test('a model asks once what hangs on it: words propose, a person answers, and may take it back', async () => {
  const bench = await openBench(service);
  await bench.take('Corvane', 'Gull winch', ['1,C-1,FRAME,1,', '2,C-2,BALL BEARING 5X11X4,1,']);
  const { models } = await bench.good<Models>('/api/models');
  const [model] = models;
  expect(model!.duty).toMatchObject({ duty: 'load-holding', standing: 'proposed', critical: true });
  const path = `/api/models/${model!.id}`;
  const answer = (duty: string) => bench.good(`${path}/duty`, { method: 'PUT', body: { duty } });
  expect(await answer('ordinary')).toMatchObject({
    duty: 'ordinary',
    standing: 'confirmed',
    critical: false,
  });
  const page = await bench.good<ModelAnswer>(path);
  expect(page.lines.map(line => line.duty.critical)).toEqual([false, false]);
  expect(page.bearings).toMatchObject([{ size: 'bearing 5x11x4', qty: 1, refs: ['2'] }]);
  expect(await answer('not-stated')).toMatchObject({ standing: 'proposed', critical: true });
  // A person's answer at the door counts as confirmed.
  await bench.take('Corvane', 'Plover', ['1,C-9,SPOOL,1,'], { duty: 'brake-or-steering' });
  const plover = (await bench.good<Models>('/api/models')).models.find(one => one.name === 'Plover');
  expect(plover!.duty).toMatchObject({ standing: 'confirmed', critical: true });
  await bench.refused(`/api/models/${randomUUID()}/duty`, { method: 'PUT', body: { duty: 'ordinary' } });
});
