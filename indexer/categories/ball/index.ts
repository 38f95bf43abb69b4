import type { Dims } from '../../reading/reading.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { inch, mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawBall } from '../draw-rod.ts';
import { giveLabelled, unlabelledGroups } from '../settle-labels.ts';
import { plainSize } from '../size-text.ts';

const labels = { dia: 'dia', d: 'dia', od: 'dia', D: 'dia' };

/** Balls in 32nds of an inch and whole and half millimetres that are stocked (ISO 3290-1; common practice). */
const inchSizes = [1 / 16, 3 / 32, 1 / 8, 5 / 32, 3 / 16, 7 / 32, 1 / 4, 9 / 32, 5 / 16, 3 / 8, 1 / 2].map(
  inch,
);
const metricSizes = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12].map(mm);

export const ball: CategoryDefinition = {
  name: 'ball',
  title: 'Ball',
  plural: 'Balls',
  dims: [
    {
      key: 'dia',
      label: 'diameter',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.3), mm(60)],
      near: [0.5, 0.15],
    },
  ],
  sizeDims: ['dia'],
  itemAttrs: ['material'],
  labels,
  words: {
    nouns: {
      en: {
        'ball, bearing ball, balls, loose ball, ball bearings loose, detent ball, click ball, loose balls':
          {},
      },
      de: { 'kugel, kugeln, rastkugel, lagerkugel, wälzlagerkugel': {} },
      fr: { 'bille, billes': {} },
      it: { 'sfera, sfere, sferetta, biglia': {} },
      es: { 'bola, bolas': {} },
      nl: { 'kogel, kogels, lagerkogel, kogeltje': {} },
      ja: { 'ボール, 鋼球, スチールボール, 球': {} },
    },
    plain: {
      en: 'ball joint, ball valve, ball knob, ball handle, ball head, ball pen, ball stud, ball plunger, ball screw, ballscrew, ball chain, ball cage, ball retainer, ball race, ball end, ball detent plunger, ball hex key, ball cup',
      de: 'kugelknopf, kugelhahn, kugelkopf, kugelgelenk, kugelgriff, kugelkäfig, kugelgewinde, glaskugel',
      fr: 'cage a billes',
      ja: 'ボールプランジャー, ボールバルブ, ボールジョイント',
    },
  },
  standards: attributesOf('ball'),
  stems: [],
  settle: (claim, line) => {
    const used = giveLabelled(claim, line, labels);
    const group = unlabelledGroups(line, used)[0];
    if (group?.measures.length === 1) {
      claim.measure('dia', group.measures[0]!);
      claim.features.add('one-size');
    } else if (group) claim.doubt('more than one size for a ball');
  },
  ...plainSize('dia'),
  sizes: [...inchSizes, ...metricSizes].map(dia => ({ dia })),
  designations: (dims: Dims) => {
    const at = inchSizes.indexOf(mm(Number(dims['dia'])));
    return at < 0
      ? []
      : [['1/16', '3/32', '1/8', '5/32', '3/16', '7/32', '1/4', '9/32', '5/16', '3/8', '1/2'][at]!];
  },
  drawing: drawBall,
  examples: [
    ['STEEL BALL 1/8"', 'ball 3.175'],
    ['Kugel 3 mm', 'ball 3'],
    ['BALL, STEEL, .125 DIA', 'ball 3.175'],
    ['Bille acier Ø5', { size: 'ball 5', attrs: { material: 'steel' } }],
    ['鋼球 4', 'ball 4'],
    ['Ball joint M5', undefined],
    ['BALL KNOB', undefined],
  ],
};
