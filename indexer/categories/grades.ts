import type { Language } from '../reading/dictionary.ts';
import type { CategoryWords, Phrases } from './definition.ts';

/** Property classes of screws and nuts, as printed in every language (ISO 898-1, ISO 898-2; grades of SAE J429). */
const grades: Phrases = {
  en: {
    '8.8, grade 8.8, class 8.8': { grade: '8.8' },
    '10.9, grade 10.9, class 10.9': { grade: '10.9' },
    '12.9, grade 12.9, class 12.9': { grade: '12.9' },
    '4.6': { grade: '4.6' },
    '4.8': { grade: '4.8' },
    '5.6': { grade: '5.6' },
    '5.8': { grade: '5.8' },
    '6.8': { grade: '6.8' },
    'grade 5, gr 5, gr.5, class 5, cl 5, cl.5': { grade: '5' },
    'grade 6, gr 6, class 6, cl 6': { grade: '6' },
    'grade 8, gr 8, gr.8, class 8, cl 8, cl.8': { grade: '8' },
    'grade 10, gr 10, class 10, cl 10': { grade: '10' },
    'grade 12, gr 12, class 12, cl 12': { grade: '12' },
  },
  de: {
    'klasse 5, kl 5, festigkeit 5, festigkeitsklasse 5': { grade: '5' },
    'klasse 6, kl 6': { grade: '6' },
    'klasse 8, kl 8, festigkeit 8, festigkeitsklasse 8, güte 8': { grade: '8' },
    'klasse 10, kl 10, festigkeitsklasse 10, güte 10': { grade: '10' },
    'klasse 12, kl 12, festigkeitsklasse 12': { grade: '12' },
  },
  fr: { 'classe 8': { grade: '8' }, 'classe 10': { grade: '10' } },
  it: { 'classe 6': { grade: '6' }, 'classe 12': { grade: '12' } },
  es: {
    'clase 8, grado 8': { grade: '8' },
    'clase 10, grado 10': { grade: '10' },
    'grado 5': { grade: '5' },
  },
  nl: { 'klasse 8, kwaliteit 8': { grade: '8' } },
};

/** The words of a category with the grades added to its modifiers. */
export function withGrades(own: CategoryWords): CategoryWords {
  const modifiers: Phrases = { ...own.modifiers };
  for (const lang of Object.keys(grades) as Language[])
    modifiers[lang] = { ...modifiers[lang], ...grades[lang] };
  return { ...own, modifiers };
}
