import type { Dims } from '../../reading/reading.ts';
import { shimRings, stockedShimThicknesses } from '../../standards/din-988.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm, toMm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRing } from '../draw-ring.ts';
import { flatRingLabels, loneThickness, settleRing } from '../settle-ring.ts';
import { plainSize } from '../size-text.ts';
import { rules } from './verdict.ts';

export const shim: CategoryDefinition = {
  name: 'shim',
  title: 'Shim',
  plural: 'Shims',
  dims: [
    { key: 'id', label: 'hole', diameter: true, unit: 'mm', limits: [mm(0.5), mm(200)], near: [0.6, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1), mm(400)], near: [2, 0.25] },
    { key: 'thickness', label: 'thickness', unit: 'mm', limits: [mm(0.01), mm(6)], near: [0.3, 0.5] },
  ],
  sizeDims: ['id', 'od', 'thickness'],
  itemAttrs: ['material'],
  labels: flatRingLabels,
  words: {
    nouns: {
      en: {
        'shim, shim set, shims set, shim ring, shim washer, shims, adjusting shim, bearing shim, spool shim, adjustment shim':
          {},
      },
      de: {
        'passscheibe, paßscheibe, ausgleichsscheibe, distanzscheibe, einstellscheibe, beilegscheibe, shimscheibe, stützscheibe, abstimmscheibe':
          {},
      },
      fr: { "cale, rondelle de calage, cale de reglage, cale d'epaisseur, rondelle de reglage": {} },
      it: {
        'spessore, spessori, rasamento, rasamenti, rondella di rasamento, anello di spessoramento, rosetta di rasamento':
          {},
      },
      es: { 'arandela de ajuste, calce, suplemento, galga de ajuste, arandela de suplemento': {} },
      nl: { 'vulring, pasring, opvulring, stelring, passchijf, vulplaatje': {} },
      ja: { 'シム, シムリング, 調整ワッシャー, 調整ワッシャ, シムワッシャー': {} },
    },
    plain: { en: 'shim stock, shim sheet, shim kit' },
  },
  standards: attributesOf('shim'),
  stems: [],
  settle: (claim, line) => {
    for (const thread of line.threads) claim.text('thread', thread.name, thread);
    // M5 x 0.3 mm: the screw's size, then how thick.
    for (const { thread, measures } of line.groups)
      if (thread && measures.length === 1 && measures[0]!.label === null)
        claim.measure('thickness', measures[0]!);
    settleRing(claim, line, { inside: 'id', outside: 'od', across: 'thickness' }, flatRingLabels);
    loneThickness(claim);
  },
  ...plainSize('id', 'od', 'thickness'),
  sizes: shimRings.flatMap(({ id, od }) => stockedShimThicknesses.map(thickness => ({ id, od, thickness }))),
  designations: (dims: Dims) =>
    shimRings.some(r => toMm(r.id) === dims['id'] && toMm(r.od) === dims['od'])
      ? [`DIN 988 ${dims['id']}x${dims['od']}x${dims['thickness']}`]
      : [],
  drawing: drawRing({ inside: 'id', outside: 'od', across: 'thickness' }),
  rules,
  examples: [
    ['SHIM 8X14X0.1', 'shim 8x14x0.1'],
    ['Passscheibe DIN 988 5x10x0,2', 'shim 5x10x0.2'],
    ['Shim, 0.1 mm thick', { size: null, dims: { thickness: 0.1 } }],
    ['SHIM 0.2', { size: null, dims: { thickness: 0.2 } }],
    ['Rondelle de calage 6x12x0,5', 'shim 6x12x0.5'],
    ['シム 10x16x0.3', 'shim 10x16x0.3'],
  ],
};
