import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { drawRod } from '../draw-rod.ts';
import { rodLabels, settleRod } from '../settle-rod.ts';
import { plainSize } from '../size-text.ts';
import { examples } from './examples.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

/** A taper pin is named by its number and its length: No. 3 x 1 1/4, 2/0 x 5/8. The number is no diameter. */
function settle(claim: Claim, line: Line): void {
  const lone = line.measures.at(-1);
  if (claim.attrs['type'] === 'taper' && lone?.label === null && isNumbered(line))
    claim.measure('length', lone);
  else settleRod(claim, line);
}

const isNumbered = ({ threads, tokens }: Line) =>
  threads.some(t => t.kind === 'number') ||
  tokens.some((t, at) => t.text === '0' && t.gap === 0 && tokens[at - 1]?.text === '/');

export const pin: CategoryDefinition = {
  name: 'pin',
  title: 'Pin',
  plural: 'Pins',
  dims: [
    {
      key: 'dia',
      label: 'diameter',
      diameter: true,
      unit: 'mm',
      limits: [mm(0.3), mm(60)],
      near: [0.5, 0.2],
    },
    { key: 'length', label: 'length', unit: 'mm', limits: [mm(0.8), mm(400)], near: [3, 0.25] },
  ],
  sizeDims: ['dia', 'length'],
  itemAttrs: ['type', 'material'],
  labels: rodLabels,
  words,
  standards: attributesOf('pin'),
  stems: [],
  settle,
  ...plainSize('dia', 'length'),
  sizes: [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12].flatMap(d =>
    [4, 6, 8, 10, 12, 16, 20, 24, 30].map(l => ({ dia: mm(d), length: mm(l) })),
  ),
  designations: () => [],
  drawing: drawRod,
  rules,
  examples,
};
