import type { Line } from '../../reading/line.ts';
import type { Attrs } from '../../reading/reading.ts';
import type { Token } from '../../reading/tokens.ts';
import { deepGrooveBearings, deepGrooveByDesignation } from '../../standards/iso-15.ts';
import { mm, type Um } from '../../units/length.ts';
import type { Designation } from '../definition.ts';
import { readSuffix } from './suffix.ts';

/**
 * Angular contact and self-aligning bearings share bore, outside diameter and width with the deep-groove series of the same
 * dimension series (ISO 15): 7202 is 6202 without, 1200 is 6200.
 */
const sameSizes: Readonly<Record<string, string>> = { 70: '60', 72: '62', 73: '63', 12: '62', 13: '63' };
/** Letters of contact angle, cage and set behind such a number (makers' catalogues, from memory). */
const angleLetters = /^(?:[abcdk]|ac|be|bep|becbp|etn|tn|tv|m)$/;

/** A number whose figures are outside diameter and bore in tenths: L-1040 is 10 x 4 (common practice of miniature bearings). */
const tenths: Readonly<Record<string, Attrs>> = {
  l: {},
  r: {},
  ddl: { material: 'stainless' },
  ddr: { material: 'stainless' },
};

/** Inserts in blocks and rod ends: the number tells the bore (common practice). */
const inBlocks: Readonly<Record<string, Attrs>> = {
  kp: { type: 'block' },
  kfl: { type: 'block' },
  ucp: { type: 'block' },
  ucf: { type: 'block' },
  ucfl: { type: 'block' },
  scs: { type: 'block' },
  sce: { type: 'block' },
  phs: { type: 'rod-end' },
  pos: { type: 'rod-end' },
  si: { type: 'rod-end' },
  sa: { type: 'rod-end' },
};

/** Needle bearings with machined rings, series 49, with and without an inner ring: bore, outside diameter, width (ISO 15, ISO 1206; from memory). */
const machinedNeedles: Readonly<
  Record<string, readonly [bore: number, withoutRing: number, od: number, width: number]>
> = {
  4900: [10, 14, 22, 13],
  4901: [12, 16, 24, 13],
  4902: [15, 20, 28, 13],
  4903: [17, 22, 30, 13],
  4904: [20, 25, 37, 17],
  4905: [25, 30, 42, 17],
};

const seriesNumbers = Object.keys(sameSizes).flatMap(series =>
  Array.from({ length: 21 }, (_, code) => series + String(code).padStart(2, '0')),
);

export const otherSeriesStems: readonly string[] = [
  ...seriesNumbers,
  ...Object.keys(tenths),
  ...Object.keys(inBlocks),
  'na',
  'rna',
];

const given = (
  at: number,
  last: number,
  attrs: Attrs,
  sizes: Readonly<Record<string, Um>>,
  sure: boolean,
): Designation => ({
  first: at,
  last,
  key: Object.values(sizes).join('x'),
  sure,
  apply: claim => {
    for (const [key, value] of Object.entries(attrs)) claim.attr(key, value);
    for (const [key, um] of Object.entries(sizes)) claim.designated(key, um);
  },
});

/** Reads 7202B, 1200, L-1040ZZ, UCP204, KP08, POS8 or RNA4901 that begins at a token. */
export function otherSeriesAt(line: Line, at: number): Designation | null {
  const { tokens } = line;
  const first = tokens[at]!;
  const named = line.hits.some(h =>
    h.nouns.some(({ meaning }) => meaning.kind === 'noun' && meaning.category === 'bearing'),
  );
  if (first.kind === 'number') return seriesAt(tokens, at, named);
  const dashed = tokens[at + 1]?.text === '-' && tokens[at + 1]!.gap === 0;
  const number = tokens[dashed ? at + 2 : at + 1];
  if (number?.kind !== 'number' || number.gap > 0 || !/^\d{1,4}$/.test(number.text)) return null;
  const last = dashed ? at + 2 : at + 1;
  if (first.text in tenths) return dashed ? tenthsAt(tokens, at, last, named) : null;
  if (dashed) return null;
  return first.text in inBlocks ? inBlockAt(tokens, at, named) : machinedAt(tokens, at);
}

function seriesAt(tokens: readonly Token[], at: number, named: boolean): Designation | null {
  const { text, gap } = tokens[at]!;
  if (gap === 0 && at > 0) return null;
  const series = sameSizes[text.slice(0, 2)];
  const bearing = series && deepGrooveByDesignation(series + text.slice(2));
  if (!bearing || bearing.widthOpen === null) return null;
  const next = tokens[at + 1];
  const letters = next?.gap === 0 && next.kind === 'word' ? next.text : '';
  const says = letters === '' || angleLetters.test(letters) ? {} : readSuffix(letters);
  if (says === null || (next?.gap === 0 && next.kind === 'mark' && next.text !== '-')) return null;
  if (!named && letters === '') return null;
  const end = letters === '' ? at : at + 1;
  const sealed = sealBehind(tokens, end + 1);
  const { bore, od, widthOpen } = bearing;
  return given(at, sealed?.last ?? end, { ...says, ...sealed?.attrs }, { bore, od, width: widthOpen }, true);
}

/** A seal's letters behind a dash: -2RS. */
function sealBehind(tokens: readonly Token[], at: number): { attrs: Attrs; last: number } | null {
  if (tokens[at]?.text !== '-' || tokens[at]!.gap > 0) return null;
  let text = '';
  let last = at;
  for (let i = at + 1; tokens[i]?.gap === 0 && tokens[i]!.kind !== 'mark'; i++) {
    text += tokens[i]!.text;
    last = i;
  }
  const attrs = text ? readSuffix(text) : null;
  return attrs && { attrs, last };
}

function tenthsAt(tokens: readonly Token[], at: number, last: number, named: boolean): Designation | null {
  const figures = tokens[last]!.text;
  if (figures.length < 3) return null;
  const [od, bore] = [mm(Number(figures.slice(0, -2))), mm(Number(figures.slice(-2)) / 10)];
  const sized = deepGrooveBearings.filter(b => b.bore === bore && b.od === od);
  const next = tokens[last + 1];
  const suffix = next?.gap === 0 && next.kind === 'word' ? readSuffix(next.text) : null;
  if (sized.length === 0 || (!suffix && !named)) return null;
  const attrs = { ...tenths[tokens[at]!.text], ...suffix };
  const widths = new Set(sized.map(b => (attrs['seal'] === undefined ? b.widthOpen : b.widthShielded)));
  widths.delete(null);
  const [width] = widths;
  const sizes: Record<string, Um> = { bore, od };
  if (widths.size === 1 && width) sizes['width'] = width;
  return given(at, suffix ? last + 1 : last, attrs, sizes, true);
}

/** UCP204 has 20 mm (four and up: five times), UCP202 15, KP08 8, KFL001 12, SCS8UU and POS8 8. */
const smallBores: Readonly<Record<string, number>> = { '00': 10, '01': 12, '02': 15, '03': 17 };

function boreOf(letters: string, figures: string): number | null {
  const code = smallBores[figures.slice(-2)] ?? Number(figures.slice(-2)) * 5;
  if (letters.startsWith('uc')) return /^2\d\d$/.test(figures) ? code : null;
  if (letters === 'kp' || letters === 'kfl')
    return /^00\d$/.test(figures) ? code : figures === '08' ? 8 : null;
  return /^[1-9]\d?$/.test(figures) && Number(figures) >= 3 && Number(figures) <= 60 ? Number(figures) : null;
}

function inBlockAt(tokens: readonly Token[], at: number, named: boolean): Designation | null {
  const letters = tokens[at]!.text;
  const number = tokens[at + 1]!;
  const bore = boreOf(letters, number.text);
  if (bore === null) return null;
  const next = tokens[at + 2];
  const glued = next?.gap === 0 && next.kind !== 'mark' ? next.text : '';
  const linear = letters === 'scs' || letters === 'sce';
  if (linear ? !/^(?:uu|luu|vuu|wuu)$/.test(glued) : glued !== '' && !/^(?:t|tk|e|es|ec|c|l)$/.test(glued))
    return null;
  // POS8 alone is a position, SA5 an item.
  const sure = linear || letters.length === 3 ? letters !== 'pos' : glued !== '' || letters === 'kp';
  if (!sure && !named) return null;
  const open = next?.gap === 0 && next.text === '/' ? at + 3 : glued ? at + 2 : at + 1;
  return given(at, Math.min(open, tokens.length - 1), inBlocks[letters]!, { bore: mm(bore) }, sure);
}

function machinedAt(tokens: readonly Token[], at: number): Designation | null {
  const found = machinedNeedles[tokens[at + 1]!.text];
  if (!found) return null;
  const [bore, withoutRing, od, width] = found;
  const inside = tokens[at]!.text === 'rna' ? withoutRing : bore;
  return given(at, at + 1, { type: 'needle' }, { bore: mm(inside), od: mm(od), width: mm(width) }, true);
}
