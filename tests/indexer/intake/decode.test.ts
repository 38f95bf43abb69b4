import { describe, expect, test } from 'vitest';
import { decode } from '../../../indexer/intake/decode.ts';
import { kindOf } from '../../../indexer/intake/kind.ts';
import { encode } from '../../documents/encode.ts';

const words = 'Pos;Bezeichnung\n1;Gehäuse für Öl, 5 €\n';
const bytes = (...parts: (string | number[])[]) =>
  Buffer.concat(parts.map(part => (typeof part === 'string' ? Buffer.from(part) : Buffer.from(part))));

describe('the encoding is told by the bytes', () => {
  test('UTF-8, with and without its mark, which is left out', () => {
    expect(decode(bytes(words))).toEqual({ text: words, encoding: 'utf-8' });
    expect(decode(bytes([0xef, 0xbb, 0xbf], words))).toEqual({ text: words, encoding: 'utf-8' });
  });
  test('UTF-16 of both orders, with and without a mark', () => {
    const little = Buffer.from(words, 'utf16le');
    const big = Buffer.from(little).swap16();
    expect(decode(little)).toEqual({ text: words, encoding: 'utf-16le' });
    expect(decode(big)).toEqual({ text: words, encoding: 'utf-16be' });
    expect(decode(bytes([0xff, 0xfe], [...little])).text).toBe(words);
    expect(decode(bytes([0xfe, 0xff], [...big])).text).toBe(words);
  });
  // Windows-1252 (Unicode mapping table CP1252): E4 ä, F6 ö, FC ü, D6 Ö, 80 €, E9 é, B0 °.
  test('Windows-1252', () => {
    const cells = bytes('1;Geh', [0xe4], 'use f', [0xfc], 'r ', [0xd6], 'l, 5 ', [0x80], '; n', [0xb0]);
    expect(decode(cells)).toEqual({ text: '1;Gehäuse für Öl, 5 €; n°', encoding: 'windows-1252' });
  });
  // Shift JIS (JIS X 0208 mapping table): 83 6C 83 57 is ネジ, 94 D4 8D 86 is 番号.
  test('Shift JIS', () => {
    const cells = bytes(
      [0x94, 0xd4, 0x8d, 0x86],
      ',name\n1,',
      [0x83, 0x6c, 0x83, 0x57],
      ' M3\n2,',
      [0x83, 0x6c, 0x83, 0x57],
    );
    expect(decode(cells)).toEqual({ text: '番号,name\n1,ネジ M3\n2,ネジ', encoding: 'shift_jis' });
  });
  test('EUC-JP, words and single signs in their cells', () => {
    const text = '部品番号,品名,個数,単位\nAB-1,ネジ M3,2,個\nAB-2,座金,1,枚\n';
    for (const encoding of ['euc-jp', 'shift_jis'] as const)
      expect(decode(encode(text, encoding))).toEqual({ text, encoding });
  });
  test('kana of half width', () => {
    const text = 'AB-1,ﾈｼﾞ M3,2\nAB-2,ｻﾞｶﾞﾈ,1\n';
    expect(decode(encode(text, 'shift_jis'))).toEqual({ text, encoding: 'shift_jis' });
  });
  test('accented words of every language that Windows-1252 writes are not taken for Japanese', () => {
    for (const text of [
      '1;Écrou à créneaux;n° 4;Pièce\n',
      '2;Größe, Öl und Fett, für Stück;5 °C\n',
      '3;Arandela de presión ¿sí?;años\n',
      '4;Ø 12 mm ±0,1;½"\n',
      '5;ÉTÉ;ÄÖÜ\n',
      '6;één vijzel;coëfficiënt\n',
    ])
      expect(decode(encode(text, 'windows-1252'))).toEqual({ text, encoding: 'windows-1252' });
  });
  test('UTF-16 without a mark in Japanese, where hardly a byte is zero', () => {
    const text = '部品番号,品名,個数\nＡＢ１,六角ナット,二個\n';
    for (const encoding of ['utf-16le', 'utf-16be'] as const)
      expect(decode(encode(text, encoding))).toEqual({ text, encoding });
  });
  test('a few broken bytes leave UTF-8 what it is, and are shown', () => {
    const cells = bytes('1;Gehäuse für Öl;', [0xff], '\n2;x\n');
    expect(decode(cells)).toEqual({ text: '1;Gehäuse für Öl;�\n2;x\n', encoding: 'utf-8' });
  });
  test('zero bytes and control characters are refused', () => {
    expect(() => decode(bytes('abc', [0], 'def'))).toThrow(/zero bytes/);
    expect(() => decode(bytes([1, 2, 3, 4], 'ab'))).toThrow(/control characters/);
  });
});

describe('the kind is told by the bytes, not by a name', () => {
  const kinds: [string, Buffer][] = [
    ['a PDF', bytes('%PDF-1.7\n%')],
    ['a PNG image', bytes([0x89], 'PNG\r\n', [0x1a, 10])],
    ['a JPEG image', bytes([0xff, 0xd8, 0xff, 0xe0])],
    ['a zipped document', bytes('PK', [3, 4, 20, 0])],
    ['a web page or XML', bytes('\n <!DOCTYPE html>\n<html>')],
    ['a web page or XML', bytes('<table><tr><td>1</td>')],
    ['a web page or XML', Buffer.from('\ufeff<html><body>', 'utf16le')],
  ];
  for (const [kind, start] of kinds) test(kind, () => expect(kindOf(start)?.name).toBe(kind));
  for (const text of ['Pos;Name\n1;PK 4', 'A < B', '1 <x> 2', ''])
    test(`text: ${JSON.stringify(text)}`, () => expect(kindOf(bytes(text))).toBeNull());
});
