import type { Context } from 'hono';
import { HTTPException } from 'hono/http-exception';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Problem } from '../answers/index.ts';
import { errorCode } from '../db/errors.ts';
import { Refusal, refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import type { AppEnv } from './bench.ts';

/**
 * Every failure as RFC 9457 problem details. A refusal says its place and remedy; anything else is "internal", with
 * the cause in the log under the request id and nothing of it in the answer.
 */
export function problemsOf(service: Service) {
  return (error: Error, c: Context<AppEnv>) => {
    const refusal = asRefusal(error);
    const requestId = c.get('requestId');
    if (!refusal || refusal.status >= 500 || refusal.cause)
      service.log({
        level: refusal ? 'warn' : 'error',
        requestId,
        method: c.req.method,
        path: c.req.routePath,
        code: refusal?.code ?? 'internal',
        cause: causeOf(error),
      });
    return answer(c, refusal ?? internal(), requestId);
  };
}

/** The answer to an address that nothing stands at. */
export function nothingHere(c: Context<AppEnv>) {
  const refusal = refuse('route-not-found', {
    place: `${c.req.method} ${c.req.path}`,
    message: 'There is nothing at this address.',
    remedy: 'GET /api/openapi.json lists every address of the service.',
  });
  return answer(c, refusal, c.get('requestId'));
}

function answer(c: Context<AppEnv>, refusal: Refusal, requestId: string) {
  const problem: Problem = {
    type: `urn:fettlebench:problem:${refusal.code}`,
    title: title(refusal.code),
    status: refusal.status,
    detail: refusal.message,
    code: refusal.code,
    place: refusal.place,
    remedy: refusal.remedy,
    requestId,
  };
  return c.body(JSON.stringify(problem), refusal.status as ContentfulStatusCode, {
    'Content-Type': 'application/problem+json',
    'Cache-Control': 'no-store',
    ...(refusal.wait && { 'Retry-After': String(refusal.wait) }),
  });
}

const title = (code: string) => (code[0]!.toUpperCase() + code.slice(1)).replaceAll('-', ' ');

const internal = () =>
  Object.assign(
    refuse('internal', {
      place: 'the service',
      message: 'Something went wrong here that is not your doing; nothing was changed.',
      remedy: 'Try again. If it stays, look for the request id in the log.',
    }),
    { status: 500 },
  );

/** The refusal that an error of the libraries underneath stands for; undefined where it is none. */
function asRefusal(error: Error): Refusal | undefined {
  if (error instanceof Refusal) return error;
  if (error instanceof HTTPException) return ofRequest(error);
  const code = errorCode(error) ?? '';
  // 40001 serialization_failure, 40P01 deadlock_detected, 23503 foreign_key_violation, 23505 unique_violation.
  if (['40001', '40P01', '23503', '23505'].includes(code))
    return refuse(
      'changed-meanwhile',
      {
        place: 'the request',
        message: 'Something this is about was changed at the same moment; nothing was done.',
        remedy: 'Load it again and repeat what you did.',
      },
      error,
    );
  // 22021 character_not_in_repertoire, 22P05 untranslatable_character: a NUL, mostly.
  if (['22021', '22P05'].includes(code))
    return refuse('bad-request', {
      place: 'the request',
      message: 'The text holds a character that cannot be kept, such as NUL.',
      remedy: 'Remove the control characters and send it again.',
    });
  return undefined;
}

function ofRequest(error: HTTPException): Refusal {
  if (error.status === 415)
    return refuse('wrong-media-type', {
      place: 'Content-Type',
      message: 'This address does not take content of that type.',
      remedy: 'Send application/json; a file goes as multipart/form-data to POST /api/diagrams.',
    });
  return refuse('not-json', {
    place: 'the request',
    message: 'The body of the request cannot be read.',
    remedy: 'Send well-formed JSON, or a well-formed form for a file.',
  });
}

/** What the log keeps of a cause: never the parameters of a query, which are what people wrote. */
function causeOf(error: Error): Record<string, unknown> {
  let root: Error = error;
  while (root.cause instanceof Error) root = root.cause;
  return {
    name: root.name,
    code: errorCode(error),
    message: root.message,
    at: root.stack?.split('\n').slice(1, 6),
  };
}
