import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';

/**
 * Where a request comes from. Behind so many proxies of one's own, what the outermost of them wrote at the end of
 * `X-Forwarded-For`; what stands before that anybody may have written.
 */
export function addressOf(c: Context, proxies: number): string {
  const forwarded = (c.req.header('X-Forwarded-For') ?? '').split(',').map(part => part.trim());
  const told = proxies > 0 ? forwarded.at(-proxies) : undefined;
  if (told) return told;
  // Asked in process there is no connection.
  return c.env?.incoming ? (getConnInfo(c).remote.address ?? 'unknown') : 'in process';
}
