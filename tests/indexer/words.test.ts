import { expect, test } from 'vitest';
import { plainNouns } from '../../indexer/categories/plain-words.ts';
import { categories } from '../../indexer/index.ts';
import { type Language, languages } from '../../indexer/reading/dictionary.ts';

const phrasesIn = (list: string | undefined): string[] =>
  (list ?? '')
    .split(',')
    .map(phrase => phrase.trim().toLowerCase())
    .filter(Boolean);

test('no phrase names a measured part and a plain one in one language', () => {
  const plain = new Map<Language, Set<string>>(
    languages.map(lang => [
      lang,
      new Set([
        ...phrasesIn(plainNouns[lang]),
        ...[...categories.values()].flatMap(({ words }) => phrasesIn(words.plain?.[lang])),
      ]),
    ]),
  );
  const both = [...categories.values()].flatMap(({ name, words }) =>
    languages.flatMap(lang =>
      Object.keys(words.nouns[lang] ?? {})
        .flatMap(phrasesIn)
        .filter(phrase => plain.get(lang)!.has(phrase))
        .map(phrase => `${lang} ${phrase}: ${name}`),
    ),
  );
  expect(both).toEqual([]);
});
