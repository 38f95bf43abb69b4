import type { Line } from './line.ts';

/** What in a line's characters should be put before a person, whatever it is read as. */
export function doubtsOf(line: Line): string[] {
  return [
    misread(line),
    range(line),
    alternatives(line),
    several(line),
    together(line),
    question(line),
  ].filter(d => d !== null);
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

const range = ({ ranged }: Line): string | null => (ranged ? 'a range, not one size' : null);

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

/** Two kinds of part in one line: screw and nut, bolt + washer. */
function together({ tokens, hits }: Line): string | null {
  const nouns = hits.filter(h => h.entries.some(e => e.meaning.kind === 'noun'));
  for (let i = 1; i < nouns.length; i++) {
    const [a, b] = [nouns[i - 1]!, nouns[i]!];
    const between = tokens.slice(a.last + 1, b.first).map(t => t.text);
    const joined =
      between.some(t => /^(\+|&|and|und|et|y|plus|e)$/.test(t)) &&
      between.length <= 8 &&
      !between.some(t => /^[|(]$/.test(t));
    const kinds = [a, b].map(h =>
      h.entries.flatMap(e => (e.meaning.kind === 'noun' ? [e.meaning.category] : [])),
    );
    if (joined && !kinds[0]!.some(k => kinds[1]!.includes(k)) && !kinds.flat().includes('plain'))
      return 'two kinds of part in one line';
  }
  return null;
}

const question = ({ tokens }: Line): string | null =>
  tokens.some(t => t.text === '?') ? 'the line itself asks' : null;
