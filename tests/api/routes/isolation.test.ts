import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DiagramRowsAnswer, Found, JobPage, NeedAnswer } from '../../../api/answers/index.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';

/** What belongs to one bench, by what a route calls it. */
interface Ids {
  bench: string;
  maker: string;
  model: string;
  part: string;
  diagram: string;
  row: string;
  job: string;
  need: string;
}

interface Attempt {
  path: string;
  body?: object | FormData;
}

const correction = { category: 'bearing', dims: { bore: 5, od: 13, width: 4 }, attrs: {} };

/**
 * Each route asked with another bench's ids. `list`: the answer holds nothing of the other's; `refuse`: there is no
 * such thing. A route that is not here fails the first test.
 */
const routes: Record<string, { expects: 'list' | 'refuse' | 'own'; ask: (ids: Ids) => Attempt[] }> = {
  'GET /api/health': { expects: 'list', ask: () => [{ path: '/api/health' }] },
  'GET /api/openapi.json': { expects: 'list', ask: () => [{ path: '/api/openapi.json' }] },
  // Where nobody signs in, benches are everybody's to see and open; what is in them is not.
  'GET /api/benches': { expects: 'own', ask: () => [] },
  'POST /api/benches': { expects: 'own', ask: () => [] },
  'POST /api/benches/:bench/open': { expects: 'own', ask: () => [] },
  'POST /api/read': { expects: 'list', ask: () => [{ path: '/api/read', body: { text: '1,SECRET' } }] },
  'POST /api/measure': {
    expects: 'list',
    ask: () => [
      {
        path: '/api/measure',
        body: { category: 'bearing', measurements: [{ dimension: 'od', value: 11 }] },
      },
    ],
  },
  'POST /api/fit': { expects: 'list', ask: () => [{ path: '/api/fit', body: { shaft: { value: 5 } } }] },
  'GET /api/find': {
    expects: 'list',
    ask: () =>
      ['5x11x4', 'bearing 5x11x4', 'SECRET-1', 'secret', 'Hidden 8'].map(q => ({
        path: `/api/find?q=${encodeURIComponent(q)}`,
      })),
  },
  'GET /api/sizes': { expects: 'list', ask: () => [{ path: '/api/sizes' }] },
  'GET /api/sizes/:size': { expects: 'list', ask: () => [{ path: '/api/sizes/bearing%205x11x4' }] },
  'GET /api/compare': {
    expects: 'refuse',
    ask: ({ part }) => [
      { path: `/api/compare?a=${part}&b=bearing%205x11x4` },
      { path: `/api/compare?a=bearing%205x11x4&b=${part}` },
    ],
  },
  'GET /api/makers': { expects: 'list', ask: () => [{ path: '/api/makers' }] },
  'GET /api/models': { expects: 'list', ask: () => [{ path: '/api/models' }] },
  'GET /api/models/:model': { expects: 'refuse', ask: ({ model }) => [{ path: `/api/models/${model}` }] },
  'PUT /api/models/:model/duty': {
    expects: 'refuse',
    ask: ({ model }) => [{ path: `/api/models/${model}/duty`, body: { duty: 'ordinary' } }],
  },
  'GET /api/parts/:part': { expects: 'refuse', ask: ({ part }) => [{ path: `/api/parts/${part}` }] },
  'GET /api/parts/:part/interchange': {
    expects: 'refuse',
    ask: ({ part }) => [{ path: `/api/parts/${part}/interchange` }],
  },
  'PUT /api/parts/:part/duty': {
    expects: 'refuse',
    ask: ({ part }) => [{ path: `/api/parts/${part}/duty`, body: { duty: 'ordinary' } }],
  },
  'GET /api/diagrams': { expects: 'list', ask: () => [{ path: '/api/diagrams' }] },
  'POST /api/diagrams': {
    expects: 'list',
    ask: () => {
      const body = new FormData();
      body.set('file', new File(['1,A-1,KNOB,1'], 'own.csv'));
      body.set('maker', 'Brindlow');
      body.set('model', 'Tern');
      return [{ path: '/api/diagrams', body }];
    },
  },
  'POST /api/diagrams/text': {
    expects: 'list',
    ask: () => [
      { path: '/api/diagrams/text', body: { maker: 'Brindlow', model: 'Tern', text: '1,A-2,KNOB,1' } },
    ],
  },
  'GET /api/diagrams/:diagram': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}` }],
  },
  'GET /api/diagrams/:diagram/progress': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/progress` }],
  },
  'GET /api/diagrams/:diagram/rows': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/rows` }],
  },
  'GET /api/diagrams/:diagram/file': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/file` }],
  },
  'GET /api/diagrams/:diagram/drawing': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/drawing` }],
  },
  'GET /api/diagrams/:diagram/pages/:page/picture': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/pages/1/picture?width=600` }],
  },
  'POST /api/diagrams/:diagram/balloons': {
    expects: 'refuse',
    ask: ({ diagram }) => [
      { path: `/api/diagrams/${diagram}/balloons`, body: { page: 1, ref: '1', x: 0.5, y: 0.5 } },
    ],
  },
  'PATCH /api/diagrams/:diagram/balloons/:balloon': {
    expects: 'refuse',
    ask: ({ diagram, row }) => [{ path: `/api/diagrams/${diagram}/balloons/${row}`, body: { ref: '2' } }],
  },
  'DELETE /api/diagrams/:diagram/balloons/:balloon': {
    expects: 'refuse',
    ask: ({ diagram, row }) => [{ path: `/api/diagrams/${diagram}/balloons/${row}` }],
  },
  'DELETE /api/diagrams/:diagram/balloon-corrections/:correction': {
    expects: 'refuse',
    ask: ({ diagram, row }) => [{ path: `/api/diagrams/${diagram}/balloon-corrections/${row}` }],
  },
  'DELETE /api/diagrams/:diagram': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}` }],
  },
  'POST /api/diagrams/:diagram/restore': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/restore` }],
  },
  'GET /api/diagrams/:diagram/columns': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/columns` }],
  },
  'PUT /api/diagrams/:diagram/columns': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/columns`, body: { given: [['ref']] } }],
  },
  'POST /api/diagrams/:diagram/read-again': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/read-again` }],
  },
  'POST /api/diagrams/:diagram/rows/:row/correction': {
    expects: 'refuse',
    ask: ({ diagram, row }) => [
      { path: `/api/diagrams/${diagram}/rows/${row}/correction`, body: correction },
    ],
  },
  'DELETE /api/diagrams/:diagram/rows/:row/correction': {
    expects: 'refuse',
    ask: ({ diagram, row }) => [{ path: `/api/diagrams/${diagram}/rows/${row}/correction` }],
  },
  'GET /api/jobs': { expects: 'list', ask: () => [{ path: '/api/jobs?state=all' }] },
  'POST /api/jobs': {
    expects: 'refuse',
    ask: ({ model }) => [{ path: '/api/jobs', body: { owner: 'Ada', model } }],
  },
  'GET /api/jobs/:job': { expects: 'refuse', ask: ({ job }) => [{ path: `/api/jobs/${job}` }] },
  'PATCH /api/jobs/:job': {
    expects: 'refuse',
    ask: ({ job }) => [{ path: `/api/jobs/${job}`, body: { owner: 'thief' } }],
  },
  'POST /api/jobs/:job/needs': {
    expects: 'refuse',
    ask: ({ job, part, row }) => [
      { path: `/api/jobs/${job}/needs`, body: { item: 'bearing 5x11x4', qty: 1 } },
      { path: '/api/jobs/OWN/needs', body: { part, qty: 1 } },
      { path: '/api/jobs/OWN/needs', body: { row, qty: 1 } },
    ],
  },
  'PATCH /api/needs/:need': {
    expects: 'refuse',
    ask: ({ need }) => [{ path: `/api/needs/${need}`, body: { qty: 99 } }],
  },
  'DELETE /api/needs/:need': { expects: 'refuse', ask: ({ need }) => [{ path: `/api/needs/${need}` }] },
  'GET /api/order': {
    expects: 'refuse',
    ask: ({ job }) => [{ path: `/api/order?jobs=${job}` }, { path: `/api/order?jobs=OWN,${job}` }],
  },
  'GET /api/order.csv': { expects: 'refuse', ask: ({ job }) => [{ path: `/api/order.csv?jobs=${job}` }] },
  'GET /api/order.txt': { expects: 'refuse', ask: ({ job }) => [{ path: `/api/order.txt?jobs=${job}` }] },
  'GET /api/order.xlsx': { expects: 'refuse', ask: ({ job }) => [{ path: `/api/order.xlsx?jobs=${job}` }] },
};

let service: TestService;
let own: TestBench;
let other: TestBench;
let theirs: Ids;
let ownJob: string;
let before: string;

beforeAll(async () => {
  service = await openService();
  own = await openBench(service, 'Own');
  other = await openBench(service, 'Other');
  theirs = await fill(other);
  ownJob = (await own.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Me' } })).id;
  before = await everythingOf(other, theirs);
});
afterAll(() => service.close());

async function fill(bench: TestBench): Promise<Ids> {
  const diagram = await bench.take('SECRET maker', 'Hidden 9', ['2,SECRET-1,SECRET BALL BEARING 5X11X4,2,']);
  const { rows } = await bench.good<DiagramRowsAnswer>(`/api/diagrams/${diagram}/rows`);
  const row = rows.find(one => one.ref === '2')!;
  const found = await bench.good<Found>('/api/find?q=SECRET-1');
  const part = found.parts[0]!;
  const job = await bench.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'SECRET owner' } });
  const need = await bench.good<NeedAnswer>(`/api/jobs/${job.id}/needs`, {
    method: 'POST',
    body: { row: row.id, qty: 2 },
  });
  return {
    bench: bench.id,
    maker: part.maker.id,
    model: part.models[0]!.id,
    part: part.id,
    diagram,
    row: row.id,
    job: job.id,
    need: need.id,
  };
}

/** All that a bench answers of its own, as one text. */
async function everythingOf(bench: TestBench, ids: Ids): Promise<string> {
  const paths = [
    '/api/makers',
    '/api/models',
    `/api/models/${ids.model}`,
    `/api/parts/${ids.part}`,
    `/api/diagrams/${ids.diagram}/rows`,
    '/api/jobs?state=all',
    `/api/jobs/${ids.job}`,
    '/api/order',
  ];
  return JSON.stringify(await Promise.all(paths.map(path => bench.good(path))));
}

const send = (route: string, { path, body }: Attempt) =>
  own.ask(path.replaceAll('OWN', ownJob), {
    method: route.split(' ')[0]!,
    ...(body ? { body } : {}),
  });

test('every route of the service is on the list, and no other', () => {
  const all = service.app.routes
    .filter(route => route.method !== 'ALL' && route.path !== '/*')
    .map(route => `${route.method} ${route.path}`);
  expect([...new Set(all)].sort()).toEqual(Object.keys(routes).sort());
});

const of = (expected: 'list' | 'refuse') =>
  Object.entries(routes).flatMap(([route, { expects, ask }]) =>
    expects === expected ? [[route, ask] as const] : [],
  );

test.each(of('list'))('%s gives nothing of another bench’s', async (route, ask) => {
  for (const attempt of ask(theirs)) {
    const text = await (await send(route, attempt)).text();
    for (const id of Object.values(theirs)) expect(text).not.toContain(id);
    // What was asked may stand in the answer; what was not asked may not.
    expect(text).not.toMatch(/SECRET (maker|owner|BALL)|Hidden 9"/);
  }
});

test.each(of('refuse'))('%s is refused as for an id that nobody has', async (route, ask) => {
  const nobody = Object.fromEntries(Object.keys(theirs).map(name => [name, randomUUID()])) as unknown as Ids;
  const strangers = ask(nobody);
  for (const [index, attempt] of ask(theirs).entries()) {
    const refused = await send(route, attempt);
    const stranger = await send(route, strangers[index]!);
    expect(refused.status).toBe(404);
    const masked = (text: string) => text.replaceAll(/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, 'ID');
    expect(masked(await refused.text())).toBe(masked(await stranger.text()));
    const names = (response: Response) => [...response.headers.keys()].sort();
    expect([refused.status, names(refused)]).toEqual([stranger.status, names(stranger)]);
  }
});

test('afterwards nothing of the other’s has changed', async () => {
  await service.readAll();
  expect(await everythingOf(other, theirs)).toBe(before);
});
