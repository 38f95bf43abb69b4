import type { Pool, PoolLine } from './order-list.ts';
import { inSerialRange } from './serial.ts';
import { serialRange } from './supersede.ts';
import type { Want } from './want.ts';

/**
 * Where the serial number decides between the lines of a reference, the job's unit decides. An unknown serial asks, and
 * so does one that no line or more than one is for.
 */
export function chooseBySerial(want: Want, pool: Pool): Want {
  const { line, job } = want;
  if (!line || rangesOf(line).length === 0) return want;
  const family = [line, ...line.sameRef.map(id => pool.lines.get(id)).filter(other => other !== undefined)];
  const fits = family.map(other => ({ other, holds: holds(other, job.serial) }));
  const chosen = fits.filter(one => one.holds === true);
  if (fits.some(one => one.holds === null) || chosen.length !== 1) {
    const given = family.map(other => `${nameOf(other, pool)}: ${rangeText(other)}`).join('; ');
    const known = job.serial === null ? 'and the job has none' : `and this machine's is ${job.serial}`;
    const text = `The list goes by serial number (${given}), ${known}. Which line is it?`;
    return { ...want, asks: [...want.asks, { code: 'serial-unknown', text, needs: want.needs }] };
  }
  const right = chosen[0]!.other;
  const because = `serial ${job.serial}: the line for ${rangeText(right)}`;
  if (right === line) return { ...want, because: [...want.because, because] };
  const part = right.part === null ? null : (pool.parts.get(right.part) ?? null);
  return { ...want, line: right, part, because: [...want.because, because] };
}

const rangesOf = (line: PoolLine) => line.facts.filter(fact => fact.kind === 'serial');

/** A line without a range is for every machine; null where it cannot be told. */
function holds(line: PoolLine, serial: string | null): boolean | null {
  const answers = rangesOf(line).map(fact => inSerialRange(serial, fact.from, fact.to));
  if (answers.length === 0) return false;
  return answers.includes(true) ? true : answers.includes(null) ? null : false;
}

const rangeText = (line: PoolLine) =>
  rangesOf(line)
    .map(fact => serialRange(fact.from, fact.to))
    .join(' and ') || 'no serial given';

const nameOf = (line: PoolLine, pool: Pool) => {
  const part = line.part === null ? undefined : pool.parts.get(line.part);
  return part?.number ?? part?.name ?? line.ref;
};
