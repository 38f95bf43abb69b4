import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { getCookie } from 'hono/cookie';
import { id } from '../answers/common.ts';
import {
  confirmation,
  done,
  invited,
  joined,
  joining,
  link,
  passwordByLink,
  passwordChange,
  session,
  sessions,
  signIn,
} from '../answers/people.ts';
import { person } from '../db/schema/index.ts';
import { addressOf } from '../edge/address.ts';
import type { AppEnv } from '../edge/bench.ts';
import { giveSession, sessionCookie, takeSession } from '../edge/session-cookie.ts';
import { personOf } from '../people/actor.ts';
import { deviceOf } from '../people/device.ts';
import { erasePerson } from '../people/erase-person.ts';
import { join, lookAtInvitation } from '../people/join.ts';
import { countAttempt, linkLimit } from '../people/limits.ts';
import { endOtherSessions, endSession, listSessions, sessionOf } from '../people/sessions.ts';
import { changePassword, confirmPassword, setPasswordByLink } from '../people/set-password.ts';
import { signIn as signInAs } from '../people/sign-in.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

/** Coming in, going out, and what is one's own: sessions, password, and one's erasure. */
export const sessionRoutes = ({ store, accounts }: Service) => {
  const origin = accounts?.origin ?? '';
  const whence = (c: Context<AppEnv>) => ({
    address: addressOf(c, accounts?.proxies ?? 0),
    device: deviceOf(c.req.header('User-Agent') ?? ''),
  });
  const countLink = (c: Context<AppEnv>) =>
    countAttempt(store, 'links that let in', whence(c).address, linkLimit);

  /** Who this browser is signed in as; null where it is not. */
  async function signedIn(c: Context<AppEnv>) {
    const word = getCookie(c, sessionCookie(origin));
    return word ? sessionOf(store, word) : null;
  }

  async function answerOf(id: string) {
    const [row] = await store.asPerson(id, tx => tx.select({ signIn: person.signIn }).from(person));
    return { accounts: true, person: row ? { id, signIn: row.signIn } : null };
  }

  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/session',
        responses: { 200: jsonAnswer(session, 'Whether one signs in here, and as whom this browser is.') },
      }),
      async c => {
        if (!accounts) return c.json({ accounts: false, person: null }, 200);
        const current = await signedIn(c);
        return c.json(current ? await answerOf(current.person) : { accounts: true, person: null }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/session',
        request: { body: jsonBody(signIn) },
        responses: { 200: jsonAnswer(session, 'Signed in: a cookie holds the session.') },
      }),
      async c => {
        const { word, person: id } = await signInAs(store, c.req.valid('json'), whence(c));
        giveSession(c, origin, word);
        return c.json(await answerOf(id), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/session',
        responses: { 200: jsonAnswer(done, 'Signed out; the session has ended.') },
      }),
      async c => {
        const current = await signedIn(c);
        if (current) await endSession(store, current.person, current.session);
        takeSession(c, origin);
        return c.json({ done: true as const }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/sessions',
        responses: { 200: jsonAnswer(sessions, 'Where you are signed in, the latest first.') },
      }),
      async c => {
        const own = personOf(c.get('actor'));
        return c.json({ sessions: await listSessions(store, own.person, own.session) }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/sessions',
        responses: { 200: jsonAnswer(done, 'Signed out everywhere but here.') },
      }),
      async c => {
        const own = personOf(c.get('actor'));
        await store.asPerson(own.person, tx => endOtherSessions(tx, own.session));
        return c.json({ done: true as const }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/sessions/{session}',
        request: { params: z.object({ session: id }) },
        responses: { 200: jsonAnswer(done, 'That session has ended.') },
      }),
      async c => {
        const own = personOf(c.get('actor'));
        await endSession(store, own.person, c.req.valid('param').session);
        return c.json({ done: true as const }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'put',
        path: '/api/password',
        request: { body: jsonBody(passwordChange) },
        responses: { 200: jsonAnswer(done, 'The new password holds; every other session has ended.') },
      }),
      async c => {
        await changePassword(store, personOf(c.get('actor')), c.req.valid('json'));
        return c.json({ done: true as const }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/password/by-link',
        request: { body: jsonBody(passwordByLink) },
        responses: { 200: jsonAnswer(session, 'The new password holds, and you are signed in.') },
      }),
      async c => {
        await countLink(c);
        const asked = c.req.valid('json');
        const set = await setPasswordByLink(store, asked.link, asked.newPassword, whence(c).device);
        giveSession(c, origin, set.session);
        return c.json(await answerOf(set.person), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/invitation',
        request: { body: jsonBody(link) },
        responses: { 200: jsonAnswer(invited, 'What the link is an invitation to.') },
      }),
      async c => {
        await countLink(c);
        return c.json(await lookAtInvitation(store, c.req.valid('json').link), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/invitation/join',
        request: { body: jsonBody(joining) },
        responses: { 200: jsonAnswer(joined, 'You work at this bench, and are signed in.') },
      }),
      async c => {
        await countLink(c);
        const { link: word, as: fresh } = c.req.valid('json');
        const current = fresh ? null : await signedIn(c);
        const as = fresh ?? (current && { person: current.person });
        if (!as)
          throw refuse('not-signed-in', {
            place: 'as',
            message: 'It is not said who comes in.',
            remedy: 'Choose a name and a password to sign in by, or sign in first.',
          });
        const came = await join(store, word, as, whence(c).device);
        if (came.session) giveSession(c, origin, came.session);
        return c.json({ bench: came.workshop }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/person/erase',
        request: { body: jsonBody(confirmation) },
        responses: { 200: jsonAnswer(done, 'Your name is gone from everything; you are signed out.') },
      }),
      async c => {
        const own = personOf(c.get('actor'));
        await confirmPassword(store, own.person, c.req.valid('json').password);
        await erasePerson(store, own.person);
        takeSession(c, origin);
        return c.json({ done: true as const }, 200);
      },
    );
};
