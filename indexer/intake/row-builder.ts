import type { Column, Layout } from './columns.ts';
import { filled, type GridLine } from './grid.ts';
import {
  continues,
  isFooter,
  isNote,
  isPageNumber,
  isRule,
  isTotal,
  isUnused,
  joinWrapped,
  numberOrWords,
} from './line-sort.ts';
import { readQuantity } from './quantity.ts';
import { readReference } from './reference.ts';
import { attachingWords } from './remark-words.ts';
import type { Fault, Row } from './rows.ts';

/** A row before it is read: what stands in it, and what is known of it from around it. */
export interface Entry {
  row: Row;
  /** The heading above it, or the names of its columns. */
  context: string;
  /** Cells of a size or material column: facts of the part, to be read with its description. */
  facts: string[];
  /** Steps of indent, by points, blanks or a level column; null where the list shows none. */
  depth: number | null;
  asRequired: boolean;
  referenceOnly: boolean;
  /** Things a person should know of how it was taken in. */
  doubts: string[];
  /** The reference of the part that this one fastens, '' where that has none; null for a part of its own. */
  attachingTo: string | null;
}

interface Cells {
  ref: string;
  partNumber: string;
  description: string;
  qty: string;
  remarks: string;
  price: string;
  unit: string;
  facts: string[];
  level: string;
  models: { model: string; text: string }[];
}

/** Sorts the lines of tables into rows taken, skipped and faulted; keeps what one line means for the next. */
export class RowBuilder {
  readonly entries: Entry[] = [];
  private readonly faults: Fault[];
  private heading = '';
  private last: Entry | null = null;
  private lastRef = '';
  /** The reference of the part that the parts now listed fasten; null outside such a stretch of the list. */
  private attachingTo: string | null = null;

  constructor(faults: Fault[]) {
    this.faults = faults;
  }

  skip(line: GridLine, reason: string, text = filled(line).join('  ')): void {
    if (reason === 'heading' && attachingWords.test(text)) this.attachingTo = this.lastRef;
    else if (reason === 'heading' || isRule(text)) {
      this.attachingTo = null;
      if (reason === 'heading') this.heading = text.trim();
    }
    this.entries.push(entry(line, { description: text.trim(), outcome: 'skipped', reason }));
    if (reason !== 'footer' && reason !== 'header') this.last = null;
  }

  /** Reads the lines of one table, lists side by side one after the other. */
  read(lines: readonly GridLine[], layout: Layout, header: readonly string[] | null): void {
    const columns =
      header
        ?.map(title => title.trim())
        .filter(Boolean)
        .join(' | ') ?? '';
    const habits = habitsOf(lines, layout);
    layout.forEach((group, nth) => {
      this.last = null;
      for (const line of lines) {
        if (line.faulted) {
          if (nth === 0) this.fault(line);
        } else this.readLine(line, group, layout, nth, columns, habits);
      }
    });
  }

  private fault(line: GridLine): void {
    this.entries.push(
      entry(line, { description: line.cells[0] ?? '', outcome: 'faulted', reason: line.faulted! }),
    );
    this.last = null;
  }

  private readLine(
    line: GridLine,
    group: Column[],
    layout: Layout,
    nth: number,
    columns: string,
    habits: Habits,
  ): void {
    const whole = filled(line).join('  ');
    const pageLine = isRule(whole) ? 'header' : isPageNumber(whole) ? 'footer' : null;
    const width = layout.flat().length;
    const tooMany = line.cells.slice(width).some(cell => cell.trim());
    if (pageLine || tooMany) {
      if (nth > 0) return;
      if (pageLine) this.skip(line, pageLine);
      else this.tooManyCells(line, width);
      return;
    }
    const cells = cellsOf(line, group);
    const text = textOf(cells);
    if (!text) return;
    const reason = reasonToSkip(cells, text, habits);
    if (reason === 'total' || reason === 'empty' || reason === 'footer') this.skip(line, reason, text);
    else if (!cells.ref && !cells.partNumber && this.goesOn(line, cells, habits))
      this.continueLast(line, cells);
    else if (reason) this.skip(line, reason, text);
    else this.take(line, cells, columns);
  }

  private tooManyCells(line: GridLine, width: number): void {
    this.faults.push({
      page: line.page,
      place: line.place,
      code: 'more-cells-than-columns',
      message: `This row has ${line.cells.length} cells, the table has ${width} columns, so what belongs where is unknown.`,
      remedy: 'Put a cell that holds a separator into quotation marks, and send the file again.',
    });
    this.entries.push(
      entry(line, {
        description: filled(line).join('  '),
        outcome: 'faulted',
        reason: 'more-cells-than-columns',
      }),
    );
    this.last = null;
  }

  /** True for the rest of a wrapped description: its place or its words say so, and a row stands right before it. */
  private goesOn(line: GridLine, cells: Cells, habits: Habits): boolean {
    const last = this.last;
    if (!last || cells.models.some(({ text }) => text) || cells.price) return false;
    if (cells.qty)
      return last.row.qtyText === '' && habits.counted && Boolean(cells.description) && habits.numbered;
    if (!cells.description) return Boolean(cells.remarks);
    if (isNote(cells.description) && !continues(last.row.description, cells.description)) return false;
    const { indent, descriptionEdge: edge } = line;
    if (indent !== undefined && edge !== undefined && edge > 3 && habits.numbered)
      return Math.abs(indent - edge) <= 4 && !isShout(cells.description, last.row.description);
    return continues(last.row.description, cells.description);
  }

  private continueLast(line: GridLine, cells: Cells): void {
    const { row } = this.last!;
    row.description = joinWrapped(row.description, cells.description);
    row.remarks = joinWrapped(row.remarks, cells.remarks);
    if (cells.qty) setQuantity(this.last!, cells.qty);
    const [kind, from] = row.place.replace('lines', 'line').replace('rows', 'row').split(/[ -]/);
    row.place = `${kind}s ${from}-${line.place.split(' ')[1]}`;
  }

  private take(line: GridLine, cells: Cells, columns: string): void {
    const reference = readReference(cells.ref);
    const { number, words } = numberOrWords(cells.partNumber);
    const indent = indentOf(cells.description);
    const taken = entry(line, {
      ref: reference?.ref ?? cells.ref.replace(/^[-–—*]+$/, ''),
      partNumber: number,
      description: indent.text,
      remarks: [cells.remarks, words].filter(Boolean).join('; '),
      ...(cells.price && { price: cells.price }),
    });
    taken.context = this.heading || columns;
    taken.facts = cells.facts;
    taken.depth = /^\D*\d+$/.test(cells.level) ? Number(cells.level.replace(/\D/g, '')) : indent.depth;
    setQuantity(taken, cells.qty);
    if (cells.unit && cells.qty) taken.row.qtyText += ` ${cells.unit}`;
    if (taken.row.qty === null && reference?.qty) taken.row.qty = reference.qty;
    for (const { model, text } of cells.models) addVariant(taken, model, text);
    if (line.broken) this.broken(taken, line);
    taken.attachingTo = this.attachingTo;
    if (this.attachingTo === null) this.lastRef = taken.row.ref;
    this.entries.push(taken);
    this.last = taken.row.outcome === 'taken' ? taken : null;
  }

  /** A character that can't be read spoils a number; in words a person can still guess, and is asked to. */
  private broken(taken: Entry, line: GridLine): void {
    this.faults.push({
      page: line.page,
      place: line.place,
      code: 'broken-characters',
      message: 'Some characters of this row could not be read; they are shown as �.',
      remedy: 'Save the file again as UTF-8, or correct the row by hand.',
    });
    if (taken.row.partNumber.includes('�') || taken.row.ref.includes('�'))
      Object.assign(taken.row, { outcome: 'faulted', reason: 'broken-characters' });
    else taken.doubts.push('some characters could not be read');
  }
}

/** Why a line of a table is no part; null for a part, also one without reference, number or quantity. */
function reasonToSkip(cells: Cells, text: string, habits: Habits): string | null {
  const numbered = /[\p{L}\d]/u.test(cells.partNumber);
  const referred = readReference(cells.ref) !== null;
  if (!referred && !numbered && isTotal(text)) return 'total';
  if (!(referred && (numbered || cells.qty)) && isFooter(text)) return 'footer';
  if (referred && !numbered && isUnused(cells.description) && (cells.description || isUnused(cells.remarks)))
    return 'empty';
  const alone = text === cells.description.trim() || (text === cells.ref && !referred);
  if (alone && (habits.numbered || !/\p{L}/u.test(text))) return isNote(text) ? 'note' : 'heading';
  return null;
}

/** Capitals after small letters are a heading's. */
const isShout = (text: string, before: string): boolean =>
  !/\p{Ll}/u.test(text) && /\p{Ll}{2}/u.test(before) && /\p{Lu}{4}/u.test(text);

function entry(line: GridLine, part: Partial<Row>): Entry {
  return {
    row: {
      page: line.page,
      ref: '',
      partNumber: '',
      description: '',
      qty: null,
      qtyText: '',
      remarks: '',
      place: line.place,
      parent: null,
      variants: [],
      outcome: 'taken',
      ...part,
    },
    context: '',
    facts: [],
    depth: null,
    asRequired: false,
    referenceOnly: false,
    doubts: [],
    attachingTo: null,
  };
}

function cellsOf(line: GridLine, group: readonly Column[]): Cells {
  const cells: Cells = {
    ref: '',
    partNumber: '',
    description: '',
    qty: '',
    remarks: '',
    price: '',
    unit: '',
    facts: [],
    level: '',
    models: [],
  };
  const more: string[] = [];
  for (const { at, role, model } of group) {
    const printed = line.cells[at] ?? '';
    const text = printed.replace(/\s+/g, ' ').trim();
    if (role === 'model') cells.models.push({ model: model!, text });
    if (!text || role === 'model') continue;
    if (role === 'size' || role === 'material') cells.facts.push(text);
    else if (role === 'other') more.push(text);
    else if (role === 'description') cells.description = printed.trimEnd().replace(/(?<=\S)\s+/g, ' ');
    else cells[role] = text;
  }
  cells.remarks = [cells.remarks, ...cells.facts, ...more].filter(Boolean).join('; ');
  return cells;
}

const textOf = (cells: Cells): string =>
  [
    cells.ref,
    cells.partNumber,
    cells.description,
    cells.qty,
    cells.remarks,
    cells.price,
    ...cells.models.map(m => m.text),
  ]
    .filter(Boolean)
    .join('  ');

function setQuantity(taken: Entry, text: string): void {
  const { qty, asRequired, referenceOnly, understood } = readQuantity(text);
  taken.row.qty = qty;
  taken.row.qtyText = text;
  taken.asRequired ||= asRequired;
  taken.referenceOnly ||= referenceOnly;
  if (!understood) taken.doubts.push(`the quantity "${text}" could not be read`);
}

/** A model's cell: a number, nothing, or a mark that the part is fitted, which then counts the row's quantity or one. */
function addVariant(taken: Entry, model: string, text: string): void {
  const { qty } = readQuantity(text);
  const fitted = /^[x×•●○✓✔+]$/i.test(text) ? (taken.row.qty ?? 1) : 0;
  taken.row.variants.push({ model, qty: qty ?? fitted });
}

/** Points, bullets or blanks before a description are its depth in the assembly. */
function indentOf(description: string): { text: string; depth: number | null } {
  const points = /^\s*((?:[.·•…>]\s*)+)(?=[\p{L}\d(])/u.exec(description);
  if (points) {
    const depth = points[1]!.replaceAll('…', '...').replace(/\s/g, '').length;
    return { text: description.slice(points[0].length).trim(), depth };
  }
  const blanks = /^ */.exec(description)![0].length;
  return { text: description.trim(), depth: blanks >= 2 ? Math.floor(blanks / 2) : null };
}

/** What most lines of a table have, against which a line that lacks it stands out. */
interface Habits {
  numbered: boolean;
  counted: boolean;
}

function habitsOf(lines: readonly GridLine[], layout: Layout): Habits {
  const group = layout[0]!;
  const rows = lines.filter(line => !line.faulted).map(line => ({ line, cells: cellsOf(line, group) }));
  const full = rows.filter(({ cells }) => cells.ref || cells.partNumber || cells.qty);
  const counted = full.filter(({ cells }) => cells.qty).length;
  return {
    numbered: full.length >= rows.length * 0.4 && full.length > 0,
    counted: counted > full.length * 0.7,
  };
}
