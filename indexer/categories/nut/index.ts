import type { Claim } from '../../reading/claim.ts';
import type { Line } from '../../reading/line.ts';
import type { Measure } from '../../reading/measures.ts';
import { attributesOf } from '../../standards/part-standards.ts';
import { mm } from '../../units/length.ts';
import type { CategoryDefinition } from '../definition.ts';
import { withGrades } from '../grades.ts';
import { giveLabelled } from '../settle-labels.ts';
import { giveThread, parseThread, writeThread } from '../settle-thread.ts';
import { designationOfThread, threadedSizes } from '../threaded-sizes.ts';
import { drawing } from './drawing.ts';
import { examples } from './examples.ts';
import { tools } from './tools.ts';
import { rules } from './verdict.ts';
import { words } from './words.ts';

const labels = { thickness: 'thickness', height: 'thickness' };

/** The last number behind a standard and a thread is the nut's class (ISO 898-2): ISO 4032 - M8 - 8, hex nut M3 ISO 4032 8. */
function classBehind({ tokens, standards, threads, measures }: Line): Measure | undefined {
  const last = measures.at(-1);
  const [named, sized] = [standards[0]?.last, threads[0]?.last];
  if (!last?.whole || last.unitStated || named === undefined || sized === undefined) return undefined;
  const behind = last.first > Math.max(named, sized) && tokens[last.first - 1]!.text !== '×';
  return behind && classes.has(last.value) ? last : undefined;
}

const classes = new Set([5, 6, 8, 10, 12]);

function settle(claim: Claim, line: Line): void {
  const used = giveLabelled(claim, line, labels);
  const threaded = giveThread(claim, line, true);
  const classed = classBehind(line);
  if (classed) claim.attr('grade', String(classed.value), classed);
  // Of the sizes behind a nut's thread the last is its height: 8-36 x 19/64 x 1/8 thick, M3 x 2.4
  const rest = threaded?.rest.filter(m => !used.has(m) && m !== classed) ?? [];
  if (rest.length === 1 && !claim.has('thickness') && rest[0]!.um <= threaded!.thread.major * 2)
    claim.measure('thickness', rest[0]!);
}

export const nut: CategoryDefinition = {
  name: 'nut',
  title: 'Nut',
  plural: 'Nuts',
  dims: [
    { key: 'thread', label: 'thread', unit: 'thread' },
    { key: 'pitch', label: 'pitch', unit: 'mm', limits: [mm(0.1), mm(6)] },
    { key: 'thickness', label: 'height', unit: 'mm', limits: [mm(0.5), mm(80)] },
  ],
  sizeDims: ['thread'],
  itemAttrs: ['type', 'hand', 'material'],
  labels,
  words: withGrades(words),
  standards: attributesOf('nut'),
  stems: [],
  settle,
  write: writeThread,
  parse: text => {
    const parsed = parseThread(text);
    return parsed && parsed.rest === '' ? { dims: parsed.dims, implied: parsed.implied } : null;
  },
  sizes: threadedSizes([null]),
  designations: designationOfThread,
  drawing,
  rules,
  tools,
  examples,
};
