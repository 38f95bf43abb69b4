import { existsSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DiagramAnswer, DiagramRowsAnswer, Uploaded } from '../../api/answers/index.ts';
import { headRow, laughs, lieAboutSizes, partRow, workbook } from '../documents/hostile.ts';
import { type Program, startProgram } from '../support/program.ts';

let program: Program;
let bench: string;

beforeAll(async () => {
  program = await startProgram();
  const started = await ask('/api/benches', { method: 'POST', json: { name: 'Under fire' } });
  bench = ((await started.json()) as { id: string }).id;
});
afterAll(() => program?.stop());

interface Asked {
  method?: string;
  json?: object;
  form?: FormData;
}

function ask(path: string, { method = 'GET', json, form }: Asked = {}): Promise<Response> {
  const headers: Record<string, string> = bench ? { Workshop: bench } : {};
  if (method === 'POST') headers['Idempotency-Key'] = crypto.randomUUID();
  if (json) headers['Content-Type'] = 'application/json';
  const body = json ? JSON.stringify(json) : (form ?? null);
  return fetch(program.origin + path, { method, headers, body });
}

/** Resident memory of the program's own process in MiB, where the platform tells it. */
function residentMiB(): number | null {
  const status = `/proc/${program.pid}/status`;
  if (!existsSync(status)) return null;
  return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(status, 'utf8'))![1]) / 1024;
}

interface Told {
  diagram: DiagramAnswer;
  rows: DiagramRowsAnswer['rows'];
  /** How long others waited meanwhile, in milliseconds, shortest first. */
  waits: number[];
}

/** Uploads a document, asks for something else all the while it is read, and answers what became of it. */
async function upload(name: string, bytes: Uint8Array): Promise<Told> {
  const form = new FormData();
  form.set('file', new File([bytes as Uint8Array<ArrayBuffer>], name));
  form.set('maker', 'Corvane');
  form.set('model', name.slice(0, 60));
  const waits: number[] = [];
  let over = false;
  const others = (async () => {
    while (!over) {
      const asked = performance.now();
      const answer = await ask('/api/find?q=5x11x4');
      expect(answer.status).toBe(200);
      await answer.text();
      waits.push(performance.now() - asked);
      await new Promise(resolve => setTimeout(resolve, 25));
    }
  })();
  const sent = await ask('/api/diagrams', { method: 'POST', form });
  expect(sent.status).toBeLessThan(300);
  const { diagram } = (await sent.json()) as Uploaded;
  let now = diagram;
  while (now.state === 'waiting' || now.state === 'reading') {
    await new Promise(resolve => setTimeout(resolve, 50));
    now = (await (await ask(`/api/diagrams/${diagram.id}`)).json()) as DiagramAnswer;
  }
  over = true;
  await others;
  const { rows } = (await (await ask(`/api/diagrams/${diagram.id}/rows`)).json()) as DiagramRowsAnswer;
  return { diagram: now, rows, waits: waits.sort((a, b) => a - b) };
}

const sheet = (inside: string) => `<sheetData>${headRow}${inside}</sheetData>`;
const blanks = () => new Uint8Array(200 * 1024 * 1024).fill(0x20);
const text = (lines: string) => new TextEncoder().encode(lines);

/** Documents that are meant to do harm, and how many lines each gives all the same. */
const documents: [name: string, make: () => Uint8Array, state: 'ready' | 'refused', taken: number][] = [
  ['a line of 20 MB.csv', () => text(`1,AB-1,Screw M3x8,2\n${'x'.repeat(20_000_000)}\n`), 'ready', 1],
  [
    'unpacks to 200 MiB.xlsx',
    () =>
      lieAboutSizes(workbook(sheet(partRow(2)), { 'xl/sharedStrings.xml': [blanks(), { level: 1 }] }), 100),
    'refused',
    0,
  ],
  [
    'a thousand million letters.xlsx',
    () =>
      workbook(sheet(partRow(2)), { 'xl/sharedStrings.xml': text(`<?xml version="1.0"?>${laughs}<sst/>`) }),
    'refused',
    0,
  ],
  [
    'cells over everything.html',
    () =>
      text(`<table>${'<tr><td colspan="1000000000" rowspan="1000000000">x</td></tr>'.repeat(2000)}</table>`),
    'ready',
    1,
  ],
  [
    '..%2F..%2Fetc%2Fpasswd.csv',
    () => text('1,AB-1,\u202escrew M3x8\u0007,2\n2,AB-2,\ud800nut M3,1\n'),
    'ready',
    2,
  ],
];

test.each(documents)(
  '%s: a clear answer, and others are answered meanwhile',
  { timeout: 90_000 },
  async (name, make, state, taken) => {
    const { diagram, rows, waits } = await upload(name, make());
    expect(diagram.state).toBe(state);
    expect(rows.filter(row => row.outcome === 'taken')).toHaveLength(taken);
    if (state === 'refused') {
      expect(rows).toEqual([]);
      expect(diagram.refusal).toMatchObject({ message: expect.any(String), remedy: expect.any(String) });
    }
    // What others waited for is a look at the database; reading goes on in another process. The middle one tells, since
    // this machine may have other work as well.
    expect(waits[waits.length >> 1]).toBeLessThan(200);
    const resident = residentMiB();
    if (resident !== null) expect(resident).toBeLessThan(512);
  },
);

test('a document beyond the limit of bytes is refused as it comes in, with what to do', async () => {
  const form = new FormData();
  form.set('file', new File([new Uint8Array(60_000_000).fill(0x61)], 'long.csv'));
  form.set('maker', 'Corvane');
  form.set('model', 'Long');
  const sent = await ask('/api/diagrams', { method: 'POST', form });
  expect(sent.status).toBe(413);
  expect(await sent.json()).toMatchObject({ code: 'too-large', remedy: expect.stringMatching(/\w/) });
});
