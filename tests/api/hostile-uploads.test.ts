import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DiagramAnswer, DiagramRowsAnswer, Uploaded } from '../../api/answers/index.ts';
import { residentBytes } from '../../api/work/resident.ts';
import { headRow, laughs, partRow, row, spreadsheet, workbook } from '../documents/hostile.ts';
import { type Program, startProgram } from '../support/program.ts';

/** The program as people run it, so that its memory is its own. */
let program: Program;
let workshop: string;
beforeAll(async () => {
  program = await startProgram();
  const { current } = (await (await fetch(`${program.origin}/api/benches`)).json()) as { current: string };
  workshop = current;
});
afterAll(() => program?.stop());

const mebibyte = 1024 * 1024;
const sheet = (inside: string) => `<sheetData>${headRow}${inside}</sheetData>`;
const list = 'Ref;Part no;Description;Qty\n1;AB-1;Nut M3;2\n2;AB-2;Nut M4;1\n';
const page = (inside: string) => Buffer.from(`<!doctype html><body>${inside}`);
const heads = '<tr><th>Ref<th>Part no<th>Description<th>Qty';

/** What comes in, under which name, and what becomes of it. `FIGURES=1` prints how long others waited, and the memory. */
const documents: [string, string, () => Uint8Array, string][] = [
  ['a line of 50 MB', 'long.csv', () => Buffer.alloc(50 * mebibyte, 'x'), 'refused'],
  [
    'a line of 20 MB',
    'line.csv',
    () => Buffer.from(`${list}3;${'x'.repeat(20 * mebibyte)};Nut;1\n`),
    'ready',
  ],
  ['a million empty rows', 'empty-rows.csv', () => Buffer.from(list + ';;;\n'.repeat(1_000_000)), 'ready'],
  [
    'a million empty rows of a sheet',
    'rows.xlsx',
    () => workbook(sheet(partRow(2) + '<row/>'.repeat(1_000_000))),
    'ready',
  ],
  ['formula cells', 'formula.csv', () => Buffer.from(`${list}3;=cmd|' /C calc'!A0;@SUM(A1);1\n`), 'ready'],
  [
    'control characters, bidirectional marks',
    'marks.csv',
    () => Buffer.from(`${list}3;AB\u0007-3;\u202eNut\u2066 M5;1\n`),
    'ready',
  ],
  ['zero bytes', 'zeros.csv', () => Buffer.from(`${list}3;A\u0000B-3;Nut M5;1\n`), 'refused'],
  [
    'a lone surrogate',
    'surrogate.csv',
    () => Buffer.from(`\ufeff${list}3;AB-\ud800;Nut;1\n`, 'utf16le'),
    'ready',
  ],
  [
    'broken UTF-8',
    'broken.csv',
    () =>
      Buffer.concat([
        Buffer.from(list),
        Buffer.from([0x33, 0x3b, 0xc3, 0x28, 0xff, 0x3b, 0x4e, 0x3b, 0x31, 0x0a]),
      ]),
    'ready',
  ],
  [
    'a zip bomb',
    'bomb.xlsx',
    () =>
      workbook(sheet(partRow(2)), { 'xl/sharedStrings.xml': [new Uint8Array(200 * mebibyte), { level: 1 }] }),
    'refused',
  ],
  [
    'billion laughs, xlsx',
    'laughs.xlsx',
    () =>
      workbook(sheet(row(2, '1', 'AB-1', 'x', '1')), {
        'xl/sharedStrings.xml': Buffer.from(`${laughs}<sst><si><t>&lol9;</t></si></sst>`),
      }),
    'refused',
  ],
  [
    'billion laughs, ods',
    'laughs.ods',
    () => spreadsheet('', { 'content.xml': Buffer.from(`${laughs}<a>&lol9;</a>`) }),
    'refused',
  ],
  [
    'spans of a thousand million',
    'spans.html',
    () => page(`<table>${heads}${'<tr><td colspan=1000000000 rowspan=1000000000>x'.repeat(100_000)}</table>`),
    'either',
  ],
  ['tables within tables', 'deep.html', () => page('<table><tr><td>'.repeat(1_600_000)), 'refused'],
  ['a name like a path', '../../../etc/passwd', () => Buffer.from(`${list}3;AB-3;Cap;1\n`), 'ready'],
  ['a wrong type', 'picture.csv', () => Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'), 'refused'],
  ['an empty file', 'nothing.csv', () => new Uint8Array(0), 'refused'],
];

const ask = (path: string, init: RequestInit = {}) =>
  fetch(`${program.origin}${path}`, {
    ...init,
    headers: { Workshop: workshop, 'Idempotency-Key': randomUUID() },
  });
const json = async <T>(path: string) => (await (await ask(path)).json()) as T;

function send(name: string, bytes: Uint8Array): Promise<Response> {
  const body = new FormData();
  body.set('file', new File([bytes as Uint8Array<ArrayBuffer>], name));
  body.set('maker', 'Brindlow');
  body.set('model', name.slice(-20));
  return ask('/api/diagrams', { method: 'POST', body });
}

/** Waits until a document is read or refused. */
async function settled(id: string): Promise<DiagramRowsAnswer> {
  for (;;) {
    const answer = await json<DiagramRowsAnswer>(`/api/diagrams/${id}/rows`);
    if (answer.diagram.state === 'ready' || answer.diagram.state === 'refused') return answer;
    await new Promise(resolve => setTimeout(resolve, 50));
  }
}

/** Asks for the list of diagrams and looks at the program's memory, over and over, until it is told to stop. */
function others() {
  let over = false;
  const times: number[] = [];
  let most = 0;
  const run = (async () => {
    while (!over) {
      const start = performance.now();
      expect((await ask('/api/diagrams')).status).toBe(200);
      times.push(performance.now() - start);
      most = Math.max(most, (await residentBytes(program.pid)) ?? 0);
      await new Promise(resolve => setTimeout(resolve, 20));
    }
  })();
  return async () => {
    over = true;
    await run;
    return { times: times.sort((a, b) => a - b), most };
  };
}

let kept: DiagramAnswer | undefined;
for (const [what, name, make, state] of documents)
  test(`${what}: others are answered meanwhile, and it is read or refused whole`, async () => {
    if (!kept) {
      const { diagram } = (await (await send('kept.csv', Buffer.from(list))).json()) as Uploaded;
      kept = (await settled(diagram.id)).diagram;
      expect(kept.state).toBe('ready');
    }
    const bytes = make();
    const stop = others();
    const start = performance.now();
    const response = await send(name, bytes);
    let outcome: string;
    if (response.status >= 400) {
      expect(await response.json()).toMatchObject({
        code: expect.any(String),
        remedy: expect.stringMatching(/\S/),
      });
      outcome = 'refused';
    } else {
      const { diagram } = (await response.json()) as Uploaded;
      const answer = await settled(diagram.id);
      outcome = answer.diagram.state;
      if (outcome === 'refused') {
        expect(answer.rows).toEqual([]);
        const some = expect.stringMatching(/\S{3}/);
        expect(answer.diagram.refusal).toMatchObject({ place: some, message: some, remedy: some });
      }
      expect((await ask(`/api/diagrams/${diagram.id}`, { method: 'DELETE' })).status).toBe(200);
    }
    const seconds = (performance.now() - start) / 1000;
    const { times, most } = await stop();
    const at = (share: number) => Math.round(times[Math.floor((times.length - 1) * share)]!);
    if (process.env.FIGURES)
      console.log(
        `${what}: ${outcome}, ${seconds.toFixed(1)} s, others p50 ${at(0.5)} p99 ${at(0.99)} ms of ${times.length}, ${Math.round(most / mebibyte)} MiB`,
      );
    if (state !== 'either') expect(outcome).toBe(state);
    expect(most).toBeLessThan(512 * mebibyte);
    expect(at(0.5)).toBeLessThan(200);
    expect((await json<DiagramRowsAnswer>(`/api/diagrams/${kept.id}/rows`)).rows).toHaveLength(3);
  });
