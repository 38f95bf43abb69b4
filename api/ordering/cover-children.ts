import type { LeftOut, Pool, PoolLine } from './order-list.ts';
import { assembliesOver, called, leave, type Step, sum, type Want } from './want.ts';

/**
 * Never an assembly and its children both: where a job wants an assembly, it covers every child that ships with it,
 * which is said on the assembly's line. More of a child than the assemblies hold asks.
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
    const held = piecesIn([want.line, ...over.slice(0, depth)], covers);
    if (want.qty !== null && held !== null && want.qty > held)
      first!.asks.push({
        code: 'more-than-the-assembly-holds',
        text: `${want.qty} of ${called(want)} are wanted, and ${held} come with this. Are more needed?`,
        needs: want.needs,
      });
    return false;
  });
  return { wants: stay, leftOut };
}

/** Pieces of the innermost line in the assemblies that are wanted; null where a quantity on the way is not stated. */
function piecesIn(chain: PoolLine[], assemblies: Want[]): number | null {
  if (assemblies.some(assembly => assembly.qty === null) || chain.some(line => line.qty === null))
    return null;
  return sum([
    chain.reduce((pieces, line) => pieces * line.qty!, 1) * sum(assemblies.map(assembly => assembly.qty!)),
  ]);
}
