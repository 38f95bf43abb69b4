import type { DiagramRow } from '../../api/answers/index.ts';
import { rangeWords } from '../part/ranges.ts';

type Fact = DiagramRow['facts'][number];

const words: Record<string, (fact: Fact) => string> = {
  'not-sold-separately': () => 'not sold separately',
  'as-required': () => 'as required',
  option: () => 'option',
  attaching: () => 'attaching part',
  'reference-only': () => 'for reference only',
  'left-right': () => 'left and right are two parts',
  serial: ({ from, to }) => {
    if (from && to) return `serial ${from} to ${to}`;
    return from ? `from serial ${from}` : `up to serial ${to ?? '…'}`;
  },
};

/**
 * What the list says of a line besides its words: what it comes with, what replaced it, how it is sold. A remark that was
 * read is not said twice; one that was not stands as printed.
 */
export function relationWords(row: DiagramRow): string[] {
  const read = [
    ...row.facts.map(fact => words[fact.kind]?.(fact) ?? fact.kind.replaceAll('-', ' ')),
    ...(row.supersededBy.length > 0 ? [`replaced by ${row.supersededBy.join(' or ')}`] : []),
    ...(row.includes.length > 0 ? [`comes with ${rangeWords(row.includes)}`] : []),
  ];
  return [
    ...(row.remarks && read.length === 0 ? [row.remarks] : []),
    ...read,
    ...(row.parent ? [`part of ${row.parent}`] : []),
  ];
}
