import { z } from '@hono/zod-openapi';
import { deeds } from '../people/deed.ts';
import { roles } from '../people/role.ts';
import { newPassword, signInName } from '../people/sign-in-name.ts';
import { id, instant } from './common.ts';

export const role = z.enum(roles);
export type { Role } from '../people/role.ts';

const name = z.string().trim().min(1).max(80);
/** A credential as its holder has it. */
const word = z.string().max(200);
/** A password as it was set once; a wrong one is told as wrong, whatever its form. */
const password = z.string().min(1).max(200);

/** Whether one signs in here at all, and as whom this browser is signed in. */
export const session = z
  .object({
    accounts: z.boolean(),
    person: z.object({ id, signIn: z.string() }).nullable(),
  })
  .openapi('Session');
export type Session = z.infer<typeof session>;

export const signIn = z.object({ signIn: signInName, password }).openapi('SignIn');
export type SignIn = z.input<typeof signIn>;

export const sessions = z
  .object({
    sessions: z.array(
      z.object({ id, device: z.string(), startedAt: instant, seenAt: instant, current: z.boolean() }),
    ),
  })
  .openapi('Sessions');
export type Sessions = z.infer<typeof sessions>;

export const passwordChange = z.object({ password, newPassword }).openapi('PasswordChange');
export type PasswordChange = z.infer<typeof passwordChange>;

export const passwordByLink = z.object({ link: word, newPassword }).openapi('PasswordByLink');
export type PasswordByLink = z.infer<typeof passwordByLink>;

export const confirmation = z.object({ password }).openapi('Confirmation');

/** Someone who works at the bench, is invited to, or did; a name of null was erased. */
export const personHere = z
  .object({
    id,
    name: z.string().nullable(),
    role,
    state: z.enum(['here', 'invited', 'left']),
    /** Until when a link stands open for them. */
    invitedUntil: instant.nullable(),
    since: instant,
  })
  .openapi('Person');
export type PersonHere = z.infer<typeof personHere>;

/** `you`: the member who asks. */
export const people = z.object({ people: z.array(personHere), you: id.nullable() }).openapi('People');
export type People = z.infer<typeof people>;

export const newPerson = z.object({ name, role }).openapi('NewPerson');
export type NewPerson = z.infer<typeof newPerson>;

export const personChange = z
  .object({ name: name.optional(), role: role.optional() })
  .openapi('PersonChange');
export type PersonChange = z.infer<typeof personChange>;

/** A person, and the link by which they come in, which is shown this once. */
export const personLink = z.object({ person: personHere, link: z.url() }).openapi('PersonLink');
export type PersonLink = z.infer<typeof personLink>;

export const link = z.object({ link: word }).openapi('Link');

/** What an invitation is to. `again`: they signed in before, and choose a new sign-in. */
export const invited = z
  .object({ bench: z.string(), name: z.string(), role, again: z.boolean() })
  .openapi('Invited');
export type Invited = z.infer<typeof invited>;

/** With a sign-in of their own, or, without one, as who is signed in. */
export const joining = z
  .object({ link: word, as: z.object({ signIn: signInName, password: newPassword }).optional() })
  .openapi('Joining');
export type Joining = z.input<typeof joining>;

export const joined = z.object({ bench: id }).openapi('Joined');

export const token = z
  .object({
    id,
    name: z.string(),
    scope: z.enum(['read', 'write']),
    state: z.enum(['good', 'over', 'revoked']),
    until: instant,
    createdAt: instant,
    usedAt: instant.nullable(),
  })
  .openapi('Token');
export type TokenAnswer = z.infer<typeof token>;

export const tokens = z.object({ tokens: z.array(token) }).openapi('Tokens');
export type Tokens = z.infer<typeof tokens>;

export const newToken = z
  .object({ name, scope: z.enum(['read', 'write']), days: z.number().int().min(1).max(366) })
  .openapi('NewToken');
export type NewToken = z.infer<typeof newToken>;

/** A token with its secret, which is shown this once. */
export const tokenMade = z.object({ token, secret: z.string() }).openapi('TokenMade');
export type TokenMade = z.infer<typeof tokenMade>;

const known = z.object({ id, name: z.string().nullable() }).nullable();

/** Who did what, the latest first. `by` and `byToken` both null: whoever runs the server. */
export const trail = z
  .object({
    entries: z.array(
      z.object({
        id,
        at: instant,
        deed: z.enum(deeds),
        by: known,
        byToken: known,
        of: known,
        ofToken: known,
        from: z.string().nullable(),
        to: z.string().nullable(),
        kind: z.string().nullable(),
      }),
    ),
    next: id.nullable(),
  })
  .openapi('Trail');
export type Trail = z.infer<typeof trail>;

export const done = z.object({ done: z.literal(true) });
