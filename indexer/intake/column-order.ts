import {
  foldHeader,
  headerRoles,
  headerWords,
  isTitle,
  type Role,
  type Roles,
} from '../reading/column-words.ts';
import { headerOf } from './header.ts';
import { cutWords, fragments, joinWords, type Word } from './line-words.ts';
import { countsIn, isTitledForModel } from './model-columns.ts';

/** A header of a printed list: its words as cells, and the orders of columns that they can mean. */
export interface Heading {
  cells: string[];
  orders: Role[][];
  edges: { start: number; end: number }[];
}

/** The longest header, in characters, and the most words it has. */
const longestHeader = 400;
const mostHeaderWords = 40;

/** Reads a printed line as a header; null when it is none. */
export function paperHeader(line: string): Heading | null {
  if (line.length > longestHeader) return null;
  const words = cutWords(line);
  if (words.length < 2 || words.length > mostHeaderWords) return null;
  const cut = fragments(words);
  const byGaps = headerOf(cut.map(cell => cell.text)) ? cut : null;
  const byWords = phrases(words);
  const cells = byWords && byWords.length > (byGaps?.length ?? 0) ? byWords : byGaps;
  if (!cells) return null;
  const titles = cells.map(cell => cell.text);
  return { cells: titles, orders: ordersOf(titles), edges: cells };
}

/**
 * A header whose titles go on in the line below: each word ends the title that it stands under, or, where the blanks are
 * lost, the next one that it makes a title with. Null where a word ends none.
 */
export function joinHeader(upper: Heading, below: string): Heading | null {
  const titles = [...upper.cells];
  let last = -1;
  for (const { text, start } of fragments(cutWords(below))) {
    const ends = (at: number) => at > last && isTitle(`${upper.cells[at]} ${text}`);
    const under = upper.edges.findIndex((edge, at) => Math.abs(edge.start - start) <= 1 && ends(at));
    const at = under >= 0 ? under : titles.findIndex((_, at) => ends(at));
    if (at < 0) return null;
    titles[at] += ` ${text}`;
    last = at;
  }
  return { cells: titles, orders: ordersOf(titles), edges: upper.edges };
}

/** Cuts a header whose words single blanks part into known phrases, longest first; null where words are left over. */
function phrases(words: readonly Word[]): { text: string; start: number; end: number }[] | null {
  const found: { text: string; start: number; end: number }[] = [];
  const roles = new Set<Role>();
  for (let at = 0; at < words.length; ) {
    let length = Math.min(4, words.length - at);
    let known: Roles | null = null;
    for (; length > 0; length -= 1) {
      if (words.slice(at + 1, at + length).some(word => word.gap >= 2)) continue;
      known = headerWords.get(foldHeader(joinWords(words, at, at + length))) ?? null;
      if (known) break;
    }
    if (!known) {
      if (!addModel(found, words[at]!)) return null;
      at += 1;
      continue;
    }
    roles.add(Object.keys(known)[0] as Role);
    found.push({
      text: joinWords(words, at, at + length),
      start: words[at]!.start,
      end: words[at + length - 1]!.end,
    });
    at += length;
  }
  const models = found.filter(({ text }) => /\d/.test(text)).length;
  return roles.size > (models > 0 ? 2 : 1) ? found : null;
}

/** A model's name among the words of a header: by itself, or after a word for its quantities. */
function addModel(
  found: { text: string; start: number; end: number }[],
  { text, start, end }: Word,
): boolean {
  if (!/^[\p{L}-]*\d[\p{L}\d-]*$/u.test(text) || text.length > 12 || found.length === 0) return false;
  const last = found.at(-1)!;
  if (countsIn(last.text) && !/\d/.test(last.text))
    Object.assign(last, { text: `${last.text} ${text}`, end });
  else found.push({ text, start, end });
  return true;
}

const mostOrders = 24;

/** Every order of columns that a header can mean, no role twice in one list; columns without a known word are models. */
function ordersOf(titles: readonly string[]): Role[][] {
  const distinct = [...new Set(titles)];
  let meanings: Map<string, Role>[] = [new Map()];
  const counting = distinct.filter(title => countsIn(title) && isTitledForModel(title));
  for (const title of distinct) {
    const roles = counting.length > 1 && counting.includes(title) ? null : headerRoles(title);
    const choices = roles
      ? (Object.entries(roles) as [Role, number][]).sort((a, b) => b[1] - a[1]).map(([role]) => role)
      : (['model'] as Role[]);
    const next = meanings.flatMap(meaning =>
      choices
        .filter(role => role === 'model' || role === 'other' || ![...meaning.values()].includes(role))
        .map(role => new Map(meaning).set(title, role)),
    );
    if (next.length > 0) meanings = next.slice(0, mostOrders);
    else for (const meaning of meanings) meaning.set(title, 'other');
  }
  return meanings.map(meaning => {
    const order = titles.map(title => meaning.get(title)!);
    return order.includes('remarks') ? order : [...order, 'remarks'];
  });
}

/** Orders of columns to try where no header tells; common practice of printed and pasted lists. */
export const usualOrders: Role[][] = [
  ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  ['ref', 'description', 'partNumber', 'qty', 'remarks'],
  ['ref', 'qty', 'partNumber', 'description', 'remarks'],
  ['ref', 'qty', 'description', 'partNumber', 'remarks'],
  ['ref', 'partNumber', 'qty', 'description', 'remarks'],
  ['ref', 'description', 'qty', 'partNumber', 'remarks'],
  ['partNumber', 'ref', 'description', 'qty', 'remarks'],
  ['partNumber', 'description', 'qty', 'ref'],
  ['partNumber', 'description', 'qty', 'remarks', 'ref'],
  ['partNumber', 'qty', 'description', 'remarks', 'ref'],
  ['ref', 'partNumber', 'description', 'remarks', 'qty'],
  ['ref', 'description', 'qty', 'remarks'],
  ['ref', 'qty', 'description', 'remarks'],
  ['partNumber', 'description', 'qty', 'remarks'],
  ['partNumber', 'qty', 'description', 'remarks'],
  ['qty', 'partNumber', 'description', 'remarks'],
  ['qty', 'description', 'partNumber', 'remarks'],
  ['description', 'partNumber', 'qty', 'remarks'],
  ['description', 'qty', 'partNumber', 'remarks'],
  ['qty', 'description', 'remarks'],
  ['description', 'qty', 'remarks'],
  ['ref', 'partNumber', 'description', 'qty', 'price', 'remarks'],
  ['ref', 'partNumber', 'description', 'price', 'remarks'],
  ['partNumber', 'description', 'qty', 'price', 'remarks'],
  ['partNumber', 'description', 'price', 'remarks'],
];
