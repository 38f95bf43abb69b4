import type { DocumentRows, Row } from '../../indexer/intake/rows.ts';
import type { Line } from './make-list.ts';

/** What was found of a list, counted; of pairs the first is how many were right. */
export interface Score {
  lines: number;
  found: number;
  extra: number;
  inversions: number;
  qty: number;
  description: number;
  relations: [right: number, all: number];
  variants: [right: number, all: number];
  /** The first things that went wrong, in words. */
  wrong: string[];
}

const code = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim().toLowerCase();

/** Compares what was read with what the list says: every line once, in order. */
export function score(lines: readonly Line[], found: DocumentRows): Score {
  const taken = found.rows.filter(row => row.outcome === 'taken');
  const pairs = match(lines, taken);
  const order = pairs.map(([, row]) => taken.indexOf(row));
  const total: Score = {
    lines: lines.length,
    found: pairs.length,
    extra: taken.length - pairs.length,
    inversions: order.filter((at, nth) => nth > 0 && at < order[nth - 1]!).length,
    qty: 0,
    description: 0,
    relations: [0, 0],
    variants: [0, 0],
    wrong: [],
  };
  const matched = new Set<unknown>(pairs.flat());
  for (const line of lines)
    if (!matched.has(line)) total.wrong.push(`lost: ${line.ref} ${line.partNumber} ${line.description}`);
  for (const row of taken)
    if (!matched.has(row))
      total.wrong.push(
        `extra: ${row.place}: ${row.ref} | ${row.partNumber} | ${row.description} | ${row.qtyText} | ${row.remarks}`,
      );
  for (const [line, row] of pairs) compare(line, row, found, total);
  return total;
}

function match(lines: readonly Line[], rows: readonly Row[]): [Line, Row][] {
  const open = new Map<string, Row[]>();
  const keyOf = ({ ref, partNumber, description }: Pick<Row, 'ref' | 'partNumber' | 'description'>) =>
    partNumber ? `${code(ref)}|${code(partNumber)}` : `${code(ref)}||${plain(description)}`;
  for (const row of rows) open.set(keyOf(row), [...(open.get(keyOf(row)) ?? []), row]);
  return lines.flatMap((line): [Line, Row][] => {
    const row = open.get(keyOf(line))?.shift();
    return row ? [[line, row]] : [];
  });
}

function compare(line: Line, row: Row, { relations }: DocumentRows, total: Score): void {
  const tell = (what: string, got: unknown) =>
    total.wrong.push(`${what}: ${row.place} "${line.description}" "${line.remarks}": ${JSON.stringify(got)}`);
  if (row.qty === line.qty) total.qty += 1;
  else tell(`quantity ${line.qty}`, row.qtyText);
  if (plain(row.description) === plain(line.description)) total.description += 1;
  else tell('description', row.description);
  const own = relations.filter(({ ref, of }) => ref === row.ref && (of ?? '') === row.partNumber);
  const expect = (kind: string, right: boolean) => {
    total.relations[1] += 1;
    if (right) total.relations[0] += 1;
    else tell(kind, own);
  };
  const has = (kind: string) => own.find(relation => relation.kind === kind);
  if (line.supersededBy)
    expect('superseded-by', code(has('superseded-by')?.partNumber ?? '') === code(line.supersededBy));
  if (line.includes)
    expect('includes', [...(has('includes')?.refs ?? [])].sort().join() === [...line.includes].sort().join());
  if (line.serial) {
    const { from, to } = line.serial;
    expect(
      'serial',
      own.some(one => one.kind === 'serial' && one.from === from && one.to === to),
    );
  }
  if (line.notSold) expect('not-sold-separately', has('not-sold-separately') !== undefined);
  if (line.option) expect('option', has('option') !== undefined);
  const models = Object.entries(line.variants);
  if (models.length === 0) return;
  total.variants[1] += 1;
  const counts = new Map(row.variants.map(({ model, qty }) => [model, qty]));
  if (models.every(([model, qty]) => (counts.get(model) ?? 0) === qty) && counts.size === models.length)
    total.variants[0] += 1;
  else tell('variants', row.variants);
}

/** Several scores as one. */
export function sum(scores: readonly Score[]): Score {
  const add = (pick: (score: Score) => number) => scores.reduce((all, score) => all + pick(score), 0);
  return {
    lines: add(s => s.lines),
    found: add(s => s.found),
    extra: add(s => s.extra),
    inversions: add(s => s.inversions),
    qty: add(s => s.qty),
    description: add(s => s.description),
    relations: [add(s => s.relations[0]), add(s => s.relations[1])],
    variants: [add(s => s.variants[0]), add(s => s.variants[1])],
    wrong: scores.flatMap(s => s.wrong),
  };
}
