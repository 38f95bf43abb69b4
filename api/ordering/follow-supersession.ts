import type { Pool } from './order-list.ts';
import { succeed } from './supersede.ts';
import type { Want } from './want.ts';

/** A superseded number becomes a need for its successor, said on the line; where the maker's word forks it asks. */
export function followSupersession(want: Want, pool: Pool): Want {
  const { part } = want;
  if (!part) return want;
  const { now, through, ask } = succeed(part.id, pool.successors, want.job.serial);
  const asks = ask ? [...want.asks, { ...ask, needs: want.needs }] : want.asks;
  if (!now) return { ...want, asks };
  const because = [
    ...want.because,
    `${part.number ?? part.name} is superseded by ${through.join(', then ')}`,
  ];
  const successor = now.part === null ? null : (pool.parts.get(now.part) ?? null);
  if (successor) return { ...want, part: successor, because, asks };
  return { ...want, number: { maker: part.maker, ...now }, because, asks };
}
