import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Readiness } from '../../../api/answers/index.ts';
import { withConnection } from '../../../api/db/server.ts';
import { openService, type TestService } from './bench.ts';

let service: TestService;
let room = true;
beforeAll(async () => {
  service = await openService({ hasRoom: async () => room });
});
afterAll(() => service.close());

const ask = async () => {
  const response = await service.ask('/api/ready');
  return { status: response.status, ...((await response.json()) as Readiness) };
};

const asOwner = (statement: string) =>
  withConnection(service.store.server, 'fettle_admin', async sql => {
    await sql`set role fettle_owner`;
    await sql.unsafe(statement);
  });

test('ready where database, schema and disk are as they should be', async () => {
  expect(await ask()).toEqual({
    status: 200,
    ready: true,
    database: 'here',
    schema: 'current',
    search: { engine: 'postgres', state: 'here' },
    disk: 'room',
  });
});

test('a newer program may have brought the schema further: still ready', async () => {
  await asOwner(`insert into migration (number, name, sha256) values (9999, '9999-later.sql', '')`);
  expect(await ask()).toMatchObject({ status: 200, schema: 'newer' });
  await asOwner('delete from migration where number = 9999');
});

test('not ready while the schema is older than what this process knows', async () => {
  await asOwner(`create table kept as select * from migration; delete from migration where number = 1`);
  expect(await ask()).toMatchObject({ status: 503, ready: false, schema: 'older' });
  await asOwner('insert into migration select * from kept where number = 1; drop table kept');
});

test('not ready while the disk is short', async () => {
  room = false;
  expect(await ask()).toMatchObject({ status: 503, ready: false, disk: 'short' });
  room = true;
});

test('an engine that is away or behind is told, and stops nothing', async () => {
  const { postgresEngine } = await import('../../../api/search/postgres.ts');
  const away = await openService({
    engine: { ...postgresEngine, name: 'meilisearch', state: async () => 'away' },
  });
  const response = await away.ask('/api/ready');
  expect([response.status, ((await response.json()) as Readiness).search]).toEqual([
    200,
    { engine: 'meilisearch', state: 'away' },
  ]);
  await away.close();
});

test('not ready while the database is away', async () => {
  await service.store.close();
  expect(await ask()).toMatchObject({ status: 503, ready: false, database: 'away', schema: 'unknown' });
});
