import { expect, test } from 'vitest';
import { readCsv } from '../../../indexer/intake/csv.ts';

const read = (text: string, separator = ',') => {
  const { lines, faults } = readCsv(text, separator, 1000);
  expect(faults).toEqual([]);
  return lines.map(({ cells }) => cells);
};

test('a quotation mark that is a whole cell is that cell', () => {
  expect(read('1,AB-1,Washer,1\n2,",Washer,1\n3,AB-3,Nut,1\n')).toEqual([
    ['1', 'AB-1', 'Washer', '1'],
    ['2', '"', 'Washer', '1'],
    ['3', 'AB-3', 'Nut', '1'],
  ]);
  expect(read('2;";Screw;1\r\n";";Nut;"\r\n', ';')).toEqual([
    ['2', '"', 'Screw', '1'],
    ['"', '"', 'Nut', '"'],
  ]);
  expect(read('1,Nut,"\n2,1/2",x\n3,",",4')).toEqual([
    ['1', 'Nut', '"'],
    ['2', '1/2"', 'x'],
    ['3', '"', '"', '4'],
  ]);
});

// RFC 4180, section 2, rules 5 to 7; a line break in a cell is a blank of its text.
test('quoted cells hold separators, line breaks and doubled quotes, as the standard has it', () => {
  expect(read('1,"a,",b\n2,"Nut,\nhex","6"""\n3,",x",""\n4,"\nPin",2\n5,"""",7\n')).toEqual([
    ['1', 'a,', 'b'],
    ['2', 'Nut, hex', '6"'],
    ['3', ',x', ''],
    ['4', ' Pin', '2'],
    ['5', '"', '7'],
  ]);
});
