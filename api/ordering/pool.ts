import type { Attrs } from '../../indexer/index.ts';
import { chooseBySerial } from './choose-by-serial.ts';
import { coverChildren } from './cover-children.ts';
import { followSupersession } from './follow-supersession.ts';
import type { Ask, OrderLine, OrderList, Pool, PoolPart, Share } from './order-list.ts';
import { raiseToAssembly } from './raise-to-assembly.ts';
import { stillOpen } from './taken-as.ts';
import { called, hasFact, leave, piecesOf, sum, type Want, wantsOf } from './want.ts';

/**
 * The needs of several jobs as one list, pooled by item.
 *
 * In order: the serial number decides between lines; a line that the job's model has none of asks; reference
 * lines are not counted; what is not sold separately
 * becomes its smallest assembly; an assembly covers its children; a superseded number becomes its successor. Then
 * equal items add up over jobs and makers. Where someone could be hurt the line is the maker's own number, alone.
 * Nothing is dropped in silence: every need stands on a line or among what is left out. Quantities are pieces.
 */
export function poolNeeds(pool: Pool): OrderList {
  const chosen = wantsOf(pool).map(want => askModel(chooseBySerial(want, pool)));
  const reference = chosen.filter(want => hasFact(want.line, 'reference-only'));
  const counted = chosen.filter(want => !hasFact(want.line, 'reference-only'));
  const raised = raiseToAssembly(counted, pool);
  const covered = coverChildren(raised.wants, pool);
  const ready = covered.wants.map(want => askQuantity(followSupersession(want, pool)));

  const groups = new Map<string, Want[]>();
  for (const want of ready) {
    const { key } = articleOf(want);
    groups.set(key, [...(groups.get(key) ?? []), want]);
  }
  const lines = [...groups.values()].map(wants => lineOf(wants, [...groups.values()]));
  return {
    lines: lines.sort((a, b) => (a.item < b.item ? -1 : a.item > b.item ? 1 : 0)),
    leftOut: [
      ...reference.flatMap(want => leave(want, 'for reference only on the list; not counted')),
      ...raised.leftOut,
      ...covered.leftOut,
    ],
  };
}

interface Article {
  /** Equal for what is ordered as one thing. */
  key: string;
  item: string;
  /** The item without its side, as a person may take a need for it. */
  name: string;
  size: string | null;
  /** The attributes that it states; null for what is ordered by its number alone. */
  attrs: Attrs | null;
  side: PoolPart['side'];
  makersPartOnly: boolean;
  /** Where a person has said that it is this item: another than its list states, or the very same, apart from others. */
  taken: 'as-another' | 'apart' | null;
}

function articleOf(want: Want): Article {
  const { part, line, item, number, takenAs } = want;
  const critical = line?.critical ?? part?.critical ?? false;
  const byNumber = { name: '', attrs: null, side: null, makersPartOnly: critical, taken: null };
  if (number)
    return {
      ...byNumber,
      key: `number ${number.maker} ${number.numberKey}`,
      item: `part ${number.maker} ${number.number}`,
      size: null,
    };
  if (part && (part.item === null || critical))
    return {
      ...byNumber,
      key: part.number === null ? `part ${part.id}` : `number ${part.maker} ${part.numberKey}`,
      item: `part ${part.maker} ${part.number ?? part.name}`,
      size: part.size,
    };
  const own = part ? { name: part.item!, size: part.size, attrs: part.attrs } : item!;
  // Said of what the need was then: a part that has become another since is not what was meant.
  const holds = takenAs !== null && stillOpen(own, takenAs) !== null;
  const { name, size, attrs } = holds ? takenAs : own;
  const taken = !holds ? null : name === own.name ? 'apart' : 'as-another';
  const side = part?.side ?? null;
  const called = side === null ? name : `${name}, ${side}`;
  return { key: `item ${called}`, item: called, name, size, attrs, side, makersPartOnly: false, taken };
}

/** Asks where the list says that the job's model has none of the line. */
function askModel(want: Want): Want {
  if (!want.line || piecesOf(want.line, want.job) !== 0) return want;
  const text = `The list gives none of ${called(want)} for this job's model. Which line of it is meant?`;
  return { ...want, asks: [...want.asks, { code: 'not-on-this-model', text, needs: want.needs }] };
}

function askQuantity(want: Want): Want {
  const asks: Ask[] = [...want.asks];
  if (want.qty === null) {
    const said = hasFact(want.line, 'as-required')
      ? 'The list says "as required"'
      : 'Nobody has said how many';
    asks.push({
      code: 'as-required',
      text: `${said} for job ${want.job.number}: how many?`,
      needs: want.needs,
    });
  }
  if (want.part?.doubtful)
    asks.push({
      code: 'disagreement',
      text: `What ${called(want)} is, is in doubt: look at its line before it is ordered.`,
      needs: want.needs,
    });
  return { ...want, asks };
}

function lineOf(wants: Want[], all: Want[][]): OrderLine {
  const [first] = wants;
  const article = articleOf(first!);
  const numbers = new Map<string, OrderLine['numbers'][number]>();
  for (const { part, number } of wants) {
    if (number)
      numbers.set(`${number.maker} ${number.numberKey}`, {
        maker: number.maker,
        number: number.number,
        part: null,
      });
    else if (part && part.number !== null)
      numbers.set(`${part.maker} ${part.numberKey}`, {
        maker: part.maker,
        number: part.number,
        part: part.id,
      });
  }
  const makersPartOnly = wants.some(want => articleOf(want).makersPartOnly);
  const because = [...new Set(wants.flatMap(want => want.because))];
  if (makersPartOnly) because.push("someone could be hurt here: maker's part only");
  return {
    item: article.item,
    size: article.size,
    name: first!.part?.name ?? article.item,
    total: sum(wants.map(want => want.qty ?? 0)),
    jobs: shares(wants),
    numbers: [...numbers.values()].sort((a, b) => (a.maker + a.number < b.maker + b.number ? -1 : 1)),
    makersPartOnly,
    because,
    taken: wants.flatMap(want => {
      const { taken, name: as } = articleOf(want);
      const apart = taken === 'apart';
      return taken ? want.needs.map(need => ({ need, what: called(want), as, apart })) : [];
    }),
    asks: [...wants.flatMap(want => want.asks), ...askOpen(wants, all)],
    needs: wants.flatMap(want => want.needs),
  };
}

/** Who needs how many, job by job in the order of their numbers. */
function shares(wants: Want[]): Share[] {
  const byJob = new Map<string, Want[]>();
  for (const want of wants) byJob.set(want.job.id, [...(byJob.get(want.job.id) ?? []), want]);
  return [...byJob.values()]
    .map(ofJob => {
      const { id, number, owner } = ofJob[0]!.job;
      const known = ofJob.filter(want => want.qty !== null).map(want => want.qty!);
      const refs = [...new Set(ofJob.flatMap(want => want.line?.ref || []))];
      return { job: id, number, owner, qty: known.length === 0 ? null : sum(known), refs };
    })
    .sort((a, b) => a.number - b.number);
}

/**
 * An article of which something is not stated is not the same as one that states it: asked on the open one, never pooled
 * unless a person says so. Only what another line states and this one leaves open is asked.
 */
function askOpen(wants: Want[], all: Want[][]): Ask[] {
  const article = articleOf(wants[0]!);
  const asked = wants.filter(want => !articleOf(want).taken);
  const { attrs, size } = article;
  if (attrs === null || asked.length === 0) return [];
  const open = new Set<string>();
  const takeAs: string[] = [];
  for (const [first] of all) {
    const other = articleOf(first!);
    const more =
      other.attrs &&
      other.side === article.side &&
      stillOpen({ size, attrs }, { ...other, attrs: other.attrs });
    if (!more || more.length === 0) continue;
    for (const key of more) open.add(key);
    takeAs.push(other.name);
  }
  if (takeAs.length === 0) return [];
  const names = listed([...open].map(key => attributeWords[key] ?? key));
  const stated = `Its ${names} ${open.size === 1 ? 'is' : 'are'} not stated`;
  const text =
    takeAs.length === 1
      ? `${stated}; ${spoken(takeAs[0]!)} stands on a line of its own. Is it the same article?`
      : `${stated}; ${listed(takeAs.map(spoken))} stand on lines of their own. Is it one of them?`;
  return [
    { code: 'open-attributes', text, needs: asked.flatMap(want => want.needs), takeAs, own: article.name },
  ];
}

/** An item in running words: `bearing 5 × 11 × 4 two shields`. */
const spoken = (item: string) =>
  item.replace(/(?<=\d)x(?=\d)/g, ' × ').replace(/(?<=\p{L})-(?=\p{L})/gu, ' ');

/** What an attribute is called where its key is no noun. */
const attributeWords: Partial<Record<string, string>> = { flanged: 'flange' };

const listed = (words: string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
