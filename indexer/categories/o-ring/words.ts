import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'o-ring, o ring, oring, o-rings, o-ring seal, o ring seal, packing o-ring, preformed packing, "o" ring, o-ring packing':
        {},
      'x-ring, quad ring, x ring, x-section ring, quad-ring': {},
    },
    de: { 'o-ring, rundring, o-ringe, runddichtring, runddichtung, null-ring, rundschnurring': {} },
    fr: { 'joint torique, o-ring, joints toriques, torique, joint o-ring': {} },
    it: {
      'o-ring, anello or, guarnizione or, anello o-ring, guarnizione o-ring, anello di tenuta or, guarnizione torica, anello torico':
        {},
    },
    es: { 'junta torica, o-ring, anillo torico, juntas toricas, torica, anillo o, anillo o-ring': {} },
    nl: { 'o-ring, o ring, oring, o-ringen': {} },
    ja: { 'Oリング, オーリング, O-リング': {} },
  },
  plain: {
    en: 'o-ring kit, o ring kit, o-ring pick, o-ring groove',
    de: 'o-ring-sortiment, o-ring sortiment',
  },
};
