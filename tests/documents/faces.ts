import { type PDFDocument, type PDFFont, PDFHexString, PDFName, type PDFRef } from 'pdf-lib';

/** Letters to write with: how they are coded in the file, and how wide they are. */
export interface Face {
  name: string;
  ref: PDFRef;
  encodeText(text: string): PDFHexString;
  widthOfTextAtSize(text: string, size: number): number;
}

/** Letters that the fonts every PDF reader has can not print. */
export const unprintable = /[^\u0000-\u00ff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]/;

const hex = (code: number, digits: number): string => code.toString(16).padStart(digits, '0');

/** What each code of a font stands for (ISO 32000-1, 9.10.3), for codes of one byte. */
function toUnicode(codes: readonly string[]): string {
  const pairs = codes.map((letter, code) => `<${hex(code + 1, 2)}> <${hex(letter.charCodeAt(0), 4)}>`);
  return `/CIDInit /ProcSet findresource begin 12 dict begin begincmap
/CMapName /own def /CMapType 2 def
1 begincodespacerange <00> <ff> endcodespacerange
${pairs.length} beginbfchar
${pairs.join('\n')}
endbfchar
endcmap CMapName currentdict /CMap defineresource pop end end`;
}

/** Letters numbered in the order they are used, as programs that take along a part of a font number them. */
class Numbered {
  readonly letters: string[] = [];

  code(letter: string): number {
    const known = this.letters.indexOf(letter);
    return known >= 0 ? known + 1 : this.letters.push(letter);
  }
}

const every = [...' !"#$%&\'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz'];

/**
 * A font of Type 3, whose letters are little drawings (ISO 32000-1, 9.6.5), numbered anew, as wide as those of `like`.
 * Only a map tells what they stand for.
 */
export function type3Face(pdf: PDFDocument, like: PDFFont, text: string): Face {
  const numbered = new Numbered();
  for (const letter of new Set([...text, ...every])) if (!unprintable.test(letter)) numbered.code(letter);
  const { letters } = numbered;
  if (letters.length > 250) return like;
  const { context } = pdf;
  const width = (letter: string) => Math.round(like.widthOfTextAtSize(letter, 1000));
  const drawn = letters.map((letter, nth) => {
    const box = letter === ' ' ? '' : `60 0 ${Math.max(40, width(letter) - 120)} 700 re f`;
    return [
      `g${nth + 1}`,
      context.register(context.stream(`${width(letter)} 0 0 0 ${width(letter)} 700 d1 ${box}`)),
    ];
  });
  const ref = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type3',
      FontBBox: [0, -200, 1000, 900],
      FontMatrix: [0.001, 0, 0, 0.001, 0, 0],
      CharProcs: Object.fromEntries(drawn),
      Encoding: { Type: 'Encoding', Differences: [1, ...letters.map((_, nth) => PDFName.of(`g${nth + 1}`))] },
      FirstChar: 1,
      LastChar: letters.length,
      Widths: letters.map(width),
      Resources: {},
      ToUnicode: context.register(context.stream(toUnicode(letters))),
    }),
  );
  return {
    name: `Type3 ${like.name}`,
    ref,
    encodeText: words => PDFHexString.of([...words].map(letter => hex(numbered.code(letter), 2)).join('')),
    widthOfTextAtSize: (words, size) => like.widthOfTextAtSize(words, size),
  };
}

/** A Japanese font that the file names and does not hold, coded by Unicode (the CMap UniJIS-UCS2-H of Adobe-Japan1). */
export function japaneseFace(pdf: PDFDocument, name = 'HeiseiKakuGo-W5'): Face {
  const { context } = pdf;
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType0',
      BaseFont: name,
      CIDSystemInfo: {
        Registry: PDFHexString.of(Buffer.from('Adobe').toString('hex')),
        Ordering: PDFHexString.of(Buffer.from('Japan1').toString('hex')),
        Supplement: 2,
      },
      DW: 1000,
      W: [1, 94, 500],
      FontDescriptor: {
        Type: 'FontDescriptor',
        FontName: name,
        Flags: 4,
        FontBBox: [0, -200, 1000, 900],
        ItalicAngle: 0,
        Ascent: 850,
        Descent: -150,
        CapHeight: 700,
        StemV: 80,
      },
    }),
  );
  const ref = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: `${name}-UniJIS-UCS2-H`,
      Encoding: 'UniJIS-UCS2-H',
      DescendantFonts: [descendant],
    }),
  );
  const wide = (letter: string) => (letter < '\u0080' ? 0.5 : 1);
  return {
    name,
    ref,
    encodeText: words => PDFHexString.of([...words].map(letter => hex(letter.charCodeAt(0), 4)).join('')),
    widthOfTextAtSize: (words, size) => [...words].reduce((sum, letter) => sum + wide(letter) * size, 0),
  };
}
