import { createMiddleware } from 'hono/factory';
import { workshop } from '../db/schema/index.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';

/** What a request carries once it has passed the edge. */
export interface AppEnv {
  Variables: { requestId: string; workshop: string };
}

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * Which bench a request is about: the one named in the header `Workshop`; for a request that only reads and names
 * none, the bench last opened.
 */
export function ofBench(service: Service) {
  return createMiddleware<AppEnv>(async (c, next) => {
    const named = c.req.header('Workshop')?.toLowerCase();
    if (named === undefined) c.set('workshop', await lastOpened(service, c.req.method, c.req.path));
    else {
      // Asked each time: a restore may have put back data that does not know this bench yet.
      if (!(await isThere(service, named))) throw benchNotFound();
      c.set('workshop', named);
    }
    await next();
  });
}

/** Addresses that are asked by POST and change nothing. */
const onlyAsked = ['/api/measure', '/api/fit'];

async function lastOpened(service: Service, method: string, path: string): Promise<string> {
  if (method !== 'GET' && method !== 'HEAD' && !onlyAsked.includes(path))
    throw refuse('workshop-missing', {
      place: 'Workshop',
      message: 'This changes something, and does not say on which bench.',
      remedy: 'Send the header "Workshop" with the id of a bench; GET /api/benches lists them.',
    });
  const [last] = await service.store.benches();
  if (last === undefined) throw benchNotFound();
  return last;
}

async function isThere(service: Service, id: string): Promise<boolean> {
  if (!uuid.test(id)) return false;
  const rows = await service.store.inWorkshop(id, tx => tx.select({ id: workshop.workshop }).from(workshop));
  return rows.length > 0;
}

/** The refusal for a bench that is not there. */
export const benchNotFound = () =>
  refuse('bench-not-found', {
    place: 'Workshop',
    message: 'There is no bench of this id.',
    remedy: 'Choose a bench from GET /api/benches, or start one.',
  });
