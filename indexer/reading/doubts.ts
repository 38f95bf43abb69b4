import type { Line } from './line.ts';

/** What in a line's characters should be put before a person, whatever it is read as. */
export function doubtsOf(line: Line): string[] {
  return [misread(line), range(line), alternatives(line), several(line), question(line)].filter(
    d => d !== null,
  );
}

/** Letters that a scanner takes for figures, inside a size: 5.l x 8, M3xl0, 6O8. */
function misread({ tokens }: Line): string | null {
  for (let at = 0; at < tokens.length; at++) {
    const { kind, text, gap } = tokens[at]!;
    if (kind !== 'word' || !/^[olisbz]{1,2}$|^x[oli]$/.test(text) || gap > 0) continue;
    const [before, after] = [tokens[at - 1], tokens[at + 1]];
    const inside = after?.gap === 0 && (after.kind === 'number' || after.text === '×' || after.text === '.');
    const point =
      before && /^[.,]$/.test(before.text) && tokens[at - 2]?.kind === 'number' && before.gap === 0;
    if (
      point ||
      (before?.kind === 'number' && inside && /^[oli]/.test(text)) ||
      (before?.text === '×' &&
        inside &&
        /^[oli]/.test(text) &&
        after?.kind === 'number' &&
        !/^l$/.test(text)) ||
      (before?.text === '×' && text === 'l' && after?.kind === 'number' && before.gap === 0)
    )
      return `“${text}” among figures may be a misread number`;
  }
  return null;
}

/** Sizes given as a range: 10-12 mm, 5~8, 3 to 5 mm. */
function range({ tokens, measures, groups }: Line): string | null {
  const firsts = new Map(measures.map(m => [m.first, m]));
  const ends = new Set(groups.filter(g => g.joined).map(g => g.last));
  for (const m of measures) {
    const sign = tokens[m.last + 1]?.text;
    const next = firsts.get(m.last + 2);
    if (!next || next.um <= m.um) continue;
    if (
      sign === '~' ||
      (/^(to|bis|…)$/.test(sign ?? '') && (next.unitStated || m.unitStated || sign === 'bis'))
    )
      return 'a range, not one size';
    const sized = next.unitStated || (ends.has(m.last) && m.whole && next.whole);
    if (sign === '-' && sized && tokens[m.last + 1]!.gap === tokens[next.first]!.gap && !m.fraction)
      return 'a range, not one size';
  }
  for (let at = 1; at + 1 < tokens.length; at++)
    if (tokens[at]!.text === '~' && tokens[at - 1]!.kind === 'number' && tokens[at + 1]!.kind === 'number')
      return 'a range, not one size';
  return null;
}

/** Two sizes to choose from: M3 or M4, 10/12 mm long. */
function alternatives({ tokens, measures, threads }: Line): string | null {
  const sized = new Set([...measures, ...threads].map(m => m.first));
  const ends = new Set([...measures, ...threads].map(m => m.last));
  for (let at = 1; at + 1 < tokens.length; at++)
    if (/^(or|oder|ou|of|o)$/.test(tokens[at]!.text) && ends.has(at - 1) && sized.has(at + 1))
      return 'two sizes to choose from';
  return null;
}

/** An assortment: several kinds under one name. */
const several = ({ hits }: Line): string | null =>
  hits.some(h => h.entries.some(e => e.meaning.kind === 'loose')) ? 'several kinds under one name' : null;

const question = ({ tokens }: Line): string | null =>
  tokens.some(t => t.text === '?') ? 'the line itself asks' : null;
