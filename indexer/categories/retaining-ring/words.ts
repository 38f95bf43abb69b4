import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'retaining ring, snap ring, circlip, retainer ring, retaining clip, c-clip, c clip, snapring, c ring, c-ring, stop ring, seeger ring, spring clip ring, lock ring, wire ring, click ring, retainer clip, circlips, spring ring':
        {},
      'external circlip, external retaining ring, external snap ring, shaft circlip, external ring, shaft snap ring, shaft retaining ring':
        {
          type: 'external',
        },
      'internal circlip, internal retaining ring, internal snap ring, bore circlip, hole snap ring, hole circlip, hole retaining ring':
        { type: 'internal' },
      'e-clip, e clip, eclip, e-ring, e ring, ering, e-clips, e type retaining ring, e-type circlip, e type retainer, e retainer, retainer e type, retainer e':
        {
          type: 'e-clip',
        },
      'r-clip, r clip, r-pin, r pin, r-clip ring, hitch pin clip, hairpin clip, hairpin cotter, hairpin, hair pin, hair pin clip, hair pin cotter, hairpin cotter pin, hitch pin, beta pin, beta clip, spring cotter':
        {
          type: 'r-clip',
        },
    },
    de: {
      'sicherungsring, si ring, greifring, klemmring, seegerring, sprengring, seeger-ring, sicherungsringe, nutring sicherung, runddraht sprengring, runddrahtsprengring, haltering':
        {},
      'sicherungsring für wellen, sicherungsring für welle, wellensicherungsring, außensicherungsring, aussenseegerring, wellenring, außenseegerring, sicherungsring außen':
        { type: 'external' },
      'sicherungsring für bohrungen, sicherungsring für bohrung, innensicherungsring, bohrungssicherungsring, innenseegerring, sicherungsring innen':
        { type: 'internal' },
      'federstecker, federsplint, splintsicherung, r-splint, r-clip, beta-splint': { type: 'r-clip' },
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
      'goupille beta, epingle beta, goupille epingle, goupille clip, epingle': { type: 'r-clip' },
      'circlip e, anneau e, clip e, clips e': { type: 'e-clip' },
    },
    it: {
      "anello elastico, anelli elastici, seeger, anello seeger, anello di arresto, anello di fermo, anello d'arresto, anello di sicurezza, anello di ritegno":
        {},
      'anello elastico per alberi, seeger esterno, anello elastico per albero, anello elastico esterno, seeger per alberi':
        { type: 'external' },
      'anello elastico per fori, seeger interno, anello elastico per foro, anello elastico interno, seeger per fori':
        { type: 'internal' },
      'copiglia a molla, coppiglia a molla, copiglia elastica a r, spina a r, copiglia beta, copiglia r': {
        type: 'r-clip',
      },
      'anello e, benzing, anello benzing, clip e': { type: 'e-clip' },
    },
    es: {
      'anillo de retencion, circlip, anillo elastico, anillo seeger, seeger, anillo de seguridad, anillo de sujecion, anillo de fijacion, seguro seeger':
        {},
      'anillo de retencion exterior, circlip exterior, anillo elastico para ejes, anillo elastico exterior, anillo elastico para eje':
        { type: 'external' },
      'anillo de retencion interior, circlip interior, anillo elastico para agujeros, anillo elastico interior':
        { type: 'internal' },
      'pasador beta, pasador r, pasador de horquilla, clip r, pasador clip': { type: 'r-clip' },
      'clip e, anillo e': { type: 'e-clip' },
    },
    nl: {
      'borgring, seegerring, borgveer, circlip, borgveerring': {},
      'borgring voor as, asborgring, buitenborgring, seegerring buiten': { type: 'external' },
      'borgring voor gat, binnenborgring, seegerring binnen': { type: 'internal' },
      'r-clip, borgclip, beugelpen, splitpenclip, veerclip, betapen': { type: 'r-clip' },
      'e-clip, e-ring, asborging': { type: 'e-clip' },
    },
    ja: {
      'スナップリング, 止め輪, 止輪, サークリップ, Cリング, C形止め輪, リテーナーリング': {},
      '軸用止め輪, 軸用C形止め輪, 軸用スナップリング': { type: 'external' },
      '穴用止め輪, 穴用C形止め輪, 穴用スナップリング': { type: 'internal' },
      'Rピン, Rクリップ, スナップピン, ベータピン, βピン, 松葉ピン': { type: 'r-clip' },
      'Eリング, E形止め輪, E型止め輪, E-リング': { type: 'e-clip' },
    },
  },
  modifiers: {
    en: {
      'external, ext, outer, outside, shaft, for shaft, on shaft, external type': { type: 'external' },
      'internal, int, inner, inside, bore, for bore, for hole, for holes, hole, in bore, housing, internal type':
        {
          type: 'internal',
        },
      'e type, type e, e style, e shape': { type: 'e-clip' },
    },
    de: {
      'außen, aussen, welle, für wellen, für welle, wellen, f welle, f wellen': { type: 'external' },
      'innen, bohrung, für bohrungen, für bohrung, bohrungen, f bohrung, f bohrungen': { type: 'internal' },
    },
    fr: {
      'exterieur, exterieurs, pour arbre, pour arbres, arbre, ext, pour axe': { type: 'external' },
      'interieur, interieurs, pour alesage, pour alesages, alesage, int': { type: 'internal' },
    },
    it: {
      'esterno, esterni, per alberi, per albero, albero, est': { type: 'external' },
      'interno, interni, per fori, per foro, foro, int': { type: 'internal' },
    },
    es: {
      'exterior, exteriores, para eje, para ejes, eje, ext': { type: 'external' },
      'interior, interiores, para agujero, para agujeros, agujero, int': { type: 'internal' },
    },
    nl: {
      'buiten, voor as, voor assen, as, uitwendig': { type: 'external' },
      'binnen, voor gat, voor boring, gat, boring, inwendig': { type: 'internal' },
    },
    ja: {
      '軸用, 軸, 外': { type: 'external' },
      '穴用, 穴, 内': { type: 'internal' },
    },
  },
  plain: {
    en: 'circlip pliers, snap ring pliers, retaining ring pliers, circlip plier, ring terminal',
    de: 'seegerringzange, sicherungsringzange',
    fr: 'pince a circlips',
    nl: 'borgringtang',
  },
};
