import { chooseBySerial } from './choose-by-serial.ts';
import { coverChildren } from './cover-children.ts';
import { followSupersession } from './follow-supersession.ts';
import type { Ask, OrderLine, OrderList, Pool, Share } from './order-list.ts';
import { raiseToAssembly } from './raise-to-assembly.ts';
import { called, hasFact, leave, sum, type Want, wantsOf } from './want.ts';

/**
 * The needs of several jobs as one list, pooled by item.
 *
 * In order: the serial number decides between lines; reference lines are not counted; what is not sold separately
 * becomes its smallest assembly; an assembly covers its children; a superseded number becomes its successor. Then
 * equal items add up over jobs and makers. Where someone could be hurt the line is the maker's own number, alone.
 * Nothing is dropped in silence: every need stands on a line or among what is left out. Quantities are pieces.
 */
export function poolNeeds(pool: Pool): OrderList {
  const chosen = wantsOf(pool).map(want => chooseBySerial(want, pool));
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
  const lines = [...groups.values()].map(lineOf);
  askOpen(lines, groups);
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
  size: string | null;
  makersPartOnly: boolean;
}

function articleOf({ part, line, item, number }: Want): Article {
  const critical = line?.critical ?? part?.critical ?? false;
  if (number)
    return {
      key: `number ${number.maker} ${number.numberKey}`,
      item: `part ${number.maker} ${number.number}`,
      size: null,
      makersPartOnly: critical,
    };
  if (!part) return { key: `item ${item!.name}`, item: item!.name, size: item!.size, makersPartOnly: false };
  if (part.item !== null && !critical) {
    const name = part.side === null ? part.item : `${part.item}, ${part.side}`;
    return { key: `item ${name}`, item: name, size: part.size, makersPartOnly: false };
  }
  return {
    key: part.number === null ? `part ${part.id}` : `number ${part.maker} ${part.numberKey}`,
    item: `part ${part.maker} ${part.number ?? part.name}`,
    size: part.size,
    makersPartOnly: critical,
  };
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

function lineOf(wants: Want[]): OrderLine {
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
    asks: wants.flatMap(want => want.asks),
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

/** An article of which something is not stated is not the same as one that states it: said on the open one, never pooled. */
function askOpen(lines: OrderLine[], groups: Map<string, Want[]>): void {
  const wants = [...groups.values()];
  for (const [index, line] of lines.entries()) {
    if (line.size === null || line.makersPartOnly) continue;
    const others = lines.filter(other => other !== line && other.size === line.size && !other.makersPartOnly);
    const open = new Set(wants[index]!.flatMap(want => want.part?.open ?? want.item?.open ?? []));
    if (others.length === 0 || open.size === 0) continue;
    line.asks.push({
      code: 'open-attributes',
      text: `Nothing states its ${[...open].join(', ')}; ${others.map(other => other.item).join(' and ')} stands on a line of its own. Is it the same article?`,
      needs: line.needs,
    });
  }
}
