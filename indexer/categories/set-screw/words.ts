import type { CategoryWords } from '../definition.ts';

const hex = { drive: 'hex-socket' };

export const words: CategoryWords = {
  nouns: {
    en: {
      'set screw, setscrew, grub, grub screw, grubscrew, headless screw, set scr, grub screws, set bolt, headless set screw':
        {},
      'socket set screw, socket set, hex socket set screw, hex socket set, allen set screw, allen grub screw, socket grub screw, hexagon socket set screw, hex set screw':
        hex,
      'cup point set screw, cup point socket set screw': { point: 'cup' },
      'flat point set screw': { point: 'flat' },
      'cone point set screw': { point: 'cone' },
      'dog point set screw': { point: 'dog' },
      'slotted set screw': { drive: 'slotted' },
    },
    de: {
      'gewindestift, madenschraube, wurmschraube, stiftmadenschraube, made': {},
      'gewindestift mit innensechskant, innensechskant gewindestift, inbus gewindestift, innensechskantgewindestift, gewindestift innensechskant':
        hex,
      'gewindestift mit schlitz, schlitzgewindestift': { drive: 'slotted' },
    },
    fr: {
      'vis sans tete, vis pointeau, vis de pression, vis de blocage, vis de serrage': {},
      'vis hc, vis sans tete six pans creux, vis sans tete hexagonale creuse, vis sans tete hc': hex,
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
      'cup point, cup pt, knurled cup point, cup': { point: 'cup' },
      'flat point, flat pt, flat tip': { point: 'flat' },
      'cone point, cone pt, cone': { point: 'cone' },
      'dog point, dog pt, half dog point, dog': { point: 'dog' },
      'hex, hex socket, allen, hexagon socket, socket, hex drive, socket head': hex,
      'slotted, slot': { drive: 'slotted' },
      torx: { drive: 'torx' },
    },
    de: {
      'mit ringschneide, ringschneide': { point: 'cup' },
      'mit kegelkuppe, kegelkuppe, kegelstumpf': { point: 'flat' },
      'mit spitze, spitze': { point: 'cone' },
      'mit zapfen, zapfen': { point: 'dog' },
      'innensechskant, inbus, mit innensechskant': hex,
      'schlitz, mit schlitz': { drive: 'slotted' },
    },
    fr: {
      'bout cuvette, cuvette': { point: 'cup' },
      'bout plat': { point: 'flat' },
      'bout pointu, bout conique, pointeau': { point: 'cone' },
      'bout teton, teton': { point: 'dog' },
      'six pans creux, 6 pans creux, hexagonale creuse, hc': hex,
      fendue: { drive: 'slotted' },
    },
    it: {
      'punta piana, estremita piana': { point: 'flat' },
      'punta conica, estremita conica': { point: 'cone' },
      'punta a coppa, estremita a coppa': { point: 'cup' },
      'punta cilindrica': { point: 'dog' },
      'esagono incassato, brugola': hex,
    },
    es: {
      'punta plana': { point: 'flat' },
      'punta conica': { point: 'cone' },
      'punta copa': { point: 'cup' },
      allen: hex,
    },
    nl: {
      kratereind: { point: 'cup' },
      punt: { point: 'cone' },
      'binnenzeskant, inbus': hex,
      zaagsnede: { drive: 'slotted' },
    },
    ja: {
      くぼみ先: { point: 'cup' },
      平先: { point: 'flat' },
      とがり先: { point: 'cone' },
      棒先: { point: 'dog' },
    },
  },
};
