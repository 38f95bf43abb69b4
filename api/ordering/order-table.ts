import type { OrderAnswer, OrderLineAnswer } from '../answers/index.ts';

/** The columns of an order as a table; `Pieces` is a number. */
export const orderHeading = [
  'Maker',
  'Item',
  'Name',
  'Part numbers',
  'Pieces',
  'Jobs',
  'Why',
  'To settle first',
] as const;

/** The order as rows of a table, one a line, cells in the order of the heading. */
export function orderTable(order: OrderAnswer): (string | number)[][] {
  return order.groups.flatMap(({ maker, lines }) =>
    lines.map(line => [
      maker ?? '',
      line.item,
      line.name,
      numbersOf(line),
      line.total,
      line.jobs.map(job => `job ${job.number} ${job.owner}: ${job.qty ?? '?'}`).join('; '),
      [...line.because, ...line.taken.map(takenWords)].join('; '),
      line.asks.map(ask => ask.text).join('; '),
    ]),
  );
}

/** The numbers that a line goes by, maker by maker. */
export const numbersOf = ({ numbers }: OrderLineAnswer) =>
  numbers.map(one => `${one.maker} ${one.number}`).join('; ');

const takenWords = ({ what, as, apart }: OrderLineAnswer['taken'][number]) =>
  apart ? `${what} kept apart by you` : `${what} taken as ${as} by you`;
