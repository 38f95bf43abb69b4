import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

/**
 * The arrow: web → api → indexer, and inside the indexer units → standards and reading → categories → read and
 * verdict → intake and worker. Everything here is measured from the imports themselves.
 */
const root = resolve(import.meta.dirname, '..');

interface Import {
  from: string;
  to: string;
  typeOnly: boolean;
}

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(name => /\.tsx?$/.test(name))
    .map(name => join(folder, name).replaceAll('\\', '/'));
}

const statement = /^\s*(?:import|export)\s+(type\s)?([^'"]*?)from\s*['"]([^'"]+)['"]/gm;
const dynamic = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const target = (spec: string) =>
    spec.startsWith('.') ? relative(root, resolve(root, dirname(file), spec)).replaceAll('\\', '/') : spec;
  const allTypes = (names: string) => {
    const inside = /\{([^}]*)\}/.exec(names)?.[1];
    return inside !== undefined && names.replace(/\{[^}]*\}/, '').trim() === ''
      ? inside
          .split(',')
          .map(name => name.trim())
          .filter(Boolean)
          .every(name => name.startsWith('type '))
      : false;
  };
  return [
    ...[...text.matchAll(statement)].map(([, type, names, spec]) => ({
      from: file,
      to: target(spec!),
      typeOnly: type !== undefined || allTypes(names!),
    })),
    ...[...text.matchAll(dynamic)].map(([, spec]) => ({ from: file, to: target(spec!), typeOnly: false })),
  ];
}

const all = ['api', 'indexer', 'web'].flatMap(sources).flatMap(importsOf);
const breaking = (rule: (edge: Import) => boolean) =>
  all.filter(rule).map(({ from, to }) => `${from} → ${to}`);
const within = (path: string, ...folders: string[]) =>
  folders.some(folder => path === folder || path.startsWith(`${folder}/`));

/** Files that reach each other over their imports, circle by circle (Tarjan's strongly connected components, 1972). */
function circles(imports: readonly Import[]): string[][] {
  const targets = new Map<string, string[]>();
  for (const { from, to } of imports) targets.set(from, [...(targets.get(from) ?? []), to]);
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const found: string[][] = [];
  const visit = (file: string) => {
    order.set(file, order.size);
    lowest.set(file, order.get(file)!);
    open.push(file);
    for (const to of targets.get(file) ?? []) {
      if (!order.has(to)) visit(to);
      else if (!open.includes(to)) continue;
      lowest.set(file, Math.min(lowest.get(file)!, lowest.get(to)!));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const circle = open.splice(open.indexOf(file));
    if (circle.length > 1 || targets.get(file)?.includes(file)) found.push(circle.sort());
  };
  for (const file of targets.keys()) if (!order.has(file)) visit(file);
  return found;
}

/** Layers of the indexer, lowest first; a file may import its own layer and those below. */
const layers: string[][] = [
  ['indexer/units', 'indexer/duty.ts', 'indexer/reading/reading.ts'],
  ['indexer/standards', 'indexer/reading'],
  ['indexer/categories'],
  [
    'indexer/choice.ts',
    'indexer/choose-by-shape.ts',
    'indexer/finer-noun.ts',
    'indexer/choose-category.ts',
    'indexer/find-designations.ts',
    'indexer/gather-evidence.ts',
    'indexer/read.ts',
    'indexer/read-canonical.ts',
    'indexer/verdict.ts',
    'indexer/verdict',
    'indexer/duty-words.ts',
    'indexer/size.ts',
    'indexer/compare.ts',
    'indexer/like-lines.ts',
    'indexer/near.ts',
    'indexer/part-number.ts',
    'indexer/measuring',
    'indexer/measure.ts',
    'indexer/fitting',
    'indexer/fit.ts',
    'indexer/gauge-sheet.ts',
    'indexer/tools-needed.ts',
  ],
  ['indexer/index.ts', 'indexer/teaching'],
  ['indexer/intake'],
  ['indexer/read-input.ts', 'indexer/worker.ts', 'indexer/drawer.ts'],
];
/** What reads and draws documents, in processes of their own. */
const besidePure = ['indexer/intake', ...layers.at(-1)!];
const layerOf = (path: string) => layers.findIndex(layer => within(path, ...layer));

describe('the arrow', () => {
  test('there are imports to look at', () => {
    expect(all.length).toBeGreaterThan(50);
  });

  test('indexer imports neither api nor web', () => {
    expect(breaking(({ from, to }) => within(from, 'indexer') && within(to, 'api', 'web'))).toEqual([]);
  });

  test('api does not import web', () => {
    expect(breaking(({ from, to }) => within(from, 'api') && within(to, 'web'))).toEqual([]);
  });

  test('web takes types alone from api', () => {
    expect(
      breaking(({ from, to, typeOnly }) => within(from, 'web') && within(to, 'api') && !typeOnly),
    ).toEqual([]);
  });

  test('web never loads the intake or the worker', () => {
    expect(
      breaking(({ from, to, typeOnly }) => within(from, 'web') && within(to, ...besidePure) && !typeOnly),
    ).toEqual([]);
  });

  test('the indexer outside its intake and worker needs nothing of Node', () => {
    expect(
      breaking(
        ({ from, to }) => within(from, 'indexer') && !within(from, ...besidePure) && to.startsWith('node:'),
      ),
    ).toEqual([]);
  });

  test('the indexer knows no network and no database', () => {
    const outside = [
      'node:http',
      'node:https',
      'node:net',
      'node:tls',
      'node:dns',
      'postgres',
      'drizzle-orm',
      'hono',
    ];
    expect(
      breaking(({ from, to }) => within(from, 'indexer') && outside.some(name => within(to, name))),
    ).toEqual([]);
  });

  test('every file of the indexer has its layer', () => {
    expect(sources('indexer').filter(file => layerOf(file) < 0)).toEqual([]);
  });

  test('inside the indexer the arrow goes one way', () => {
    expect(
      breaking(({ from, to, typeOnly }) => {
        if (!within(from, 'indexer') || !within(to, 'indexer') || typeOnly) return false;
        return layerOf(to) > layerOf(from);
      }),
    ).toEqual([]);
  });

  test('standards and reading do not know each other', () => {
    expect(
      breaking(
        ({ from, to, typeOnly }) =>
          !typeOnly &&
          ((within(from, 'indexer/standards') && within(to, 'indexer/reading')) ||
            (within(from, 'indexer/reading') && within(to, 'indexer/standards'))),
      ),
    ).toEqual([]);
  });

  test('one category does not import another', () => {
    const category = (path: string) => /^indexer\/categories\/([a-z-]+)\//.exec(path)?.[1];
    expect(
      breaking(({ from, to }) => {
        const [a, b] = [category(from), category(to)];
        return a !== undefined && b !== undefined && a !== b;
      }),
    ).toEqual([]);
  });

  test('no files import each other in a circle, not even for types', () => {
    expect(circles(all)).toEqual([]);
  });
});
