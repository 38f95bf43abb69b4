import type { OrderAnswer } from '../answers/index.ts';

const heading = ['Maker', 'Item', 'Name', 'Part numbers', 'Pieces', 'Jobs', 'Why', 'To settle first'];

/** The order as CSV for a spreadsheet (RFC 4180, UTF-8 with its mark, so that ö stays ö). */
export function orderCsv(order: OrderAnswer): string {
  const rows = order.groups.flatMap(({ maker, lines }) =>
    lines.map(line => [
      maker ?? '',
      line.item,
      line.name,
      line.numbers.map(one => `${one.maker} ${one.number}`).join('; '),
      String(line.total),
      line.jobs.map(job => `job ${job.number} ${job.owner}: ${job.qty ?? '?'}`).join('; '),
      line.because.join('; '),
      line.asks.map(ask => ask.text).join('; '),
    ]),
  );
  return `\uFEFF${[heading, ...rows].map(row => row.map(csvCell).join(',')).join('\r\n')}\r\n`;
}

/**
 * One cell. What a spreadsheet would run as a formula (it begins with = + - @, a tab or a return, also full-width) gets
 * an apostrophe before it, as OWASP advises under "CSV Injection"; a plain number stays one.
 */
export function csvCell(text: string): string {
  const isNumber = /^-?\d+(\.\d+)?$/.test(text);
  const safe = !isNumber && /^\s*[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text;
  return `"${safe.replaceAll('"', '""')}"`;
}
