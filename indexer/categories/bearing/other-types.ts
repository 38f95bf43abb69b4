import type { Line } from '../../reading/line.ts';
import type { Attrs } from '../../reading/reading.ts';
import type { Token } from '../../reading/tokens.ts';
import { linearBearing } from '../../standards/linear-bearings.ts';
import { drawnCupOutside, needleBearing } from '../../standards/needle-bearings.ts';
import { sphericalBearing } from '../../standards/spherical-bearings.ts';
import { thrustBearing, thrustBearings } from '../../standards/thrust-bearings.ts';
import { mm, type Um } from '../../units/length.ts';
import type { Designation } from '../definition.ts';

/** What begins the number of a linear, needle, thrust or spherical bearing: letters, or the figures of a thrust bearing. */
export const otherTypeStems: readonly string[] = [
  'lm',
  'lme',
  'lmf',
  'lmk',
  'lmh',
  'hk',
  'bk',
  'nk',
  'axk',
  'ge',
  'k',
  'f',
  ...thrustBearings.map(each => each.designation).filter(name => /^\d/.test(name)),
];

interface Found {
  readonly attrs: Attrs;
  readonly size: readonly [bore: Um, od: Um, width: Um];
  readonly last: number;
  /** The number names the bore, and only a standard the rest: GE8. */
  readonly boreOnly?: true;
}

/** Reads LM8UU, HK0810, NK8/12, AXK0821, F8-16M, GE8E or 51104 that begins at a token, from the tables of the standards. */
export function otherTypeAt(line: Line, at: number): Designation | null {
  const found = foundAt(line.tokens, at);
  if (!found) return null;
  const { attrs, size, last, boreOnly } = found;
  return {
    first: at,
    last,
    key: size.join('x'),
    sure: true,
    apply: claim => {
      for (const [key, value] of Object.entries(attrs)) claim.attr(key, value);
      claim.designated('bore', size[0]);
      const give = (key: string, um: Um) =>
        boreOnly ? claim.implied.set(key, um) : claim.designated(key, um);
      give('od', size[1]);
      give('width', size[2]);
    },
  };
}

function foundAt(tokens: readonly Token[], at: number): Found | null {
  const first = tokens[at]!;
  if (first.kind === 'number') return thrust(first.text, at);
  if (first.text === 'k' && tokens[at + 1]?.text === '-' && tokens[at + 1]!.gap === 0)
    return needleCage(tokens, at + 1);
  const number = tokens[at + 1];
  const apart = /^(hk|bk|nk|axk|ge)$/.test(first.text) || (first.text === 'k' && first.upper);
  if (number?.kind !== 'number' || number.gap > Number(apart)) return null;
  if (first.text.startsWith('lm')) return linear(tokens, at);
  if (first.text === 'hk' || first.text === 'bk') return drawnCup(number.text, at + 1);
  if (first.text === 'nk') return machinedNeedle(tokens, at);
  if (first.text === 'axk') return thrust(`AXK${number.text}`, at + 1);
  if (first.text === 'ge') return spherical(tokens, at);
  if (first.text === 'k') return needleCage(tokens, at);
  const [dash, od, letter] = [tokens[at + 2], tokens[at + 3], tokens[at + 4]];
  const glued = [dash, od, letter].every(token => token?.gap === 0);
  if (first.text !== 'f' || !glued || dash!.text !== '-' || letter!.text !== 'm') return null;
  return thrust(`F${number.text}-${od!.text}M`, at + 4);
}

/** The word glued to a number, or null. */
function gluedWord(tokens: readonly Token[], at: number): string | null {
  const token = tokens[at];
  return token?.gap === 0 && token.kind === 'word' ? token.text : null;
}

function thrust(designation: string, last: number): Found | null {
  const bearing = thrustBearing(designation);
  return (
    (bearing && { attrs: { type: 'thrust' }, size: [bearing.bore, bearing.od, bearing.height], last }) ?? null
  );
}

/** LMF, LMK and LMH have a flange, and the bore, outside diameter and length of LM. */
function linear(tokens: readonly Token[], at: number): Found | null {
  const form = gluedWord(tokens, at + 2);
  const bearing = linearBearing(`${tokens[at]!.text}${tokens[at + 1]!.text}${form ?? ''}`.toUpperCase());
  if (!bearing) return null;
  return {
    attrs: { type: 'linear', ...(/^lm[fkh]$/.test(tokens[at]!.text) ? { flanged: true } : {}) },
    size: [bearing.bore, bearing.od, bearing.length],
    last: form === null ? at + 1 : at + 2,
  };
}

/** Shaft and width stand in the number itself; a width the table lacks has the outside that all cups of its shaft have. */
function drawnCup(figures: string, last: number): Found | null {
  if (!/^\d{4}$/.test(figures)) return null;
  const [bore, width] = [mm(Number(figures.slice(0, 2))), mm(Number(figures.slice(2)))];
  const od = needleBearing(`HK${figures}`)?.od ?? drawnCupOutside(bore);
  return od === undefined ? null : { attrs: { type: 'needle' }, size: [bore, od, width], last };
}

function machinedNeedle(tokens: readonly Token[], at: number): Found | null {
  const [sign, width] = [tokens[at + 2], tokens[at + 3]];
  if (sign?.text !== '/' || sign.gap > 0 || width?.gap !== 0) return null;
  const bearing = needleBearing(`NK${tokens[at + 1]!.text}/${width.text}`);
  return (
    (bearing && {
      attrs: { type: 'needle' },
      size: [bearing.bore, bearing.od, bearing.width],
      last: at + 3,
    }) ??
    null
  );
}

/** K6x9x8: the sizes of a needle cage stand in its number. */
function needleCage(tokens: readonly Token[], at: number): Found | null {
  const sizes = [1, 3, 5].map(behind => tokens[at + behind]);
  const signs = [2, 4].map(behind => tokens[at + behind]?.text);
  if (!sizes.every(size => size?.kind === 'number') || !signs.every(sign => sign === '×')) return null;
  const [bore, od, width] = sizes.map(size => mm(Number(size!.text))) as [Um, Um, Um];
  return bore < od ? { attrs: { type: 'needle' }, size: [bore, od, width], last: at + 5 } : null;
}

/** GE8E, GE 8 ES, GE8C: the letters behind say how it runs and is lubricated. */
function spherical(tokens: readonly Token[], at: number): Found | null {
  const letters = tokens[at + 2];
  const stated = letters?.kind === 'word' && letters.gap <= 1 && /^(e|es|c|uk|et)$/.test(letters.text);
  const bearing = sphericalBearing(mm(Number(tokens[at + 1]!.text)));
  if (!bearing || (!stated && letters?.gap === 0)) return null;
  return {
    attrs: { type: 'spherical' },
    size: [bearing.bore, bearing.od, bearing.width],
    last: stated ? at + 2 : at + 1,
    ...(stated ? {} : { boreOnly: true }),
  };
}
