import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

const read = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');

interface Service {
  image?: string;
  build?: string;
  healthcheck?: object;
  environment?: Record<string, string>;
  volumes?: string[];
  ports?: string[];
  restart?: string;
}
const text = read('docker-compose.yml');
const compose = parse(text) as { services: Record<string, Service>; volumes: Record<string, unknown> };

/** The Compose Specification's own schema; see schemas/README.md. Its formats are those of durations, which it spells out. */
const { $schema: _, ...schema } = JSON.parse(read('tests/schemas/compose-spec.json'));
const valid = new Ajv({ strict: false, validateFormats: false }).compile(schema);

describe('docker-compose.yml', () => {
  test('is what the Compose Specification says a compose file is', () => {
    expect(valid(compose), JSON.stringify(valid.errors, null, 1)).toBe(true);
  });

  test.each([
    [
      'a word it does not know',
      (file: typeof compose) => Object.assign(file.services.postgres!, { prots: [] }),
    ],
    [
      'a health check without a test that can be',
      (file: typeof compose) => Object.assign(file.services.postgres!, { healthcheck: { test: 5 } }),
    ],
    ['a service that is a list', (file: typeof compose) => Object.assign(file.services, { worker: [] })],
  ])('the schema refuses %s', (_, spoil) => {
    const spoilt = structuredClone(compose);
    spoil(spoilt);
    expect(valid(spoilt)).toBe(false);
  });

  const services = Object.entries(compose.services);
  test.each(services)('%s is pinned, is watched, and starts again', (_, service) => {
    if (!service.build) expect(service.image).toMatch(/^[\w/.-]+:v?\d+\.\d+(\.\d+)?$/);
    expect(service.healthcheck).toBeDefined();
    expect(service.restart).toBe('unless-stopped');
  });

  test.each(services)('%s keeps what it keeps in a volume that is declared', (_, service) => {
    expect(service.volumes?.length).toBeGreaterThan(0);
    for (const volume of service.volumes!)
      expect(Object.keys(compose.volumes)).toContain(volume.split(':')[0]);
  });

  test('nothing secret has a default: each must be set, and says so', () => {
    const uses = [...text.matchAll(/\$\{(\w+)(:?[-?+][^}]*)?\}/g)];
    const secret = uses.filter(([, name]) => /PASSWORD|KEY|SECRET|TOKEN/.test(name!));
    expect(secret.length).toBeGreaterThan(0);
    for (const [, , rest] of secret) expect(rest).toMatch(/^:\?set /);
    for (const service of Object.values(compose.services))
      for (const [name, value] of Object.entries(service.environment ?? {}))
        if (/PASSWORD|KEY|SECRET/.test(name)) expect(value).toMatch(/^\$\{\w+:\?/);
  });

  test('the database is not reached from outside, the program from this machine alone', () => {
    for (const [name, { ports = [] }] of services)
      expect([name, ports]).toEqual([name, name === 'fettlebench' ? ['127.0.0.1:4180:4180'] : []]);
  });
});

describe('Dockerfile', () => {
  const stages = read('Dockerfile')
    .split(/^(?=FROM )/m)
    .slice(1);
  test('is built in stages, each from a pinned image', () => {
    expect(stages.length).toBeGreaterThan(1);
    for (const stage of stages) expect(stage).toMatch(/^FROM node:\d+\.\d+\.\d+-bookworm-slim\b/);
  });
  test('runs as an ordinary user, without what only building needs', () => {
    const last = stages.at(-1)!;
    expect(last.match(/^USER (.*)$/gm)).toEqual(['USER node']);
    expect(last).not.toMatch(/npm (ci|install)|COPY \. /);
    expect(stages.some(stage => stage.includes('npm ci --omit=dev'))).toBe(true);
  });
  test('is told of every file it copies', () => {
    const letIn = read('.dockerignore')
      .split('\n')
      .filter(line => line.startsWith('!'))
      .map(line => line.slice(1));
    const copied = [...read('Dockerfile').matchAll(/^COPY (?!--from)(.*) \.\/?\S*$/gm)]
      .flatMap(([, names]) => names!.split(' '))
      .filter(name => name !== '.');
    for (const name of copied) expect(letIn).toContain(name);
    // What is built is built from these.
    expect(letIn).toEqual(expect.arrayContaining(['api', 'indexer', 'web', 'build.mjs', 'vite.config.ts']));
  });
});
