import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** What goes round `store.inWorkshop`, each with what is wrong about it. */
const ways: [RegExp, string][] = [
  [/\bset\s+(session\s+)?(role|session\s+authorization)\b/i, 'a role that outlives its transaction'],
  [/\bset\s+(session\s+)?app\.\w+/i, 'a workshop that outlives its transaction'],
  [/\bset_config\s*\([^)]*\bfalse\s*\)/i, 'a setting that outlives its transaction'],
  [/\breset\s+role\b/i, 'a way back to the login role'],
  [/from\s+['"]postgres['"]|import\(\s*['"]postgres['"]\s*\)/, 'a connection of its own'],
  [/drizzle-orm\/postgres-js/, 'a connection of its own'],
  [/\brow_security\b/i, 'row-level security turned off'],
];

/** What a source does that only `api/db` may; a plain `set` leaks through a pooled connection, `set local` does not. */
const faults = (source: string) => ways.filter(([way]) => way.test(source)).map(([, why]) => why);

const sources = readdirSync(`${root}/api`, { recursive: true, encoding: 'utf8' }).filter(
  name => /\.tsx?$/.test(name) && !name.startsWith('db/'),
);

test('there are sources to look at', () => expect(sources).toContain('refusal.ts'));

test.each(sources)('api/%s goes to the database by the store alone', name => {
  expect(faults(readFileSync(`${root}/api/${name}`, 'utf8'))).toEqual([]);
});

describe('within api/db a lasting role is set on connections of the administrator’s own alone', () => {
  test('the pool that serves never has one', () => {
    const store = readFileSync(`${root}/api/db/store.ts`, 'utf8');
    expect(new Set(faults(store))).toEqual(new Set(['a connection of its own']));
  });
});

test.each([
  ['await sql`set role fettle_app`', 'a role that outlives its transaction'],
  ['SET SESSION ROLE x', 'a role that outlives its transaction'],
  ["select set_config('app.workshop', $1, false)", 'a setting that outlives its transaction'],
  ["set app.workshop = 'x'", 'a workshop that outlives its transaction'],
  ["import postgres from 'postgres';", 'a connection of its own'],
])('%s is told', (source, why) => expect(faults(source)).toContain(why));

test('set local is not', () =>
  expect(faults("set local role fettle_app; set_config('x', 'y', true)")).toEqual([]));
