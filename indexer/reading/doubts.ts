import { type Hit, kindBits } from './dictionary.ts';
import type { Group } from './groups.ts';
import type { Line } from './line.ts';
import type { Measure } from './measures.ts';
import { bracket, severalCounts } from './quantity.ts';
import { timesSign } from './quantity-times.ts';
import { choiceWords } from './ranges.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** What in a line's characters should be put before a person, whatever it is read as. */
export function doubtsOf(line: Line): string[] {
  const found: string[] = [];
  for (const look of looks) {
    const doubt = look(line);
    if (doubt !== null) found.push(doubt);
  }
  return found;
}

const mended = (line: Line): string | null => (line.mended ? 'a misread word was mended' : null);

/** Two sizes of one kind that are not the same in other units: 3 x 10 x 4 and 4 x 13 x 5. */
const twice = (line: Line): string | null =>
  differing(line).length > 0 ? 'more than one size in one line' : null;

const none: readonly Measure[] = [];

/** The sizes of the first of several groups that another group of the line gives otherwise; all of them where that is another part's. */
export function differing({ groups, hits }: Line): readonly Measure[] {
  if (groups.length < 2) return none;
  const joined = groups.filter(g => g.joined && !g.thread && g.measures.length >= 2);
  if (joined.length < 2) return none;
  const [first, ...others] = joined as [Group, ...Group[]];
  const near = (a: number, b: number) => Math.abs(a - b) <= Math.max(30, a * 0.02);
  const alike = others.filter(g => g.measures.length === first.measures.length);
  const differ = first.measures.filter((m, i) => alike.some(g => !near(m.um, g.measures[i]!.um)));
  const last = alike.at(-1)?.first ?? 0;
  const named = hits.some(h => h.nouns.length > 0 && h.first > first.last && h.last < last);
  return differ.length > 0 && named ? first.measures : differ;
}

/** Letters where a figure should stand were taken for figures: 5.l x 8, M3xl0, 6O8. */
const misread = ({ misread, text }: Line): string | null =>
  misread.length === 0
    ? null
    : `${misread.map(p => `“${text.slice(p.start, p.end)}”`).join(', ')} may be misread figures`;

const range = ({ ranged }: Line): string | null =>
  ranged ? 'a range or a choice of sizes, not one size' : null;

/** Two sizes to choose from: M3 or M4, 10/12 mm long. */
function alternatives({ tokens, sets, measures, threads }: Line): string | null {
  if ((sets & choiceWords) === 0) return null;
  for (let at = 1; at + 1 < tokens.length; at++) {
    if (!isIn(tokens[at]!, choiceWords)) continue;
    const sizes = [...measures, ...threads];
    if (sizes.some(m => m.last === at - 1) && sizes.some(m => m.first === at + 1))
      return 'two sizes to choose from';
  }
  return null;
}

/** An assortment: several kinds under one name. */
const several = ({ hits }: Line): string | null =>
  hits.some(h => (h.kinds & kindBits.loose) !== 0) ? 'several kinds under one name' : null;

/** A count for each of several parts: 0.1 (2x), 0.3 (1x). */
const counts = ({ tokens, sets }: Line): string | null =>
  (sets & (bracket | timesSign)) !== 0 && severalCounts(tokens) ? 'more than one quantity in one line' : null;

/** Two kinds of part in one line: screw and nut, bolt + washer, washer or shim. */
function together({ tokens, sets, hits }: Line): string | null {
  if ((sets & (joining | choiceWords)) === 0) return null;
  let before: Hit | null = null;
  for (const hit of hits) {
    if (hit.nouns.length === 0) continue;
    if (before !== null && isJoined(tokens, before.last + 1, hit.first) && areOther(before, hit))
      return 'two kinds of part in one line';
    before = hit;
  }
  return null;
}

/** Two forms of one kind of part to choose from: SHCS / BHCS, pan or countersunk head screw. */
function forms({ tokens, sets, hits, text }: Line): string | null {
  if ((sets & choiceWords) === 0 && !text.includes('/')) return null;
  for (let nth = 1; nth < hits.length; nth++) {
    const [before, hit] = [hits[nth - 1]!, hits[nth]!];
    const between = tokens[before.last + 1];
    const chosen = hit.first === before.last + 2 && between !== undefined && isChoice(between);
    if (chosen && haveOtherForms(before, hit)) return 'two forms to choose from';
  }
  return null;
}

/** Whether two phrases say that a part's head, drive or point is another. */
function haveOtherForms({ entries: ofA }: Hit, { entries: ofB }: Hit): boolean {
  const said = ({ meaning }: Hit['entries'][number]) => ('attrs' in meaning ? meaning.attrs : {});
  return ofA.some(a =>
    ofB.some(b =>
      formKeys.some(key => {
        const [one, other] = [said(a)[key], said(b)[key]];
        return one !== undefined && other !== undefined && one !== other;
      }),
    ),
  );
}

const formKeys = ['head', 'drive', 'point', 'seal'];
const isChoice = (token: Token) => token.text === '/' || isIn(token, choiceWords);

/** Whether a word or sign stands between two names that puts one beside the other. */
function isJoined(tokens: readonly Token[], first: number, end: number): boolean {
  if (end - first > 8) return false;
  let joined = false;
  for (let at = first; at < end; at++) {
    if (parting.has(tokens[at]!.text)) return false;
    joined ||= isIn(tokens[at]!, joining | choiceWords);
  }
  return joined;
}

const joining = wordSet('+ & and und et y plus e en');
const parting = new Set(['|', '(']);

/** Whether two names are of two kinds, whatever they mean. */
function areOther({ categories: ofA }: Hit, { categories: ofB }: Hit): boolean {
  return !ofA.some(k => ofB.includes(k)) && !ofA.includes('plain') && !ofB.includes('plain');
}

/** A thread whose figure a scanner may have made a letter: nut MS. */
const lettered = ({ tokens, sets, threads, measures, text }: Line): string | null => {
  if ((sets & likeThread) === 0 || threads.length > 0 || measures.length > 0) return null;
  const alone = tokens.filter((_, at) => !(tokens[at + 1]?.kind === 'number' && tokens[at + 1]!.gap === 0));
  const found = alone.map(t => text.slice(t.start, t.end)).find(printed => /^M[IlOSBZ]$/.test(printed));
  return found ? `“${found}” may be a thread` : null;
};

/** What a line asks by. */
export const asking = wordSet('?');
const likeThread = wordSet('mi ml mo ms mb mz');

const question = ({ sets }: Line): string | null => ((sets & asking) !== 0 ? 'the line itself asks' : null);

/** What is looked for, in the order in which it is told. */
const looks = [
  misread,
  lettered,
  mended,
  twice,
  range,
  alternatives,
  several,
  counts,
  together,
  forms,
  question,
];
