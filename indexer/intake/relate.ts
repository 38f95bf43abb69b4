import { drawnAssemblies, setParents } from './assemblies.ts';
import {
  ambiguousLetters,
  asRequiredWords,
  attachingWords,
  notSoldLetters,
  notSoldPattern,
  optionPattern,
  referenceOnlyWords,
} from './availability-words.ts';
import { partNumberLike, shapeOf } from './cell-kinds.ts';
import { type Entry, subjectOf } from './entry.ts';
import { includesPattern, rangePattern } from './includes-words.ts';
import { mirrors } from './mirrors.ts';
import { refsBetween } from './reference.ts';
import type { Relation } from './rows.ts';
import { serialPatterns, strongSerial } from './serial-words.ts';
import { supersededJapanese, supersededPattern } from './superseded-words.ts';

/** What the list says about how its rows hang together, in printed order; sets `parent` and adds doubts on the way. */
export function relate(entries: readonly Entry[]): Relation[] {
  const taken = entries.filter(({ row }) => row.outcome === 'taken');
  const list: List = {
    refs: new Set(taken.map(({ row }) => row.ref).filter(Boolean)),
    shapes: new Set(taken.map(({ row }) => shapeOf(row.partNumber)).filter(Boolean)),
  };
  const relations = taken.flatMap(entry => relationsOf(entry, list));
  relations.push(...drawnAssemblies(taken, relations));
  setParents(taken, relations);
  relations.push(...mirrors(taken));
  return relations;
}

interface List {
  refs: ReadonlySet<string>;
  shapes: ReadonlySet<string>;
}

function relationsOf(entry: Entry, list: List): Relation[] {
  const { row } = entry;
  const words = [row.description, row.remarks].filter(Boolean).join('; ');
  const segments = row.remarks.split(/\s*[;,/|]\s*/);
  const relations: Relation[] = [];
  const add = (kind: Relation['kind'], more: Partial<Relation> = {}) =>
    relations.push({ kind, ...subjectOf(row), ...more });

  const included = includedRefs(entry, words, list.refs);
  if (included.length > 0) add('includes', { refs: included });
  const successors = successorsOf(row.remarks, list);
  const serial =
    serialRange(withoutSuccessors(row.remarks, successors)) ??
    (strongSerial.test(row.description) ? serialRange(row.description) : null);
  for (const partNumber of successors)
    if (shapeOf(partNumber) && partNumber !== row.partNumber)
      add('superseded-by', { partNumber, ...(serial ?? {}) });
  if (serial && successors.length === 0) add('serial', serial);
  if (notSoldPattern.test(words) || segments.some(segment => notSoldLetters.test(segment)))
    add('not-sold-separately');
  if (
    entry.asRequired ||
    asRequiredWords.test(row.remarks) ||
    segments.some(segment => /^a\.?\/?r\.?$/i.test(segment))
  )
    add('as-required');
  if (optionPattern.test(row.remarks)) add('option');
  if (
    entry.referenceOnly ||
    referenceOnlyWords.test(words) ||
    segments.some(segment => /^ref\.?$/i.test(segment))
  )
    add('reference-only');
  if (entry.attachingTo !== null) add('attaching', entry.attachingTo ? { refs: [entry.attachingTo] } : {});
  else if (attachingWords.test(row.remarks)) add('attaching');
  if (segments.some(segment => ambiguousLetters.test(segment)))
    entry.doubts.push('NS can mean "not sold" or "not shown": ask the list\'s front page');
  return relations;
}

/** References that a row's words say it includes, ranges drawn out over the list; says so when the list has none of them. */
function includedRefs(entry: Entry, words: string, refs: ReadonlySet<string>): string[] {
  const found = new Set<string>();
  for (const match of words.matchAll(includesPattern)) {
    for (const [, from, to] of (match[1] ?? match[2] ?? '').matchAll(rangePattern)) {
      const named = to ? refsBetween(from!, to, refs) : refs.has(from!) ? [from!] : [];
      if (named.length === 0)
        entry.doubts.push(`it includes ${to ? `${from}-${to}` : from}, which the list does not have`);
      for (const ref of named) if (ref !== entry.row.ref) found.add(ref);
    }
  }
  return [...found];
}

/** The numbers that replace a row's, several where it branches. */
function successorsOf(remarks: string, list: List): string[] {
  const match = supersededPattern.exec(remarks) ?? supersededJapanese.exec(remarks);
  if (!match) return [];
  const { numbers, weak } = match.groups!;
  const found: string[] = [];
  for (const part of numbers!.split(
    /\s*(?:\+|&|\band\b|\bund\b|\bet\b|\bor\b|\boder\b|\bou\b|\by\b|\ben\b)\s*/i,
  )) {
    const number = numberAtStart(part, list, weak === undefined);
    if (!number) break;
    found.push(number);
  }
  return found;
}

/** A remark without what it says of successors, so that "sostituito da 2044" is not read as "da 2044" of serial numbers. */
function withoutSuccessors(remarks: string, successors: readonly string[]): string {
  return successors.reduce((rest, number) => rest.replace(number, ' '), remarks);
}

/** The part number a text begins with: as the list builds its own, else the longest run of words that looks like one. */
function numberAtStart(text: string, list: List, sure: boolean): string | null {
  const words = text.trim().split(/\s+/).slice(0, 5);
  for (const wanted of ['shape', 'looks'] as const)
    for (let count = words.length; count > 0; count -= 1) {
      const number = words
        .slice(0, count)
        .join(' ')
        .replace(/[.:]+$/, '');
      const fits = wanted === 'shape' ? list.shapes.has(shapeOf(number)) : partNumberLike(number) === 2;
      if (fits && /\d/.test(number) && !list.refs.has(number)) return number;
    }
  const [first] = words;
  return sure && first && /\d/.test(first) && partNumberLike(first) > 0 ? first : null;
}

/** First and last serial number that a remark names, inclusive; null where it names none. */
export function serialRange(remark: string): { from?: string; to?: string } | null {
  let range: { from?: string; to?: string } = {};
  for (const pattern of serialPatterns) {
    const groups = pattern.exec(remark)?.groups;
    if (!groups) continue;
    const found = {
      ...(groups.from && { from: groups.from }),
      ...(groups.to && { to: groups.to }),
      ...(groups.before && { to: stepped(groups.before, -1) }),
      ...(groups.after && { from: stepped(groups.after, 1) }),
    };
    range = { ...found, ...range };
    if (range.from && range.to) break;
  }
  return range.from || range.to ? range : null;
}

/** The next serial number up or down; leading letters and zeros are kept. */
function stepped(serial: string, by: number): string {
  return serial.replace(/\d+$/, digits => String(Number(digits) + by).padStart(digits.length, '0'));
}
