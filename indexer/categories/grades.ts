import type { CategoryWords, Phrases } from './definition.ts';

/** Property classes and steel grades, as printed in every language (ISO 898-1, ISO 3506-1). */
const grades: Phrases = {
  en: {
    'a2, a2-70, a2 70, a2-50': { grade: 'A2', material: 'stainless' },
    'a4, a4-80, a4-70, a4 80': { grade: 'A4', material: 'stainless' },
    '8.8, grade 8.8, class 8.8': { grade: '8.8' },
    '10.9': { grade: '10.9' },
    '12.9': { grade: '12.9' },
    '4.8': { grade: '4.8' },
    '5.8': { grade: '5.8' },
    'grade 5, gr 5, gr.5': { grade: '5' },
    'grade 8, gr 8, gr.8': { grade: '8' },
  },
};

/** The words of a category with the grades added to its English modifiers. */
export const withGrades = (own: CategoryWords): CategoryWords => ({
  ...own,
  modifiers: { ...own.modifiers, en: { ...own.modifiers?.en, ...grades.en } },
});
