import { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ZodError, z } from 'zod';
import type { AppEnv } from './edge/bench.ts';
import { type Refusal, refuse } from './refusal.ts';

type Target = 'json' | 'form' | 'query' | 'param' | 'header' | 'cookie';

const parts: Record<Target, string> = {
  json: 'the request',
  form: 'the form',
  query: 'the address',
  param: 'the address',
  header: 'the headers',
  cookie: 'the cookies',
};

/** What zod found, as a refusal that names the first field and what it should be. */
function refusalOf(target: Target, error: ZodError): Refusal {
  const issue = error.issues[0];
  const field = issue?.path.join('.') ?? '';
  if (target === 'param' && issue?.code === 'invalid_format')
    return refuse('not-found', {
      place: field,
      message: 'There is nothing under this address.',
      remedy: 'Choose from a list; an id is never typed by hand.',
    });
  return refuse('bad-request', {
    place: field === '' ? parts[target] : `${field} in ${parts[target]}`,
    message: issue ? `${issue.message}.` : 'The request is not of the form it should have.',
    remedy: `Correct ${field === '' ? parts[target] : `"${field}"`} and send it again; GET /api/openapi.json says what is expected.`,
  });
}

type Checked = { target: keyof typeof parts } & (
  | { success: true; data: unknown }
  | { success: false; error: ZodError | z.core.$ZodError }
);

/** A set of routes whose requests are checked: a failure is thrown, so the answer's type stays the answer alone. */
export function router() {
  return new OpenAPIHono<AppEnv>({
    defaultHook: (result: Checked, _c: Context) => {
      if (!result.success) throw refusalOf(result.target, result.error as ZodError);
    },
  });
}

/** The body of a route that takes JSON. */
export const jsonBody = <Schema extends z.ZodType>(schema: Schema) => ({
  required: true as const,
  content: { 'application/json': { schema } },
});

/** The answer of a route that gives JSON. */
export const jsonAnswer = <Schema extends z.ZodType>(schema: Schema, description: string) => ({
  description,
  content: { 'application/json': { schema } },
});
