import { serveStatic } from '@hono/node-server/serve-static';
import { type Context, Hono } from 'hono';
import type { AppEnv } from './bench.ts';
import { nothingHere } from './problems.ts';

const kept = (how: string) => (_path: string, c: Context) => c.header('Cache-Control', how);

/**
 * The built page. Files under `assets` carry their content's hash in their names and never change; every other address
 * is a file of the page, or one of its own places and gets its one document.
 */
export function pageOf(folder: string) {
  return new Hono<AppEnv>()
    .get('/assets/*', serveStatic({ root: folder, onFound: kept('public, max-age=31536000, immutable') }))
    .get('/assets/*', nothingHere)
    .get('*', serveStatic({ root: folder, onFound: kept('no-cache') }))
    .get('*', serveStatic({ root: folder, path: 'index.html', onFound: kept('no-cache') }));
}
