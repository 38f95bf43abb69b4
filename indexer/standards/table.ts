import { inch, mm, toMm } from '../units/length.ts';

/**
 * Tables of the standards, checked as they are built: a misprint stops the program and names the row.
 * A column is written `name: kind`; rows are tuples in the order of the columns.
 *
 * Kinds: `text`; `number`; `mm` and `inch`, a length above zero as printed; `um`, a deviation in micrometres that may be
 * negative or a half. A `?` after the kind allows null where the source gives nothing. Lengths come out as whole micrometres.
 */
type Kind = 'text' | 'number' | 'mm' | 'inch' | 'um';
type Column = `${string}: ${Kind | `${Kind}?`}`;

type Name<C> = C extends `${infer N}: ${string}` ? N : never;
type Plain<K> = K extends 'text' ? string : number;
type Cell<C> = C extends `${string}: ${infer K}?`
  ? Plain<K> | null
  : C extends `${string}: ${infer K}`
    ? Plain<K>
    : never;

/** One row as a tuple of printed values. */
export type Printed<C extends readonly Column[]> = { readonly [I in keyof C]: Cell<C[I]> };

/** One row as an object, its lengths in whole micrometres. */
export type Row<C extends readonly Column[]> = { readonly [K in C[number] as Name<K>]: Cell<K> };

/** What is wrong with a row, or nothing. `previous` is the row above it. */
export type Check<R> = (row: R, previous: R | undefined, earlier: readonly R[]) => string | null;

/** A checked table: its rows, with the name of the standard and where the numbers come from. */
export interface Table<R> {
  readonly name: string;
  readonly source: string;
  readonly rows: readonly R[];
}

/**
 * Builds a table, checking every row.
 *
 * @throws Error naming table, row number, the row as printed and what is wrong with it.
 */
export function defineTable<const C extends readonly Column[]>(
  name: string,
  source: string,
  columns: C,
  rows: readonly Printed<C>[],
  ...checks: Check<Row<C>>[]
): Table<Row<C>> {
  const built: Row<C>[] = [];
  rows.forEach((printed, at) => {
    const fail = (why: string) => {
      throw new Error(`${name}, row ${at + 1} (${(printed as readonly unknown[]).join(', ')}): ${why}`);
    };
    if (printed.length !== columns.length) fail(`${printed.length} cells for ${columns.length} columns`);
    const row = Object.fromEntries(
      columns.map((column, i) => {
        const [key, kind] = column.split(': ') as [string, string];
        return [key, cell(key, kind, printed[i], fail)];
      }),
    ) as Row<C>;
    for (const check of checks) {
      const why = check(row, built.at(-1), built);
      if (why !== null) fail(why);
    }
    built.push(Object.freeze(row) as Row<C>);
  });
  return Object.freeze({ name, source, rows: Object.freeze(built) });
}

function cell(key: string, kind: string, value: unknown, fail: (why: string) => void): unknown {
  if (value === null) {
    if (!kind.endsWith('?')) fail(`${key} is missing`);
    return null;
  }
  const plain = kind.replace('?', '');
  if (plain === 'text') {
    if (typeof value !== 'string' || value === '') fail(`${key} is no text`);
    return value;
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) return fail(`${key} is no number`);
  if (plain === 'number' || plain === 'um') return value;
  if (value <= 0) fail(`${key} is not above zero`);
  return plain === 'inch' ? inch(value) : mm(value);
}

const shown = (value: unknown) => (typeof value === 'number' ? toMm(value) : value);

/** Checks that one length is above the other, where both are given. */
export function larger<K extends string>(key: K, than: K): Check<Readonly<Record<K, unknown>>> {
  return row => {
    const [a, b] = [row[key], row[than]];
    if (typeof a !== 'number' || typeof b !== 'number' || a > b) return null;
    return `${key} ${shown(a)} is not above ${than} ${shown(b)}`;
  };
}

/** Checks that one length is not below the other, where both are given: a maximum and its minimum. */
export function atLeast<K extends string>(key: K, than: K): Check<Readonly<Record<K, unknown>>> {
  return row => {
    const [a, b] = [row[key], row[than]];
    if (typeof a !== 'number' || typeof b !== 'number' || a >= b) return null;
    return `${key} ${shown(a)} is below ${than} ${shown(b)}`;
  };
}

/** Checks that rows with the same `within` columns follow each other in rising order of the others, the first one counting most. */
export function rising<K extends string>(
  keys: readonly K[],
  within: readonly K[] = [],
): Check<Readonly<Record<K, unknown>>> {
  return (row, previous) => {
    if (!previous || within.some(key => row[key] !== previous[key])) return null;
    for (const key of keys) {
      const [now, before] = [row[key] as number | string, previous[key] as number | string];
      if (now > before) return null;
      if (now < before) return `${key} ${shown(now)} follows ${shown(before)}`;
    }
    return `same ${keys.join(', ')} as the row above`;
  };
}

/** Checks that no earlier row has the same values in these columns. */
export function unique<K extends string>(...keys: readonly K[]): Check<Readonly<Record<K, unknown>>> {
  return (row, _, earlier) =>
    earlier.some(other => keys.every(key => other[key] === row[key]))
      ? `${keys.map(key => `${key} ${shown(row[key])}`).join(', ')} is there already`
      : null;
}

/** A map from one value of each row to the row, built once. The first row that has the value is kept. */
export function indexBy<R, K>(rows: readonly R[], key: (row: R) => K): ReadonlyMap<K, R> {
  const map = new Map<K, R>();
  for (const row of rows) if (!map.has(key(row))) map.set(key(row), row);
  return map;
}

/** A map from one value to all rows that share it, in their order, built once. */
export function groupBy<R, K>(rows: readonly R[], key: (row: R) => K): ReadonlyMap<K, readonly R[]> {
  const map = new Map<K, R[]>();
  for (const row of rows) {
    const group = map.get(key(row));
    if (group) group.push(row);
    else map.set(key(row), [row]);
  }
  return map;
}
