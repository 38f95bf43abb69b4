import type { OrderAnswer } from '../answers/index.ts';
import { orderHeading, orderTable } from './order-table.ts';

/** The order as CSV for a spreadsheet (RFC 4180, UTF-8 with its mark, so that ö stays ö). */
export function orderCsv(order: OrderAnswer): string {
  const rows = [orderHeading, ...orderTable(order)];
  return `\uFEFF${rows.map(row => row.map(cell => csvCell(String(cell))).join(',')).join('\r\n')}\r\n`;
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
