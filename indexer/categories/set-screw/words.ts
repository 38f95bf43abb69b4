import type { CategoryWords } from '../definition.ts';

const hex = { drive: 'hex-socket' };

export const words: CategoryWords = {
  nouns: {
    en: {
      'set screw, setscrew, grub, grub screw, grubscrew, headless screw, set scr, grub screws, set bolt, headless set screw':
        {},
      'sss, hsss, shsss, socket set screw, socket set, hexagon socket headless screw, socket headless screw, hex socket set screw, hex socket set, allen set screw, allen grub screw, socket grub screw, hexagon socket set screw, hex set screw':
        hex,
      'cup point set screw, cup point socket set screw': { point: 'cup' },
      'flat point set screw': { point: 'flat' },
      'cone point set screw': { point: 'cone' },
      'dog point set screw': { point: 'dog' },
      'slotted set screw': { drive: 'slotted' },
    },
    de: {
      'gewindestift, gew stift, gewst, madenschraube, wurmschraube, stiftmadenschraube, made': {},
      'gewindestift mit innensechskant, innensechskant gewindestift, inbus gewindestift, innensechskantgewindestift, gewindestift innensechskant':
        hex,
      'gewindestift mit schlitz, schlitzgewindestift': { drive: 'slotted' },
    },
    fr: {
      'vis sans tete, vis pointeau, vis de pression, vis de blocage, vis de serrage': {},
      'vis sthc, sthc, vis hc bout, vis hc, vis sans tete six pans creux, vis sans tete allen, vis sans tete hexagonale creuse, vis sans tete hc':
        hex,
    },
    it: {
      'grano, grani, grano filettato, vite senza testa, grano di fissaggio, vite di pressione': {},
      'grano a brugola, grano esagono incassato, grano con esagono incassato, vite stei, grano stei': hex,
    },
    es: {
      'prisionero, tornillo prisionero, esparrago, tornillo sin cabeza, tornillo de presion': {},
      'prisionero allen, esparrago allen': hex,
    },
    nl: {
      'stelschroef, stelbout, inbus stelschroef, madeschroef, tapeind': {},
      'stelschroef met binnenzeskant': hex,
    },
    ja: {
      '止めネジ, 止めねじ, セットスクリュー, イモネジ, いもねじ, 芋ネジ, ホーローセット, ホロセット, セットビス, 止ネジ':
        {},
      '六角穴付止めねじ, 六角穴付き止めねじ, 六角穴付止めネジ': hex,
    },
  },
  modifiers: {
    en: {
      shss: hex,
      'cup point, cup pt, cup-point, cuppoint, knurled cup point, knurled cup, cup end, cup tip, cup': {
        point: 'cup',
      },
      'flat point, flat pt, flat tip, flat end, flat-point, flat': { point: 'flat' },
      'cone point, cone pt, cone tip, cone-point, cone end, cone, pointed, sharp point': { point: 'cone' },
      'dog point, dog pt, half dog point, half dog, full dog, full dog point, dog-point, dog end, dog, long dog, extended point':
        { point: 'dog' },
      'hex, hex socket, allen, hexagon socket, socket, hex drive, socket head': hex,
      'slotted, slot': { drive: 'slotted' },
      torx: { drive: 'torx' },
    },
    de: {
      'mit ringschneide, ringschneide': { point: 'cup' },
      'mit kegelkuppe, kegelkuppe, kegelstumpf, mit kegelstumpf, flache kuppe': { point: 'flat' },
      'mit spitze, spitze': { point: 'cone' },
      'mit zapfen, zapfen': { point: 'dog' },
      'isk, ihk, in-6kt, i-6kt, imbus': hex,
      'innensechsrund, torx': { drive: 'torx' },
      'innensechskant, inbus, mit innensechskant': hex,
      'schlitz, mit schlitz': { drive: 'slotted' },
    },
    fr: {
      'bout cuvette, a bout cuvette, cuvette, bt cuvette': { point: 'cup' },
      'bout plat, a bout plat': { point: 'flat' },
      'bout pointu, a bout pointu, bout conique, bout pointeau, pointeau, bout cone': { point: 'cone' },
      'bout teton, a bout teton, teton, bout a teton': { point: 'dog' },
      'six pans creux, a six pans creux, 6 pans creux, hexagonale creuse, hc, allen': hex,
      'fendue, a fente, fente': { drive: 'slotted' },
    },
    it: {
      'punta piana, estremita piana, a punta piana': { point: 'flat' },
      'punta conica, estremita conica, a punta conica, a punta': { point: 'cone' },
      'punta a coppa, estremita a coppa, a coppa, coppa': { point: 'cup' },
      'punta cilindrica, estremita cilindrica, con nasello': { point: 'dog' },
      'esagono incassato, con esagono incassato, cava esagonale, brugola, a brugola': hex,
      'a taglio, con intaglio, intaglio, taglio': { drive: 'slotted' },
    },
    es: {
      'punta plana, extremo plano': { point: 'flat' },
      'punta conica, extremo conico': { point: 'cone' },
      'punta copa, punta de copa, extremo copa, punta hueca': { point: 'cup' },
      'punta pivote, punta cilindrica, con teton': { point: 'dog' },
      'allen, hexagono interior, hexagonal interior': hex,
      'ranurado, ranura, ranurada': { drive: 'slotted' },
    },
    nl: {
      'kratereind, kraterpunt, met kratereind, krater': { point: 'cup' },
      'vlak eind, vlakke punt, vlak uiteinde': { point: 'flat' },
      'punt, met punt, kegelpunt': { point: 'cone' },
      'tap, met tap, tapeind punt': { point: 'dog' },
      'binnenzeskant, met binnenzeskant, inwendig zeskant, inbus': hex,
      'zaagsnede, gleuf, met zaagsnede, zaaggleuf': { drive: 'slotted' },
    },
    ja: {
      'くぼみ先, クボミ先, カップ先': { point: 'cup' },
      '平先, 平': { point: 'flat' },
      'とがり先, トガリ先, 尖り先': { point: 'cone' },
      '棒先, 丸先棒': { point: 'dog' },
      '六角穴付, 六角穴付き, 六角穴': hex,
      'すりわり付, すり割り付, すり割付, マイナス': { drive: 'slotted' },
    },
  },
};
