import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  Benches,
  DiagramRowsAnswer,
  Found,
  JobPage,
  NeedAnswer,
  TokenMade,
} from '../../../api/answers/index.ts';
import { type Right, rights } from '../../../api/edge/rights.ts';
import { holds, type Role, roles } from '../../../api/people/role.ts';
import { benchAs, openBench, type TestBench, type TestService } from './bench.ts';
import { accountRoutes, type Ids, nobodys, registered, routes as workRoutes } from './every-route.ts';
import { idsOfPeople, openAccounts, signedUp, withRole } from './people.ts';

const all = { ...workRoutes, ...accountRoutes };

let service: TestService;
let owner: TestBench;
let ids: Ids;
/** What each kind of asker sends. */
const as: Record<string, Record<string, string>> = { nobody: {} };

beforeAll(async () => {
  service = await openAccounts();
  as.owner = await signedUp(service, 'Orla');
  owner = await openBench(service, 'Quayside', as.owner);
  for (const role of roles.slice(0, -1)) as[role] = await withRole(service, owner, role, `${role}-here`);
  for (const scope of ['read', 'write']) {
    const body = { name: scope, scope, days: 1 };
    const { secret } = await owner.good<TokenMade>('/api/tokens', { method: 'POST', body });
    as[`token to ${scope}`] = { Authorization: `Bearer ${secret}` };
  }
  as.stranger = await signedUp(service, 'Stranger');
  ids = await fill();
});
afterAll(() => service.close());

async function fill(): Promise<Ids> {
  const diagram = await owner.take('Brindlow', 'Tern', ['2,B-1,BALL BEARING 5X11X4,2,']);
  const { rows } = await owner.good<DiagramRowsAnswer>(`/api/diagrams/${diagram}/rows`);
  const [part] = (await owner.good<Found>('/api/find?q=B-1')).parts;
  const job = await owner.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Ada' } });
  const body = { row: rows.find(one => one.ref === '2')!.id, qty: 2 };
  const need = await owner.good<NeedAnswer>(`/api/jobs/${job.id}/needs`, { method: 'POST', body });
  return {
    ...nobodys(),
    ...(await idsOfPeople(owner)),
    bench: owner.id,
    maker: part!.maker.id,
    model: part!.models[0]!.id,
    part: part!.id,
    diagram,
    row: body.row,
    job: job.id,
    need: need.id,
  };
}

/** Everything of the bench that a refused request could have changed, in words. */
const everything = async () =>
  JSON.stringify(
    await Promise.all(
      [
        '/api/models',
        `/api/models/${ids.model}`,
        `/api/parts/${ids.part}`,
        `/api/diagrams/${ids.diagram}/rows`,
        `/api/diagrams/${ids.diagram}/columns`,
        `/api/diagrams/${ids.diagram}/drawing`,
        '/api/jobs?state=all',
        `/api/jobs/${ids.job}`,
        '/api/people',
        '/api/tokens',
        '/api/trail',
      ].map(path => owner.good(path)),
    ),
    // That a token came is noted, whatever it was refused.
    (name, value) => (name === 'usedAt' ? null : value),
  );

/** Each attempt of a route as somebody; statuses and codes. */
async function attempts(route: string, who: string) {
  const bench = benchAs(service, owner.id, as[who]);
  const answers = [];
  for (const { path, body } of all[route]!.ask(ids)) {
    const response = await bench.ask(path.replaceAll('OWN', ids.job), {
      method: route.split(' ')[0]!,
      ...(body ? { body } : {}),
      headers: { 'X-Forwarded-For': `192.0.2.${Math.floor(Math.random() * 200)}` },
    });
    const problem = response.ok ? null : ((await response.json()) as { code: string });
    // A stream of progress is not followed.
    if (response.ok) await response.body?.cancel();
    answers.push({ status: response.status, code: problem?.code ?? null });
  }
  return answers;
}

test('every route stands in the table of rights, and the table holds no other', () => {
  const routes = [...registered(service.app), 'POST /api/keeping/backup', 'POST /api/keeping/restore'];
  expect(routes.sort()).toEqual(Object.keys(rights).sort());
});

test('a route that stands in no table lets nobody in, an owner neither', async () => {
  const kept = rights['GET /api/find'];
  delete rights['GET /api/find'];
  try {
    for (const who of Object.keys(as))
      expect((await attempts('GET /api/find', who))[0]).toEqual({ status: 403, code: 'not-allowed' });
  } finally {
    rights['GET /api/find'] = kept as Right;
  }
});

describe('what the roles are for', () => {
  const of = (right: Right) => Object.keys(rights).filter(route => rights[route] === right);
  test('a reader changes nothing: all but measuring and fitting, which store nothing, is asked by GET', () => {
    expect(of('reader').filter(route => !route.startsWith('GET '))).toEqual([
      'POST /api/measure',
      'POST /api/fit',
    ]);
  });
  test('the counter opens and changes jobs, and picks needs', () => {
    for (const route of of('counter')) expect(route).toMatch(/^(POST|PATCH|DELETE) \/api\/(jobs|needs)/);
  });
  test('people, tokens, the trail and the bench as a whole are the owner’s alone', () => {
    expect(of('owner')).toEqual(
      Object.keys(rights).filter(route =>
        /^\S+ \/api\/(people|tokens|trail|backup|bench\/erase)/.test(route),
      ),
    );
  });
  test('what anyone may ask says nothing of a bench', () => {
    expect(of('anyone').filter(route => /bench|diagram|job|part|people|token/.test(route))).toEqual([]);
  });
});

/** What each kind of asker is on this bench; null for one who is nothing here. */
const askers: [string, Role | null][] = [
  ['nobody', null],
  ['stranger', null],
  ['reader', 'reader'],
  ['counter', 'counter'],
  ['repairer', 'repairer'],
  ['owner', 'owner'],
  ['token to read', 'reader'],
  ['token to write', 'repairer'],
];

/** Whether somebody may ask; else how they are refused. */
function refusedAs(who: string, role: Role | null, right: Right): string | null {
  if (right === 'anyone') return null;
  if (who === 'nobody') return 'not-signed-in';
  const program = who.startsWith('token');
  if (right === 'let-in') return null;
  if (right === 'person') return program ? 'not-allowed' : null;
  if (role === null) return 'bench-not-found';
  return holds(role, right as Role) ? null : 'not-allowed';
}

const cases = askers.flatMap(([who, role]) =>
  Object.keys(all).map(route => ({ who, route, refused: refusedAs(who, role, rights[route]!) })),
);
const statuses: Record<string, number> = { 'not-signed-in': 401, 'not-allowed': 403, 'bench-not-found': 404 };

describe('who may not', () => {
  let before: string;
  beforeAll(async () => {
    before = await everything();
  });
  test.each(cases.filter(one => one.refused))('$who: $route', async ({ who, route, refused }) => {
    for (const answer of await attempts(route, who))
      expect(answer).toEqual({ status: statuses[refused!], code: refused });
  });
  test('and nothing was changed by it', async () => expect(await everything()).toBe(before));
});

describe('who may', () => {
  // Those that end the asker's own session come last; what is deleted is gone for the next, who is told so.
  const ends = [
    'DELETE /api/session',
    'DELETE /api/sessions/:session',
    'DELETE /api/sessions',
    'DELETE /api/people/:person',
  ];
  const may = cases.filter(one => !one.refused);
  const inOrder = [
    ...may.filter(one => !ends.includes(one.route)),
    ...ends.toReversed().flatMap(route => may.filter(one => one.route === route)),
  ];
  test.each(inOrder)('$who: $route', async ({ who, route }) => {
    for (const { code } of await attempts(route, who))
      expect(['not-signed-in', 'not-allowed', 'bench-not-found', 'internal']).not.toContain(
        // Opening a bench, a stranger is told that there is none.
        who === 'stranger' && route === 'POST /api/benches/:bench/open' ? null : code,
      );
  });
});

test('a stranger sees no bench but their own', async () => {
  const stranger = await service.ask('/api/benches', { headers: await signedUp(service, 'Other') });
  expect(((await stranger.json()) as Benches).benches).toEqual([]);
});
