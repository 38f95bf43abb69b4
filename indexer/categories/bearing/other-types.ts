import type { Line } from '../../reading/line.ts';
import { mm } from '../../units/length.ts';
import type { Designation } from '../definition.ts';

/**
 * Linear, needle and thrust bearings by their usual numbers: bore, outside diameter, width in millimetres.
 * Sources: linear LM and thrust F-M and 511 series as makers' catalogues list them, from memory; drawn-cup HK by DIN 618, from
 * memory (bore and width stand in the number itself).
 */
const linear: Readonly<Record<string, readonly [number, number, number]>> = {
  lm3: [3, 7, 10],
  lm4: [4, 8, 12],
  lm5: [5, 10, 15],
  lm6: [6, 12, 19],
  lm8: [8, 15, 24],
  lm8s: [8, 15, 17],
  lm8l: [8, 15, 45],
  lm10: [10, 19, 29],
  lm10l: [10, 19, 55],
  lm12: [12, 21, 30],
  lm12l: [12, 21, 57],
  lm13: [13, 23, 32],
  lm16: [16, 28, 37],
  lm16l: [16, 28, 70],
  lm20: [20, 32, 42],
  lm25: [25, 40, 59],
  lm30: [30, 45, 64],
};

const thrust: Readonly<Record<string, readonly [number, number, number]>> = {
  'f2-6m': [2, 6, 3],
  'f3-8m': [3, 8, 3.5],
  'f4-9m': [4, 9, 4],
  'f4-10m': [4, 10, 4],
  'f5-10m': [5, 10, 4],
  'f5-11m': [5, 11, 4.5],
  'f5-12m': [5, 12, 4],
  'f6-12m': [6, 12, 4.5],
  'f6-14m': [6, 14, 5],
  'f7-15m': [7, 15, 5],
  'f8-16m': [8, 16, 5],
  'f9-17m': [9, 17, 5],
  'f10-18m': [10, 18, 5.5],
  '51100': [10, 24, 9],
  '51101': [12, 26, 9],
  '51102': [15, 28, 9],
  '51103': [17, 30, 9],
  '51104': [20, 35, 10],
  '51105': [25, 42, 11],
};

/** Outside diameter of a drawn-cup needle bearing by its bore (DIN 618). */
const needleOutside: Readonly<Record<number, number>> = {
  3: 6.5,
  4: 8,
  5: 9,
  6: 10,
  7: 11,
  8: 12,
  9: 13,
  10: 14,
  12: 18,
  14: 20,
  15: 21,
  16: 22,
  18: 24,
  20: 26,
  22: 28,
  25: 32,
};

export const otherTypeStems: readonly string[] = [
  'lm',
  'hk',
  'f',
  ...Object.keys(thrust).filter(k => /^\d/.test(k)),
];

function made(
  first: number,
  last: number,
  type: string,
  size: readonly [number, number, number],
): Designation {
  return {
    first,
    last,
    key: size.join('x'),
    sure: true,
    apply: claim => {
      claim.attr('type', type);
      claim.designated('bore', mm(size[0]));
      claim.designated('od', mm(size[1]));
      claim.designated('width', mm(size[2]));
    },
  };
}

/** Reads LM8UU, HK0810, F8-16M or 51104 that begins at a token. */
export function otherTypeAt(line: Line, at: number): Designation | null {
  const { tokens } = line;
  const [first, second] = [tokens[at]!, tokens[at + 1]];
  if (first.kind === 'number')
    return first.text in thrust ? made(at, at, 'thrust', thrust[first.text]!) : null;
  if (second?.kind !== 'number' || second.gap > Number(first.text === 'hk')) return null;
  const next = tokens[at + 2]?.gap === 0 ? tokens[at + 2]! : undefined;
  if (first.text === 'lm') {
    const form = next?.kind === 'word' ? next.text.replace(/uu$/, '') : '';
    const size = linear[`lm${second.text}${form}`];
    return size ? made(at, next?.kind === 'word' ? at + 2 : at + 1, 'linear', size) : null;
  }
  if (first.text === 'hk' && /^\d{4}$/.test(second.text)) {
    const bore = Number(second.text.slice(0, 2));
    const outside = needleOutside[bore];
    return outside ? made(at, at + 1, 'needle', [bore, outside, Number(second.text.slice(2))]) : null;
  }
  if (first.text === 'f' && next?.text === '-' && tokens[at + 3]?.gap === 0) {
    const size = thrust[`f${second.text}-${tokens[at + 3]!.text}m`];
    const letter = tokens[at + 4];
    return size && letter?.text === 'm' ? made(at, at + 4, 'thrust', size) : null;
  }
  return null;
}
