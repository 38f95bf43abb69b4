import type { Line } from '../../reading/line.ts';
import type { Attrs } from '../../reading/reading.ts';
import type { Token } from '../../reading/tokens.ts';
import { type BallBearing, widthOf } from '../../standards/ball-bearing.ts';
import { inchBearingByDesignation, inchBearings } from '../../standards/inch-bearings.ts';
import { deepGrooveBearings, deepGrooveByDesignation } from '../../standards/iso-15.ts';
import type { Designation } from '../definition.ts';
import { otherSeriesAt, otherSeriesStems } from './other-series.ts';
import { otherTypeAt, otherTypeStems } from './other-types.ts';
import { readSuffix } from './suffix.ts';

/** Letters in front of a number: stainless, flange, both, with the miniature and inch series they can lead. */
const prefixes: Readonly<Record<string, Attrs>> = {
  '': {},
  s: { material: 'stainless' },
  ss: { material: 'stainless' },
  w: { material: 'stainless' },
  f: { flanged: true },
  fl: { flanged: true },
  sf: { material: 'stainless', flanged: true },
  fs: { material: 'stainless', flanged: true },
  ssf: { material: 'stainless', flanged: true },
};
const series = ['', 'mr', 'r'];
/** MF84 is MR84 with a flange: the F takes the place of the R. */
const flangedMiniature: Readonly<Record<string, Attrs>> = {
  mf: { flanged: true },
  smf: { flanged: true, material: 'stainless' },
};

const leads = new Map<string, { series: string; says: Attrs }>();
for (const [prefix, says] of Object.entries(prefixes))
  for (const s of series) leads.set(prefix + s, { series: s, says });
for (const [prefix, says] of Object.entries(flangedMiniature)) leads.set(prefix, { series: 'mr', says });

const bare = [...deepGrooveBearings, ...inchBearings].map(b => b.designation.toLowerCase());

/** The number of a bearing is the first figures of its designation; the letters in front of them lead to the same place. */
export const stems: readonly string[] = [
  ...new Set([
    ...bare.filter(d => /^\d/.test(d)).map(d => /^\d+/.exec(d)![0]),
    ...deepGrooveBearings.flatMap(b => (/^6\d{4}$/.test(b.designation) ? [b.designation] : [])),
    ...isoStems(),
    ...[...leads.keys()].filter(Boolean),
    ...otherTypeStems,
    ...otherSeriesStems,
  ]),
];

/** ISO five-figure numbers that the makers' lists leave out: 61800 to 63910, and the 617, 618, 619, 628 … of the slash form. */
function isoStems(): string[] {
  const found: string[] = [];
  for (const width of ['61', '62', '63'])
    for (const diameter of '789') {
      found.push(width + diameter);
      for (let code = 0; code <= 10; code++)
        found.push(`${width}${diameter}${String(code).padStart(2, '0')}`);
    }
  return found;
}

/** Reads a bearing's designation that begins at a token, with its suffixes. */
export function designationAt(line: Line, at: number): Designation | null {
  return ballBearingAt(line, at) ?? otherTypeAt(line, at) ?? otherSeriesAt(line, at);
}

/** @param led whether letters lead to it by a dash: the R188 of SS-R188 */
function ballBearingAt(line: Line, at: number, led = false): Designation | null {
  const { tokens } = line;
  const first = tokens[at]!;
  if (!led && first.gap === 0 && at > 0 && !/^[(|,;:/×#"']$/.test(tokens[at - 1]!.text)) return null;
  const lead = first.kind === 'word' ? leads.get(first.text) : { series: '', says: {} };
  const number = first.kind === 'word' ? behindDash(tokens, at + 1) : at;
  if (first.kind === 'word' && /^[a-z]+$/.test(tokens[number]?.text ?? '')) return leadsOn(line, at, number);
  if (!lead || tokens[number]?.kind !== 'number' || !/^\d+$/.test(tokens[number]!.text)) return null;
  const named = numberFrom(tokens, number, lead.series);
  if (!named) return null;
  const suffix = suffixFrom(tokens, named.last + 1);
  if (suffix === 'unknown') return null;
  const apart = first.kind === 'word' && tokens[number]!.gap > 0;
  if (
    apart &&
    (tokens[number]!.gap > 1 ||
      !(lead.series === 'mr' || suffix.attrs['seal'] !== undefined || first.text === 'w'))
  )
    return null;
  const attrs: Attrs = { ...lead.says, ...suffix.attrs, ...named.glued };
  const plainFigures = lead.series === '' && Object.keys(lead.says).length === 0;
  const sealed = attrs['seal'] !== undefined || attrs['clearance'] !== undefined;
  return {
    first: at,
    last: suffix.last ?? named.last,
    key: `${named.bearing.bore}x${named.bearing.od}`,
    sure: sealed || !plainFigures,
    apply: claim => {
      for (const [key, value] of Object.entries(attrs)) claim.attr(key, value);
      applyBearing(named.bearing, claim);
      if (sealed) claim.features.add('suffix');
    },
  };
}

function applyBearing(bearing: BallBearing, claim: Parameters<Designation['apply']>[0]): void {
  claim.designated('bore', bearing.bore);
  claim.designated('od', bearing.od);
  const seal = claim.attrs['seal'];
  const width = widthOf(bearing, seal === undefined ? undefined : seal === 'open' ? 'open' : 'shielded');
  if (width !== null) claim.designated('width', width);
  else claim.notes.push(`${bearing.designation} is made in two widths; the form is not stated`);
}

/** Past a dash glued on both sides: SS-6802. */
const behindDash = (tokens: readonly Token[], at: number) =>
  tokens[at]?.text === '-' && tokens[at]!.gap === 0 && tokens[at + 1]?.gap === 0 ? at + 1 : at;

/** Two leading pieces with a dash between: SS-R188-ZZ, S-MR115. */
function leadsOn(line: Line, at: number, next: number): Designation | null {
  if (next !== at + 2) return null;
  const says = leads.get(line.tokens[at]!.text)?.says;
  const rest = leads.has(line.tokens[next]!.text) ? ballBearingAt(line, next, true) : null;
  if (!rest || !says) return null;
  return {
    ...rest,
    first: at,
    apply: claim => {
      for (const [key, value] of Object.entries(says)) claim.attr(key, value);
      rest.apply(claim);
    },
  };
}

/** The longest listed number that begins at a figure token: 608, R1-4, 628/5, 681X. */
function numberFrom(
  tokens: readonly Token[],
  at: number,
  letters: string,
): { bearing: BallBearing; last: number; glued?: Attrs } | null {
  const lookUp = (text: string) => {
    const name = (letters + text).toUpperCase();
    return deepGrooveByDesignation(name) ?? inchBearingByDesignation(name);
  };
  const figures = tokens[at]!.text;
  const [sign, next] = [tokens[at + 1], tokens[at + 2]];
  if (
    sign &&
    next?.kind === 'number' &&
    sign.gap === 0 &&
    next.gap === 0 &&
    (sign.text === '/' || sign.text === '-')
  ) {
    const bearing = lookUp(`${figures}${sign.text}${next.text.replace(',', '.')}`);
    if (bearing) return { bearing, last: at + 2 };
  }
  // 681X, MR82X: an x behind figures is cut as a times sign, which stands before a number.
  const letter = sign?.gap !== 0 ? '' : sign.text === '×' && next?.kind !== 'number' ? 'x' : sign.text;
  if (/^[xa]/.test(letter)) {
    const bearing = lookUp(figures + letter[0]);
    const glued = bearing && letter.length > 1 ? readSuffix(letter.slice(1)) : {};
    if (bearing && glued) return { bearing, last: at + 1, glued };
  }
  const bearing = lookUp(figures);
  return bearing ? { bearing, last: at } : null;
}

/** The suffix behind a number: glued to it or by a dash or one blank. `unknown` where glued letters mean nothing here. */
function suffixFrom(tokens: readonly Token[], at: number): { attrs: Attrs; last: number | null } | 'unknown' {
  let text = '';
  let best: { attrs: Attrs; last: number | null } = { attrs: {}, last: null };
  let glued = true;
  for (let i = at; i < tokens.length && i < at + 8; i++) {
    const token = tokens[i]!;
    if (token.gap > 1 || (token.kind === 'mark' && !/^[-/]$/.test(token.text))) break;
    if (token.gap === 1) glued = false;
    text += token.text;
    if (text.length > 16) break;
    const attrs = readSuffix(text);
    // A dash that leads to nothing is a dash; "N" or "V" alone after a blank is a word of its own.
    if (attrs && token.kind !== 'mark' && (glued || text.length > 1)) best = { attrs, last: i };
    if (
      !attrs &&
      glued &&
      token.gap === 0 &&
      token.kind === 'word' &&
      best.last === null &&
      !couldBegin(text) &&
      !/^[-/]/.test(text)
    )
      return 'unknown';
  }
  const next = tokens[at];
  const chain =
    next?.gap === 0 && next.text === '-' && tokens[at + 1]?.gap === 0 && tokens[at + 1]!.kind === 'number';
  if (chain && best.last === null && !/^[12]$/.test(tokens[at + 1]!.text)) return 'unknown';
  if (best.last === null && next?.gap === 0 && (next.text === '×' || next.text === '.')) return 'unknown';
  return best;
}

const couldBegin = (text: string) => /^[-/]?[12]?(r|z|l|d|v|c|mc|t|n|p)/.test(text);
