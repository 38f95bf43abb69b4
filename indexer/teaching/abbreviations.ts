import type { Abbreviations } from '../reading/reading.ts';

/**
 * `RH = round head`, `CSK: countersunk`, `Kr. = Kreuzschlitz`: capitals, or a word cut off with a point; a sign or word for "is";
 * and what it stands for.
 */
const definition =
  /(?<![\p{L}\p{N}.])(?<short>\p{Lu}[\p{Lu}\p{N}./-]{0,7}|\p{L}{1,6}\.)\s*(?:[=≙:–—]|\s-\s|\b(?:means|stands\s+for|is|steht\s+für|bedeutet|heißt|signifie|veut\s+dire|significa|sta\s+per|betekent|staat\s+voor)\b|は)\s*(?<long>\p{L}[\p{L}\p{M}'’ -]{2,60})/gu;

/** What the front matter of a list says of its own abbreviations; lines of a list itself define none. */
export function abbreviationsIn(texts: Iterable<string>): Abbreviations | null {
  const found = new Map<string, string>();
  for (const text of texts)
    for (const { groups } of text.matchAll(definition)) {
      const { short, long } = groups as { short: string; long: string };
      const isShorter = short.replace(/[^\p{L}\p{N}]/gu, '').length * 2 <= long.trim().length;
      if (isShorter && !found.has(short)) found.set(short, long.trim());
    }
  return found.size > 0 ? found : null;
}
