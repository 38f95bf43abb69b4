import type { Token } from './tokens.ts';

/** So many words behind a full stop are a sentence, and no more pieces of a name: Nut. Hex. M4. */
const wordsOfSentence = 5;

/**
 * Whether a full stop ends the part's name and a sentence of prose begins behind it: `M6x20 bolt. You will undo this one …`.
 */
export function endsSentence(tokens: readonly Token[], at: number): boolean {
  const [stop, next] = [tokens[at]!, tokens[at + 1]];
  const before = tokens[at - 1];
  // in. and dia. are short for words
  if (stop.kind !== 'mark' || before?.kind !== 'word' || before.text.length < 4) return false;
  if (stop.text !== '.' || stop.gap > 0 || !next?.upper || next.gap === 0 || next.kind !== 'word')
    return false;
  let words = 0;
  for (let i = at + 1; i < tokens.length && words < wordsOfSentence; i++) {
    const { kind, text } = tokens[i]!;
    if (text === '|' || text === '.') return false;
    if (kind === 'word' && text.length > 1) words++;
  }
  return words === wordsOfSentence;
}
