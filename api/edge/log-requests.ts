import { createMiddleware } from 'hono/factory';
import type { Service } from '../service.ts';
import type { AppEnv } from './bench.ts';
import { routeOf } from './let-in.ts';

/**
 * One line of the log for each request that an address of the API answered: the route as it is registered, never the
 * address itself, since that may hold what somebody looked for; and nothing of who asked.
 */
export const logRequests = ({ log }: Service) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const began = performance.now();
    await next();
    log({
      level: 'info',
      what: 'request',
      requestId: c.get('requestId'),
      route: routeOf(c) ?? 'none',
      status: c.res.status,
      ms: Math.round(performance.now() - began),
    });
  });
