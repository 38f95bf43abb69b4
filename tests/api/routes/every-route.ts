import { randomUUID } from 'node:crypto';

/** What belongs to one bench, by what a route calls it. */
export interface Ids {
  bench: string;
  maker: string;
  model: string;
  part: string;
  diagram: string;
  row: string;
  job: string;
  need: string;
  /** Where people sign in; else ids that nobody has. */
  person: string;
  token: string;
  session: string;
  entry: string;
}

export interface Attempt {
  path: string;
  body?: object | FormData;
}

const correction = { category: 'bearing', dims: { bore: 5, od: 13, width: 4 }, attrs: {} };

/**
 * What another bench's ids get: `list`: the answer holds nothing of the other's; `refuse`: there is no such thing;
 * `own`: it is about whoever asks alone, and takes no id; `machine`: where nobody signs in, benches are everybody's to
 * see and to open, and what is in them is not; where people sign in, as `list` or `refuse`.
 */
export type Expects = 'list' | 'refuse' | 'own' | 'machine';

/** Every route of the service, and how it is asked with ids. */
export const routes: Record<string, { expects: Expects; ask: (ids: Ids) => Attempt[] }> = {
  'GET /api/health': { expects: 'list', ask: () => [{ path: '/api/health' }] },
  'GET /api/ready': { expects: 'list', ask: () => [{ path: '/api/ready' }] },
  'GET /api/openapi.json': { expects: 'list', ask: () => [{ path: '/api/openapi.json' }] },
  'GET /api/benches': { expects: 'machine', ask: () => [{ path: '/api/benches' }] },
  'POST /api/benches': {
    expects: 'machine',
    ask: () => [{ path: '/api/benches', body: { name: 'Another' } }],
  },
  'POST /api/benches/:bench/open': {
    expects: 'machine',
    ask: ({ bench }) => [{ path: `/api/benches/${bench}/open` }],
  },
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
  'GET /api/sizes/:size/uses': {
    expects: 'list',
    ask: () => [{ path: '/api/sizes/bearing%205x11x4/uses?from=0' }],
  },
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
  'GET /api/models/:model/tools': {
    expects: 'refuse',
    ask: ({ model }) => [{ path: `/api/models/${model}/tools` }],
  },
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
  'POST /api/diagrams/:diagram/read-rest': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/read-rest` }],
  },
  'GET /api/diagrams/:diagram/written': {
    expects: 'refuse',
    ask: ({ diagram }) => [{ path: `/api/diagrams/${diagram}/written?find=SECRET` }],
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

/** What there is where people sign in. */
export const accountRoutes: typeof routes = {
  'GET /api/session': { expects: 'list', ask: () => [{ path: '/api/session' }] },
  'POST /api/session': {
    expects: 'own',
    ask: () => [{ path: '/api/session', body: { signIn: 'nobody', password: 'not a password' } }],
  },
  'DELETE /api/session': { expects: 'own', ask: () => [{ path: '/api/session' }] },
  'POST /api/invitation': {
    expects: 'own',
    ask: () => [{ path: '/api/invitation', body: { link: 'fettle_i_none' } }],
  },
  'POST /api/invitation/join': {
    expects: 'own',
    ask: () => [
      {
        path: '/api/invitation/join',
        body: { link: 'fettle_i_none', as: { signIn: 'nobody', password: 'long enough to be taken' } },
      },
    ],
  },
  'POST /api/password/by-link': {
    expects: 'own',
    ask: () => [
      {
        path: '/api/password/by-link',
        body: { link: 'fettle_p_none', newPassword: 'long enough to be taken' },
      },
    ],
  },
  'PUT /api/password': {
    expects: 'own',
    ask: () => [
      { path: '/api/password', body: { password: 'not a password', newPassword: 'long enough to be taken' } },
    ],
  },
  'GET /api/sessions': { expects: 'list', ask: () => [{ path: '/api/sessions' }] },
  'DELETE /api/sessions': { expects: 'own', ask: () => [{ path: '/api/sessions' }] },
  'DELETE /api/sessions/:session': {
    expects: 'refuse',
    ask: ({ session }) => [{ path: `/api/sessions/${session}` }],
  },
  'POST /api/person/erase': {
    expects: 'own',
    ask: () => [{ path: '/api/person/erase', body: { password: 'not a password' } }],
  },
  'GET /api/people': { expects: 'list', ask: () => [{ path: '/api/people' }] },
  'POST /api/people': {
    expects: 'list',
    ask: () => [{ path: '/api/people', body: { name: 'Ida Fenn', role: 'counter' } }],
  },
  'PATCH /api/people/:person': {
    expects: 'refuse',
    ask: ({ person }) => [{ path: `/api/people/${person}`, body: { role: 'reader' } }],
  },
  'DELETE /api/people/:person': {
    expects: 'refuse',
    ask: ({ person }) => [{ path: `/api/people/${person}` }],
  },
  'POST /api/people/:person/link': {
    expects: 'refuse',
    ask: ({ person }) => [{ path: `/api/people/${person}/link` }],
  },
  'POST /api/people/:person/erase': {
    expects: 'refuse',
    ask: ({ person }) => [{ path: `/api/people/${person}/erase` }],
  },
  'GET /api/tokens': { expects: 'list', ask: () => [{ path: '/api/tokens' }] },
  'POST /api/tokens': {
    expects: 'list',
    ask: () => [{ path: '/api/tokens', body: { name: 'till', scope: 'read', days: 30 } }],
  },
  'DELETE /api/tokens/:token': { expects: 'refuse', ask: ({ token }) => [{ path: `/api/tokens/${token}` }] },
  'POST /api/bench/erase': {
    expects: 'own',
    ask: () => [{ path: '/api/bench/erase', body: { password: 'not a password' } }],
  },
  'GET /api/backup': { expects: 'list', ask: () => [{ path: '/api/backup' }] },
  'GET /api/trail': { expects: 'refuse', ask: ({ entry }) => [{ path: `/api/trail?before=${entry}` }] },
};

/** Ids of things that nobody has. */
export const nobodys = (): Ids =>
  Object.fromEntries(
    [
      'bench',
      'maker',
      'model',
      'part',
      'diagram',
      'row',
      'job',
      'need',
      'person',
      'token',
      'session',
      'entry',
    ].map(name => [name, randomUUID()]),
  ) as unknown as Ids;

/** Every route that a service has registered. */
export const registered = (app: { routes: { method: string; path: string }[] }): string[] => [
  ...new Set(
    app.routes
      .filter(route => route.method !== 'ALL' && route.path !== '/*')
      .map(route => `${route.method} ${route.path}`),
  ),
];
