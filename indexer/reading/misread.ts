import type { Dictionary } from './dictionary.ts';
import { misspelt } from './misspelt.ts';
import { respelled, type Token } from './tokens.ts';
import { addWord, unknownWord } from './vocabulary.ts';

/** Figures that a scanner puts for letters, with the letters they may stand for. */
const letterOf: Readonly<Record<string, string>> = { 0: 'o', 1: 'i', 5: 's', 8: 'b', 6: 'g' };

/** A word with its figures taken as letters; an l as an i too and the other way round, which only a known word can tell. */
function spellings(run: string): string[] {
  const letters = run.replace(/[01568]/g, c => letterOf[c]!);
  return [
    letters,
    letters.replaceAll('l', 'i'),
    letters.replaceAll('i', 'l'),
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
  const out: Token[] = [];
  let kept = 0;
  for (let at = 0; at < tokens.length; ) {
    const end = runEnd(tokens, at);
    const word = isRingO(tokens, at)
      ? 'o'
      : mayBeWord(tokens, at, end, text)
        ? mendedWord(tokens, at, end, dictionary)
        : null;
    if (word !== null) {
      while (kept < at) out.push(tokens[kept++]!);
      out.push({ ...respelled(tokens[at]!, 'word', word), end: tokens[end - 1]!.end });
      kept = end;
    }
    at = end;
  }
  if (kept === 0) return mendSpelling(tokens, dictionary, false);
  while (kept < tokens.length) out.push(tokens[kept++]!);
  return mendSpelling(out, dictionary, true);
}

/** Puts the known words in the place of those that are one slip from them. */
function mendSpelling(
  tokens: Token[],
  dictionary: Dictionary,
  mended: boolean,
): { tokens: Token[]; mended: boolean } {
  let scanned = mended;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.kind !== 'word' || token.word.number > 0) continue;
    const meant = misspelt(token.text, dictionary);
    if (!meant) continue;
    tokens[at] = respelled(token, 'word', meant.word);
    scanned ||= meant.scanned;
  }
  return { tokens, mended: scanned };
}

const nought = addWord('0');

/** The nought of a 0-ring. */
const isRingO = (tokens: readonly Token[], at: number) =>
  tokens[at]!.word === nought &&
  tokens[at + 1]?.text === '-' &&
  /^(ring|ringe|rings|ringen)$/.test(tokens[at + 2]?.text ?? '');

/** The most pieces that a scanner makes of one word. */
const mostPieces = 6;

/** Where words and figures end that are glued to one another. */
function runEnd(tokens: readonly Token[], at: number): number {
  let end = at + 1;
  if (tokens[at]!.kind === 'mark') return end;
  while (
    end < tokens.length &&
    end < at + mostPieces &&
    tokens[end]!.gap === 0 &&
    tokens[end]!.kind !== 'mark'
  )
    end++;
  return end;
}

/** The known word that a run of pieces stands for; null where there is none, or the word as printed is known. */
function mendedWord(
  tokens: readonly Token[],
  first: number,
  end: number,
  dictionary: Dictionary,
): string | null {
  let run = '';
  for (let at = first; at < end; at++) run += tokens[at]!.text;
  const word = spellings(run).find(s => s !== run && dictionary.knows(s));
  return word === undefined || (end === first + 1 && dictionary.knows(run)) ? null : word;
}

const capitalsAndL = /^[A-Zl]{5,}$/;
/** A small word with an I in it that may be an l: BaII. */
const capitalInside = /^[A-Z]?[a-z]+I[a-zI]*$/;
const lettersOnly = /^[a-z]+$/;
const figuresOnly = /^[01568]+$/;

/** Mostly letters, at least four, with one or two figures among them; or capitals with a small l. */
function mayBeWord(tokens: readonly Token[], first: number, end: number, text: string): boolean {
  const token = tokens[first]!;
  if (token.kind === 'mark') return false;
  if (end === first + 1) {
    if (token.kind !== 'word' || token.word !== unknownWord || token.text.length < 4) return false;
    const printed = text.slice(token.start, token.end);
    return (printed.includes('l') && capitalsAndL.test(printed)) || capitalInside.test(printed);
  }
  let letters = 0;
  let figures = 0;
  for (let at = first; at < end; at++) {
    const { kind, text: piece } = tokens[at]!;
    if (kind === 'word') letters += piece.length;
    else figures += piece.length;
  }
  if (letters < 4 || figures > 2) return false;
  for (let at = first; at < end; at++) {
    const { kind, text: piece } = tokens[at]!;
    if (!(kind === 'word' ? lettersOnly : figuresOnly).test(piece)) return false;
  }
  return true;
}
