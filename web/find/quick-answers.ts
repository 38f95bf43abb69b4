import type { Found } from '../../api/answers/index.ts';
import { headingWords, sizePath } from '../part/size.tsx';

/** One thing that was found, as a line that leads to it. */
export interface Answer {
  path: string;
  name: string;
  /** What tells it from the others. */
  told: string;
}

/** How many of each kind, and in all. */
const mostOfAKind = 4;
const most = 8;

/** What was found, in few lines: the part of that number first, then sizes, models, other parts, near sizes. */
export function answersOf({ sizes, near, parts, models }: Found): Answer[] {
  const partAnswer = (part: Found['parts'][number]): Answer => ({
    path: `/parts/${part.id}`,
    name: part.number ?? part.name,
    told: [part.maker.name, part.number === null ? '' : part.name].filter(Boolean).join(', '),
  });
  const sizeAnswer = (told: string) => (hit: Found['sizes'][number]) => ({
    path: sizePath(hit.size),
    name: headingWords(hit.size),
    told: [told, counted(hit.models, 'model')].filter(Boolean).join(', '),
  });
  const numbered = parts.filter(part => part.matched === 'number');
  const others = parts.filter(part => part.matched !== 'number');
  const groups = [
    numbered.map(partAnswer),
    sizes.map(sizeAnswer('')),
    models.map(model => ({
      path: `/models/${model.id}`,
      name: `${model.maker.name} ${model.name}`,
      told: counted(model.lines, 'line'),
    })),
    others.map(partAnswer),
    sizes.length > 0
      ? []
      : near.map(hit => sizeAnswer(`near: ${hit.differences.map(nameOf).join(', ')}`)(hit)),
  ];
  return groups.flatMap(group => group.slice(0, mostOfAKind)).slice(0, most);
}

const nameOf = ({ label }: Found['near'][number]['differences'][number]) => `${label} differs`;
const counted = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;
