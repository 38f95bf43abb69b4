import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { csvCell, orderCsv } from '../../../api/ordering/order-csv.ts';

/** What begins a formula in a spreadsheet: OWASP, "CSV Injection". */
const formulas = [
  '=1+1',
  '+1+1',
  '-1+1',
  '@SUM(A1)',
  '\t=1',
  '\r=1',
  ' =1',
  '＝1+1',
  '=HYPERLINK("http://x","y")',
];

describe('csvCell(text)', () => {
  test.each(formulas)('%j cannot run', formula => {
    const [[cell]] = parse(csvCell(formula), { relax_column_count: true }) as [[string]];
    expect(cell).toBe(`'${formula}`);
  });

  test.each(['', 'bearing 5x11x4', '3', '-3.5', 'a, "b"\nc', 'Wyke & Calder'])('%j stays as it is', text => {
    expect(parse(`${csvCell(text)},x`)).toEqual([[text, 'x']]);
  });
});

test('orderCsv(order) is a table with a heading, and names of a list cannot run in it', () => {
  const csv = orderCsv({
    jobs: [],
    leftOut: [],
    groups: [
      {
        maker: '=cmd|calc',
        lines: [
          {
            item: 'washer 3.2x7x0.5',
            size: 'washer 3.2x7x0.5',
            name: '@evil, "washer"',
            total: 4,
            jobs: [{ job: 'x', number: 2, owner: 'Ada', qty: 4, refs: ['7'] }],
            numbers: [{ maker: 'Ondrey', number: '-7', part: null }],
            makersPartOnly: false,
            because: [],
            taken: [],
            asks: [],
            needs: [],
          },
        ],
      },
    ],
  });
  const [heading, row] = parse(csv, { bom: true }) as string[][];
  expect(heading).toContain('Pieces');
  expect(row).toEqual([
    "'=cmd|calc",
    'washer 3.2x7x0.5',
    '\'@evil, "washer"',
    'Ondrey -7',
    '4',
    'job 2 Ada: 4',
    '',
    '',
  ]);
});
