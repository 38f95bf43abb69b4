import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'retaining ring, snap ring, circlip, retainer ring, retaining clip, c-clip, c clip, snapring, c ring, c-ring, stop ring, seeger ring, spring clip ring, lock ring, wire ring, click ring, retainer clip, circlips, spring ring':
        {},
      'external circlip, external retaining ring, external snap ring, shaft circlip, external ring': {
        type: 'external',
      },
      'internal circlip, internal retaining ring, internal snap ring, bore circlip': { type: 'internal' },
      'e-clip, e clip, eclip, e-ring, e ring, ering, e-clips, e type retaining ring, e-type circlip': {
        type: 'e-clip',
      },
      'r-clip ring': { type: 'r-clip' },
    },
    de: {
      'sicherungsring, seegerring, sprengring, seeger-ring, sicherungsringe, nutring sicherung, runddraht sprengring, runddrahtsprengring, haltering':
        {},
      'sicherungsring für wellen, sicherungsring für welle, wellensicherungsring, außensicherungsring, aussenseegerring, wellenring, außenseegerring, sicherungsring außen':
        { type: 'external' },
      'sicherungsring für bohrungen, sicherungsring für bohrung, innensicherungsring, bohrungssicherungsring, innenseegerring, sicherungsring innen':
        { type: 'internal' },
      'sicherungsscheibe, e-scheibe, e-ring, benzing, benzingring, benzingsicherung, wellensicherung, benzing-ring, benzingscheibe':
        { type: 'e-clip' },
    },
    fr: {
      "circlip, circlips, anneau elastique, anneau d'arret, segment d'arret, anneau de retenue, jonc d'arret, jonc, anneau truarc":
        {},
      'circlip exterieur, circlips exterieur, anneau elastique pour arbre, circlip pour arbre, anneau elastique exterieur':
        { type: 'external' },
      'circlip interieur, circlips interieur, anneau elastique pour alesage, circlip pour alesage, anneau elastique interieur':
        { type: 'internal' },
      'circlip e, anneau e, clip e, clips e': { type: 'e-clip' },
    },
    it: {
      "anello elastico, anelli elastici, seeger, anello seeger, anello di arresto, anello di fermo, anello d'arresto, anello di sicurezza, anello di ritegno":
        {},
      'anello elastico per alberi, seeger esterno, anello elastico per albero, anello elastico esterno, seeger per alberi':
        { type: 'external' },
      'anello elastico per fori, seeger interno, anello elastico per foro, anello elastico interno, seeger per fori':
        { type: 'internal' },
      'anello e, benzing, anello benzing, clip e': { type: 'e-clip' },
    },
    es: {
      'anillo de retencion, circlip, anillo elastico, anillo seeger, seeger, anillo de seguridad, anillo de sujecion, anillo de fijacion, seguro seeger':
        {},
      'anillo de retencion exterior, circlip exterior, anillo elastico para ejes, anillo elastico exterior, anillo elastico para eje':
        { type: 'external' },
      'anillo de retencion interior, circlip interior, anillo elastico para agujeros, anillo elastico interior':
        { type: 'internal' },
      'clip e, anillo e': { type: 'e-clip' },
    },
    nl: {
      'borgring, seegerring, borgveer, circlip, borgveerring': {},
      'borgring voor as, asborgring, buitenborgring, seegerring buiten': { type: 'external' },
      'borgring voor gat, binnenborgring, seegerring binnen': { type: 'internal' },
      'e-clip, e-ring, asborging': { type: 'e-clip' },
    },
    ja: {
      'スナップリング, 止め輪, 止輪, サークリップ, Cリング, C形止め輪, リテーナーリング': {},
      '軸用止め輪, 軸用C形止め輪, 軸用スナップリング': { type: 'external' },
      '穴用止め輪, 穴用C形止め輪, 穴用スナップリング': { type: 'internal' },
      'Eリング, E形止め輪, E型止め輪, E-リング': { type: 'e-clip' },
    },
  },
  modifiers: {
    en: {
      'external, ext, outer, outside, shaft, for shaft': { type: 'external' },
      'internal, int, inner, inside, bore, for bore': { type: 'internal' },
      'e type, type e': { type: 'e-clip' },
    },
    de: {
      'außen, aussen, welle, für wellen, für welle': { type: 'external' },
      'innen, bohrung, für bohrungen, für bohrung': { type: 'internal' },
    },
    fr: {
      'exterieur, pour arbre, ext': { type: 'external' },
      'interieur, pour alesage, int': { type: 'internal' },
    },
    it: {
      'esterno, per alberi, per albero': { type: 'external' },
      'interno, per fori, per foro': { type: 'internal' },
    },
    es: {
      'exterior, para eje, para ejes': { type: 'external' },
      'interior, para agujero, para agujeros': { type: 'internal' },
    },
    nl: { 'buiten, voor as': { type: 'external' }, 'binnen, voor gat': { type: 'internal' } },
    ja: { 軸用: { type: 'external' }, 穴用: { type: 'internal' } },
  },
  plain: {
    en: 'circlip pliers, snap ring pliers, retaining ring pliers, circlip plier, ring terminal',
    de: 'seegerringzange, sicherungsringzange, ringschraube',
    fr: 'pince a circlips',
    nl: 'borgringtang',
  },
};
