import type { Line } from '../../reading/line.ts';
import { as568Ring, jisRing, type ORing } from '../../standards/o-rings.ts';
import type { Designation } from '../definition.ts';

/** First pieces that may begin an O-ring's number. */
export const stems: readonly string[] = ['as', 'ms', 'bs', '2', 'p', 'g', 's', 'v', '-', 'dash', 'size'];

const made = (first: number, last: number, ring: ORing | undefined, sure: boolean): Designation | null =>
  ring
    ? {
        first,
        last,
        key: `${ring.id}x${ring.cs}`,
        sure,
        apply: claim => {
          claim.designated('id', ring.id);
          claim.designated('cs', ring.cs);
        },
      }
    : null;

/** Military standards of O-rings whose dash numbers are those of AS568. */
const military = new Set(['28775', '29513', '29561']);

/** Reads AS568-012, MS28775-012, 2-206 as the trade writes -206, `-012`, P10A or G25 that begins at a token. A dash number or a letter alone needs the word O-ring beside it. */
export function designationAt(line: Line, at: number): Designation | null {
  const { tokens } = line;
  const first = tokens[at]!;
  if (first.text === 'as') {
    const number = tokens[at + 1];
    if (number?.text !== '568' || number.gap > 1) return null;
    let dash = at + 2;
    if (/^[a-d]$/.test(tokens[dash]?.text ?? '')) dash++;
    while (tokens[dash]?.text === '-' || tokens[dash]?.text === 'no' || tokens[dash]?.text === '.') dash++;
    const ring = tokens[dash];
    return ring && /^\d{2,3}$/.test(ring.text) ? made(at, dash, as568Ring(ring.text), true) : null;
  }
  if (first.text === 'ms' || first.text === '2') {
    const dash = first.text === 'ms' ? at + 2 : at + 1;
    if (first.text === 'ms' && !military.has(tokens[at + 1]?.text ?? '')) return null;
    if (first.text === '2' && at > 0 && first.gap === 0) return null;
    const [sign, number, next] = [tokens[dash], tokens[dash + 1], tokens[dash + 2]];
    if (sign?.text !== '-' || sign.gap > 0 || number?.gap !== 0 || !/^\d{3}$/.test(number.text)) return null;
    if (next?.gap === 0 && (next.kind === 'number' || next.text === '-' || next.text === '×')) return null;
    return made(at, dash + 1, as568Ring(number.text), first.text === 'ms');
  }
  if (first.text === '-' || first.text === 'dash') {
    const number = tokens[at + 1];
    if (
      !number ||
      !/^\d{3}$/.test(number.text) ||
      (first.text === '-' && !isOfStandard(line, at) && (number.gap > 0 || (first.gap === 0 && at > 0)))
    )
      return null;
    return made(at, at + 1, as568Ring(number.text), false);
  }
  if (first.text === 'bs') {
    const number = tokens[at + 1];
    return number && number.gap <= 1 && /^\d{3}$/.test(number.text)
      ? made(at, at + 1, as568Ring(number.text), false)
      : null;
  }
  if (first.text === 'size') {
    const number = tokens[at + 1];
    return number && /^\d{3}$/.test(number.text) ? made(at, at + 1, as568Ring(number.text), false) : null;
  }
  return japaneseAt(line, at);
}

/** ISO 3601-1 - 112: a dash number behind the standard of O-rings. */
const isOfStandard = ({ standards }: Line, at: number) =>
  standards.some(s => s.last === at - 1 && s.name.startsWith('ISO 3601'));

function japaneseAt(line: Line, at: number): Designation | null {
  const { tokens } = line;
  const letter = tokens[at]!;
  let number = at + 1;
  if (tokens[number]?.text === '-' && tokens[number]!.gap === 0) number++;
  const figures = tokens[number];
  if (
    figures?.kind !== 'number' ||
    figures.gap > 0 ||
    (letter.gap === 0 && at > 0 && !/^(?:[(|,;:"'-]|[\u3005-\ufaff])$/.test(tokens[at - 1]!.text))
  )
    return null;
  const form = tokens[number + 1];
  const withForm = form?.gap === 0 && form.text === 'a' ? 'A' : '';
  if (form?.gap === 0 && form.kind === 'word' && !withForm) return null;
  const code = `${letter.text.toUpperCase()}${Number(figures.text.replace(',', '.'))}${withForm}`;
  return made(at, withForm ? number + 1 : number, jisRing(code), false);
}
