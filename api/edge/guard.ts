import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import { secureHeaders } from 'hono/secure-headers';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import type { AppEnv } from './bench.ts';

const mebibyte = 1024 * 1024;
/** The largest document taken in, and the largest request of any other kind. */
const largestUpload = 25 * mebibyte;
const largestRequest = 8 * mebibyte;

const names = ['127.0.0.1', 'localhost', '[::1]'];

/** Where people sign in, told to whoever asks, by whichever name: a watcher may know the service by its number alone. */
const watched = ['/api/health', '/api/ready'];

/**
 * Lets in what is addressed to this machine by its own name, or by the one that people open, so that no site can reach
 * the bench by pointing a name of its own here; and refuses writes that a page of another origin sends. Where people
 * sign in by a cookie, a write must say where it comes from. `ports` empty leaves the port open.
 */
export function onlyOurs({ ports, accounts }: Pick<Service, 'ports' | 'accounts'>) {
  const local = (host: string) => {
    const at = /^(.*?)(?::(\d+))?$/.exec(host)!;
    return names.includes(at[1]!) && (ports.length === 0 || ports.includes(Number(at[2] ?? 80)));
  };
  const open = accounts && new URL(accounts.origin);
  const ours = (host: string) => local(host) || host === open?.host;
  const fromOurs = (origin: string) =>
    origin === open?.origin || (origin.startsWith('http://') && local(origin.slice(7)));
  return createMiddleware<AppEnv>(async (c, next) => {
    const host = c.req.header('Host') ?? new URL(c.req.url).host;
    if (!ours(host) && !(accounts && watched.includes(c.req.path)))
      throw refuse('host-not-ours', {
        place: 'Host',
        message: 'This address is not one that the bench is served at.',
        remedy: 'Open the address that was printed when the program started.',
      });
    const origin = c.req.header('Origin');
    const site = c.req.header('Sec-Fetch-Site');
    // Older browsers send no `Sec-Fetch-Site`; every browser sends `Origin` with what is not a GET.
    const foreign =
      origin === undefined
        ? site !== undefined && site !== 'same-origin' && site !== 'none'
        : !fromOurs(origin) || site === 'cross-site';
    const unsaid =
      accounts && c.req.header('Cookie') !== undefined && origin === undefined && site === undefined;
    const writes = !['GET', 'HEAD', 'OPTIONS'].includes(c.req.method);
    if (writes && (foreign || unsaid))
      throw refuse('origin-not-ours', {
        place: 'Origin',
        message: 'Another site may not change anything here.',
        remedy: 'Work from the page that this program serves.',
      });
    await next();
  });
}

/**
 * What a browser is told of the page: its own scripts, styles and fonts, and nothing from anywhere else; and where it is
 * opened over TLS, to come by no other way for a year.
 */
export const safeHeaders = ({ accounts }: Pick<Service, 'accounts'>) =>
  secureHeaders({
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
    strictTransportSecurity: accounts?.origin.startsWith('https:') ? 'max-age=31536000' : false,
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
