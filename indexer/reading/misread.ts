import type { Dictionary } from './dictionary.ts';
import type { Token } from './tokens.ts';

/** Figures that a scanner puts for letters, with the letters they may stand for. */
const letterOf: Readonly<Record<string, string>> = { 0: 'o', 1: 'i', 5: 's', 8: 'b', 6: 'g' };

/** A word with its figures taken as letters; an l as an i too, which only a known word can tell. */
function spellings(run: string): string[] {
  const letters = run.replace(/[01568]/g, c => letterOf[c]!);
  return [
    letters,
    letters.replaceAll('l', 'i'),
    run.replace(/1/g, 'l').replace(/[0568]/g, c => letterOf[c]!),
  ];
}

/**
 * Mends words that a scanner misread, where the mended word is known and the printed one is not: 8EARING, 5CREW, BEARlNG.
 * Several glued tokens become one. Figures are never mended: a size that may be another is for a person.
 *
 * @returns the tokens, and whether any was mended
 */
export function mendWords(
  tokens: Token[],
  dictionary: Dictionary,
  text: string,
): { tokens: Token[]; mended: boolean } {
  let mended = false;
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const first = tokens[at]!;
    let end = at + 1;
    if (first.kind === 'mark') {
      out.push(first);
      at = end;
      continue;
    }
    while (end < tokens.length && end < at + 6 && tokens[end]!.gap === 0 && tokens[end]!.kind !== 'mark')
      end++;
    const run = tokens
      .slice(at, end)
      .map(t => t.text)
      .join('');
    const start = first.start;
    const stop = tokens[end - 1]!.end;
    const word = mayBeWord(run, text.slice(start, stop), end - at)
      ? spellings(run).find(s => s !== run && dictionary.knows(s))
      : undefined;
    if (word !== undefined && !(end === at + 1 && dictionary.knows(run))) {
      out.push({ ...first, kind: 'word', text: word, end: stop });
      mended = true;
    } else out.push(...tokens.slice(at, end));
    at = end;
  }
  return { tokens: mended ? out : tokens, mended };
}

/** Mostly letters, at least four, with one or two figures among them; or capitals with a small l. */
function mayBeWord(run: string, printed: string, pieces: number): boolean {
  const letters = run.replace(/[^a-z]/g, '').length;
  if (pieces === 1) return /^[A-Zl]{5,}$/.test(printed) && printed.includes('l');
  return letters >= 4 && run.length - letters <= 2 && /^[a-z015688]+$/.test(run);
}
