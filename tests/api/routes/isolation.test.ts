import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DiagramRowsAnswer, Found, JobPage, NeedAnswer } from '../../../api/answers/index.ts';
import { rights } from '../../../api/edge/rights.ts';
import { openBench, openService, type TestBench, type TestService } from './bench.ts';
import {
  type Attempt,
  accountRoutes,
  type Expects,
  type Ids,
  nobodys,
  registered,
  routes as workRoutes,
} from './every-route.ts';
import { idsOfPeople, openAccounts, signedUp } from './people.ts';

/** Everything that another bench can be asked, once where nobody signs in and once where people do. */
describe.each([
  { form: 'where nobody signs in', accounts: false },
  { form: 'where people sign in', accounts: true },
])('$form', ({ accounts }) => {
  const routes = accounts ? { ...workRoutes, ...accountRoutes } : workRoutes;
  let service: TestService;
  let own: TestBench;
  let other: TestBench;
  let theirs: Ids;
  let ownJob: string;
  let before: string;

  beforeAll(async () => {
    service = accounts ? await openAccounts() : await openService();
    own = await bench('Own');
    other = await bench('Other');
    theirs = await fill(other);
    ownJob = (await own.good<JobPage>('/api/jobs', { method: 'POST', body: { owner: 'Me' } })).id;
    before = await everythingOf(other, theirs);
  });
  afterAll(() => service.close());

  const bench = async (name: string) =>
    accounts ? openBench(service, name, await signedUp(service, name)) : openBench(service, name);

  async function fill(bench: TestBench): Promise<Ids> {
    const diagram = await bench.take('SECRET maker', 'Hidden 9', [
      '2,SECRET-1,SECRET BALL BEARING 5X11X4,2,',
    ]);
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
      ...nobodys(),
      ...(accounts && (await idsOfPeople(bench))),
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
      `/api/models/${ids.model}/tools`,
      `/api/parts/${ids.part}`,
      `/api/diagrams/${ids.diagram}/rows`,
      '/api/jobs?state=all',
      `/api/jobs/${ids.job}`,
      '/api/order',
      ...(accounts ? ['/api/benches', '/api/people', '/api/tokens', '/api/trail'] : []),
    ];
    return JSON.stringify(await Promise.all(paths.map(path => bench.good(path))));
  }

  const send = (route: string, { path, body }: Attempt) =>
    own.ask(path.replaceAll('OWN', ownJob), {
      method: route.split(' ')[0]!,
      ...(body ? { body } : {}),
    });

  test('every route of the service is on the list, and no other', () => {
    expect(registered(service.app).sort()).toEqual(Object.keys({ ...workRoutes, ...accountRoutes }).sort());
  });

  const listed: Record<string, Expects> = { 'GET /api/benches': 'list', 'POST /api/benches': 'list' };
  const of = (expected: 'list' | 'refuse') =>
    Object.entries(routes).flatMap(([route, { expects, ask }]) => {
      const meant = expects === 'machine' && accounts ? (listed[route] ?? 'refuse') : expects;
      return meant === expected ? [[route, ask] as const] : [];
    });

  test.each(of('list'))('%s gives nothing of another bench’s', async (route, ask) => {
    for (const attempt of ask(theirs)) {
      const text = await (await send(route, attempt)).text();
      for (const id of Object.values(theirs)) expect(text).not.toContain(id);
      // What was asked may stand in the answer; what was not asked may not.
      expect(text).not.toMatch(/SECRET (maker|owner|BALL)|Hidden 9"|"Other"/);
    }
  });

  test.each(of('refuse'))('%s is refused as for an id that nobody has', async (route, ask) => {
    const strangers = ask(nobodys());
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

  test.runIf(accounts).each(Object.keys(routes).filter(route => roleIsNeeded(route)))(
    '%s with another bench’s header is refused as for a bench that is not there',
    async route => {
      for (const attempt of routes[route]!.ask(theirs)) {
        const ask = (Workshop: string) =>
          own.ask(attempt.path, {
            method: route.split(' ')[0]!,
            headers: { Workshop },
            ...(attempt.body ? { body: attempt.body } : {}),
          });
        const [refused, stranger] = [await ask(theirs.bench), await ask(nobodys().bench)];
        expect([refused.status, stranger.status]).toEqual([404, 404]);
        expect((await refused.json()).code).toBe('bench-not-found');
        expect((await stranger.json()).code).toBe('bench-not-found');
      }
    },
  );

  test('afterwards nothing of the other’s has changed', async () => {
    await service.readAll();
    expect(await everythingOf(other, theirs)).toBe(before);
  });
});

const roleIsNeeded = (route: string) => ['reader', 'counter', 'repairer', 'owner'].includes(rights[route]!);
