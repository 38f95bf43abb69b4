import type { OrderAnswer } from '../answers/index.ts';
import type { OrderList, Pool } from './order-list.ts';

/** The order as it is answered: lines by maker, and last what several makers' numbers name alike or no maker's does. */
export function orderAnswer({ jobs }: Pool, { lines, leftOut }: OrderList): OrderAnswer {
  const groups = new Map<string | null, OrderAnswer['groups'][number]['lines']>();
  for (const line of lines) {
    const makers = new Set(line.numbers.map(number => number.maker));
    const maker = makers.size === 1 ? [...makers][0]! : null;
    groups.set(maker, [...(groups.get(maker) ?? []), line]);
  }
  const names = new Map(jobs.map(job => [job.id, `${job.number} ${job.owner}`]));
  return {
    jobs: jobs.map(({ id, number, owner }) => ({ id, number, owner })),
    groups: [...groups]
      .sort(([a], [b]) => (a === null ? 1 : b === null ? -1 : a.localeCompare(b, 'en')))
      .map(([maker, ofMaker]) => ({ maker, lines: ofMaker })),
    leftOut: leftOut.map(({ job, ...left }) => ({ ...left, job: { id: job, name: names.get(job)! } })),
  };
}
