import type { Role } from '../reading/column-words.ts';
import { suits } from './cell-kinds.ts';
import { isWide, joinWords, type Word } from './line-words.ts';
import { startsRemark } from './remark-words.ts';

/** What a document's lines show about its columns, used to cut each of them. */
export interface Ruler {
  roles: readonly Role[];
  /** Where each column's cells begin and end, in columns of text; absent until it is known. */
  edges?: ({ start: number; end: number } | undefined)[];
  /** Builds of part numbers that this document shows often. */
  shapes: ReadonlySet<string>;
  /** What a cell's edge at a single blank costs: much where the list parts its columns widely. */
  narrowEdge: number;
}

/** The most words a cell of a role has; descriptions and remarks run on. */
const longest: Partial<Record<Role, number>> = {
  ref: 3,
  partNumber: 4,
  qty: 3,
  model: 1,
  price: 2,
  unit: 1,
  level: 1,
};
/** What it costs a line to have nothing in a column. */
const missing: Partial<Record<Role, number>> = { description: 4, ref: 1, partNumber: 0.8, qty: 1 };
/** A number after one of these is a part of the size before it. */
const sizeRunsOn = /(?:^|\s|\d)[x×*/ø⌀-]$|(?:^|\s)(?:dia|od|id|by|no\.?|nr\.?|typ|type|size|din|iso|jis|t)$/i;
/** And before one of these. */
const sizeGoesOn =
  /^(?:[x×*]$|[x×*]\d|(?:id|od|mm|cm|ml|g|kg|deg|thick|long|dia|teeth|t|zähne|dents?|denti|dientes|tanden|coils|holes)\b|[°"”'])/i;
/** A description that goes on to its quantity, and beyond it to words that belong to no part's name. */
const endsInCount = /[^x×*/\s]\s(?:\d{1,2}|A\/?R|-)$/i;
/** Lines of more words are no table's. */
const mostWords = 40;

export interface Cut {
  cells: string[];
  score: number;
}

/**
 * Cuts a line's words into the columns in order, each column a run of words or empty, so that content, gaps and
 * places agree best. Null where the words can't be cut so.
 */
export function cutLine(words: readonly Word[], ruler: Ruler): Cut | null {
  const { roles } = ruler;
  const count = words.length;
  if (count === 0 || count > mostWords) return null;
  // best[c][w]: the best score of the first w words over the first c columns; from[c][w]: where column c-1 began.
  const best: number[][] = [[0, ...Array<number>(count).fill(Number.NEGATIVE_INFINITY)]];
  const from: number[][] = [[]];
  const wide = wideGapsBefore(words);
  const textOf = textBetween(words);
  const remarks: (boolean | undefined)[] = [];
  const remarkAt = (begin: number) => {
    remarks[begin] ??= startsRemark(textOf(begin, count));
    return remarks[begin];
  };
  for (let column = 0; column < roles.length; column += 1) {
    const role = roles[column]!;
    const before = best[column]!;
    const next = before.map(score => score - (missing[role] ?? 0.2));
    const origin = before.map((_, at) => at);
    for (let begin = 0; begin < count; begin += 1) {
      if (before[begin] === Number.NEGATIVE_INFINITY) continue;
      const last = Math.min(count, begin + (longest[role] ?? mostWords));
      for (let end = begin + 1; end <= last; end += 1) {
        const score =
          before[begin]! +
          edgeScore(words, begin, ruler) +
          cellScore(words, begin, end, textOf(begin, end), column, ruler) +
          (role === 'remarks' && remarkAt(begin) ? 1.5 : 0) -
          1.5 * Math.min(wide[end - 1]! - wide[begin]!, 4);
        if (score > next[end]!) {
          next[end] = score;
          origin[end] = begin;
        }
      }
    }
    best.push(next);
    from.push(origin);
  }
  const score = best[roles.length]![count]!;
  if (score === Number.NEGATIVE_INFINITY) return null;
  const cells: string[] = [];
  for (let column = roles.length, end = count; column > 0; column -= 1) {
    const begin = from[column]![end]!;
    cells.unshift(textOf(begin, end));
    end = begin;
  }
  return { cells, score };
}

/** The texts of runs of words, all cut from one joined text. */
function textBetween(words: readonly Word[]): (begin: number, end: number) => string {
  const whole = joinWords(words, 0, words.length);
  const starts: number[] = [];
  let at = 0;
  for (const word of words) {
    starts.push(at);
    at += word.text.length + 1;
  }
  starts.push(at);
  return (begin, end) => (end > begin ? whole.slice(starts[begin], starts[end]! - 1) : '');
}

/** For each word, how much wide gap lies before it in the line, a tab counting twice. */
function wideGapsBefore(words: readonly Word[]): number[] {
  let sum = 0;
  return words.map((word, at) => {
    if (at > 0 && isWide(word)) sum += word.gap > 2 ? (word.gap > 8 ? 2 : 1.3) : 0.8;
    return sum;
  });
}

function edgeScore(words: readonly Word[], begin: number, ruler: Ruler): number {
  if (begin === 0) return 0;
  return isWide(words[begin]!) ? 1 : -ruler.narrowEdge;
}

/** What it costs to take a number for a quantity that stands within a size ("8.2 x 24 x 1") or counts teeth. */
function insideSize(words: readonly Word[], begin: number, end: number, text: string): number {
  const before = begin > 0 && !isWide(words[begin]!) ? words[begin - 1]!.text : '';
  const after = end < words.length && !isWide(words[end]!) ? words[end]!.text : '';
  if ((before && sizeRunsOn.test(before)) || (after && sizeGoesOn.test(after))) return 6;
  if ((/^[x×*]/i.test(text) && /\d$/.test(before)) || (/[x×*]$/i.test(text) && /^\d/.test(after))) return 6;
  return before && /[.,]\d/.test(text) ? 2 : 0;
}

function cellScore(
  words: readonly Word[],
  begin: number,
  end: number,
  text: string,
  column: number,
  ruler: Ruler,
): number {
  const role = ruler.roles[column]!;
  let score = suits(text, role, ruler.shapes);
  if (role === 'partNumber' && score > 0) score += 0.3 * (end - begin - 1);
  if (role === 'qty' || role === 'price') score -= insideSize(words, begin, end, text);
  if (role === 'description' && end < words.length && !isWide(words[end]!) && endsInCount.test(text))
    score -= 1.5;
  const edge = ruler.edges?.[column];
  if (edge) {
    const off = Math.min(
      Math.abs(words[begin]!.start - edge.start),
      Math.abs(words[end - 1]!.end - edge.end),
    );
    score += off <= 2 ? 1 : off <= 6 ? 0.5 : off > 20 ? -1 : 0;
  }
  return score;
}
