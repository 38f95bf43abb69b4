import { sql } from 'drizzle-orm';
import type { Context } from 'hono';
import { getCookie } from 'hono/cookie';
import { createMiddleware } from 'hono/factory';
import { matchedRoutes } from 'hono/route';
import { apiToken, session } from '../db/schema/index.ts';
import type { Actor } from '../people/actor.ts';
import { benchesOf } from '../people/benches-of.ts';
import { matches, parse } from '../people/credential.ts';
import type { Deed } from '../people/deed.ts';
import { countAttempt, routeLimits } from '../people/limits.ts';
import { memberHere } from '../people/member-here.ts';
import { holds, type Role, roles } from '../people/role.ts';
import { standing } from '../people/sessions.ts';
import { writeDown } from '../people/write-down.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import { type AppEnv, benchAsked, benchNamed, benchNotFound } from './bench.ts';
import { ofAccounts, type Right, rights } from './rights.ts';
import { sessionCookie } from './session-cookie.ts';

/** What leaves the bench as a file is written down, before it leaves. */
const takesOut: Record<string, [Deed, string]> = {
  'GET /api/order.csv': ['order-taken-out', 'csv'],
  'GET /api/order.txt': ['order-taken-out', 'txt'],
  'GET /api/order.xlsx': ['order-taken-out', 'xlsx'],
  'GET /api/backup': ['bench-taken-out', 'backup'],
  'GET /api/diagrams/:diagram/file': ['document-taken-out', 'file'],
};

/** The route that a request is for, as it is registered: `GET /api/jobs/:job`; undefined where there is none. */
export function routeOf(c: Context): string | undefined {
  const route = matchedRoutes(c).find(({ method, path }) => method !== 'ALL' && path.startsWith('/api/'));
  return route && `${route.method} ${route.path}`;
}

/**
 * Who a request comes from, whether they may ask this, and which bench it is about. What no table lets in is kept out.
 * Where nobody signs in, all but what is about people is open, and only the bench is settled.
 */
export function letIn(service: Service) {
  return createMiddleware<AppEnv>(async (c, next) => {
    c.set('actor', null);
    const route = routeOf(c);
    if (route === undefined) return next();
    const right = rights[route];
    if (right === undefined || right === 'command-line') throw notAllowed();
    if (service.accounts) await letInWith(service, service.accounts.origin, c, route, right);
    else {
      if (route in ofAccounts) throw nobodySignsIn();
      if (isRole(right)) c.set('workshop', await benchAsked(service, c));
    }
    await next();
    const actor = c.get('actor');
    const taken = takesOut[route];
    if (!actor || !taken || !c.res.ok) return;
    const [deed, kind] = taken;
    await service.store.inWorkshop(c.get('workshop'), tx =>
      writeDown(tx, actor, deed, { kind, diagram: c.req.param('diagram') }),
    );
  });
}

const isRole = (right: Right): right is Role => (roles as readonly string[]).includes(right);

async function letInWith(
  service: Service,
  origin: string,
  c: Context<AppEnv>,
  route: string,
  right: Right,
): Promise<void> {
  if (right === 'anyone') return;
  const bench = isRole(right) ? benchNamed(c) : null;
  const bearer = /^Bearer (\S+)$/.exec(c.req.header('Authorization') ?? '')?.[1];
  const actor = bearer
    ? await byToken(service, bearer, bench)
    : await bySession(service, getCookie(c, sessionCookie(origin)), bench);
  if (!actor) throw notSignedIn();
  if (right === 'person' && !actor.person) throw notAllowed();
  c.set('actor', actor);
  if (isRole(right)) {
    if (actor.workshop === null || actor.role === null) throw benchNotFound();
    if (!holds(actor.role, right)) throw notAllowed();
    c.set('workshop', actor.workshop);
  }
  const limit = routeLimits[route];
  if (limit) await countAttempt(service.store, route, actor.token ?? actor.person!, limit);
}

/** The person of a session, as the member they are of the bench that is named, or else of the one they last opened. */
async function bySession(service: Service, word: string | undefined, named: string | null | undefined) {
  const credential = word ? parse('session', word) : null;
  if (!credential) return null;
  const { owner: person, id } = credential;
  const bench = named === undefined ? ((await benchesOf(service.store, person))[0] ?? null) : named;
  return service.store.asPerson(
    person,
    async (tx): Promise<Actor | null> => {
      const [found] = await tx
        .select({
          secret: session.secret,
          stale: sql<boolean>`${session.seenAt} < now() - interval '10 minutes'`,
        })
        .from(session)
        .where(sql`${session.id} = ${id} and ${standing}`);
      if (!found || !matches(credential, found.secret)) return null;
      if (found.stale) await tx.update(session).set({ seenAt: new Date() }).where(sql`${session.id} = ${id}`);
      const member = bench === null ? undefined : await memberHere(tx, person);
      return {
        person,
        session: id,
        token: null,
        member: member?.id ?? null,
        role: member?.role ?? null,
        workshop: member ? bench : null,
      };
    },
    bench ?? '',
  );
}

/** A program by its token: on its one bench a reader or, where it may write, a repairer. */
async function byToken(service: Service, word: string, named: string | null | undefined) {
  const credential = parse('token', word);
  if (!credential) return null;
  const { owner: workshop, id } = credential;
  if (named && named !== workshop) throw benchNotFound();
  return service.store.inWorkshop(workshop, async (tx): Promise<Actor | null> => {
    const [found] = await tx
      .select({
        secret: apiToken.secret,
        scope: apiToken.scope,
        stale: sql<boolean>`coalesce(${apiToken.usedAt} < now() - interval '10 minutes', true)`,
      })
      .from(apiToken)
      .where(sql`${apiToken.id} = ${id} and ${apiToken.revokedAt} is null and ${apiToken.until} > now()`);
    if (!found || !matches(credential, found.secret)) return null;
    if (found.stale) await tx.update(apiToken).set({ usedAt: new Date() }).where(sql`${apiToken.id} = ${id}`);
    const role = found.scope === 'write' ? 'repairer' : 'reader';
    return { person: null, session: null, token: id, member: null, role, workshop };
  });
}

const notSignedIn = () =>
  refuse('not-signed-in', {
    place: 'Authorization',
    message: 'Nobody is signed in.',
    remedy: 'Sign in on the page; a program sends its token as "Authorization: Bearer …".',
  });

const notAllowed = () =>
  refuse('not-allowed', {
    place: 'your role',
    message: 'Your role on this bench does not allow this.',
    remedy: 'Ask an owner of the bench to do it, or to give you another role.',
  });

const nobodySignsIn = () =>
  refuse('nobody-signs-in', {
    place: 'people',
    message: 'Nobody signs in here: the program serves this machine alone.',
    remedy: 'Run it with FETTLE_ACCOUNTS=on, or over a PostgreSQL of its own, to have people sign in.',
  });
