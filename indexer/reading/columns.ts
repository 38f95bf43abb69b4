import { type Cell, type Column, cutCells } from './cells.ts';
import { foldHeader, headerRoles, headerWords, type Roles } from './column-words.ts';
import { type Dictionary, type Hit, kindBits } from './dictionary.ts';
import { letters } from './labels.ts';
import { markCells } from './mark-cells.ts';
import { type Token, tokenise } from './tokens.ts';

/** The columns that a heading names, in order, and what parts their names: a bar or tab, a comma, or a blank alone. */
export interface Columns {
  columns: readonly Column[];
  parted: 'bar' | 'comma' | 'blank';
}

export const noColumns: Columns = { columns: [], parted: 'bar' };
const unnamed: Column = { column: null, labels: [] };

/** The columns named by a heading: by its last line that is a row of names. What stands above is the section's title. */
export function columnsOf(heading: string, dictionary: Dictionary): Columns {
  const lines = heading.split('\n').filter(line => line.trim() !== '');
  for (const line of lines.reverse()) {
    const row = columnsIn(line, dictionary);
    if (row.columns.length > 1) return row;
  }
  return columnsIn(lines[0] ?? '', dictionary);
}

function columnsIn(heading: string, dictionary: Dictionary): Columns {
  const text = markCells(heading).replace(/^[^|:]*:(?=.*[|×x])/, '');
  const parted = partedBy(text, dictionary);
  if (parted.columns.length > 1) return /[|\t]/.test(heading) ? parted : { ...parted, parted: 'comma' };
  if (!/[,;]/.test(text)) return runColumns(text, dictionary) ?? parted;
  const listed = partedBy(text.replace(/[,;]/g, '|'), dictionary);
  const known = listed.columns.filter(c => c.column !== null && c.column !== 'part').length;
  return known >= 2 && known * 2 > listed.columns.length ? { ...listed, parted: 'comma' } : parted;
}

function partedBy(text: string, dictionary: Dictionary): Columns {
  const tokens = tokenise(text);
  const hits = dictionary.find(tokens);
  const cells = cutCells(tokens);
  const columns = cells.map(cell => columnIn(cell, text, tokens, hits));
  return { columns: cells.length > 1 ? together(columns, cells, tokens) : columns, parted: 'bar' };
}

/** A sign of money or its three letters. */
const money = /[$€£¥]|\b(?:eur|usd|gbp|chf|cny|rmb|jpy|czk|pln|sek|nok|dkk|aud|cad)\b/i;

function columnIn(cell: Cell, text: string, tokens: readonly Token[], hits: readonly Hit[]): Column {
  if (cell.last < cell.first) return unnamed;
  const inside = hits.filter(h => h.first >= cell.first && h.last <= cell.last);
  const labels = labelsIn(cell, tokens, inside);
  const words = text.slice(tokens[cell.first]!.start, tokens[cell.last]!.end);
  if (labels.length < 2 && money.test(words)) return { column: 'price', labels: [] };
  const bare = words.replace(/[([][^()[\]]*[)\]]/g, ' ').trim() || words;
  const exact = columnNamed(headerWords.get(foldHeader(bare)));
  if (asides.test(foldHeader(bare))) return { column: 'aside', labels: [] };
  const whole = inside.length === 1 && (inside[0]!.kinds & kindBits.column) !== 0;
  if (exact && !whole && labels.length === 0) return { column: exact, labels: [] };
  for (const { entries } of inside) {
    for (const { meaning } of entries)
      if (meaning.kind === 'column')
        return { column: meaning.column, labels: labels.length > 1 ? labels : [] };
    for (const { meaning } of entries) if (meaning.kind === 'count') return { column: 'qty', labels: [] };
    for (const { meaning } of entries) if (meaning.kind === 'label') return { column: meaning.label, labels };
    for (const { meaning } of entries)
      if (meaning.kind === 'noun')
        return meaning.category === 'plain'
          ? { column: 'part', labels }
          : { column: 'part', labels, part: meaning.category };
  }
  if (labels.length > 0) return { column: labels[0]!.label, labels };
  return { column: columnNamed(headerRoles(bare) ?? undefined), labels: [] };
}

/** Titles of where a part goes, comes from or is shown. */
const asides =
  /^(use|uses|usage|used (in|for|on|by)|where used|purpose|function|application|location|placement|link|links|url|image|picture|photo|source|sources|shop|store|suppliers?|vendors?|status|where to buy|(primary|secondary|suggested|affiliate|purchase|product) links?|verwendung|einsatz|einsatzort|zweck|funktion|bild|quelle|bezugsquelle|lieferant|utilisation|usage|emplacement|fonction|lien|photo|fournisseur|uso|utilizzo|impiego|funzione|immagine|fornitore|funcion|ubicacion|enlace|imagen|proveedor|gebruik|functie|leverancier|afbeelding|用途|使用箇所|リンク|購入先|仕入先|画像)$/;

/** A title that may be a number or a name is a name: what stands in it is read. */
function columnNamed(roles: Roles | undefined): string | null {
  if (!roles) return null;
  if (roles.description !== undefined) return 'description';
  const [best] = Object.entries(roles).sort((a, b) => b[1] - a[1]);
  return best ? (asRead[best[0]] ?? best[0]) : null;
}

const asRead: Readonly<Record<string, string>> = { other: 'remarks', level: 'ref' };

/**
 * What one title means hangs on those beside it: `#` counts where nothing else does, ID is an inside only beside other
 * dimensions, and an item is its name where no other column names the part.
 */
function together(columns: readonly Column[], cells: readonly Cell[], tokens: readonly Token[]): Column[] {
  const has = (...names: string[]) => columns.some(c => c.column !== null && names.includes(c.column));
  const dimensions = columns.filter(c => c.labels.length > 0).length;
  const names = has('description', 'size', 'part') || dimensions > 1;
  return columns.map((column, i) => {
    const { first, last } = cells[i]!;
    const word = first === last ? tokens[first]!.text : '';
    if (word === '#') return { column: has('qty') ? 'ref' : 'qty', labels: [] };
    if (word === 'n' && !has('qty')) return { column: 'qty', labels: [] };
    if (/^(?:mm|inch|inches)$/.test(word)) return { column: 'size', labels: [] };
    if (word === 'm' && has('teeth'))
      return { column: 'module', labels: [{ label: 'module', upper: false }] };
    if (word === 'id' && dimensions === 1) return { column: 'ref', labels: [] };
    if (column.column === 'ref' && !names && /^items?$/.test(word))
      return { column: 'description', labels: [] };
    return column;
  });
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
const dimensionLabels = new Set(
  'length free thickness dia id od d width pitch bore wire section height teeth module'.split(' '),
);

/** Column names with single blanks between them: `Qty Component Price`. Null where the line says something else. */
function runColumns(text: string, dictionary: Dictionary): Columns | null {
  const tokens = tokenise(text);
  if (tokens.some(t => t.kind === 'number')) return null;
  const columns: Column[] = [];
  let words = 0;
  let known = 0;
  const hits = new Map(dictionary.find(tokens).map(hit => [hit.first, hit]));
  for (let at = 0; at < tokens.length; at++) {
    const hit = hits.get(at);
    const last = hit?.last ?? at;
    const { kind, start } = tokens[at]!;
    const name = text.slice(start, tokens[last]!.end);
    const isMoney = money.test(name);
    if (kind === 'word') words += last - at + 1;
    const exact = columnNamed(headerWords.get(foldHeader(name)));
    const named = hit && (hit.kinds & (kindBits.column | kindBits.label | kindBits.count)) !== 0;
    const cell = { first: at, last, ...unnamed };
    const column = isMoney
      ? { column: 'price', labels: [] }
      : named || exact
        ? columnIn(cell, text, tokens, hit ? [hit] : [])
        : null;
    if (column) {
      if (kind === 'word') known += last - at + 1;
      // $/unit is one name
      const glued = tokens[at - 1]?.text === '/' && tokens[at]!.gap === 0;
      if (!glued) columns.push(column);
    }
    at = last;
  }
  const counts = columns.some(c => c.column === 'qty');
  return counts && columns.length >= 3 && known * 3 >= words * 2 ? { columns, parted: 'blank' } : null;
}
