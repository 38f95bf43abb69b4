import type { CategoryWords } from '../definition.ts';

export const words: CategoryWords = {
  nouns: {
    en: {
      'bearing, ball bearing, brg, brng, bearings, ball brg, ball bearings, radial bearing, radial ball bearing, deep groove ball bearing, deep groove bearing, miniature bearing, miniature ball bearing, wheel bearing, skate bearing, roller skate bearing, spool bearing, line roller bearing, bearing set, bearings set':
        {},
      'flanged bearing, flange bearing, flanged ball bearing, flange ball bearing': { flanged: true },
      'needle bearing, needle roller bearing, drawn cup needle bearing, needle brg, needle cage, needle cage assembly, needle roller cage':
        { type: 'needle' },
      'thrust bearing, thrust ball bearing, axial bearing, thrust needle bearing, thrust brg': {
        type: 'thrust',
      },
      'linear bearing, linear ball bearing, ball bushing, linear bushing': { type: 'linear' },
      'spherical bearing, spherical plain bearing': { type: 'spherical' },
      'rod end, rod end bearing, rod-end, ball joint rod end, heim joint': { type: 'rod-end' },
      'pillow block, pillow block bearing, pillow bearing block, bearing block, pillow bearing': {
        type: 'block',
      },
      'tapered roller bearing, taper roller bearing, roller bearing, angular contact bearing, angular contact ball bearing, headset bearing':
        {},
      'sealed bearing, sealed ball bearing, shielded bearing, shielded ball bearing': {},
    },
    de: {
      'lager, kugellager, kugell, rillenkugellager, rillenkugell, wälzlager, radiallager, radialkugellager, miniaturlager, miniaturkugellager, radlager, rollenlager, kegelrollenlager, schrägkugellager, schulterkugellager':
        {},
      'flanschlager, flanschkugellager, bundlager': { flanged: true },
      'nadellager, nadelhülse, nadelbüchse, nadelkranz': { type: 'needle' },
      'axiallager, axialkugellager, axialrillenkugellager, axial-rillenkugellager, drucklager, axialnadellager':
        { type: 'thrust' },
      'linearlager, linearkugellager, kugelbuchse, linear-kugellager': { type: 'linear' },
      gelenklager: { type: 'spherical' },
      'gelenkkopf, kugelgelenkkopf': { type: 'rod-end' },
      'stehlager, lagerbock, flanschlagereinheit': { type: 'block' },
    },
    fr: {
      'roulement, roulement a billes, roulements, roul, roulement radial, roulement etanche, roulement a bille, palier a roulement, roulement a rouleaux':
        {},
      'roulement a collerette, roulement a flasque, roulement epaule': { flanged: true },
      'roulement a aiguilles, douille a aiguilles, cage a aiguilles': { type: 'needle' },
      'butee a billes, butee, roulement de butee, butee axiale, butee a aiguilles': { type: 'thrust' },
      'roulement lineaire, douille a billes': { type: 'linear' },
      'rotule, roulement rotule': { type: 'spherical' },
      'embout a rotule, embout rotule': { type: 'rod-end' },
      'palier applique, palier a semelle': { type: 'block' },
    },
    it: {
      'cuscinetto, cuscinetti, cuscinetto a sfere, cuscinetti a sfere, cuscinetto radiale, cuscinetto a rulli':
        {},
      'cuscinetto flangiato': { flanged: true },
      'cuscinetto a rullini, astuccio a rullini': { type: 'needle' },
      'cuscinetto reggispinta, reggispinta, cuscinetto assiale': { type: 'thrust' },
      'cuscinetto lineare, manicotto a sfere': { type: 'linear' },
      'snodo sferico': { type: 'spherical' },
      'testa a snodo, terminale a snodo': { type: 'rod-end' },
      'supporto ritto, supporto con cuscinetto': { type: 'block' },
    },
    es: {
      'rodamiento, cojinete de bolas, rodamiento de bolas, balero, rodamiento rigido de bolas, rulemán, rodamiento radial, cojinete a bolas':
        {},
      'rodamiento con brida, rodamiento con pestana': { flanged: true },
      'rodamiento de agujas, casquillo de agujas': { type: 'needle' },
      'rodamiento axial, cojinete axial, rodamiento axial de bolas, rodamiento de empuje': { type: 'thrust' },
      'rodamiento lineal, cojinete lineal': { type: 'linear' },
      rotula: { type: 'rod-end' },
      'soporte de rodamiento': { type: 'block' },
    },
    nl: {
      'lager, kogellager, groefkogellager, wiellager, kogellagers, rollager': {},
      flenslager: { flanged: true },
      naaldlager: { type: 'needle' },
      'druklager, axiaallager': { type: 'thrust' },
      'lineair lager, lineaire lager': { type: 'linear' },
      'stangkop, kogelkop': { type: 'rod-end' },
      'lagerblok, staande lager': { type: 'block' },
    },
    ja: {
      'ベアリング, ボールベアリング, ラジアルベアリング, 軸受, 軸受け, 玉軸受, 深溝玉軸受, ミニチュアベアリング, ﾍﾞｱﾘﾝｸﾞ':
        {},
      'フランジベアリング, フランジ付ベアリング, フランジ付きベアリング': { flanged: true },
      'ニードルベアリング, 針状ころ軸受': { type: 'needle' },
      'スラストベアリング, スラスト軸受': { type: 'thrust' },
      'リニアベアリング, リニアブッシュ': { type: 'linear' },
      ロッドエンド: { type: 'rod-end' },
      ピローブロック: { type: 'block' },
    },
  },
  modifiers: {
    en: {
      'flanged, with flange, flange': { flanged: true },
      'shielded, zz, 2z, 2 z, metal shielded, metal shields, double shielded, two shields, 2 shields, both sides shielded':
        { seal: 'two-shields' },
      'single shield, one shield, shielded one side': { seal: 'one-shield' },
      '2rs, 2rs1, 2rsh, 2 rs, ddu, llu, 2rsr, rubber sealed, rubber seals, double sealed, contact seals, two contact seals, 2 rubber seals':
        {
          seal: 'two-contact-seals',
        },
      'open, open type': { seal: 'open' },
      'needle, drawn cup, needle roller': { type: 'needle' },
      thrust: { type: 'thrust' },
      linear: { type: 'linear' },
      mc1: { clearance: 'MC1' },
      mc2: { clearance: 'MC2' },
      mc3: { clearance: 'MC3' },
      mc4: { clearance: 'MC4' },
      mc5: { clearance: 'MC5' },
      mc6: { clearance: 'MC6' },
      c2: { clearance: 'C2' },
      c3: { clearance: 'C3' },
      c4: { clearance: 'C4' },
      c5: { clearance: 'C5' },
    },
    de: {
      'mit flansch, mit bund': { flanged: true },
      'mit deckscheiben, beidseitig deckscheiben': { seal: 'two-shields' },
      'beidseitig abgedichtet, mit dichtscheiben': { seal: 'two-contact-seals' },
      offen: { seal: 'open' },
      axial: { type: 'thrust' },
    },
    fr: { 'a collerette, avec collerette, avec flasque': { flanged: true }, ouvert: { seal: 'open' } },
    it: { 'flangiato, con flangia': { flanged: true }, aperto: { seal: 'open' } },
    es: { 'con brida, con pestana': { flanged: true }, abierto: { seal: 'open' } },
    nl: { 'met flens': { flanged: true }, open: { seal: 'open' } },
    ja: {
      'フランジ付, フランジ付き, つば付き': { flanged: true },
      両シールド: { seal: 'two-shields' },
      開放: { seal: 'open' },
    },
  },
  plain: {
    en: 'bearing cap, bearing cover, bearing housing, bearing holder, bearing retainer, bearing plate, bearing seat, bearing case, bearing puller, bearing spacer, bearing race, bearing cup, bearing cone, bearing collar, bearing grease seal, bearing carrier, bearing support, bearing mount',
    de: 'lagerdeckel, lagergehäuse, lagerhalter, lagerplatte, lagerschild, lagersitz, lagerabzieher, lagerträger, lagerflansch',
    fr: 'cage de roulement, couvercle de roulement, logement de roulement',
    nl: 'lagerdeksel, lagerhuis, lagerhouder',
    ja: 'ベアリングケース, ベアリングカバー, ベアリングホルダー, ベアリングキャップ, ベアリング押え, ベアリング押さえ',
  },
};
