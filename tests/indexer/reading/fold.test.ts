import { expect, test } from 'vitest';
import { fold } from '../../../indexer/reading/fold.ts';
import { tokenise } from '../../../indexer/reading/tokens.ts';

const folded = (text: string) => fold(text).text;

test('fold brings look-alikes together', () => {
  expect(folded('Ø⌀∅φΦ')).toBe('øøøøø');
  expect(folded('５×１１＊４')).toBe('5×11*4');
  expect(folded('ﬁtting')).toBe('fitting');
  expect(folded('3\u00a0mm')).toBe('3 mm');
  expect(folded('Schei\u00adbe')).toBe('scheibe');
  expect(folded('Écrou Straße')).toBe('ecrou strasse');
  expect(folded('1½″')).toBe('1 1/2"');
  expect(folded('5–8 − 9')).toBe('5-8 - 9');
});

test('fold joins half-width kana with their marks: ﾍﾞｱﾘﾝｸﾞ is ベアリング', () => {
  expect(folded('ﾍﾞｱﾘﾝｸﾞ')).toBe('ベアリング');
});

test('every folded character knows its place, in UTF-16 units', () => {
  const { text, from, to } = fold('😀ﬁ½x');
  expect(text).toContain('fi');
  const at = text.indexOf('x');
  expect([from[at], to[at]]).toEqual([4, 5]);
});

test.each([
  ['M2,5x10', ['m', '2,5', '×', '10']],
  ['M3x0.5x8', ['m', '3', '×', '0.5', '×', '8']],
  ['3xM4', ['3', '×', 'm', '4']],
  ['.035 WIRE', ['.035', 'wire']],
  ['No.8', ['no', '.', '8']],
  ['3,4,5', ['3', ',', '4', ',', '5']],
  ['608ZZ', ['608', 'zz']],
  ['シム2', ['シ', 'ム', '2']],
  ['file_name_2', ['file', 'name', '2']],
  ['', []],
])('tokenise(%j) is %j', (text, tokens) => {
  expect(tokenise(text).map(t => t.text)).toEqual(tokens);
});
