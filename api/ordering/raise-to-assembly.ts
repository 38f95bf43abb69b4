import type { LeftOut, Pool, PoolLine } from './order-list.ts';
import { assembliesOver, called, hasFact, piecesInOne, type Step, sum, type Want } from './want.ts';

/**
 * A part that is not sold separately becomes a need for the smallest assembly that holds it and is sold. Several such
 * parts of one assembly come with one of it; what the job wants of the assembly anyway counts too. Where the list does not
 * say how many of the part one assembly holds, one assembly is enough for one piece, and more is asked.
 */
export function raiseToAssembly(wants: Want[], pool: Pool): Step {
  const stay: Want[] = [];
  const raised = new Map<string, { assembly: PoolLine; children: Want[] }>();
  for (const want of wants) {
    if (!hasFact(want.line, 'not-sold-separately')) {
      stay.push(want);
      continue;
    }
    const assembly = assembliesOver(want.line!, pool.lines).find(
      line => !hasFact(line, 'not-sold-separately') && line.part !== null && pool.parts.has(line.part),
    );
    if (!assembly) {
      const text = 'Not sold separately, and the list does not say what it comes with. Ask the maker.';
      stay.push({ ...want, asks: [...want.asks, { code: 'no-assembly-known', text, needs: want.needs }] });
      continue;
    }
    const key = `${want.job.id} ${assembly.id}`;
    const group = raised.get(key) ?? { assembly, children: [] };
    group.children.push(want);
    raised.set(key, group);
  }

  const leftOut: LeftOut[] = [];
  for (const { assembly, children } of raised.values()) {
    const job = children[0]!.job;
    const needed = assembliesFor(children, assembly, pool.lines);
    const direct = stay.filter(want => want.job.id === job.id && want.line?.id === assembly.id);
    const wanted = sum(direct.map(want => want.qty ?? 0));
    const because = `${children.map(called).join(', ')}: not sold separately, comes with this`;
    if (direct.length > 0 && needed !== null && wanted >= needed) {
      direct[0]!.because.push(because);
      for (const child of children)
        leftOut.push(
          ...child.needs.map(need => ({
            need,
            job: job.id,
            what: called(child),
            why: `not sold separately; comes with ${called(direct[0]!)}`,
          })),
        );
      continue;
    }
    stay.push({
      needs: children.flatMap(child => child.needs),
      job,
      line: assembly,
      part: pool.parts.get(assembly.part!)!,
      item: null,
      takenAs: null,
      number: null,
      qty: needed === null ? null : sum([needed, -wanted]),
      because: [...children.flatMap(child => child.because), because],
      asks: children.flatMap(child => child.asks),
    });
  }
  return { wants: stay, leftOut };
}

/** How many assemblies hold enough of every child: the most that any child asks for; null while one is asked. */
function assembliesFor(children: Want[], assembly: PoolLine, lines: Pool['lines']): number | null {
  const byLine = new Map<string, Want[]>();
  for (const child of children) byLine.set(child.line!.id, [...(byLine.get(child.line!.id) ?? []), child]);
  const each = [...byLine.values()].map(wants => {
    const { line, job } = wants[0]!;
    if (wants.some(want => want.qty === null)) return null;
    const qty = sum(wants.map(want => want.qty!));
    const over = assembliesOver(line!, lines);
    const held = piecesInOne([line!, ...over.slice(0, over.indexOf(assembly))], job);
    if (qty <= 1) return 1;
    return held ? Math.ceil(qty / held) : null;
  });
  return each.includes(null) ? null : Math.max(...each.map(Number));
}
