import { describe, expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import { encode } from '../../documents/encode.ts';
import { unread } from './unread.ts';

const read = (html: string | Uint8Array) => readRows(Buffer.from(html as string), 'page', unread);
const taken = (html: string | Uint8Array) =>
  read(html)
    .rows.filter(one => one.outcome === 'taken')
    .map(one => `${one.ref} | ${one.partNumber} | ${one.description} | ${one.qty ?? '-'}`);
const head = '<tr><th>Ref<th>Part no<th>Description<th>Qty';

describe("a page's tables give what a browser shows", () => {
  test('ends left out, entities, breaks, signs within a word', () => {
    const html = `<table>${head}<tr><td>1<td>AB&#8209;1<td>Nut<br>M3 &frac12;&quot; &lt;brass&gt;<td>2<tr><td>2<td>AB-<b>2</b><td>Pin&nbsp;2&times;8<td>1</table>`;
    expect(taken(html)).toEqual(['1 | AB‑1 | Nut M3 ½" <brass> | 2', '2 | AB-2 | Pin 2×8 | 1']);
  });
  test('tables within tables, a menu above, headings between', () => {
    const list = `<table>${head}<tr><td>1<td>AB-1<td>Nut<td>2</table>`;
    const html = `<table><tr><td><table><tr><td>Home<td>Cart</table><td><h2>Drum</h2>${list}</table>`;
    expect(taken(html)).toEqual(['1 | AB-1 | Nut | 2']);
  });
  test('each table has its own columns and is told', () => {
    const html = `<table>${head}<tr><td>1<td>AB-1<td>Nut<td>2</table><table><tr><th>Qty<th>Name<th>Code<tr><td>4<td>Pin<td>CD-300<tr><td>1<td>Cap<td>CD-301</table>`;
    expect(taken(html)).toEqual(['1 | AB-1 | Nut | 2', ' | CD-300 | Pin | 4', ' | CD-301 | Cap | 1']);
    expect(
      read(html).tables.map(({ place, columns }) => [place, columns.map(({ meaning }) => meaning).join()]),
    ).toEqual([
      ['table 1, row 1', 'ref,partNumber,description,qty'],
      ['table 2, row 1', 'qty,description,partNumber'],
    ]);
  });
  test('cells over rows stand in each of them, cells over columns are headings', () => {
    const html = `<table>${head}<tr><td colspan=4>Drum<tr><td rowspan=2>1<td>AB-1<td>Pawl<td>2<tr><td>AB-2<td>Pawl, late<td>1</table>`;
    expect(taken(html)).toEqual(['1 | AB-1 | Pawl | 2', '1 | AB-2 | Pawl, late | 1']);
    expect(read(html).rows[1]).toMatchObject({ reason: 'heading', description: 'Drum' });
  });
  test('a fraction set small stands apart from its whole', () => {
    expect(taken(`<table>${head}<tr><td>1<td>AB-1<td>Pin 1<sup>1</sup>/<sub>2</sub>"<td>2</table>`)).toEqual([
      '1 | AB-1 | Pin 1 1/2" | 2',
    ]);
  });
  test('without tables the text is read, as it would be pasted', () => {
    const lines =
      'Ref  Part no  Description  Qty\n1    AB-101   Nut M3       2\n2    AB-102   Pin 2x8      1\n';
    expect(taken(`<html><body><p>List</p><pre>${lines}</pre></body></html>`)).toEqual([
      '1 | AB-101 | Nut M3 | 2',
      '2 | AB-102 | Pin 2x8 | 1',
    ]);
  });
  test('what is copied from a sheet or a browser', () => {
    expect(
      taken(
        `<meta charset='utf-8'><google-sheets-html-origin><table><tbody>${head}<tr><td>1<td>AB-1<td>Nut<td>2</tbody></table>`,
      ),
    ).toHaveLength(1);
  });
  test('the encoding that a page names is believed where the bytes bear it out', () => {
    const page = (name: string, part: string) =>
      `<html><meta charset="${name}"><table>${head}<tr><td>1<td>AB-1<td>${part}<td>2</table>`;
    expect(taken(encode(page('Shift_JIS', '軸受'), 'shift_jis'))).toEqual(['1 | AB-1 | 軸受 | 2']);
    expect(taken(encode(page('iso-8859-1', 'Écrou – 5 €'), 'windows-1252'))).toEqual([
      '1 | AB-1 | Écrou – 5 € | 2',
    ]);
    expect(taken(encode(page('utf-8', 'Écrou'), 'windows-1252'))).toEqual(['1 | AB-1 | Écrou | 2']);
  });
});
