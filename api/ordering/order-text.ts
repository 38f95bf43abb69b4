import type { OrderAnswer, OrderLineAnswer } from '../answers/index.ts';
import { numbersOf } from './order-table.ts';

/**
 * The order as plain text to paste in a mail: maker by maker, pieces first; what is to be settled stands under its line.
 * Every line begins with a word of ours, so that none is a formula where it is pasted into a spreadsheet.
 */
export function orderText({ jobs, groups }: OrderAnswer): string {
  const title = `Order for ${jobs.length === 1 ? 'job' : 'jobs'} ${jobs.map(job => job.number).join(', ')}`;
  const sections = groups.map(({ maker, lines }) =>
    [maker === null ? 'Any maker, by size' : `From ${oneLine(maker)}`, ...lines.flatMap(textOf)].join('\n'),
  );
  return `${[title, ...sections].join('\n\n')}\n`;
}

function textOf(line: OrderLineAnswer): string[] {
  const words = [numbersOf(line), line.name, line.size === null || line.item === line.name ? '' : line.item];
  return [
    `${line.total} pcs  ${oneLine(words.filter(Boolean).join(', '))}${line.makersPartOnly ? " (maker's part only)" : ''}`,
    ...line.asks.map(ask => `    To settle first: ${oneLine(ask.text)}`),
  ];
}

/** A name of a list cannot begin a line of its own, nor turn the writing round. */
const oneLine = (text: string) =>
  text
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .replace(/\p{Bidi_Control}/gu, '')
    .trim();
