import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import type { Measure } from '../../reading/measures.ts';
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
import type { CategoryDefinition, Designation } from '../definition.ts';
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
  const code = line.tokens.findIndex((_, at) => isCode(line, at));
  const coded = code < 0 ? undefined : byCode(claim, line, code);
  const used = giveLabelled(claim, line, labels, coded);
  for (const { measures } of unlabelledGroups(line, used)) {
    // A hairpin clip is named by its wire or by its pin, and a number alone does not say by which.
    if (claim.attrs['type'] === 'r-clip') break;
    const open = ['dia', 'thickness'].filter(key => !claim.has(key));
    if (open.length === 0) break;
    if (measures.length === 3) {
      claim.doubt('three sizes: the free ring is not how a ring is named');
      break;
    }
    // Wire first: 0.8 x 12
    const [first, second] = wireFirst(measures) as [Measure, Measure | undefined];
    claim.measure(open[0]!, first);
    const size = claim.lengths.get('dia') ?? 0;
    if (second && open[1] && (second.um <= thinnest || second.um <= size * thickest))
      claim.measure(open[1], second);
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

/** A wire ring may be printed with its wire in front: of two sizes one much larger behind is the ring's. */
const wireFirst = (measures: readonly Measure[]) =>
  measures.length === 2 && measures[1]!.um > measures[0]!.um * 2 ? [measures[1]!, measures[0]!] : measures;

/** No ring is thicker than this part of its nominal size (DIN 471, DIN 472, DIN 6799), where it is no wisp: 15 x 4 are four rings. */
const thickest = 0.2;
const thinnest = mm(0.7);

/** E-3, S-10, H 12: a Japanese ring's letter and its size, glued or by a dash, printed nowhere else as a size. */
/** A ring is not so thick: S10 is a ring for a shaft, S1 how thick one is. */
const leastCoded = mm(4);

function isCode({ tokens, measures }: Line, at: number): boolean {
  const letter = tokens[at]!;
  if (!(letter.text in codeTypes) && letter.text !== 'c') return false;
  const next = tokens[at + 1];
  const dashed = next?.text === '-';
  const number = dashed ? tokens[at + 2] : next;
  if (number?.kind !== 'number') return false;
  if (dashed) return next!.gap === 0 && number.gap === 0;
  // s=1,2 and s1,2 are how thick a ring is; H 12 of capitals is a ring for a hole.
  const measured = measures.find(m => m.start === number.start);
  return number.gap === 0
    ? !measured || (letter.upper && measured.whole && measured.um >= leastCoded)
    : number.gap === 1 && letter.upper && letter.text !== 'c' && (measured?.whole ?? true);
}

const codeTypes: Readonly<Record<string, string>> = {
  e: 'e-clip',
  s: 'external',
  stw: 'external',
  h: 'internal',
  rtw: 'internal',
  istw: 'external',
  irtw: 'internal',
  etw: 'e-clip',
};

/** Gives a ring's code, and the size that its figures were taken for. */
function byCode(claim: Claim, line: Line, at: number): Measure | undefined {
  const number = line.tokens[at + 1]!.text === '-' ? line.tokens[at + 2]! : line.tokens[at + 1]!;
  const value = Number(number.text.replace(',', '.'));
  if (!(value > 0 && value <= 100)) return undefined;
  claim.lengths.set('dia', mm(value));
  claim.span('dia', number);
  const type = codeTypes[line.tokens[at]!.text];
  if (type) claim.attr('type', type);
  return line.measures.find(m => m.start === number.start);
}

/** STW-10, RTW-22, ETW-3: letters that stand for rings alone (common practice of Japanese makers). */
function designationAt({ tokens }: Line, at: number): Designation | null {
  const dashed = tokens[at + 1]?.text === '-';
  const number = tokens[dashed ? at + 2 : at + 1];
  if (number?.kind !== 'number' || number.gap > 1) return null;
  const type = codeTypes[tokens[at]!.text]!;
  const dia = mm(Number(number.text.replace(',', '.')));
  return {
    first: at,
    last: dashed ? at + 2 : at + 1,
    key: `${type} ${dia}`,
    sure: true,
    apply: claim => {
      claim.designated('dia', dia);
      claim.attr('type', type);
    },
  };
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
  stems: ['stw', 'rtw', 'etw', 'istw', 'irtw'],
  designationAt,
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
