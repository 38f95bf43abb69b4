import { Dictionary, type Language, languages } from '../reading/dictionary.ts';
import { labels } from '../reading/labels.ts';
import { commonModifiers } from './common-words.ts';
import type { Phrases } from './definition.ts';
import { finishWords } from './finish-words.ts';
import { categories } from './index.ts';
import { looseWords, plainNouns, prepositions } from './plain-words.ts';
import { columnWords, countWords, sheetWords } from './sheet-words.ts';

const list = (phrases: string | undefined): string[] =>
  (phrases ?? '')
    .split(',')
    .map(p => p.trim())
    .filter(Boolean);

/** `ring, retaining` for `retaining ring`: lists of the forces and of Japan put the noun first. */
const inverted = (phrase: string): string | null => {
  const cut = phrase.lastIndexOf(' ');
  return cut < 0 || /\d/.test(phrase) ? null : `${phrase.slice(cut + 1)} , ${phrase.slice(0, cut)}`;
};

/** What may stand behind the name without a comma and mean nothing else: PIN COTTER is one pin, PIN SPRING a spring. */
const runTogether: Readonly<Record<string, ReadonlySet<string>>> = {
  'retaining-ring': new Set(['retaining', 'snap', 'e']),
  pin: new Set([
    'cotter',
    'dowel',
    'taper',
    'tapered',
    'roll',
    'split',
    'clevis',
    'straight',
    'parallel',
    'grooved',
  ]),
  washer: new Set(['flat', 'plain', 'lock', 'thrust', 'wave', 'spring', 'split', 'toothed']),
  seal: new Set(['oil', 'lip', 'dust', 'felt']),
};

function buildDictionary(): Dictionary {
  const words = new Dictionary();
  const each = (
    phrases: Phrases | undefined,
    add: (phrase: string, lang: Language, attrs: Record<string, string | boolean>) => void,
  ) => {
    for (const [lang, groups] of Object.entries(phrases ?? {}) as [
      Language,
      Record<string, Record<string, string | boolean>>,
    ][])
      for (const [group, attrs] of Object.entries(groups))
        for (const phrase of list(group)) add(phrase, lang, attrs);
  };
  for (const { name, words: own } of categories.values()) {
    each(own.nouns, (phrase, lang, attrs) => {
      words.add(phrase, lang, { kind: 'noun', category: name, attrs });
      const turned = lang === 'en' ? inverted(phrase) : null;
      if (turned) words.add(turned, lang, { kind: 'noun', category: name, attrs });
      // … and some leave out the comma: PIN SPRING, RING-SNAP
      if (turned && runTogether[name]?.has(turned.split(' , ')[1]!))
        words.add(turned.replace(' , ', ' '), lang, { kind: 'noun', category: name, attrs });
    });
    each(own.modifiers, (phrase, lang, attrs) =>
      words.add(phrase, lang, { kind: 'modifier', category: name, attrs }),
    );
    for (const lang of languages)
      for (const phrase of list(own.plain?.[lang])) {
        words.add(phrase, lang, { kind: 'noun', category: 'plain', attrs: {} });
        const turned = lang === 'en' ? inverted(phrase) : null;
        if (turned) words.add(turned, lang, { kind: 'noun', category: 'plain', attrs: {} });
      }
  }
  each(commonModifiers, (phrase, lang, attrs) =>
    words.add(phrase, lang, { kind: 'modifier', category: null, attrs }),
  );
  for (const lang of languages) {
    for (const phrase of list(plainNouns[lang]))
      words.add(phrase, lang, { kind: 'noun', category: 'plain', attrs: {} });
    for (const phrase of list(finishWords[lang])) words.add(phrase, lang, { kind: 'finish' });
    for (const phrase of list(prepositions[lang])) words.add(phrase, lang, { kind: 'preposition' });
    for (const phrase of list(looseWords[lang])) words.add(phrase, lang, { kind: 'loose' });
    for (const phrase of list(sheetWords[lang])) words.add(phrase, lang, { kind: 'sheet' });
    for (const phrase of list(countWords[lang])) words.add(phrase, lang, { kind: 'count' });
    for (const [label, byLanguage] of Object.entries(labels))
      for (const phrase of list(byLanguage[lang])) words.add(phrase, lang, { kind: 'label', label });
    for (const [column, byLanguage] of Object.entries(columnWords))
      for (const phrase of list(byLanguage[lang])) words.add(phrase, lang, { kind: 'column', column });
  }
  return words;
}

/** Every word and phrase that any category, or a sheet, uses: one dictionary, filled once at start. */
export const dictionary: Dictionary = buildDictionary();
