import type { Line } from '../reading/line.ts';
import { mm } from '../units/length.ts';
import type { CategoryDefinition, Designation } from './definition.ts';
import { drawRollerClutch } from './draw-roller-clutch.ts';
import { settleRing } from './settle-ring.ts';
import { plainSize } from './size-text.ts';

const labels = {
  id: 'bore',
  bore: 'bore',
  d: 'bore',
  D: 'od',
  od: 'od',
  dia: 'od',
  width: 'width',
  thickness: 'width',
  length: 'width',
  height: 'width',
};

/** Outside diameter of a drawn-cup one-way clutch by its shaft, in millimetres: bearing makers' catalogues, from memory. */
const outside: Readonly<Record<number, number>> = {
  3: 6.5,
  4: 8,
  6: 10,
  8: 12,
  10: 14,
  12: 18,
  14: 20,
  16: 22,
  18: 24,
  20: 26,
  25: 32,
  30: 37,
  35: 42,
};

/** HF is the clutch alone, HFL has needle bearings beside it; bore and width stand in the number: HF0812. */
const numbers = [
  '0306',
  '0406',
  '0612',
  '0812',
  '1012',
  '1216',
  '1416',
  '1616',
  '1816',
  '2016',
  '2520',
  '3020',
  '3520',
];
const longNumbers = [
  '0308',
  '0408',
  '0615',
  '0822',
  '1022',
  '1226',
  '1426',
  '1626',
  '1826',
  '2026',
  '2530',
  '3030',
  '3530',
];
const sizeOf = (number: string) => {
  const bore = Number(number.slice(0, 2));
  return { bore: mm(bore), od: mm(outside[bore]!), width: mm(Number(number.slice(2))) };
};

function designationAt(line: Line, at: number): Designation | null {
  const [letters, number] = [line.tokens[at]!, line.tokens[at + 1]];
  if (number?.kind !== 'number' || number.gap > 1 || !/^\d{4}$/.test(number.text)) return null;
  const listed = letters.text === 'hfl' || letters.text === 'efl' ? longNumbers : numbers;
  if (!listed.includes(number.text)) return null;
  const size = sizeOf(number.text);
  return {
    first: at,
    last: at + 1,
    key: number.text,
    sure: true,
    apply: claim => {
      for (const [key, um] of Object.entries(size)) claim.designated(key, um);
    },
  };
}

export const rollerClutch: CategoryDefinition = {
  name: 'roller-clutch',
  title: 'Roller clutch',
  plural: 'Roller clutches',
  dims: [
    { key: 'bore', label: 'bore', diameter: true, unit: 'mm', limits: [mm(2), mm(60)], near: [1, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(4), mm(100)], near: [2, 0.2] },
    { key: 'width', label: 'width', unit: 'mm', limits: [mm(3), mm(80)], near: [1.5, 0.5] },
  ],
  sizeDims: ['bore', 'od', 'width'],
  itemAttrs: ['material'],
  labels,
  words: {
    nouns: {
      en: {
        'roller clutch, roller clutch bearing, one way clutch, one-way clutch, oneway clutch, oneway bearing, oneway roller clutch, one way bearing, one-way bearing, one way roller clutch, anti-reverse bearing, anti reverse bearing, needle clutch, one way needle bearing, clutch bearing, anti-reverse clutch, anti reverse clutch, one-way roller bearing, one way clutch bearing, sprag clutch, infinite anti-reverse bearing, ar bearing, freewheel clutch bearing':
          {},
      },
      de: {
        'hülsenfreilauf, freilauflager, rücklaufsperre lager, freilaufkupplung, freilaufhülse, klemmrollenfreilauf, rücklaufsperrlager, einweglager, freilauf':
          {},
      },
      fr: {
        'roue libre, douille roue libre, roulement unidirectionnel, roulement anti-retour, roulement anti retour, roulement a roue libre, roulement sens unique':
          {},
      },
      it: {
        'ruota libera, cuscinetto unidirezionale, cuscinetto antiritorno, cuscinetto anti-ritorno, astuccio a ruota libera':
          {},
      },
      es: {
        'rodamiento unidireccional, rueda libre, rodamiento antirretroceso, embrague unidireccional, rodamiento anti-retroceso':
          {},
      },
      nl: { 'vrijlooplager, vrijloopkoppeling, eenrichtingslager, vrijloop, terugloopslot lager': {} },
      ja: {
        'ワンウェイクラッチ, ワンウエイクラッチ, ワンウェイベアリング, 一方向クラッチ, ローラークラッチ, ワンウェイローラークラッチ':
          {},
      },
    },
    plain: {
      en: 'roller clutch housing, one way clutch cover, one way clutch tube, roller clutch inner tube, roller clutch cover, freewheel hub',
      ja: 'ワンウェイクラッチカラー, ローラークラッチインナーチューブ',
    },
  },
  standards: {},
  stems: ['hf', 'hfl', 'ef', 'efl'],
  designationAt,
  settle: (claim, line) => {
    const settled = claim.lengths.size === 3;
    if (!settled) settleRing(claim, line, { inside: 'bore', outside: 'od', across: 'width' }, labels);
  },
  ...plainSize('bore', 'od', 'width'),
  sizes: [...numbers, ...longNumbers].map(sizeOf),
  designations: dims => {
    const found = (list: readonly string[], letters: string) =>
      list
        .filter(n => {
          const size = sizeOf(n);
          return (
            size.bore === mm(Number(dims['bore'])) &&
            size.od === mm(Number(dims['od'])) &&
            size.width === mm(Number(dims['width']))
          );
        })
        .map(n => letters + n);
    return [...found(numbers, 'HF'), ...found(longNumbers, 'HFL')];
  },
  drawing: drawRollerClutch,
  examples: [
    ['HF0812', 'roller-clutch 8x12x12'],
    ['ONE WAY CLUTCH 8X12X22', 'roller-clutch 8x12x22'],
    ['Hülsenfreilauf HFL 0822', 'roller-clutch 8x12x22'],
    ['Roller clutch', { size: null, dims: {} }],
    ['ワンウェイクラッチ 6x10x12', 'roller-clutch 6x10x12'],
    ['One way clutch cover', undefined],
  ],
};
