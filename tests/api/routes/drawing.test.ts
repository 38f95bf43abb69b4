import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  BalloonChanged,
  DiagramRowsAnswer,
  DrawingAnswer,
  Found,
  Uploaded,
  WrittenFound,
} from '../../../api/answers/index.ts';
import { DrawAhead } from '../../../api/work/draw-ahead.ts';
import { readInChild } from '../../../api/work/spawn-reader.ts';
import { makePdf } from '../../documents/make-pdfs.ts';
import { smallPdf } from '../../support/small-pdf.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

let service: TestService;
beforeAll(async () => {
  service = await openService({ readDocument: readInChild });
});
afterAll(() => service.close());

const sheet = {
  lines: [
    ['1', 'BR-100', 'HOUSING', '1'],
    ['2', 'BR-201', 'BALL BEARING 5X11X4 ZZ', '2'],
    ['3', 'BR-202', 'WASHER 3.2X7X0.5', '4'],
  ] as [string, string, string, string][],
  balloons: [
    { ref: '1', x: 0.2, y: 0.2 },
    { ref: '2', x: 0.5, y: 0.15 },
    { ref: '2', x: 0.7, y: 0.3 },
    { ref: '3', x: 0.4, y: 0.4 },
  ],
};

async function takeSheet(bench: TestBench, model = 'Tern 40', content = sheet): Promise<string> {
  const body = new FormData();
  body.set('file', new File([Buffer.from(await smallPdf(content))], 'tern.pdf', { type: 'application/pdf' }));
  body.set('maker', 'Brindlow');
  body.set('model', model);
  const { diagram } = await bench.good<Uploaded>('/api/diagrams', { method: 'POST', body });
  await service.readAll();
  return diagram.id;
}

const drawingOf = (bench: TestBench, diagram: string) =>
  bench.good<DrawingAnswer>(`/api/diagrams/${diagram}/drawing`);
const shown = ({ balloons }: DrawingAnswer) =>
  balloons.map(({ ref, x, y, by }) => [ref, x.toFixed(2), y.toFixed(2), by]);

describe('the drawing of a PDF', () => {
  test('has its page as shown and every balloon with its line; rows know where they stand', async () => {
    const bench = await openBench(service);
    const id = await takeSheet(bench);
    const drawing = await drawingOf(bench, id);
    expect(drawing.pages).toEqual([{ number: 1, width: 595, height: 842 }]);
    expect(shown(drawing)).toEqual([
      ['2', '0.50', '0.15', 'reading'],
      ['1', '0.20', '0.20', 'reading'],
      ['2', '0.70', '0.30', 'reading'],
      ['3', '0.40', '0.40', 'reading'],
    ]);
    const { rows } = await bench.good<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`);
    const bearing = rows.find(row => row.ref === '2')!;
    for (const balloon of drawing.balloons.filter(({ ref }) => ref === '2'))
      expect(balloon.lines).toEqual([{ diagram: id, row: bearing.id }]);
    expect(bearing.area!.top).toBeGreaterThan(0.5);
    expect(bearing.area!.bottom).toBeLessThan(0.65);
  });

  test('of a list alone is empty', async () => {
    const bench = await openBench(service);
    const id = await bench.take('Brindlow', 'Tern 41', ['1,BR-100,HOUSING,1,']);
    expect(await drawingOf(bench, id)).toEqual({ pages: [], balloons: [] });
  });

  test('is tied to the list of another document of the same model', async () => {
    const bench = await openBench(service);
    const list = await bench.take('Brindlow', 'Tern 42', ['1,BR-100,HOUSING,1,', '2,BR-201,KNOB,1,']);
    const id = await takeSheet(bench, 'Tern 42', { lines: [], balloons: sheet.balloons });
    const { balloons } = await drawingOf(bench, id);
    const of = (ref: string) =>
      balloons.find(balloon => balloon.ref === ref)?.lines.map(line => line.diagram);
    expect(of('1')).toEqual([list]);
    expect(of('3') ?? []).toEqual([]);
  });

  test('is drawn once at several widths, and the picture asked for is the narrowest that is wide enough', async () => {
    const bench = await openBench(service);
    const id = await takeSheet(bench);
    const sizes = [];
    for (const width of [100, 700, 99_999]) {
      const answer = await bench.ask(`/api/diagrams/${id}/pages/1/picture?width=${width}`);
      expect(answer.headers.get('Content-Type')).toBe('image/webp');
      const bytes = Buffer.from(await answer.arrayBuffer());
      expect(bytes.toString('latin1', 0, 4) + bytes.toString('latin1', 8, 12)).toBe('RIFFWEBP');
      sizes.push(bytes.length);
    }
    expect(sizes[0]!).toBeLessThan(sizes[1]!);
    expect(sizes[1]!).toBeLessThan(sizes[2]!);
    const { code } = await bench.refused(`/api/diagrams/${id}/pages/2/picture?width=600`);
    expect(code).toBe('not-found');
  });
});

describe("a person's word on a balloon", () => {
  test('moves, renumbers, takes out and puts in; each is taken back by its correction', async () => {
    const bench = await openBench(service);
    const id = await takeSheet(bench);
    const before = await drawingOf(bench, id);
    const three = before.balloons.find(balloon => balloon.ref === '3')!;
    const path = `/api/diagrams/${id}/balloons`;
    const undo = ({ correction }: BalloonChanged) =>
      bench.good<DrawingAnswer>(`/api/diagrams/${id}/balloon-corrections/${correction}`, {
        method: 'DELETE',
      });

    const moved = await bench.good<BalloonChanged>(`${path}/${three.id}`, {
      method: 'PATCH',
      body: { x: 0.45, y: 0.45 },
    });
    const at = moved.drawing.balloons.find(balloon => balloon.ref === '3')!;
    expect(at).toMatchObject({ x: expect.closeTo(0.45, 5), by: 'person' });
    const renumbered = await bench.good<BalloonChanged>(`${path}/${at.id}`, {
      method: 'PATCH',
      body: { ref: '1' },
    });
    expect(renumbered.drawing.balloons.filter(balloon => balloon.ref === '1')).toHaveLength(2);
    expect(shown(await undo(renumbered))).toEqual(shown(moved.drawing));
    expect(shown(await undo(moved))).toEqual(shown(before));

    const removed = await bench.good<BalloonChanged>(`${path}/${three.id}`, { method: 'DELETE' });
    expect(removed.drawing.balloons).toHaveLength(3);
    await undo(removed);
    const placed = await bench.good<BalloonChanged>(path, {
      method: 'POST',
      body: { page: 1, ref: '3', x: 0.9, y: 0.1 },
    });
    expect(placed.drawing.balloons).toHaveLength(5);
    expect(shown(await undo(placed))).toEqual(shown(before));
  });

  test('stays when the document is read again', async () => {
    const bench = await openBench(service);
    const id = await takeSheet(bench);
    const { balloons } = await drawingOf(bench, id);
    const one = balloons.find(balloon => balloon.ref === '1')!;
    await bench.good(`/api/diagrams/${id}/balloons/${one.id}`, { method: 'PATCH', body: { x: 0.1, y: 0.1 } });
    const said = shown(await drawingOf(bench, id));
    await bench.good(`/api/diagrams/${id}/read-again`, { method: 'POST' });
    await service.readAll();
    expect(shown(await drawingOf(bench, id))).toEqual(said);
  });

  test('on a page that is not there, beside the page, or about nothing is refused', async () => {
    const bench = await openBench(service);
    const id = await takeSheet(bench);
    const path = `/api/diagrams/${id}/balloons`;
    const spot = { page: 1, ref: '1', x: 0.5, y: 0.5 };
    const codeOf = async (asked: string, method: string, body: object) =>
      (await bench.refused(asked, { method, body })).code;
    expect(await codeOf(path, 'POST', { ...spot, page: 7 })).toBe('not-found');
    expect(await codeOf(path, 'POST', { ...spot, x: 1.2 })).toBe('bad-request');
    const { balloons } = await drawingOf(bench, id);
    expect(await codeOf(`${path}/${balloons[0]!.id}`, 'PATCH', {})).toBe('bad-request');
    expect(await codeOf(`${path}/${balloons[0]!.id}`, 'PATCH', { x: 0.5 })).toBe('bad-request');
  });
});

describe('what is written on the pages of a diagram', () => {
  test('is found with its place, on the bench and on its drawing; what is hidden is not', async () => {
    const bench = await openBench(service, 'Reading room');
    const { bytes, list } = await makePdf(
      {
        name: '',
        layout: {
          hidden: true,
          style: { balloons: 'circled', dimensions: false, notes: true, ranges: false },
        },
        wish: { language: 'en' },
      },
      12,
    );
    const body = new FormData();
    body.set('file', new File([Buffer.from(bytes)], 'notes.pdf', { type: 'application/pdf' }));
    body.set('maker', 'Hestrel');
    body.set('model', 'Notes 2');
    const { diagram } = await bench.good<Uploaded>('/api/diagrams', { method: 'POST', body });
    await service.readAll();
    const written = (find: string) =>
      bench.good<WrittenFound>(`/api/diagrams/${diagram.id}/written?find=${encodeURIComponent(find)}`);
    const note = (await written('grease before')).places;
    expect(note).toMatchObject([{ page: 1, text: '1. Grease before fitting.' }]);
    expect(note[0]!.left).toBeCloseTo(50 / 595, 2);
    expect(note[0]!.top).toBeCloseTo(728 / 842, 1);
    const { places: numbers } = await written(list.lines[4]!.ref);
    expect(new Set(numbers.map(({ page }) => page))).toEqual(new Set([1, 2]));
    expect((await written('XX-9999')).places).toEqual([]);
    const { pages } = await bench.good<Found>('/api/find?q=grease%20before');
    expect(pages).toMatchObject([{ diagram: diagram.id, page: 1, text: '1. Grease before fitting.' }]);
    expect((await bench.good<Found>('/api/find?q=xx-9999')).pages).toEqual([]);
    // Another bench has no such page.
    const other = await openBench(service, 'Next door');
    expect((await other.good<Found>('/api/find?q=grease%20before')).pages).toEqual([]);
  });

  test('its pages are drawn before anyone looks', async () => {
    const bench = await openBench(service, 'Drawing room');
    const id = await takeSheet(bench, 'Tern 44');
    const drawn: number[] = [];
    const ahead = new DrawAhead(service.store, async (_, page) => {
      drawn.push(page);
      return [{ width: 100, height: 140, bytes: Buffer.from('picture') }];
    });
    await ahead.add({ workshop: bench.id, id });
    expect(await ahead.next()).toBe(true);
    expect(await ahead.next()).toBe(false);
    expect(drawn).toEqual([1]);
    const kept = await bench.ask(`/api/diagrams/${id}/pages/1/picture?width=600`);
    expect(await kept.text()).toBe('picture');
    // What is drawn is not drawn again.
    await ahead.add({ workshop: bench.id, id });
    expect(await ahead.next()).toBe(false);
  });
});
