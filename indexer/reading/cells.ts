import type { Dictionary, Hit } from './dictionary.ts';
import { letters } from './labels.ts';
import { markCells } from './mark-cells.ts';
import { type Token, tokenise } from './tokens.ts';

/** One cell of a row: tokens `first` up to and including `last` (an empty cell has last < first). */
export interface Cell extends Column {
  first: number;
  last: number;
}

/** What a table's heading says of the cells under it. */
export interface Column {
  /** qty, size, part, length, …; null where no heading is known. */
  column: string | null;
  /** The dimensions it names, in order: `OD x ID x W`, `D`. */
  labels: readonly { label: string; upper: boolean }[];
}

const unnamed: Column = { column: null, labels: [] };

/** Three blanks or more were a column before the row was copied as text. */
const columnGap = 3;

/** Cuts a row into its cells: at a bar or tab, and at wide blanks. A line of prose is one cell. */
export function cutCells(tokens: readonly Token[]): Cell[] {
  const cells: Cell[] = [];
  let first = 0;
  for (let at = 0; at < tokens.length; at++) {
    const { text, gap } = tokens[at]!;
    if (text === '|') {
      if (at > 0) cells.push({ first, last: at - 1, ...unnamed });
      first = at + 1;
    } else if (at > first && gap >= columnGap) {
      cells.push({ first, last: at - 1, ...unnamed });
      first = at;
    }
  }
  if (first < tokens.length) cells.push({ first, last: tokens.length - 1, ...unnamed });
  return cells;
}

/** The columns named by a heading row, in order. */
export function columnsOf(heading: string, dictionary: Dictionary): Column[] {
  const tokens = tokenise(markCells(heading).replace(/^[^|:]*:(?=.*[|×x])/, ''));
  const hits = dictionary.find(tokens);
  return cutCells(tokens).map(cell => columnIn(cell, tokens, hits));
}

function columnIn(cell: Cell, tokens: readonly Token[], hits: readonly Hit[]): Column {
  const inside = hits.filter(h => h.first >= cell.first && h.last <= cell.last);
  const labels = labelsIn(cell, tokens, inside);
  for (const { entries } of inside) {
    for (const { meaning } of entries)
      if (meaning.kind === 'column')
        return { column: meaning.column, labels: labels.length > 1 ? labels : [] };
    for (const { meaning } of entries) if (meaning.kind === 'count') return { column: 'qty', labels: [] };
    for (const { meaning } of entries) if (meaning.kind === 'label') return { column: meaning.label, labels };
    for (const { meaning } of entries) if (meaning.kind === 'noun') return { column: 'part', labels };
  }
  return labels.length > 0 ? { column: labels[0]!.label, labels } : unnamed;
}

/** The dimensions that a heading's cell names: one in words or a letter alone; several with times signs between. */
function labelsIn(cell: Cell, tokens: readonly Token[], hits: readonly Hit[]): Column['labels'] {
  const several = tokens.slice(cell.first, cell.last + 1).some(t => t.text === '×');
  const labels: { label: string; upper: boolean }[] = [];
  for (let at = cell.first; at <= cell.last; at++) {
    const hit = hits.find(h => h.first === at);
    const said = hit?.entries.map(e => e.meaning).find(m => m.kind === 'label');
    const { text, upper } = tokens[at]!;
    const letter = several || cell.first === cell.last ? letters.get(text) : undefined;
    const label = said?.kind === 'label' ? said.label : (letter ?? (text === 'ø' ? 'dia' : undefined));
    if (label && dimensionLabels.has(label) && (several || labels.length === 0))
      labels.push({ label, upper });
    at = hit?.last ?? at;
  }
  return labels;
}

/** Labels whose cells hold sizes. */
const dimensionLabels = new Set([
  'length',
  'free',
  'thickness',
  'dia',
  'id',
  'od',
  'd',
  'width',
  'pitch',
  'bore',
  'wire',
  'section',
  'height',
  'teeth',
  'module',
]);

/** Gives each cell the column it stands under, where heading and row have as many cells. */
export function nameCells(cells: Cell[], columns: readonly Column[]): void {
  if (columns.length !== cells.length || (columns.length === 1 && columns[0]!.labels.length < 2)) return;
  for (let i = 0; i < cells.length; i++) Object.assign(cells[i]!, columns[i]!);
}
