import type { Context } from 'hono';
import { workshop } from '../db/schema/index.ts';
import type { Actor } from '../people/actor.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';

/** What a request carries once it has passed the edge. */
export interface AppEnv {
  Variables: {
    requestId: string;
    workshop: string;
    /** Who asks; null where nobody signs in. */
    actor: Actor | null;
  };
}

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** Addresses that are asked by POST and change nothing. */
const onlyAsked = ['/api/measure', '/api/fit'];

/**
 * The bench that the header `Workshop` names; undefined for a request that only reads and names none: the bench last
 * opened answers it. One that writes must name it.
 */
export function benchNamed(c: Context<AppEnv>): string | undefined {
  const named = c.req.header('Workshop')?.toLowerCase();
  if (named !== undefined) {
    if (!uuid.test(named)) throw benchNotFound();
    return named;
  }
  const { method, path } = c.req;
  if (method !== 'GET' && method !== 'HEAD' && !onlyAsked.includes(path))
    throw refuse('workshop-missing', {
      place: 'Workshop',
      message: 'This changes something, and does not say on which bench.',
      remedy: 'Send the header "Workshop" with the id of a bench; GET /api/benches lists them.',
    });
  return undefined;
}

/** Where nobody signs in: the bench that is named, or the one last opened here. */
export async function benchAsked(service: Service, c: Context<AppEnv>): Promise<string> {
  const named = benchNamed(c);
  if (named === undefined) {
    const [last] = await service.store.benches();
    if (last === undefined) throw benchNotFound();
    return last;
  }
  // Asked each time: a restore may have put back data that does not know this bench yet.
  const rows = await service.store.inWorkshop(named, tx =>
    tx.select({ id: workshop.workshop }).from(workshop),
  );
  if (rows.length === 0) throw benchNotFound();
  return named;
}

/** The refusal for a bench that is not there, or not the asker's. */
export const benchNotFound = () =>
  refuse('bench-not-found', {
    place: 'Workshop',
    message: 'There is no bench of this id.',
    remedy: 'Choose a bench from GET /api/benches, or start one.',
  });
