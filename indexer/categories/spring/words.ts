import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'spring, springs, coil spring, spr, bail spring, click spring, return spring, pawl spring, brake spring, trip spring, drag spring, spool spring, spg, helical spring':
        {},
      'compression spring, comp spring, pressure spring, spring compression': { type: 'compression' },
      'extension spring, tension spring, ext spring, spring extension': { type: 'extension' },
      'torsion spring, spring torsion, hair spring, coiled torsion spring': { type: 'torsion' },
      'leaf spring, flat spring, spring leaf, plate spring': { type: 'leaf' },
      'disc spring, disk spring, belleville washer, belleville spring, belleville, conical spring washer, spring disc, cup spring':
        { type: 'belleville' },
      'wave spring': { type: 'wave' },
    },
    de: {
      'feder, federn, rückholfeder, klinkenfeder, bremsfeder, spiralfeder, schraubenfeder, rastfeder, bügelfeder':
        {},
      'druckfeder, druckfedern': { type: 'compression' },
      'zugfeder, zugfedern': { type: 'extension' },
      'drehfeder, schenkelfeder, torsionsfeder': { type: 'torsion' },
      'blattfeder, flachfeder': { type: 'leaf' },
      'tellerfeder, tellerfedern': { type: 'belleville' },
      'wellenfeder, wellfeder': { type: 'wave' },
    },
    fr: {
      'ressort, ressorts, ressort de rappel': {},
      'ressort de compression, ressort a compression': { type: 'compression' },
      "ressort de traction, ressort d'extension, ressort a traction": { type: 'extension' },
      'ressort de torsion': { type: 'torsion' },
      'ressort a lame, lame ressort, ressort lame': { type: 'leaf' },
      'rondelle belleville, rondelle ressort belleville, ressort belleville': { type: 'belleville' },
      'ressort ondule': { type: 'wave' },
    },
    it: {
      'molla, molle, molla di richiamo': {},
      'molla a compressione, molla di compressione, molle a compressione': { type: 'compression' },
      'molla a trazione, molla di trazione': { type: 'extension' },
      'molla a torsione, molla di torsione': { type: 'torsion' },
      'molla a balestra, molla a lamina': { type: 'leaf' },
      'molla a tazza, molle a tazza': { type: 'belleville' },
    },
    es: {
      'muelle, resorte, muelle de retorno': {},
      'muelle de compresion, resorte de compresion': { type: 'compression' },
      'muelle de traccion, resorte de traccion, muelle de extension, resorte de extension': {
        type: 'extension',
      },
      'muelle de torsion, resorte de torsion': { type: 'torsion' },
      'ballesta, muelle de lamina': { type: 'leaf' },
      'muelle de disco, arandela belleville, muelle de platillo, resorte de disco': { type: 'belleville' },
    },
    nl: {
      'veer, veren, terugstelveer, palveer': {},
      'drukveer, drukveren': { type: 'compression' },
      'trekveer, trekveren': { type: 'extension' },
      torsieveer: { type: 'torsion' },
      bladveer: { type: 'leaf' },
      'schotelveer, schotelveren': { type: 'belleville' },
    },
    ja: {
      'スプリング, バネ, ばね, 発条': {},
      '圧縮バネ, 圧縮ばね, 圧縮コイルばね, 押しバネ, 押しばね, コンプレッションスプリング': {
        type: 'compression',
      },
      '引張バネ, 引張ばね, 引きバネ, 引張コイルばね, 引っ張りバネ, 引きばね': { type: 'extension' },
      'ねじりバネ, ねじりばね, トーションスプリング, トーションバネ': { type: 'torsion' },
      '板バネ, 板ばね': { type: 'leaf' },
      '皿バネ, 皿ばね': { type: 'belleville' },
    },
  },
  modifiers: {
    en: {
      compression: { type: 'compression' },
      'extension, tension': { type: 'extension' },
      torsion: { type: 'torsion' },
      leaf: { type: 'leaf' },
      wave: { type: 'wave' },
    },
    de: { druck: { type: 'compression' }, zug: { type: 'extension' } },
    ja: { 圧縮: { type: 'compression' }, 引張: { type: 'extension' } },
  },
  plain: {
    en: 'spring steel, spring steel sheet, spring plate, spring seat, spring retainer, spring holder, spring balance, spring guide, spring cap, spring clamp, spring hook, spring plunger, spring case, spring cover, spring housing, spring perch, spring collar, spring stop, spring loaded plunger, spring balancer, spring hanger',
    de: 'federhalter, federhaus, federteller, federstahlblech, federführung, federbein, federdraht, federklammer, druckfederteller, federzange',
    fr: 'acier ressort, guide ressort',
    nl: 'veerhouder',
    ja: 'スプリングホルダー, バネ鋼, バネ受け, スプリングガイド, スプリングケース',
  },
};
