import { createRoute, z } from '@hono/zod-openapi';
import { id } from '../answers/common.ts';
import {
  newPerson,
  newToken,
  people,
  personChange,
  personLink,
  personHere as personShape,
  token,
  tokenMade,
  tokens,
  trail,
} from '../answers/people.ts';
import { fingerprint, idempotencyKey, once } from '../edge/once.ts';
import { changeMember, eraseMember, removeMember } from '../people/change-member.ts';
import { addMember, makeInvitation } from '../people/invite.ts';
import { listPeople, personHere } from '../people/list-people.ts';
import { listTrail } from '../people/list-trail.ts';
import { giveSecret, listTokens, makeToken, revokeToken } from '../people/tokens.ts';
import { writeDown } from '../people/write-down.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const params = z.object({ person: id });

/** Who works at a bench, what programs may, and the trail of who did what. Secrets are minted outside what is kept for a repeat. */
export const peopleRoutes = ({ store, accounts }: Service) => {
  const joinAt = (word: string) => `${accounts?.origin}/join#${word}`;
  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/people',
        responses: { 200: jsonAnswer(people, 'Everyone who works here, is invited, or did work here.') },
      }),
      async c =>
        c.json(
          {
            people: await store.inWorkshop(c.get('workshop'), listPeople),
            you: c.get('actor')?.member ?? null,
          },
          200,
        ),
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/people',
        request: { body: jsonBody(newPerson) },
        responses: { 201: jsonAnswer(personLink, 'The person, and the link by which they come in.') },
      }),
      async c => {
        const given = c.req.valid('json');
        const [key, request] = [idempotencyKey(c), fingerprint(c, given)];
        const workshop = c.get('workshop');
        const answer = await store.inWorkshop(workshop, async tx => {
          const { member } = await once(tx, key, request, async () => ({
            member: await addMember(tx, c.get('actor'), given),
          }));
          const word = await makeInvitation(tx, workshop, member);
          return { person: await personHere(tx, member), link: joinAt(word) };
        });
        return c.json(answer, 201);
      },
    )
    .openapi(
      createRoute({
        method: 'patch',
        path: '/api/people/{person}',
        request: { params, body: jsonBody(personChange) },
        responses: { 200: jsonAnswer(personShape, 'The person as they stand now.') },
      }),
      async c => {
        const { person } = c.req.valid('param');
        const change = c.req.valid('json');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          await changeMember(tx, c.get('actor'), person, change);
          return personHere(tx, person);
        });
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/people/{person}',
        request: { params },
        responses: { 200: jsonAnswer(personShape, 'They no longer work here.') },
      }),
      async c => {
        const { person } = c.req.valid('param');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          await removeMember(tx, c.get('actor'), person);
          return personHere(tx, person);
        });
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/people/{person}/link',
        request: { params },
        responses: { 200: jsonAnswer(personLink, 'A new link; the one before is void.') },
      }),
      async c => {
        const { person } = c.req.valid('param');
        const workshop = c.get('workshop');
        const answer = await store.inWorkshop(workshop, async tx => {
          const word = await makeInvitation(tx, workshop, person);
          await writeDown(tx, c.get('actor'), 'link-made', { member: person });
          return { person: await personHere(tx, person), link: joinAt(word) };
        });
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/people/{person}/erase',
        request: { params },
        responses: {
          200: jsonAnswer(personShape, 'Their name is gone from this bench; what they did stays.'),
        },
      }),
      async c => {
        const { person } = c.req.valid('param');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          await eraseMember(tx, c.get('actor'), person);
          return personHere(tx, person);
        });
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/tokens',
        responses: { 200: jsonAnswer(tokens, 'The bench’s tokens, the newest first.') },
      }),
      async c => c.json({ tokens: await store.inWorkshop(c.get('workshop'), listTokens) }, 200),
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/tokens',
        request: { body: jsonBody(newToken) },
        responses: { 201: jsonAnswer(tokenMade, 'The token, with its secret, which is shown this once.') },
      }),
      async c => {
        const given = c.req.valid('json');
        const [key, request] = [idempotencyKey(c), fingerprint(c, given)];
        const workshop = c.get('workshop');
        const answer = await store.inWorkshop(workshop, async tx => {
          const made = await once(tx, key, request, () => makeToken(tx, c.get('actor'), given));
          return { token: made, secret: await giveSecret(tx, workshop, made.id) };
        });
        return c.json(answer, 201);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/tokens/{token}',
        request: { params: z.object({ token: id }) },
        responses: { 200: jsonAnswer(token, 'The token, which lets nobody in any more.') },
      }),
      async c => {
        const { token: asked } = c.req.valid('param');
        const answer = await store.inWorkshop(c.get('workshop'), tx =>
          revokeToken(tx, c.get('actor'), asked),
        );
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/trail',
        request: { query: z.object({ before: id.optional() }) },
        responses: { 200: jsonAnswer(trail, 'Who did what, the latest first.') },
      }),
      async c => {
        const { before } = c.req.valid('query');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => listTrail(tx, before, 100)), 200);
      },
    );
};
