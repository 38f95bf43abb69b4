import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'washer, washers, wshr, wsr, wash, drag washer, drag washer set, friction washer, key washer, eared washer, keyed washer, click washer, washer set, insulating washer, sealing washer, seal washer, adjusting washer, adjustment washer, handle washer, spacing washer, spacer washer, bonded washer, cup washer, finishing washer, tab washer, tension washer':
        {},
      'flat washer, plain washer, fender washer, penny washer, repair washer, flat wshr': { type: 'flat' },
      'lock washer, lockwasher, locking washer, tooth lock washer': { type: 'lock' },
      'spring washer, drag spring washer, spring tension washer, spring lock washer, split spring washer, grower washer, conical washer, split washer, split lock washer, split ring washer, helical spring washer, helical lock washer':
        { type: 'spring' },
      'star washer, toothed washer, tooth washer, star lock washer, internal tooth washer, external tooth washer, serrated washer, toothed lock washer, shakeproof washer, internal tooth lock washer, external tooth lock washer':
        { type: 'star' },
      'wave washer, crinkle washer, wavy washer, wave spring washer, curved washer': { type: 'wave' },
      'thrust washer': { type: 'thrust' },
    },
    de: {
      'u-scheibe, uscheibe, u sch': { type: 'flat' },
      'scheibe, unterlegscheibe, beilagscheibe, scheiben, isolierscheibe, sicherungsblech, druckscheibe, reibscheibe, gleitscheibe, dichtscheibe, rändelscheibe, filzscheibe, lederscheibe, abstandsscheibe':
        {},
      'flachscheibe, flache scheibe, karosseriescheibe, kotflügelscheibe': { type: 'flat' },
      'sicherungsscheibe geschlitzt, sperrscheibe, schnorrscheibe, keilsicherungsscheibe, schnorr-scheibe, sperrkantscheibe':
        { type: 'lock' },
      'federring, sprengring scheibe, federringe': { type: 'spring' },
      'zahnscheibe, fächerscheibe': { type: 'star' },
      'federscheibe, wellscheibe, wellenscheibe gewellt, wellenfederscheibe': { type: 'wave' },
      'anlaufscheibe, axialscheibe': { type: 'thrust' },
    },
    fr: {
      'rondelle, rondelles, rondelle de friction, rondelle de frein': {},
      'rondelle plate': { type: 'flat' },
      "rondelle frein, rondelle de blocage, rondelle de securite, rondelle d'arret, rondelle freinee": {
        type: 'lock',
      },
      'rondelle grower, rondelle ressort, rondelle fendue, rondelle elastique, rondelle de ressort, grower': {
        type: 'spring',
      },
      'rondelle eventail, rondelle dentelee, rondelle a dents, rondelle a denture': { type: 'star' },
      'rondelle ondulee, rondelle onduflex': { type: 'wave' },
      'rondelle de butee': { type: 'thrust' },
    },
    it: {
      'rondella, rondelle, ranella, rosetta, rosette': {},
      'rondella piana, rosetta piana, rondelle piane, rondella piatta, rosette piane': { type: 'flat' },
      'rondella di sicurezza, rosetta di sicurezza, rondella di bloccaggio': { type: 'lock' },
      'rondella elastica, rosetta elastica, rondella grower, rondella spaccata, rondelle elastiche, rondella grower':
        { type: 'spring' },
      'rondella dentata, rosetta dentata, rondella a stella': { type: 'star' },
      'rondella ondulata': { type: 'wave' },
      'ralla, rondella reggispinta': { type: 'thrust' },
    },
    es: {
      'arandela, arandela de freno, arandela de friccion': {},
      'arandela plana': { type: 'flat' },
      'arandela de seguridad, arandela de bloqueo': { type: 'lock' },
      'arandela elastica, arandela de presion, arandela grower, arandela de resorte, arandela partida, arandela muelle':
        {
          type: 'spring',
        },
      'arandela dentada, arandela de estrella, arandela estrella': { type: 'star' },
      'arandela ondulada': { type: 'wave' },
      'arandela de empuje, arandela axial': { type: 'thrust' },
    },
    nl: {
      'ring, ring vlak, sluitring, onderlegring, onderlegringen, sluitringen, rondel, slipring, revet, ringetje':
        {},
      'vlakke ring, vlakke sluitring, carrosseriering, carrosserie ring': { type: 'flat' },
      'borgplaat, borgring getand, borgsluitring': { type: 'lock' },
      veerring: { type: 'spring' },
      'tandveerring, tandring, waaierring': { type: 'star' },
      'golfring, golfveerring': { type: 'wave' },
      'drukring, aanloopring': { type: 'thrust' },
    },
    ja: {
      'ワッシャー, ワッシャ, 座金, ドラグワッシャー, ドラグワッシャ, ドラグ板, ワッシャ-': {},
      '平座金, 平ワッシャー, 平ワッシャ': { type: 'flat' },
      '歯付座金, 菊座金, 菊ワッシャー': { type: 'star' },
      'スプリングワッシャー, スプリングワッシャ, ばね座金, バネ座金, Sワッシャー': { type: 'spring' },
      ロックワッシャー: { type: 'lock' },
      'ウェーブワッシャー, ウエーブワッシャー, 波座金, 波ワッシャー': { type: 'wave' },
      'スラストワッシャー, スラストワッシャ': { type: 'thrust' },
    },
  },
  modifiers: {
    en: {
      'flat, plain': { type: 'flat' },
      'lock, locking': { type: 'lock' },
      'split, spring, helical, conical, split lock, spring lock': { type: 'spring' },
      'star, toothed, tooth, internal tooth, external tooth, int tooth, ext tooth, serrated, shakeproof, internal teeth, external teeth':
        {
          type: 'star',
        },
      'wave, wavy, crinkle, curved': { type: 'wave' },
      thrust: { type: 'thrust' },
    },
    de: {
      'flach, flache': { type: 'flat' },
      'gewellt, wellig': { type: 'wave' },
      'gezahnt, verzahnt, aussenverzahnt, innenverzahnt': { type: 'star' },
      'federnd, gewölbt': { type: 'spring' },
    },
    fr: {
      'plate, plates': { type: 'flat' },
      'ondulee, ondulees': { type: 'wave' },
      'grower, elastique, fendue, ressort': { type: 'spring' },
      'eventail, a dents, dentelee, a denture': { type: 'star' },
      'frein, de blocage': { type: 'lock' },
    },
    it: {
      'piana, piane, piatta': { type: 'flat' },
      'elastica, elastiche, grower, spaccata': { type: 'spring' },
      'dentata, dentellata': { type: 'star' },
      ondulata: { type: 'wave' },
    },
    es: {
      'plana, planas': { type: 'flat' },
      'elastica, grower, de presion, partida': { type: 'spring' },
      'dentada, de estrella': { type: 'star' },
      ondulada: { type: 'wave' },
    },
    nl: {
      'vlak, vlakke': { type: 'flat' },
      'verend, veer': { type: 'spring' },
      'getand, tand': { type: 'star' },
      gegolfd: { type: 'wave' },
    },
    ja: {
      平: { type: 'flat' },
      'ばね, バネ, スプリング': { type: 'spring' },
      '歯付, 菊': { type: 'star' },
      '波, ウェーブ': { type: 'wave' },
    },
  },
  plain: {
    en: 'washer plate, washer bottle, washer pump, pressure washer, brake disc, washer retainer, washer holder',
    de: 'riemenscheibe, bremsscheibe, seilscheibe, kurvenscheibe, sichtscheibe, glasscheibe, nockenscheibe, mitnehmerscheibe, kupplungsscheibe, schwungscheibe, keilriemenscheibe, zahnriemenscheibe, schleifscheibe, trennscheibe, skalenscheibe, lochscheibe, windschutzscheibe, zierscheibe, rastscheibe, sperrklinkenscheibe, frontscheibe',
  },
};
