import { createMiddleware } from 'hono/factory';
import type { Service } from '../service.ts';
import type { AppEnv } from './bench.ts';
import { routeOf } from './let-in.ts';

const wellAsked = ['GET /api/health', 'GET /api/ready'];

/**
 * One line of the log for each request that an address of the API answered: the route as it is registered, never the
 * address itself, since that may hold what somebody looked for; and nothing of who asked. That the service is well is
 * asked every few seconds, and not worth a line.
 */
export const logRequests = ({ log }: Service) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const began = performance.now();
    await next();
    const route = routeOf(c) ?? 'none';
    if (wellAsked.includes(route) && c.res.ok) return;
    log({
      level: 'info',
      what: 'request',
      requestId: c.get('requestId'),
      route,
      status: c.res.status,
      ms: Math.round(performance.now() - began),
    });
  });
