import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import type { Dims } from '../../reading/reading.ts';
import type { StandardName } from '../../reading/standards.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import {
  din6799EClips,
  eClip,
  externalRing,
  externalRings,
  internalRing,
  internalRings,
} from '../../standards/retaining-rings.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { giveLabelled, unlabelledGroups } from '../settle-labels.ts';
import { plainSize } from '../size-text.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { tools } from './tools.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const labels = {
  dia: 'dia',
  id: 'dia',
  od: 'dia',
  bore: 'dia',
  d: 'dia',
  thickness: 'thickness',
  width: 'thickness',
};

function settle(claim: Claim, line: Line, standard: StandardName | null): void {
  const used = giveLabelled(claim, line, labels);
  const code = line.tokens.findIndex((t, at) => /^(e|s|h|stw|rtw|c)$/.test(t.text) && isSizeOf(line, at));
  if (code >= 0) byCode(claim, line, code);
  for (const { measures } of unlabelledGroups(line, used)) {
    // A hairpin clip is named by its wire or by its pin, and a number alone does not say by which.
    if (claim.attrs['type'] === 'r-clip') break;
    const open = ['dia', 'thickness'].filter(key => !claim.has(key));
    if (open.length === 0) break;
    if (measures.length === 3) {
      claim.doubt('three sizes: the free ring is not how a ring is named');
      break;
    }
    measures.slice(0, 2).forEach((m, i) => {
      if (open[i]) claim.measure(open[i]!, m);
    });
    claim.features.add(measures.length === 2 ? 'two-sizes' : 'one-size');
    break;
  }
  for (const thread of line.threads) {
    // A ring for a shaft written M8 is for 8 mm.
    if (thread.kind === 'metric' && !claim.has('dia')) claim.lengths.set('dia', thread.major);
  }
  const dia = claim.lengths.get('dia');
  const thickness = claim.lengths.get('thickness');
  if (dia !== undefined && thickness !== undefined && thickness >= dia && dia > 0)
    claim.doubt('thicker than its nominal size');
  if (standard && dia !== undefined) {
    const published = thicknessBy(standard.name, dia);
    if (published !== undefined && !claim.has('thickness')) claim.implied.set('thickness', published);
    claim.features.add('designation');
  }
}

/** E-3, S-10, H 12: a Japanese ring's letter and its size, glued or by a dash, printed nowhere else as a size. */
function isSizeOf(line: Line, at: number): boolean {
  const next = line.tokens[at + 1];
  const number = next?.text === '-' ? line.tokens[at + 2] : next;
  const glued = next?.text === '-' ? next.gap === 0 && number?.gap === 0 : number?.gap === 0;
  return number?.kind === 'number' && glued && !line.measures.some(m => m.start === number.start);
}

const codeTypes: Readonly<Record<string, string>> = {
  e: 'e-clip',
  s: 'external',
  stw: 'external',
  h: 'internal',
  rtw: 'internal',
};

function byCode(claim: Claim, line: Line, at: number): void {
  const number = line.tokens[at + 1]!.text === '-' ? line.tokens[at + 2]! : line.tokens[at + 1]!;
  const value = Number(number.text.replace(',', '.'));
  if (!(value > 0 && value <= 100) || claim.has('dia')) return;
  claim.lengths.set('dia', mm(value));
  claim.span('dia', number);
  const type = codeTypes[line.tokens[at]!.text];
  if (type) claim.attr('type', type);
}

function thicknessBy(standard: string, dia: Um): Um | undefined {
  if (standard === 'DIN 471') return externalRing(dia)?.thickness;
  if (standard === 'DIN 472') return internalRing(dia)?.thickness;
  return standard === 'DIN 6799' || standard === 'JIS B 2804'
    ? eClip(dia, standard === 'DIN 6799' ? 'DIN 6799' : 'JIS B 2804')?.thickness
    : undefined;
}

export const retainingRing: CategoryDefinition = {
  name: 'retaining-ring',
  title: 'Retaining ring',
  plural: 'Retaining rings',
  dims: [
    {
      key: 'dia',
      label: 'nominal size',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.5), mm(300)],
      near: [1, 0.15],
    },
    { key: 'thickness', label: 'thickness', unit: 'mm', limits: [mm(0.1), mm(6)] },
  ],
  sizeDims: ['dia'],
  itemAttrs: ['type', 'material'],
  labels,
  words,
  standards: attributesOf('retaining-ring'),
  stems: [],
  settle,
  ...plainSize('dia'),
  sizes: [
    ...new Set([
      ...externalRings.map(r => r.nominal),
      ...internalRings.map(r => r.nominal),
      ...din6799EClips.map(c => c.groove),
    ]),
  ].map(dia => ({ dia })),
  designations: (dims: Dims) => {
    const { dia } = dims;
    if (typeof dia !== 'number') return [];
    return [
      ...(externalRings.some(r => toMm(r.nominal) === dia) ? [`DIN 471-${dia}`] : []),
      ...(internalRings.some(r => toMm(r.nominal) === dia) ? [`DIN 472-${dia}`] : []),
      ...(din6799EClips.some(c => toMm(c.groove) === dia) ? [`DIN 6799-${dia}`] : []),
    ];
  },
  drawing,
  rules,
  tools,
  examples,
};
