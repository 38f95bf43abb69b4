import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'spring, springs, coil spring, spr, bail spring, click spring, return spring, pawl spring, brake spring, trip spring, drag spring, spool spring, spg, helical spring, spring set, springs set':
        {},
      'compression spring, comp spring, compr spring, compr spr, comp spr, push spring, pressure spring, spring compression':
        { type: 'compression' },
      'extension spring, tension spring, pull spring, draw spring, ext spring, ext spr, extn spring, spring extension':
        { type: 'extension' },
      'torsion spring, torsion spr, tors spring, tors spr, spring torsion, hair spring, hairspring, helical torsion spring, coiled torsion spring':
        { type: 'torsion' },
      'leaf spring, flat spring, spring leaf, plate spring': { type: 'leaf' },
      'disc spring, disk spring, belleville washer, spring tension washer belleville, belleville spring, belleville, conical spring washer, spring disc, cup spring':
        { type: 'belleville' },
      'wave spring': { type: 'wave' },
    },
    de: {
      'feder, federn, rückholfeder, klinkenfeder, bremsfeder, spiralfeder, schraubenfeder, rastfeder, bügelfeder':
        {},
      'druckfeder, druckfedern, druckf': { type: 'compression' },
      'zugfeder, zugfedern, zugf': { type: 'extension' },
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
      'compression, comp, compr, push': { type: 'compression' },
      'extension, tension, extn, pull': { type: 'extension' },
      'torsion, tors': { type: 'torsion' },
      'belleville, disc, disk': { type: 'belleville' },
      'left hand wound, left wound, left hand winding, lh wound, wound left, lh wind': { hand: 'left' },
      'right hand wound, right wound, right hand winding, rh wound, wound right, rh wind': { hand: 'right' },
      leaf: { type: 'leaf' },
      wave: { type: 'wave' },
    },
    de: {
      druck: { type: 'compression' },
      zug: { type: 'extension' },
      'dreh, schenkel': { type: 'torsion' },
      'linksgewickelt, links gewickelt, linksgewunden, linkswendel, linksgängig, linkswicklung': {
        hand: 'left',
      },
      'rechtsgewickelt, rechts gewickelt, rechtsgewunden, rechtswendel, rechtsgängig, rechtswicklung': {
        hand: 'right',
      },
    },
    fr: {
      'de compression, a compression, compression': { type: 'compression' },
      'de traction, traction, extension': { type: 'extension' },
      'de torsion, torsion': { type: 'torsion' },
      'enroule a gauche, enroulement a gauche, enroulement gauche, helice a gauche': { hand: 'left' },
      'enroule a droite, enroulement a droite, enroulement droit, helice a droite': { hand: 'right' },
    },
    it: {
      'a compressione, di compressione, compressione': { type: 'compression' },
      'a trazione, di trazione, trazione': { type: 'extension' },
      'a torsione, di torsione, torsione': { type: 'torsion' },
      'avvolgimento sinistro, elica sinistra, avvolta a sinistra': { hand: 'left' },
      'avvolgimento destro, elica destra, avvolta a destra': { hand: 'right' },
    },
    es: {
      'de compresion, compresion, a compresion': { type: 'compression' },
      'de traccion, traccion, a traccion, de extension': { type: 'extension' },
      'de torsion, torsion': { type: 'torsion' },
      'arrollamiento izquierdo, a izquierdas, helice izquierda': { hand: 'left' },
      'arrollamiento derecho, a derechas, helice derecha': { hand: 'right' },
    },
    nl: {
      'linksgewonden, linksgewikkeld, links gewonden': { hand: 'left' },
      'rechtsgewonden, rechtsgewikkeld, rechts gewonden': { hand: 'right' },
    },
    ja: {
      圧縮: { type: 'compression' },
      '引張, 引っ張り, 引き': { type: 'extension' },
      'ねじり, トーション': { type: 'torsion' },
      '左巻, 左巻き': { hand: 'left' },
      '右巻, 右巻き': { hand: 'right' },
    },
  },
  plain: {
    en: 'spring steel, spring steel sheet, spring plate, spring seat, spring retainer, spring holder, spring balance, spring guide, spring cap, spring clamp, spring hook, spring plunger, spring case, spring cover, spring housing, spring perch, spring collar, spring stop, spring loaded plunger, spring balancer, spring hanger',
    de: 'federhalter, federhaus, federteller, federstahlblech, federführung, federbein, federdraht, federklammer, druckfederteller, federzange',
    fr: 'acier ressort, guide ressort',
    nl: 'veerhouder',
    ja: 'スプリングホルダー, バネ鋼, バネ受け, スプリングガイド, スプリングケース',
  },
};
