import type { Printed } from './lay-out.ts';
import type { Chance } from './random.ts';

const asMarkup = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replace(/[é€Ö]/g, sign => `&#${sign.charCodeAt(0)};`);

/** A page with the list as its table, between others that are none; written by hand, by a program, or carelessly. */
export function writeHtml(rows: readonly Printed[], chance: Chance): string {
  const width = Math.max(...rows.map(({ cells }) => cells.length));
  const careless = chance.in100(40);
  const end = (name: string) => (careless ? '' : `</${name}>`);
  const lines = rows.map(({ kind, cells, merged = [] }) => {
    if (kind === 'wide')
      return `<tr><td colspan=${width}><b>${asMarkup(cells[0]!)}</b>${end('td')}${end('tr')}`;
    const tag = kind === 'header' && !careless ? 'th' : 'td';
    const inside = spanned(cells, merged);
    return `<tr>${inside.map(({ text, columns }) => `<${tag}${columns > 1 ? ` colspan="${columns}"` : ''}>${shown(text, chance)}${end(tag)}`).join('')}${end('tr')}`;
  });
  const table = `<table border=1>${lines.join('\n')}</table>`;
  const body = chance.in100(40) ? `<table class=layout><tr><td>${table}</td></tr></table>` : table;
  return `<!DOCTYPE html><html><head><meta charset=utf-8><title>List</title><script>var row = "<td>9</td>";</script></head><body>
<table><tr><td>Home</td><td>Search</td><td>Contact</td></tr></table><p>Prices on request.</p>
${body}
<div style="display:none"><table><tr><td>77</td><td>ZZ-77777</td><td>Hidden part</td><td>1</td></tr></table></div></body></html>`;
}

function shown(text: string, chance: Chance): string {
  if (!text) return chance.in100(50) ? '&nbsp;' : '';
  const at = text.indexOf(' ');
  const broken = at > 0 && chance.in100(15);
  return broken
    ? `${asMarkup(text.slice(0, at))}<br>${asMarkup(text.slice(at + 1))}`
    : chance.in100(15)
      ? `<span class=x>${asMarkup(text)}</span>`
      : asMarkup(text);
}

/** Cells with the columns that each reaches over. */
function spanned(
  cells: readonly string[],
  merged: readonly [number, number][],
): { text: string; columns: number }[] {
  const covered = (at: number) => merged.some(([from, to]) => at > from && at <= to);
  return cells.flatMap((text, at) => {
    const to = merged.find(([from]) => from === at)?.[1] ?? at;
    return covered(at) ? [] : [{ text, columns: to - at + 1 }];
  });
}
