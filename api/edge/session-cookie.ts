import type { Context } from 'hono';
import { deleteCookie, setCookie } from 'hono/cookie';
import { lasts } from '../people/sessions.ts';

const isSecure = (origin: string) => origin.startsWith('https:');

/**
 * The name of the cookie that holds a session's word. Behind TLS it begins with `__Host-`, so that a browser takes it
 * from this very host alone, over TLS alone (RFC 6265bis, section 4.1.3.2).
 */
export const sessionCookie = (origin: string) => (isSecure(origin) ? '__Host-fettle' : 'fettle');

/** Out of reach of scripts, and never sent along from another site. */
const attributes = (origin: string) =>
  ({ path: '/', httpOnly: true, sameSite: 'Strict', secure: isSecure(origin) }) as const;

export const giveSession = (c: Context, origin: string, word: string) =>
  setCookie(c, sessionCookie(origin), word, { ...attributes(origin), maxAge: lasts.days * 86_400 });

export const takeSession = (c: Context, origin: string) =>
  deleteCookie(c, sessionCookie(origin), attributes(origin));
