import { expect } from 'vitest';
import type { PersonLink, Sessions, TokenMade, Trail } from '../../../api/answers/index.ts';
import { makePerson } from '../../../api/people/add-owner.ts';
import type { Role } from '../../../api/people/role.ts';
import { openService, type TestBench, type TestService } from './bench.ts';
import type { Ids } from './every-route.ts';

export const password = 'a lantern over the quay';

/** A service where people sign in, opened at an address with TLS before it. */
export const openAccounts = (options: Parameters<typeof openService>[0] = {}) =>
  openService({ accounts: { origin: 'https://bench.example', proxies: 1 }, ...options });

/** The cookie that an answer sets, as a browser sends it back. */
export const cookieOf = (response: Response): Record<string, string> => {
  const set = response.headers.get('Set-Cookie');
  expect(set).toContain('__Host-fettle=');
  return { Cookie: set!.split(';')[0]!, Origin: 'https://bench.example' };
};

/** Signs somebody in; what their browser sends from then on. Each from an address of their own. */
export async function signInAs(service: TestService, signIn: string): Promise<Record<string, string>> {
  const response = await service.ask('/api/session', {
    method: 'POST',
    body: { signIn, password },
    headers: { 'X-Forwarded-For': `192.0.2.1, ${signIn}` },
  });
  expect(response.status).toBe(200);
  return cookieOf(response);
}

/** Somebody new, signed in. */
export async function signedUp(service: TestService, name: string): Promise<Record<string, string>> {
  await makePerson(service.store, name.toLowerCase(), password);
  return signInAs(service, name.toLowerCase());
}

/** Somebody with a role at a bench, come in by an invitation: what their browser sends. */
export async function withRole(
  service: TestService,
  bench: TestBench,
  role: Role,
  signIn: string,
): Promise<Record<string, string>> {
  const { link } = await bench.good<PersonLink>('/api/people', {
    method: 'POST',
    body: { name: `A ${role}`, role },
  });
  const response = await service.ask('/api/invitation/join', {
    method: 'POST',
    body: { link: link.split('#')[1], as: { signIn, password } },
    headers: { 'X-Forwarded-For': `192.0.2.1, ${signIn}` },
  });
  expect(response.status, await response.clone().text()).toBe(200);
  return cookieOf(response);
}

/** Somebody, a token and an entry of the trail, of a bench whose owner asks. */
export async function idsOfPeople(
  bench: TestBench,
): Promise<Pick<Ids, 'person' | 'token' | 'session' | 'entry'>> {
  const { person } = await bench.good<PersonLink>('/api/people', {
    method: 'POST',
    body: { name: 'SECRET owner', role: 'reader' },
  });
  const { token } = await bench.good<TokenMade>('/api/tokens', {
    method: 'POST',
    body: { name: 'SECRET owner', scope: 'write', days: 30 },
  });
  const { sessions } = await bench.good<Sessions>('/api/sessions');
  const { entries } = await bench.good<Trail>('/api/trail');
  return { person: person.id, token: token.id, session: sessions[0]!.id, entry: entries[0]!.id };
}
