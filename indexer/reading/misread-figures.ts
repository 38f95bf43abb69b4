import type { Place } from './claim.ts';

/** Letters that a scanner puts for figures, each with the figure that it may stand for. */
const figureOf: Readonly<Record<string, string>> = { O: '0', o: '0', I: '1', l: '1', Z: '2', S: '5', B: '8' };

const mayMislead = /[OoIlSBZ]/;
/**
 * A quick look that spares most lines the rest: such a letter beside a figure, behind an M, or beside a times sign. S, B and Z
 * end many a bearing's number: they count only beside a times sign or behind M and a figure's point.
 */
const mayStandForFigure =
  /\d[OoIl]|[OoIl]\d|M(?:[Il][Oo]|\d[.,][OoIlSB])|[xX×*] *(?![\d.,]+ZZ(?![\w.,]))[\d.,]*[OoIlSBZ][\dOoIlSBZ.,]*(?:mm)?(?![A-WYZa-wyz])|[OoIlSBZ][\d.,]*(?:mm)? *[xX×*]/;
const timesGlued = /(?<=[\dOoIlSBZ])[xX×*](?=[\dMOoIlSBZ])/g;
const timesApart = / [xX*] /g;
const pieces = /[A-Za-z\d]+(?:[.,][A-Za-z\d]+)*/g;

/** What must be a figure by itself, as what leads, the figures, and what follows: M1O, Ml0, M2,S; 6O8ZZ, MR1O5ZZ, 6O8. */
const alone: readonly RegExp[] = [
  /^(M)(\d[OoIl]|[Il][\dOo]|\d[.,][\dOoIlSB])()$/,
  /^([FSW]{0,3}(?:MR|R)?)(?=[OoIl]*\d)([\dOoIl]{3,5})(ZZ|2?RS[12HR]?|DDU?|LL[UB]|VV|UU|Z)$/,
  /^([FSW]{0,3}(?:MR)?)(\d[OoIl]\d{1,2})()$/,
];

/**
 * What is one beside a times sign: 1l, IO, 5.l, S.3, l2mm. A capital in front of figures names a dimension: L20, B10; a ZZ
 * behind them is a bearing's shields.
 */
const besideTimes = /^()(?![LSBZ]\d|[\d.,]*ZZ$)([\dOoIlSBZ]{1,3}(?:[.,][\dOoIlSBZ]{1,3})?)((?:mm)?)$/;

/** Letters alone that may be figures are few, with a unit at most: l.O, IOmm. */
const longestOfLetters = 9;

/**
 * Takes letters for the figures that a scanner made them of, where a figure should stand: 5.l x 8, M3xl0, M4xIO, 6O8ZZ. Nothing
 * moves: every character keeps its offset.
 *
 * @returns the text as it may have been printed, and the pieces that were changed; for a person, never to be matched silently
 */
export function mendFigures(text: string): { text: string; places: Place[] } {
  const places: Place[] = [];
  if (!mayStandForFigure.test(text) || !/\d/.test(text)) return { text, places };
  const signed = text.replace(timesGlued, '×').replace(timesApart, ' × ');
  let mended = '';
  let done = 0;
  for (const { 0: piece, index } of signed.matchAll(pieces)) {
    if (!mayMislead.test(piece) || (piece.length > longestOfLetters && !/\d/.test(piece))) continue;
    const found =
      figuresIn(piece) ?? (standsForFigure(piece, signed, index) ? besideTimes.exec(piece) : null);
    if (!found || !mayMislead.test(found[2]!)) continue;
    const [, lead, figures, rest] = found as unknown as [string, string, string, string];
    mended += text.slice(done, index) + lead + figures.replace(/[OoIlZSB]/g, c => figureOf[c]!) + rest;
    done = index + piece.length;
    places.push({ start: index, end: done });
  }
  return { text: mended + text.slice(done), places };
}

function figuresIn(piece: string): RegExpExecArray | null {
  for (const kind of alone) {
    const found = kind.exec(piece);
    if (found) return found;
  }
  return null;
}

/** Whether a times sign ties the piece to a size on its other side. */
function standsForFigure(piece: string, text: string, start: number): boolean {
  let before = start - 1;
  while (text[before] === ' ') before--;
  let after = start + piece.length;
  while (text[after] === ' ') after++;
  const behindTimes = text[before] === '×' && /[\dOIl] ?$/.test(text.slice(Math.max(0, before - 2), before));
  const frontOfTimes = text[after] === '×' && /^ ?[\dOIl]/.test(text.slice(after + 1, after + 3));
  if (piece.length > 1) return behindTimes || frontOfTimes;
  // A lone letter is a figure only where it is glued to the sign and names nothing behind it.
  return behindTimes && before === start - 1 && !/[\d=:]/.test(text[after] ?? ' ');
}
