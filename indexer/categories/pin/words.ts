import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'pin, pins, parallel pin, straight pin, locating pin, pivot pin, hinge pin, bail pin, stop pin, guide pin, pn, roller pin, lock pin, knock pin, set pin':
        {},
      'dowel pin, dowel, dowel pins, dwl pin': { type: 'dowel' },
      'cotter pin, split pin, cotter, split cotter pin, cotter-pin, cotterpin, splitpin': { type: 'cotter' },
      'clevis pin, headed pin, headed straight pin, pin with head, headed clevis pin, straight headed pin, pin straight headed':
        {
          type: 'clevis',
        },
      'grooved pin, groove pin, knurled pin': { type: 'grooved' },
      'taper pin, tapered pin': { type: 'taper' },
      'roll pin, spring pin, rollpin, slotted spring pin, tension pin, sellock pin, coiled spring pin, spring dowel, slotted pin, coiled pin, tension sleeve':
        { type: 'spring' },
    },
    de: {
      'stift, bolzen, steckstift, achsstift, haltestift, führungsstift': {},
      'zylinderstift, passstift, paßstift, zylinderstifte, zyl stift, zylstift': { type: 'dowel' },
      'splint, splinte': { type: 'cotter' },
      'gabelkopfbolzen, klappstecker, bolzen mit kopf': { type: 'clevis' },
      'kerbstift, knebelkerbstift, passkerbstift, kerbnagel': { type: 'grooved' },
      kegelstift: { type: 'taper' },
      'spannstift, spannhülse, spiralspannstift, federstift, schwerspannstift, spiralstift': {
        type: 'spring',
      },
    },
    fr: {
      'goupille, goupilles, axe de goupille, pion': {},
      'goupille cylindrique, goupille de centrage, pion de centrage': { type: 'dowel' },
      'goupille fendue, goupilles fendues': { type: 'cotter' },
      'axe de chape, axe a tete': { type: 'clevis' },
      'goupille cannelee, goupille grooved': { type: 'grooved' },
      'goupille conique': { type: 'taper' },
      'goupille elastique, goupille mecanindus, mecanindus, goupilles elastiques, goupille ressort': {
        type: 'spring',
      },
    },
    it: {
      'spina, perno, spine, perni, spinotto, copiglia perno': {},
      'spina cilindrica, spine cilindriche, spina di centraggio, spina di riferimento': { type: 'dowel' },
      'copiglia, coppiglia, copiglie, coppiglie': { type: 'cotter' },
      'spina conica, spine coniche': { type: 'taper' },
      'spina elastica, spine elastiche': { type: 'spring' },
      'spina intagliata': { type: 'grooved' },
    },
    es: {
      'pasador, clavija, pasadores, bulon pasador, espiga': {},
      'pasador cilindrico, pasador de centrado': { type: 'dowel' },
      'pasador de aletas, chaveta partida, pasador partido, pasador abierto': { type: 'cotter' },
      'pasador conico': { type: 'taper' },
      'pasador elastico, pasadores elasticos': { type: 'spring' },
      'pasador estriado': { type: 'grooved' },
    },
    nl: {
      'pen, stift, paspen, pennen': {},
      'cilindrische pen, paspen, cilinderpen': { type: 'dowel' },
      'splitpen, splitpennen': { type: 'cotter' },
      gaffelpen: { type: 'clevis' },
      'conische pen': { type: 'taper' },
      'spanstift, veerpen, spanbus pen, spanbusje': { type: 'spring' },
      kerfpen: { type: 'grooved' },
    },
    ja: {
      ピン: {},
      '平行ピン, ノックピン, ダウエルピン': { type: 'dowel' },
      '割ピン, 割りピン, コッターピン': { type: 'cotter' },
      'テーパーピン, テーパピン': { type: 'taper' },
      'スプリングピン, ロールピン': { type: 'spring' },
    },
  },
  modifiers: {
    en: {
      dowel: { type: 'dowel' },
      cotter: { type: 'cotter' },
      'clevis, headed, with head': { type: 'clevis' },
      'grooved, groove, knurled': { type: 'grooved' },
      'taper, tapered': { type: 'taper' },
      'spring, roll, slotted, coiled, tension, spiral': { type: 'spring' },
      split: { type: 'cotter' },
      'parallel, straight, cylindrical': {},
    },
    de: {
      'mit kopf': { type: 'clevis' },
      'konisch, kegelig': { type: 'taper' },
      gekerbt: { type: 'grooved' },
    },
    fr: {
      elastique: { type: 'spring' },
      fendue: { type: 'cotter' },
      conique: { type: 'taper' },
      'cannelee, cannele': { type: 'grooved' },
      'a tete': { type: 'clevis' },
      'cylindrique, de centrage': { type: 'dowel' },
    },
    it: {
      'elastica, elastiche': { type: 'spring' },
      'conica, coniche': { type: 'taper' },
      'cilindrica, cilindriche': { type: 'dowel' },
      'con testa': { type: 'clevis' },
    },
    es: {
      'elastico, elasticos': { type: 'spring' },
      conico: { type: 'taper' },
      'cilindrico, cilindricos': { type: 'dowel' },
      'de aletas': { type: 'cotter' },
      'con cabeza': { type: 'clevis' },
    },
    nl: {
      verend: { type: 'spring' },
      conisch: { type: 'taper' },
      cilindrisch: { type: 'dowel' },
      'met kop': { type: 'clevis' },
    },
    ja: {
      平行: { type: 'dowel' },
      割: { type: 'cotter' },
      テーパー: { type: 'taper' },
      スプリング: { type: 'spring' },
    },
  },
  plain: {
    en: 'pin header, pin holder, pin punch, pin connector, pin socket, header pin, pogo pin, rolling pin, pin cap, pin plate, pin gauge, firing pin, king pin, pin vise, crank pin, crankpin, pin strip, pin housing, gudgeon pin, contact pin, pin spanner',
    de: 'stiftleiste, stiftschlüssel, bolzenschneider, kolbenbolzen, kontaktstift, stiftsockel, schreibstift',
    ja: 'ピンヘッダー, ピンヘッダ, ピンホルダー',
  },
};
