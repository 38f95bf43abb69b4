import { sql } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  Invited,
  People,
  PersonHere,
  PersonLink,
  Session,
  Sessions,
  TokenMade,
  Tokens,
  Trail,
} from '../../../api/answers/index.ts';
import { asKeeper, digestOf, tablesInOrder } from '../../../api/db/backup/tables.ts';
import { apiToken, session } from '../../../api/db/schema/index.ts';
import { ownBench as makeOwner, makePerson } from '../../../api/people/add-owner.ts';
import { mint, parse } from '../../../api/people/credential.ts';
import { makePasswordLink } from '../../../api/people/set-password.ts';
import { personNamed } from '../../../api/people/sign-in.ts';
import { benchAs, openBench, type TestBench, type TestService } from './bench.ts';
import { cookieOf, openAccounts, password, signedUp, signInAs, withRole } from './people.ts';

let service: TestService;
beforeAll(async () => {
  service = await openAccounts();
});
afterAll(() => service.close());

let count = 0;
/** A bench with an owner of its own. */
async function ownBench(): Promise<{ bench: TestBench; name: string; as: Record<string, string> }> {
  const name = `owner-${++count}`;
  const as = await signedUp(service, name);
  return { name, as, bench: await openBench(service, `Bench ${count}`, as) };
}

const from = (address: string) => ({ 'X-Forwarded-For': `198.51.100.7, ${address}` });
const signIn = (name: string, word: string, address: string) =>
  service.ask('/api/session', {
    method: 'POST',
    body: { signIn: name, password: word },
    headers: from(address),
  });
const codeOf = async (response: Response) => ((await response.json()) as { code: string }).code;
const sessionAs = async (as: Record<string, string>) =>
  (await (await service.ask('/api/session', { headers: as })).json()) as Session;

describe('signing in', () => {
  test('gives a cookie that no script sees, no other site sends, and only TLS carries', async () => {
    await makePerson(service.store, 'marta', password);
    const response = await signIn('  MARTA ', password, 'signing-in');
    expect(response.headers.get('Set-Cookie')).toMatch(
      /^__Host-fettle=fettle_s_[\w-]{86}; Max-Age=7776000; Path=\/; HttpOnly; Secure; SameSite=Strict$/,
    );
    expect(((await response.json()) as Session).person?.signIn).toBe('marta');
    expect((await sessionAs(cookieOf(response))).person?.signIn).toBe('marta');
  });

  test('does not tell a wrong name from a wrong password', async () => {
    await makePerson(service.store, 'edith', password);
    const [wrongName, wrongPassword] = await Promise.all([
      signIn('nobody.here', password, 'wrong-1'),
      signIn('edith', 'another lantern', 'wrong-2'),
    ]);
    const masked = async (response: Response) => (await response.text()).replace(/"requestId":"[^"]+"/, '');
    expect([wrongName.status, await masked(wrongName)]).toEqual([401, await masked(wrongPassword)]);
  });

  test('takes as long for a name that nobody has', async () => {
    await makePerson(service.store, 'slow', password);
    const time = async (name: string, address: string) => {
      const began = performance.now();
      await signIn(name, 'another lantern', address);
      return performance.now() - began;
    };
    const [known, unknown]: [number[], number[]] = [[], []];
    for (let i = 0; i < 9; i++) {
      known.push(await time('slow', `time-${i}`));
      unknown.push(await time(`none-${i}`, `time-${i}`));
    }
    const median = (times: number[]) => times.sort((a, b) => a - b)[4]!;
    // Argon2id at this cost takes tens of milliseconds; without it the answer would be there in a few.
    expect(median(unknown)).toBeGreaterThan(median(known) / 2);
    expect(median(unknown)).toBeLessThan(median(known) * 2);
  });

  test('the eleventh try of a name within a quarter of an hour waits, the right password too', async () => {
    await makePerson(service.store, 'often', password);
    for (let i = 0; i < 10; i++)
      expect((await signIn('often', 'another lantern', `often-${i}`)).status).toBe(401);
    const late = await signIn('often', password, 'often-late');
    expect(late.status).toBe(429);
    expect(Number(late.headers.get('Retry-After'))).toBeGreaterThan(800);
    expect(await codeOf(late)).toBe('too-often');
  });

  test('so does the fifty-first from one address, whichever names', async () => {
    await Promise.all(Array.from({ length: 50 }, (_, i) => signIn(`guess-${i}`, 'another lantern', 'many')));
    expect((await signIn('guess-51', 'another lantern', 'many')).status).toBe(429);
    expect((await signIn('guess-52', 'another lantern', 'few')).status).toBe(401);
  });

  test('an address that a client made up itself does not count', async () => {
    await Promise.all(
      Array.from({ length: 50 }, (_, i) =>
        service.ask('/api/session', {
          method: 'POST',
          body: { signIn: `forged-${i}`, password: 'another lantern' },
          headers: { 'X-Forwarded-For': `10.0.0.${i}, real-address` },
        }),
      ),
    );
    expect((await signIn('forged-51', 'another lantern', 'real-address')).status).toBe(429);
  });

  test('the right password forgets the wrong ones before', async () => {
    await makePerson(service.store, 'tries', password);
    for (let round = 0; round < 3; round++) {
      for (let i = 0; i < 6; i++) await signIn('tries', 'another lantern', `tries-${round}`);
      expect((await signIn('tries', password, `tries-${round}`)).status).toBe(200);
    }
  });
});

describe('a write with a cookie', () => {
  test.each([
    ['from the page', { Origin: 'https://bench.example' }, 201],
    [
      'from the page, as older browsers say it',
      { Origin: 'https://bench.example', 'Sec-Fetch-Site': '' },
      201,
    ],
    ['from another site', { Origin: 'https://evil.example' }, 403],
    ['from the same name in the clear', { Origin: 'http://bench.example' }, 403],
    ['from a neighbour of the name', { Origin: 'https://other.bench.example' }, 403],
    ['from nowhere that it says', { Origin: undefined }, 403],
    ['from a neighbour that hides its origin', { Origin: undefined, 'Sec-Fetch-Site': 'same-site' }, 403],
    ['from a frame without an origin', { Origin: 'null' }, 403],
  ])('%s', async (_, headers, status) => {
    const { bench, as } = await ownBench();
    const sent = Object.fromEntries(
      Object.entries({ ...as, ...headers }).filter(([, value]) => value),
    ) as Record<string, string>;
    const response = await service.ask('/api/jobs', {
      method: 'POST',
      body: { owner: 'Ada' },
      headers: { ...sent, Workshop: bench.id },
    });
    expect(response.status).toBe(status);
  });
});

describe('sessions', () => {
  test('each is named by its device, and ends where it is ended', async () => {
    const { name, as } = await ownBench();
    const response = await service.ask('/api/session', {
      method: 'POST',
      body: { signIn: name, password },
      headers: { ...from(name), 'User-Agent': 'Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Firefox/140.0' },
    });
    const other = cookieOf(response);
    const list = (await (await service.ask('/api/sessions', { headers: as })).json()) as Sessions;
    expect(list.sessions.map(one => [one.device, one.current])).toEqual([
      ['Firefox on Linux', false],
      ['Some program on some system', true],
    ]);
    await service.ask(`/api/sessions/${list.sessions[0]!.id}`, { method: 'DELETE', headers: as });
    expect((await sessionAs(other)).person).toBeNull();
    expect((await sessionAs(as)).person).not.toBeNull();
  });

  test('signing out ends it for whoever kept the cookie', async () => {
    const { as } = await ownBench();
    await service.ask('/api/session', { method: 'DELETE', headers: as });
    expect((await service.ask('/api/sessions', { headers: as })).status).toBe(401);
  });

  test.each([
    ['not seen for 14 days', { seenAt: sql`now() - interval '15 days'` }],
    ['90 days old', { createdAt: sql`now() - interval '91 days'` }],
  ])('one %s has ended', async (_, aged) => {
    const { name, as } = await ownBench();
    const id = (await personNamed(service.store, name))!;
    await service.store.asPerson(id, tx => tx.update(session).set(aged));
    expect((await sessionAs(as)).person).toBeNull();
    expect((await service.ask('/api/sessions', { headers: as })).status).toBe(401);
  });

  test('a word with another’s secret, or of another kind, opens nothing', async () => {
    const { as } = await ownBench();
    const { owner, id } = parse('session', as.Cookie!.split('=')[1]!)!;
    for (const word of [mint('session', owner, id).word, mint('token', owner, id).word, '', 'fettle_s_x'])
      expect((await sessionAs({ Cookie: `__Host-fettle=${word}` })).person).toBeNull();
  });
});

describe('passwords', () => {
  test('a change asks for the one before, and ends every other session', async () => {
    const { name, as } = await ownBench();
    const other = await signInAs(service, name);
    const change = (given: string, newPassword: string) =>
      service.ask('/api/password', { method: 'PUT', body: { password: given, newPassword }, headers: as });
    expect(await codeOf(await change('another lantern', 'a boat under the crane'))).toBe('password-wrong');
    expect((await change(password, 'short')).status).toBe(400);
    expect((await change(password, 'a boat under the crane')).status).toBe(200);
    expect((await sessionAs(other)).person).toBeNull();
    expect((await sessionAs(as)).person).not.toBeNull();
    expect((await signIn(name, password, name)).status).toBe(401);
    expect((await signIn(name, 'a boat under the crane', name)).status).toBe(200);
  });

  test('a link sets a new one, once, and ends every session', async () => {
    const { name, as } = await ownBench();
    const link = await makePasswordLink(service.store, (await personNamed(service.store, name))!);
    const use = () =>
      service.ask('/api/password/by-link', {
        method: 'POST',
        body: { link, newPassword: 'a boat under the crane' },
        headers: from(name),
      });
    const used = await use();
    expect(used.status).toBe(200);
    expect((await sessionAs(cookieOf(used))).person?.signIn).toBe(name);
    expect((await sessionAs(as)).person).toBeNull();
    expect(await codeOf(await use())).toBe('link-void');
  });

  test('letters typed in another way are the same password (Unicode NFKC)', async () => {
    await makePerson(service.store, 'gudrun', 'über den großen ﬂuß');
    const decomposed = 'u\u0308ber den großen fluß';
    expect((await signIn('gudrun', decomposed, 'gudrun')).status).toBe(200);
  });
});

describe('an invitation', () => {
  const join = (link: string, body: object, headers: Record<string, string> = {}) =>
    service.ask('/api/invitation/join', {
      method: 'POST',
      body: { link: link.split('#')[1], ...body },
      headers: { ...from(`join-${++count}`), ...headers },
    });

  test('says what it is to, lets in once, with the role it gives', async () => {
    const { bench } = await ownBench();
    const { link, person } = await bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Ida Fenn', role: 'counter' },
    });
    expect(link).toMatch(/^https:\/\/bench\.example\/join#fettle_i_[\w-]{86}$/);
    expect(person.state).toBe('invited');
    const word = link.split('#')[1];
    const looked = await service.ask('/api/invitation', {
      method: 'POST',
      body: { link: word },
      headers: from('look'),
    });
    expect((await looked.json()) as Invited).toMatchObject({
      name: 'Ida Fenn',
      role: 'counter',
      again: false,
    });
    const as = { signIn: 'ida.fenn', password };
    const came = await join(link, { as });
    expect(came.status).toBe(200);
    const ida = benchAs(service, bench.id, cookieOf(came));
    expect((await ida.ask('/api/jobs')).status).toBe(200);
    expect((await ida.refused('/api/people')).code).toBe('not-allowed');
    expect(await codeOf(await join(link, { as: { signIn: 'ida.twice', password } }))).toBe('link-void');
    // A name that is somebody's is told only to who holds a link.
    const { link: next } = await bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Bo', role: 'reader' },
    });
    expect(await codeOf(await join(next, { as }))).toBe('name-taken');
  });

  test('two at once let one in', async () => {
    const { bench } = await ownBench();
    const { link } = await bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Race', role: 'reader' },
    });
    const both = await Promise.all(
      ['race.a', 'race.b'].map(name => join(link, { as: { signIn: name, password } })),
    );
    expect(both.map(one => one.status).sort()).toEqual([200, 404]);
  });

  test('is taken up by who is signed in already: two benches, one sign-in', async () => {
    const [first, second] = [await ownBench(), await ownBench()];
    const { link } = await second.bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Helper', role: 'repairer' },
    });
    expect((await join(link, {}, first.as)).status).toBe(200);
    const seen = (await (await service.ask('/api/benches', { headers: first.as })).json()) as {
      benches: { id: string; role: string }[];
    };
    expect(seen.benches.map(one => [one.id, one.role]).sort()).toEqual(
      [
        [first.bench.id, 'owner'],
        [second.bench.id, 'repairer'],
      ].sort(),
    );
    expect((await join(link, {}, first.as)).status).toBe(404);
  });

  test('a new link after a forgotten password opens this bench, and never another of the same person', async () => {
    const [home, guest] = [await ownBench(), await ownBench()];
    const { person, link } = await guest.bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Guest', role: 'reader' },
    });
    await join(link, {}, home.as);
    const again = await guest.bench.good<PersonLink>(`/api/people/${person.id}/link`, { method: 'POST' });
    // Whoever holds it, an owner gone bad too, comes in as a new person: the other bench stays shut.
    const thief = cookieOf(await join(again.link, { as: { signIn: `thief-${count}`, password } }));
    expect((await benchAs(service, guest.bench.id, thief).ask('/api/jobs')).status).toBe(200);
    expect((await benchAs(service, home.bench.id, thief).ask('/api/jobs')).status).toBe(404);
    expect((await benchAs(service, guest.bench.id, home.as).ask('/api/jobs')).status).toBe(404);
    expect((await benchAs(service, home.bench.id, home.as).ask('/api/jobs')).status).toBe(200);
  });

  test('where the sign-in opened this bench alone, it ends, and its name is free for the new one', async () => {
    const { bench } = await ownBench();
    const name = `forgetful-${count}`;
    const before = await withRole(service, bench, 'reader', name);
    const { people } = await bench.good<People>('/api/people');
    const member = people.find(one => one.role === 'reader')!;
    const { link } = await bench.good<PersonLink>(`/api/people/${member.id}/link`, { method: 'POST' });
    const came = await join(link, { as: { signIn: name, password: 'a boat under the crane' } });
    expect(came.status).toBe(200);
    expect((await sessionAs(before)).person).toBeNull();
    expect((await signIn(name, 'a boat under the crane', name)).status).toBe(200);
  });

  test('a link that ran out, or was made anew, is void', async () => {
    const { bench } = await ownBench();
    const { person, link } = await bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Late', role: 'reader' },
    });
    const anew = await bench.good<PersonLink>(`/api/people/${person.id}/link`, { method: 'POST' });
    expect(await codeOf(await join(link, { as: { signIn: 'late.one', password } }))).toBe('link-void');
    await service.store.inWorkshop(bench.id, tx =>
      tx.execute(sql`update invitation set until = now() - interval '1 second'`),
    );
    expect(await codeOf(await join(anew.link, { as: { signIn: 'late.two', password } }))).toBe('link-void');
  });
});

describe('roles', () => {
  test('a change holds from the next request, and is on the trail', async () => {
    const { bench } = await ownBench();
    const as = await withRole(service, bench, 'reader', `riser-${count}`);
    const riser = benchAs(service, bench.id, as);
    const open = () => riser.ask('/api/jobs', { method: 'POST', body: { owner: 'Ada' } });
    expect((await open()).status).toBe(403);
    const member = (await bench.good<People>('/api/people')).people.find(one => one.role === 'reader')!;
    const change = (role: string) =>
      bench.good<PersonHere>(`/api/people/${member.id}`, { method: 'PATCH', body: { role } });
    await change('counter');
    expect((await open()).status).toBe(201);
    await bench.good(`/api/people/${member.id}`, { method: 'DELETE' });
    expect((await open()).status).toBe(404);
    const { entries } = await bench.good<Trail>('/api/trail');
    expect(entries.slice(0, 2).map(({ deed, of, from, to }) => ({ deed, of: of?.name, from, to }))).toEqual([
      { deed: 'left', of: 'A reader', from: null, to: null },
      { deed: 'role-changed', of: 'A reader', from: 'reader', to: 'counter' },
    ]);
  });

  test('the last owner cannot be taken away, by two at once neither', async () => {
    const { bench } = await ownBench();
    const second = benchAs(service, bench.id, await withRole(service, bench, 'owner', `second-${count}`));
    const { people, you } = await bench.good<People>('/api/people');
    const other = people.find(one => one.id !== you)!;
    const both = await Promise.all([
      bench.ask(`/api/people/${other.id}`, { method: 'PATCH', body: { role: 'reader' } }),
      second.ask(`/api/people/${you}`, { method: 'DELETE' }),
    ]);
    const left = await service.store.inWorkshop(bench.id, tx =>
      tx.execute(sql`select 1 from member where role = 'owner' and left_at is null and person is not null`),
    );
    expect(left).toHaveLength(1);
    expect(both.filter(one => one.ok)).toHaveLength(1);
  });
});

describe('tokens', () => {
  const make = (bench: TestBench, scope: string, key?: string) =>
    bench.good<TokenMade>('/api/tokens', {
      method: 'POST',
      body: { name: 'till', scope, days: 30 },
      ...(key && { key }),
    });
  const asProgram = (bench: TestBench, secret: string) =>
    benchAs(service, bench.id, { Authorization: `Bearer ${secret}` });

  test('reads, or writes as a repairer does, on its one bench, until it is revoked', async () => {
    const [{ bench }, stranger] = [await ownBench(), await ownBench()];
    const reader = asProgram(bench, (await make(bench, 'read')).secret);
    const made = await make(bench, 'write');
    const writer = asProgram(bench, made.secret);
    expect((await reader.ask('/api/jobs')).status).toBe(200);
    expect((await reader.refused('/api/jobs', { method: 'POST', body: { owner: 'A' } })).code).toBe(
      'not-allowed',
    );
    expect((await writer.ask('/api/jobs', { method: 'POST', body: { owner: 'A' } })).status).toBe(201);
    expect((await writer.refused('/api/tokens')).code).toBe('not-allowed');
    expect((await writer.refused('/api/sessions')).code).toBe('not-allowed');
    expect((await asProgram(stranger.bench, made.secret).refused('/api/jobs')).code).toBe('bench-not-found');
    await bench.good(`/api/tokens/${made.token.id}`, { method: 'DELETE' });
    expect((await writer.refused('/api/jobs')).code).toBe('not-signed-in');
    const { tokens } = await bench.good<Tokens>('/api/tokens');
    expect(tokens.map(one => one.state)).toEqual(['revoked', 'good']);
    expect(JSON.stringify(tokens)).not.toContain('fettle_t_');
  });

  test('ends at its day', async () => {
    const { bench } = await ownBench();
    const { secret } = await make(bench, 'read');
    await service.store.inWorkshop(bench.id, tx =>
      tx.update(apiToken).set({ until: sql`now() - interval '1 second'` }),
    );
    expect((await asProgram(bench, secret).refused('/api/jobs')).code).toBe('not-signed-in');
  });

  test('asked twice under one key makes one, and only the last secret holds', async () => {
    const { bench } = await ownBench();
    const [first, second] = [
      await make(bench, 'read', 'till-key-1'),
      await make(bench, 'read', 'till-key-1'),
    ];
    expect(second.token.id).toBe(first.token.id);
    expect((await asProgram(bench, first.secret).ask('/api/jobs')).status).toBe(401);
    expect((await asProgram(bench, second.secret).ask('/api/jobs')).status).toBe(200);
  });
});

test('lists read and documents taken in are counted for each who sends them: the next after 120 waits', async () => {
  const [{ bench, as }, other] = [await ownBench(), await ownBench()];
  const read = (headers: Record<string, string>) =>
    service.ask('/api/read', { method: 'POST', body: { text: '1,A-1,KNOB,1' }, headers });
  for (let i = 0; i < 120; i++) expect((await read(as)).status).toBe(200);
  const late = await read(as);
  expect([late.status, await codeOf(late)]).toEqual([429, 'too-often']);
  expect(Number(late.headers.get('Retry-After'))).toBeGreaterThan(600);
  expect((await read(other.as)).status).toBe(200);
  expect((await bench.ask('/api/jobs')).status).toBe(200);
});

test('whoever runs the server can make a member an owner; it is on the trail as theirs', async () => {
  const { bench } = await ownBench();
  const name = `stranded-${count}`;
  await withRole(service, bench, 'reader', name);
  const id = (await personNamed(service.store, name))!;
  expect(await makeOwner(service.store, id, `Bench ${count}`)).toBe(bench.id);
  const { people } = await bench.good<People>('/api/people');
  expect(people.map(one => one.role)).toEqual(['owner', 'owner']);
  const { entries } = await bench.good<Trail>('/api/trail');
  expect(entries[0]).toMatchObject({ deed: 'role-changed', by: null, byToken: null, to: 'owner' });
});

test('what leaves the bench as a file is on the trail, by whom', async () => {
  const { bench } = await ownBench();
  const { secret, token } = await bench.good<TokenMade>('/api/tokens', {
    method: 'POST',
    body: { name: 'till', scope: 'write', days: 1 },
  });
  await benchAs(service, bench.id, { Authorization: `Bearer ${secret}` }).ask('/api/order.csv');
  await bench.ask('/api/order.xlsx');
  const { entries } = await bench.good<Trail>('/api/trail');
  expect(
    entries.slice(0, 2).map(({ deed, kind, by, byToken }) => [deed, kind, by?.name, byToken?.name]),
  ).toEqual([
    ['order-taken-out', 'xlsx', expect.stringMatching(/^owner-/), undefined],
    ['order-taken-out', 'csv', undefined, token.name],
  ]);
});

test('the trail is read a hundred at a time, nothing twice and nothing left out', async () => {
  const { bench, name } = await ownBench();
  for (let i = 0; i < 120; i++) await bench.ask('/api/order.txt');
  const first = await bench.good<Trail>('/api/trail');
  const second = await bench.good<Trail>(`/api/trail?before=${first.next}`);
  const ids = [...first.entries, ...second.entries].map(one => one.id);
  expect([first.entries.length, new Set(ids).size, second.next]).toEqual([100, ids.length, null]);
  expect(ids.length).toBeGreaterThanOrEqual(121);
  expect(second.entries.at(-1)?.deed).toBe('bench-started');
  await signInAs(service, name);
  const [latest] = (await bench.good<Trail>('/api/trail')).entries;
  expect([latest?.deed, latest?.by?.name]).toEqual(['signed-in', name]);
});

describe('erasure', () => {
  /** Every byte that is kept of everybody, as one text. */
  const everything = () =>
    asKeeper(service.store.server, async tx => {
      let text = '';
      for (const table of [...(await tablesInOrder(tx)).map(one => one.name), 'session', 'invitation'])
        text += JSON.stringify(await tx.unsafe(`select * from "${table}"`));
      return text;
    });

  test('takes a name out of everything, and leaves the work', async () => {
    const { bench } = await ownBench();
    const name = 'zebedee.marlowe';
    const { link } = await bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Zebedee Marlowe', role: 'counter' },
    });
    const came = await service.ask('/api/invitation/join', {
      method: 'POST',
      body: { link: link.split('#')[1], as: { signIn: name, password } },
      headers: from('zebedee'),
    });
    const zebedee = benchAs(service, bench.id, cookieOf(came));
    const job = await zebedee.good<{ id: string }>('/api/jobs', { method: 'POST', body: { owner: 'Ada' } });
    // Also where they left before.
    const former = await ownBench();
    const there = await former.bench.good<PersonLink>('/api/people', {
      method: 'POST',
      body: { name: 'Zebedee Marlowe', role: 'reader' },
    });
    await service.ask('/api/invitation/join', {
      method: 'POST',
      body: { link: there.link.split('#')[1] },
      headers: { ...from('zebedee-2'), ...cookieOf(came) },
    });
    await former.bench.good(`/api/people/${there.person.id}`, { method: 'DELETE' });
    expect(await everything()).toMatch(/Zebedee/);

    const erase = (word: string) =>
      service.ask('/api/person/erase', { method: 'POST', body: { password: word }, headers: cookieOf(came) });
    expect(await codeOf(await erase('another lantern'))).toBe('password-wrong');
    expect((await erase(password)).status).toBe(200);
    expect(await everything()).not.toMatch(/Zebedee/i);
    expect((await zebedee.ask('/api/jobs')).status).toBe(401);
    expect((await bench.ask(`/api/jobs/${job.id}`)).status).toBe(200);
    const { entries } = await bench.good<Trail>('/api/trail');
    expect(entries.map(one => [one.deed, one.by?.name])).toContainEqual(['joined', null]);
  });

  test('an owner erases somebody from their bench alone', async () => {
    const { bench } = await ownBench();
    const as = await withRole(service, bench, 'reader', `erased-${count}`);
    const { people } = await bench.good<People>('/api/people');
    const member = people.find(one => one.role === 'reader')!;
    const erased = await bench.good<PersonHere>(`/api/people/${member.id}/erase`, { method: 'POST' });
    expect(erased).toMatchObject({ name: null, state: 'left' });
    expect((await sessionAs(as)).person).not.toBeNull();
    expect((await benchAs(service, bench.id, as).ask('/api/jobs')).status).toBe(404);
  });

  test('the last owner of a bench is told to find another first, and nothing is erased', async () => {
    const { as, bench } = await ownBench();
    const refused = await service.ask('/api/person/erase', {
      method: 'POST',
      body: { password },
      headers: as,
    });
    expect(await codeOf(refused)).toBe('last-owner');
    expect((await bench.good<People>('/api/people')).people[0]!.name).not.toBeNull();
  });
});

describe('erasing a bench', () => {
  test('takes everything of it and nothing of another; its owner can then be erased', async () => {
    const { bench, as, name } = await ownBench();
    const other = await ownBench();
    await withRole(service, bench, 'reader', `looker-${count}`);
    await bench.take('Brindlow', 'Gannet', ['1,G-1,BALL BEARING 5X11X4,2,', '2,G-2,SHIM 8.1 X 11 X 0.2,1,']);
    await other.bench.take('Brindlow', 'Gannet', ['1,G-1,BALL BEARING 5X11X4,2,']);
    await bench.good('/api/jobs', { method: 'POST', body: { owner: 'Ada' } });
    const of = (id: string) =>
      asKeeper(service.store.server, async tx => {
        const rows: Record<string, number> = {};
        for (const { name: table, columns } of await tablesInOrder(tx)) {
          if (!columns.includes('workshop')) continue;
          const [row] = await tx.unsafe(
            `select count(*)::integer as rows from "${table}" where workshop = $1`,
            [id],
          );
          if (row!.rows > 0) rows[table] = row!.rows as number;
        }
        return rows;
      });
    const before = await of(other.bench.id);
    const erase = (word: string) =>
      bench.ask('/api/bench/erase', { method: 'POST', body: { password: word }, key: null });
    expect(await codeOf(await erase('another lantern'))).toBe('password-wrong');
    expect((await erase(password)).status).toBe(200);
    // What the search engine has yet to hear is all that is left.
    expect(await of(bench.id)).toEqual({ outbox: 1 });
    expect(await of(other.bench.id)).toEqual(before);
    expect((await bench.refused('/api/jobs')).code).toBe('bench-not-found');
    const gone = await service.ask('/api/person/erase', { method: 'POST', body: { password }, headers: as });
    expect(gone.status).toBe(200);
    expect((await signIn(name, password, name)).status).toBe(401);
  });
});

test('nothing that lets in, and no password, is kept as it is', async () => {
  const { bench, as, name } = await ownBench();
  const { link } = await bench.good<PersonLink>('/api/people', {
    method: 'POST',
    body: { name: 'Kept', role: 'reader' },
  });
  const { secret } = await bench.good<TokenMade>('/api/tokens', {
    method: 'POST',
    body: { name: 'till', scope: 'read', days: 1 },
  });
  const words = [as.Cookie!.split('=')[1]!, link.split('#')[1]!, secret];
  await asKeeper(service.store.server, async tx => {
    const tables = [...(await tablesInOrder(tx)).map(one => one.name), 'session', 'invitation'];
    for (const table of tables) {
      const text = JSON.stringify(await tx.unsafe(`select * from "${table}"`));
      for (const word of words) {
        expect(text).not.toContain(word);
        expect(text).not.toContain(Buffer.from(word.slice(9), 'base64url').subarray(32).toString('hex'));
      }
      expect(text).not.toContain(password);
    }
    const [row] = await tx<{ password: string }[]>`select password from person where sign_in = ${name}`;
    // OWASP Password Storage Cheat Sheet: Argon2id, m=19456 (19 MiB), t=2, p=1.
    expect(row!.password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });
});

test('the log holds route, status and time, and nothing of who asked or for what', async () => {
  const { bench, name } = await ownBench();
  service.logged.length = 0;
  await bench.ask('/api/find?q=SECRET-77');
  await signIn(name, 'another lantern', '203.0.113.99');
  await service.ask('/api/jobs/7');
  const text = JSON.stringify(service.logged);
  expect(service.logged.map(({ what, route, status }) => [what, route, status])).toEqual([
    ['request', 'GET /api/find', 200],
    ['request', 'POST /api/session', 401],
    ['request', 'GET /api/jobs/:job', 401],
  ]);
  expect(Object.keys(service.logged[0]!).sort()).toEqual([
    'level',
    'ms',
    'requestId',
    'route',
    'status',
    'what',
  ]);
  expect(text).not.toMatch(/SECRET|owner-|lantern|203\.0\.113/);
});

test('a backup holds people, and nothing that lets in for a while', async () => {
  const tables = await asKeeper(service.store.server, tx => tablesInOrder(tx));
  const names = tables.map(table => table.name);
  expect(names).toEqual(expect.arrayContaining(['person', 'member', 'api_token', 'audit']));
  for (const name of ['session', 'invitation', 'password_link', 'attempt']) expect(names).not.toContain(name);
  const people = await asKeeper(service.store.server, tx =>
    digestOf(tx, tables.find(table => table.name === 'person')!),
  );
  expect(people.rows).toBeGreaterThan(0);
});
