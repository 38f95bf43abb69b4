import { attachingWords } from './availability-words.ts';
import { type Cells, cellsOf, indentOf, textOf } from './cells.ts';
import type { Column, Layout } from './column.ts';
import { addVariant, type Entry, entry, setQuantity } from './entry.ts';
import { brokenCharacters, moreCells, turnedIntoDate } from './faults.ts';
import { filled, type GridLine } from './grid.ts';
import { type Habits, habitsOf } from './habits.ts';
import { isPageNumber, isRule, joinWrapped, numberOrWords } from './line-sort.ts';
import { readReference } from './reference.ts';
import type { Fault } from './rows.ts';
import { reasonToSkip, spansTable } from './skip-reason.ts';
import { goesOn, unwrapped } from './wrapped-lines.ts';

/** Columns in which no list has dates. */
const datesAreNone = new Set<Column['role']>(['ref', 'partNumber', 'description', 'qty', 'size', 'model']);

/** Sorts the lines of tables into rows taken, skipped and faulted; keeps what one line means for the next. */
export class RowBuilder {
  readonly entries: Entry[] = [];
  private readonly faults: Fault[];
  private heading = '';
  private last: Entry | null = null;
  private lastRef = '';
  /** The length of the last line of the last description: the next word did not fit on it if it goes on. */
  private lastLine = 0;
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
        } else if (line.hidden) {
          if (nth === 0) this.skip(line, 'hidden');
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
    const cells = unwrapped(line, cellsOf(line, group), habits, this.last?.row);
    const text = textOf(cells);
    if (!text) return;
    const spans = spansTable(line);
    const reason = reasonToSkip(cells, line.text ?? text, habits, spans);
    if (reason === 'total' || reason === 'empty' || reason === 'footer' || (spans && reason))
      this.skip(line, reason, text);
    else if (line.continued && this.last) this.continueLast(line, cells);
    else if (
      !cells.ref &&
      !cells.partNumber &&
      this.last &&
      goesOn(line, cells, habits, this.last.row, this.lastLine)
    )
      this.continueLast(line, cells);
    else if (reason) this.skip(line, reason, text);
    else this.take(line, cells, group, columns);
  }

  private tooManyCells(line: GridLine, width: number): void {
    this.faults.push(moreCells(line, width));
    this.entries.push(
      entry(line, {
        description: filled(line).join('  '),
        outcome: 'faulted',
        reason: 'more-cells-than-columns',
      }),
    );
    this.last = null;
  }

  private continueLast(line: GridLine, cells: Cells): void {
    const { row } = this.last!;
    if (cells.description) this.lastLine = cells.description.trim().length;
    row.description = joinWrapped(row.description, cells.description);
    row.remarks = joinWrapped(row.remarks, cells.remarks);
    if (cells.qty) setQuantity(this.last!, cells.qty);
    row.place = through(row.place, line.place);
  }

  private take(line: GridLine, cells: Cells, group: readonly Column[], columns: string): void {
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
    if (line.dates) this.dates(taken, line, group);
    taken.attachingTo = this.attachingTo;
    if (this.attachingTo === null) this.lastRef = taken.row.ref;
    this.entries.push(taken);
    this.lastLine = indent.text.length;
    this.last = taken.row.outcome === 'taken' ? taken : null;
  }

  /** Where a number or a name is expected, a date is what a spreadsheet made of one: `12-03`, `1/4`. */
  private dates(taken: Entry, line: GridLine, group: readonly Column[]): void {
    const turned = group.filter(({ at, role }) => datesAreNone.has(role) && line.dates!.includes(at));
    for (const { at } of turned) {
      this.faults.push(turnedIntoDate(line, line.cells[at]!));
      taken.doubts.push(`a spreadsheet turned this into a date: "${line.cells[at]}"`);
    }
  }

  /** A character that can't be read spoils a number; in words a person can still guess, and is asked to. */
  private broken(taken: Entry, line: GridLine): void {
    this.faults.push(brokenCharacters(line));
    if (taken.row.partNumber.includes('�') || taken.row.ref.includes('�'))
      Object.assign(taken.row, { outcome: 'faulted', reason: 'broken-characters' });
    else taken.doubts.push('some characters could not be read');
  }
}

/** `sheet 2, row 4` through `sheet 2, row 5` is `sheet 2, rows 4-5`. */
const through = (from: string, to: string): string =>
  from.replace(
    /(row|line)s? (\d+)(?:-\d+)?$/,
    (_, kind, first) => `${kind}s ${first}-${/\d+$/.exec(to)?.[0]}`,
  );
