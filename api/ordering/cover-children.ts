import type { Ask, LeftOut, Pool, PoolLine } from './order-list.ts';
import { assembliesOver, called, leave, piecesInOne, type Step, sum, type Want } from './want.ts';

/**
 * Never an assembly and its children both: where a job wants an assembly, it covers every child that ships with it,
 * which is said on the assembly's line. More of a child than the assemblies hold asks, and so does what was asked of the
 * child itself.
 */
export function coverChildren(wants: Want[], pool: Pool): Step {
  const at = (job: string, line: string) => `${job} ${line}`;
  const wanted = new Map<string, Want[]>();
  for (const want of wants)
    if (want.line) {
      const key = at(want.job.id, want.line.id);
      wanted.set(key, [...(wanted.get(key) ?? []), want]);
    }

  const leftOut: LeftOut[] = [];
  const stay = wants.filter(want => {
    if (!want.line) return true;
    const over = assembliesOver(want.line, pool.lines);
    // The outermost that is wanted: what covers an assembly covers its children too.
    const depth = over.findLastIndex(line => wanted.has(at(want.job.id, line.id)));
    if (depth < 0) return true;
    const covers = wanted.get(at(want.job.id, over[depth]!.id))!;
    const [first] = covers;
    first!.because.push(`includes ${called(want)}`);
    leftOut.push(...leave(want, `ships with ${called(first!)}, which this job orders`));
    first!.asks.push(...want.asks, ...askEnough(want, [want.line, ...over.slice(0, depth)], covers));
    return false;
  });
  return { wants: stay, leftOut };
}

/** Asks where it is not sure that the assemblies bring as many of the child as are wanted. */
function askEnough(want: Want, chain: PoolLine[], covers: Want[]): Ask[] {
  const inOne = piecesInOne(chain, want.job);
  const held =
    inOne === null || covers.some(cover => cover.qty === null)
      ? null
      : sum([inOne * sum(covers.map(cover => cover.qty!))]);
  if (want.qty !== null && (held === null ? want.qty <= 1 : want.qty <= held)) return [];
  const wanted = want.qty === null ? 'Nobody has said how many' : `${want.qty}`;
  const come = held === null ? 'the list does not say how many come with this' : `${held} come with this`;
  const text = `${wanted} of ${called(want)} are wanted, and ${come}. Are more needed?`;
  return [{ code: 'more-than-the-assembly-holds', text, needs: want.needs }];
}
