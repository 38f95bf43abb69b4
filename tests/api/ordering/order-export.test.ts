import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { OrderAnswer } from '../../../api/answers/index.ts';
import { orderText } from '../../../api/ordering/order-text.ts';
import { orderXlsx, xlsxCell } from '../../../api/ordering/order-xlsx.ts';

const order: OrderAnswer = {
  jobs: [{ id: 'x', number: 2, owner: 'Ada' }],
  leftOut: [],
  groups: [
    {
      maker: 'Ondrey',
      lines: [
        {
          item: 'washer 3.2x7x0.5',
          size: 'washer 3.2x7x0.5',
          name: '=HYPERLINK("http://x","y")\n<b>&',
          total: 4,
          jobs: [{ job: 'x', number: 2, owner: 'Ada', qty: 4, refs: ['7'] }],
          numbers: [{ maker: 'Ondrey', number: '-7', part: null }],
          makersPartOnly: false,
          because: [],
          taken: [],
          asks: [{ code: 'as-required', text: 'How many?', needs: [] }],
          needs: [],
        },
      ],
    },
  ],
};

describe('orderXlsx(order)', () => {
  const files = unzipSync(orderXlsx(order));
  const sheet = strFromU8(files['xl/worksheets/sheet1.xml']!);

  test('has the parts of a workbook: ECMA-376 part 1, 12.2 and 12.3.23', () => {
    expect(Object.keys(files).sort()).toEqual([
      '[Content_Types].xml',
      '_rels/.rels',
      'xl/_rels/workbook.xml.rels',
      'xl/workbook.xml',
      'xl/worksheets/sheet1.xml',
    ]);
  });

  test('words of a list are inline strings and no formula; pieces are a number', () => {
    expect(sheet).not.toMatch(/<f[ >]/);
    expect(sheet).toContain('>=HYPERLINK("http://x","y")\n&lt;b&gt;&amp;</t></is></c>');
    expect(sheet).toContain('<c r="E2"><v>4</v></c>');
    expect(sheet.match(/<row /g)).toHaveLength(2);
    expect(sheet.match(/<c[ >]/g)).toHaveLength(16);
  });

  // XML 1.0, production 2 (Char); ECMA-376 part 1, 22.9.2.19 (ST_Xstring).
  test.each([
    ['a\u0000b\u001fc', 'a\uFFFDb\uFFFDc'],
    ['\uD800x', '\uFFFDx'],
    ['\uFFFF', '\uFFFD'],
    ['_x0041_', '_x005F_x0041_'],
    ['schwarz 🔩', 'schwarz 🔩'],
  ])('%j is written %j', (text, written) => {
    expect(xlsxCell(text, 'B3')).toBe(
      `<c r="B3" t="inlineStr"><is><t xml:space="preserve">${written}</t></is></c>`,
    );
  });
});

test('orderText(order): a line a thing, whatever its name holds, and what is to be settled', () => {
  expect(orderText(order)).toBe(
    [
      'Order for job 2',
      '',
      'From Ondrey',
      '4 pcs  Ondrey -7, =HYPERLINK("http://x","y") <b>&, washer 3.2x7x0.5',
      '    To settle first: How many?',
      '',
    ].join('\n'),
  );
});

// OWASP, "CSV Injection": a cell that begins with one of these runs; full-width forms are folded by some programs.
test.each(['=', '+', '-', '@', '\t=', '\r=', '\n=', '＝', '＋', '－', '＠', ' =', '\u00A0='])(
  'no line of the text begins with %j, whoever is called so',
  lead => {
    const named = `${lead}1+2`;
    const [group] = order.groups;
    const line = { ...group!.lines[0]!, name: named, item: named, size: named, numbers: [] };
    const asks = [{ code: 'as-required' as const, text: named, needs: [] }];
    const text = orderText({ ...order, groups: [{ maker: named, lines: [{ ...line, asks }] }] });
    for (const each of text.split(/[\t\r\n]/)) expect(each.trim()).not.toMatch(/^[=+\-@＝＋－＠]/);
  },
);

test.each(['=', '+', '-', '@', '\t=', '＝', '＋', '－', '＠'])(
  'a cell of a workbook that begins with %j is words',
  lead => {
    expect(xlsxCell(`${lead}1+2`, 'A1')).toMatch(
      /^<c r="A1" t="inlineStr"><is><t [^>]*>[^<]*<\/t><\/is><\/c>$/,
    );
  },
);
