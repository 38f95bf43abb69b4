import { randomUUID } from 'node:crypto';
import { createMiddleware } from 'hono/factory';
import type { AppEnv } from './bench.ts';

/** Gives each request an id, which its answer and what the log says of it share. Answers of the API are never cached. */
export const identify = createMiddleware<AppEnv>(async (c, next) => {
  const requestId = randomUUID();
  c.set('requestId', requestId);
  await next();
  c.header('X-Request-Id', requestId);
  if (c.req.path.startsWith('/api/')) c.header('Cache-Control', 'no-store');
});
