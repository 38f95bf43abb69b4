import type { Choice } from './choice.ts';
import type { FoundDesignation } from './find-designations.ts';
import type { Hit } from './reading/dictionary.ts';
import type { Line } from './reading/line.ts';
import type { CategoryName } from './reading/reading.ts';

/** Words of three letters and more that no dictionary holds. */
export function wordsUnknown(line: Line): number {
  const { tokens } = line;
  let unknown = 0;
  for (let at = 0; at < tokens.length; at++) if (isUnknownName(line, at)) unknown++;
  return unknown;
}

function isUnknownName(line: Line, at: number): boolean {
  const { kind, text, known } = line.tokens[at]!;
  if (kind !== 'word' || known || (text.length < 3 && text.charCodeAt(0) < 0x3005)) return false;
  return !naming.has(text) && !isInside(line, at);
}

/** Words that introduce a number or a standard, and small words that name nothing. */
const naming = new Set('iso din jis ansi type typ not was either both each one two'.split(' '));

/** Whether a token belongs to a thread, a standard or a size. */
function isInside({ threads, standards, measures }: Line, at: number): boolean {
  const holds = ({ first, last }: { first: number; last: number }) => first <= at && at <= last;
  return threads.some(holds) || standards.some(holds) || measures.some(holds);
}

/** Without a noun: a thread and a length are a screw, a known number alone a bearing; words alone are some other part. */
export function byShape(
  line: Line,
  named: (category: CategoryName, features: string[], of?: FoundDesignation | null) => Choice,
  none: Choice,
  designations: readonly FoundDesignation[],
  unknownWords: number,
): Choice {
  const thread = line.groups.find(g => g.thread);
  const hinted = hintedBy(line);
  const sized = line.measures.some(m => m.label === 'length' || (m.unitStated && m.label === null));
  const long = thread && (thread.measures.length > 0 || sized || line.ranged);
  if (long && !isNamedBefore(line, thread.first))
    return named(hinted === null || hinted === 'washer' ? 'screw' : hinted, ['thread-and-length']);
  if (thread && hinted && unknownWords === 0) return named(hinted, ['thread-alone']);
  if (isSprung(line)) return named('spring', ['labelled']);
  const bare = designations.find(d => d.definition.name === 'bearing');
  if (bare && unknownWords === 0) return named('bearing', ['bare-designation'], bare);
  if (unknownWords > 0 || line.hits.some(h => line.labels.has(h.first) && namesPlain(h)))
    return named('plain', ['unknown-words-only']);
  const notes =
    line.groups.length > 0
      ? ['sizes without a word that says what they are of']
      : ['nothing here that names a part'];
  return { ...none, features: ['nothing-known'], notes };
}

/** A wire and the diameter or length that it is wound to are a spring. */
export const isSprung = ({ measures }: Line) =>
  measures.some(m => m.label === 'wire') &&
  measures.some(m => m.label === 'od' || m.label === 'id' || m.label === 'free');

/** Whether an unknown word in front of a thread may be the part's name: Pillar M3 x 12. What stands behind it describes. */
function isNamedBefore(line: Line, thread: number): boolean {
  const { cells } = line;
  const first = cells.find(c => c.first <= thread && thread <= c.last)?.first ?? 0;
  for (let at = first; at < thread; at++) if (isUnknownName(line, at)) return true;
  return false;
}

/** A wire or a section is a part too where nothing else names one. */
const namesPlain = (hit: Hit) =>
  hit.entries.some(e => e.meaning.kind === 'noun' && e.meaning.category === 'plain');

/** The category that most of the line's describing words belong to. */
function hintedBy(line: Line): CategoryName | null {
  const votes = new Map<CategoryName, number>();
  for (const hit of line.hits) {
    const own = new Set(
      hit.entries.flatMap(e =>
        e.meaning.kind === 'modifier' && e.meaning.category ? [e.meaning.category] : [],
      ),
    );
    for (const category of own) votes.set(category, (votes.get(category) ?? 0) + 1 / own.size);
  }
  for (const category of votes.keys())
    if (category !== 'screw' && category !== 'set-screw' && category !== 'nut' && category !== 'washer')
      votes.delete(category);
  const ranked = [...votes].sort(
    (a, b) => b[1] - a[1] || Number(b[0] === 'screw') - Number(a[0] === 'screw'),
  );
  return ranked[0]?.[0] ?? null;
}
