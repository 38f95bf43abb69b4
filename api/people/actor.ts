import { refuse } from '../refusal.ts';
import type { Role } from './role.ts';

/** Who asks: a person who signed in, or a program by its token. */
export interface Actor {
  /** Null for a token. */
  person: string | null;
  session: string | null;
  /** The person as a member of the bench that the request is about; null where it is about none. */
  member: string | null;
  token: string | null;
  /** What they may do on that bench; null where the request is about none. */
  role: Role | null;
  /** The one bench that a token is for. */
  workshop: string | null;
}

/** Someone who signed in, at a place that is about themselves. */
export function personOf(actor: Actor | null): { person: string; session: string } {
  if (actor?.person && actor.session) return { person: actor.person, session: actor.session };
  throw refuse('not-allowed', {
    place: 'Authorization',
    message: 'This is for a person who has signed in; a token is not enough.',
    remedy: 'Sign in on the page.',
  });
}
