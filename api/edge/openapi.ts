import type { OpenAPIHono } from '@hono/zod-openapi';
import { problem } from '../answers/problem.ts';
import type { AppEnv } from './bench.ts';
import { rights } from './rights.ts';

const names = {
  Workshop:
    'The bench this is about. A request that only reads may leave it out: the bench last opened answers.',
  'Idempotency-Key': 'Your own key for this deed, the same for each try: 8 to 200 visible characters.',
};

/** The service as an OpenAPI 3.1 document, from the schemas that check its requests. Every route may answer a Problem. */
export function documentOf(routes: Pick<OpenAPIHono<AppEnv>, 'getOpenAPI31Document' | 'openAPIRegistry'>) {
  if (!routes.openAPIRegistry.definitions.some(one => one.type === 'schema' && one.schema === problem))
    routes.openAPIRegistry.register('Problem', problem);
  const document = routes.getOpenAPI31Document({
    openapi: '3.1.0',
    info: { title: 'Fettlebench', version: '1' },
  });
  document.components = {
    ...document.components,
    // Where people sign in: a program's token, or the cookie of a session.
    securitySchemes: { token: { type: 'http', scheme: 'bearer' } },
  };
  for (const [path, item] of Object.entries(document.paths ?? {}))
    for (const method of ['get', 'post', 'put', 'patch', 'delete'] as const) {
      const operation = item[method];
      if (!operation) continue;
      if (!['anyone', 'person'].includes(rightOf(method, path) ?? ''))
        operation.security = [{}, { token: [] }];
      operation.responses ??= {};
      operation.responses.default = {
        description: 'A refusal, with its place and what to do (RFC 9457).',
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      };
      const headers = headersOf(method, path).map(name => ({
        name,
        in: 'header' as const,
        required: name === 'Idempotency-Key' || method !== 'get',
        description: names[name],
        schema: { type: 'string' as const },
      }));
      operation.parameters = [...(operation.parameters ?? []), ...headers];
    }
  return document;
}

/** Who may ask a path as OpenAPI writes it. */
const rightOf = (method: string, path: string) =>
  rights[`${method.toUpperCase()} ${path.replaceAll(/\{(\w+)\}/g, ':$1')}`];

function headersOf(method: string, path: string): (keyof typeof names)[] {
  const right = rightOf(method, path);
  if (right === 'anyone' || path === '/api/read') return [];
  const ofBench = right === 'let-in' || right === 'person' ? [] : (['Workshop'] as const);
  return method === 'post' ? [...ofBench, 'Idempotency-Key'] : [...ofBench];
}
