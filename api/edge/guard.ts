import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import { secureHeaders } from 'hono/secure-headers';
import { refuse } from '../refusal.ts';
import type { AppEnv } from './bench.ts';

const mebibyte = 1024 * 1024;
/** The largest document taken in, and the largest request of any other kind. */
export const largestUpload = 25 * mebibyte;
const largestRequest = 8 * mebibyte;

const names = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * Lets in what is addressed to this machine by its own name, so that no site can reach the bench by pointing a name of
 * its own here; and refuses writes that a page of another origin sends. `ports` empty leaves the port open.
 */
export function onlyOurs(ports: number[]) {
  const ours = (host: string) => {
    const at = /^(.*?)(?::(\d+))?$/.exec(host)!;
    return names.includes(at[1]!) && (ports.length === 0 || ports.includes(Number(at[2] ?? 80)));
  };
  return createMiddleware<AppEnv>(async (c, next) => {
    const host = c.req.header('Host') ?? new URL(c.req.url).host;
    if (!ours(host))
      throw refuse('host-not-ours', {
        place: 'Host',
        message: 'This address is not one that the bench is served at.',
        remedy: 'Open the address that was printed when the program started.',
      });
    const origin = c.req.header('Origin');
    const foreign = origin !== undefined && !(origin.startsWith('http://') && ours(origin.slice(7)));
    const writes = !['GET', 'HEAD', 'OPTIONS'].includes(c.req.method);
    if (writes && (foreign || c.req.header('Sec-Fetch-Site') === 'cross-site'))
      throw refuse('origin-not-ours', {
        place: 'Origin',
        message: 'Another site may not change anything here.',
        remedy: 'Work from the page that this program serves.',
      });
    await next();
  });
}

/** What a browser is told of the page: its own scripts, styles and fonts, and nothing from anywhere else. */
export const safeHeaders = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'"],
    connectSrc: ["'self'"],
    manifestSrc: ["'self'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  strictTransportSecurity: false,
  xFrameOptions: 'DENY',
  referrerPolicy: 'no-referrer',
});

const limit = (maxSize: number) =>
  bodyLimit({
    maxSize,
    onError: () => {
      throw refuse('too-large', {
        place: 'the request',
        message: `This is larger than ${maxSize / mebibyte} MiB, the most that is taken in at once.`,
        remedy: 'Split the document, or save its pages at a lower resolution, and send the parts.',
      });
    },
  });

const [ofUpload, ofRequest] = [limit(largestUpload + mebibyte), limit(largestRequest)];

/** Counts the body as it arrives and stops at the limit: larger for a file than for anything else. */
export const boundedBody = createMiddleware<AppEnv>((c, next) =>
  (c.req.header('Content-Type') ?? '').startsWith('multipart/form-data')
    ? ofUpload(c, next)
    : ofRequest(c, next),
);
