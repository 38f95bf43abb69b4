/** A number as a line prints it. */
export interface PrintedNumber {
  text: string;
  /** Its value in whatever unit it is printed in. */
  value: number;
}

/** How a line is written, whatever its numbers are. */
export interface LineShape {
  /** From the first number to the last, each a `#`: `m#x#`, `#x#x#`, `od # id #`. */
  numbering: string;
  numbers: PrintedNumber[];
  /** The standards named: parts of two standards are not alike. */
  standards: string;
  /** The words before the numbers and after them. */
  before: string[];
  after: string[];
}

/** The number of a standard is part of its name: `DIN 471`, `ISO 7045`. */
const standard = /(?<![\p{L}])(?:din|iso|jis|ansi|asme|uni|nf|bs|en|gost|as)[\s-]*[a-z]?\s*\d+(?:-\d+)?/gu;
/** A number as lines print it: a comma or a point, or a fraction. */
export const printedNumber = /(?:\d+(?:[.,]\d+)?|(?<![\d])[.,]\d+)(?:\s?\/\s?\d+)?/g;

/** Takes a line apart; the writing of signs, capitals and blanks aside. */
export function shapeOf(line: string): LineShape {
  const plain = line.normalize('NFKC').toLowerCase().replaceAll('⁄', '/').replace(/[×✕*]/g, 'x');
  const standards = (plain.match(standard) ?? []).map(name => name.replace(/[\s-]/g, '')).join(' ');
  const text = plain
    .replace(standard, ' ')
    .replace(/\s*(?<=[\d\s])x(?=[\s\d.])\s*/g, 'x')
    .replace(/\s+/g, ' ')
    .trim();
  const found = [...text.matchAll(printedNumber)];
  if (found.length === 0) return { numbering: '', numbers: [], standards, before: wordsOf(text), after: [] };
  const first = found[0]!.index - (/[\p{L}ø⌀#]*$/u.exec(text.slice(0, found[0]!.index))?.[0].length ?? 0);
  const end = found.at(-1)!.index + found.at(-1)![0].length;
  return {
    numbering: text.slice(first, end).replace(printedNumber, '#'),
    numbers: found.map(([printed]) => ({ text: printed.replace(/\s/g, ''), value: amountOf(printed) })),
    standards,
    before: wordsOf(text.slice(0, first)),
    after: wordsOf(text.slice(end)),
  };
}

function amountOf(printed: string): number {
  const [over, under] = printed
    .replace(/\s/g, '')
    .replace(',', '.')
    .split('/')
    .map(part => Number(part));
  return under === undefined ? over! : over! / under;
}

const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];

/** True where two lines number alike, and name the part alike: by their first word, or by the one before the numbers. */
export function likeShapes(a: LineShape, b: LineShape): boolean {
  if (a.numbering !== b.numbering || a.standards !== b.standards) return false;
  if (a.before.length === 0 || b.before.length === 0)
    return a.before.length === b.before.length && a.after[0] === b.after[0];
  return a.before[0] === b.before[0] || a.before.at(-1) === b.before.at(-1);
}

/** True where nothing differs but the numbers. */
export const sameWords = (a: LineShape, b: LineShape): boolean =>
  a.numbering === b.numbering &&
  a.standards === b.standards &&
  a.before.join(' ') === b.before.join(' ') &&
  a.after.join(' ') === b.after.join(' ');
