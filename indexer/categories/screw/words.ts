import type { CategoryWords } from '../definition.ts';

const cap = { head: 'socket-cap', drive: 'hex-socket' };
const button = { head: 'button', drive: 'hex-socket' };
const csk = { head: 'countersunk', drive: 'hex-socket' };
const low = { head: 'low-socket-cap', drive: 'hex-socket' };
/** A cylinder or a dome for a head: the drive says which one it is, see `settle-head.ts`. */
const cylinder = { head: 'cylinder' };
const dome = { head: 'dome' };

export const words: CategoryWords = {
  nouns: {
    en: {
      'screw, bolt, scr, machine screw, mach screw, fastener, capscrew, screws, bolts, mounting screw, fixing screw, cross screw, setting screw, fixing bolt':
        {},
      'cap screw': { head: 'socket-cap' },
      'shcs, socket cap screw, socket head cap screw, socket head screw, hex socket cap screw, allen bolt, allen screw, allen head screw, hexagon socket head cap screw, sock hd cap screw, cap head screw, socket screw, soc hd cap scr, soc cap screw, shc screw, shc':
        cap,
      'lhcs, low head cap screw, low head socket cap screw, low profile cap screw, low head screw, low profile socket head cap screw, low profile screw':
        low,
      'hex lag screw, hex lag bolt': { head: 'hex', type: 'wood' },
      'hhcs, hhms, hhb, hcs, hex cap screw, hex bolt, hex head screw, hexagon bolt, hexagon head screw, hex head bolt, hexagon screw, hex screw, hexagon head bolt':
        { head: 'hex' },
      'bhcs, bhscs, bhsc, bscs, sbhcs, sbhs, button head cap screw, button head socket screw, socket button head screw, button head socket cap screw':
        button,
      'button head screw, button screw': { head: 'button' },
      'fhcs, fhscs, fscs, flat head cap screw, socket flat head screw, flat head socket screw, socket countersunk screw, flat head socket cap screw, countersunk socket screw, fhsc, socket countersunk head screw, scfh, sfhcs, sfhs':
        csk,
      'fhms, fhs, flat head screw, countersunk screw, csk screw, flathead screw, flat screw, countersunk head screw':
        {
          head: 'countersunk',
        },
      'raised countersunk screw, oval head screw, raised csk screw, oval screw, raised countersunk head screw':
        { head: 'raised-countersunk' },
      ohms: { head: 'raised-countersunk' },
      'phms, pan head screw, pan screw': { head: 'pan' },
      'cheese head screw, fillister head screw, cheesehead screw, chms': { head: 'cheese' },
      'round head screw, rhms': { head: 'round' },
      fhws: { head: 'countersunk', type: 'wood' },
      rhws: { head: 'round', type: 'wood' },
      'truss head screw, mushroom head screw, thms': { head: 'truss' },
      'thumb screw, thumbscrew, knurled screw, knurled thumb screw, knurled head screw, wing screw, wing bolt, hand screw':
        { head: 'thumb' },
      'shoulder screw, shoulder bolt, stripper bolt, step screw, special step screw, shss, socket shoulder screw, socket head shoulder screw':
        { head: 'shoulder' },
      'flange bolt, flange screw, hex flange bolt, flanged bolt, hex flange screw': { head: 'hex-flange' },
      'self tapping screw, tapping screw, self tapper, sheet metal screw, thread forming screw, plastite screw, self-tapping screw, tapping scr, plastic screw':
        { type: 'self-tapping' },
      'wood screw, chipboard screw, woodscrew, deck screw, drywall screw, lag screw, lag bolt, coach screw': {
        type: 'wood',
      },
      'coach bolt, carriage bolt, eye bolt, u bolt, stud, stud bolt, banjo bolt, pivot bolt, hinge bolt, adjusting screw, adjustment screw, lock screw, locking screw, captive screw':
        {},
    },
    de: {
      'schraube, bolzenschraube, maschinenschraube, gewindeschraube, schr': {},
      'zylinderschraube mit innensechskant, innensechskantschraube, inbusschraube, inbus, imbusschraube, inbus schraube, zylinderkopfschraube mit innensechskant, zylinderschraube innensechskant':
        cap,
      'zylinderschraube, zylinderkopfschraube, zylschraube, zyl schraube, zyl schr': cylinder,
      'zylinderschraube mit schlitz': { head: 'cheese', drive: 'slotted' },
      'sechskantschraube, skt schraube, skt schr, sechskantschr, 6kt schraube, 6kt schr': { head: 'hex' },
      'senkschraube, senkkopfschraube': { head: 'countersunk' },
      'senkschraube mit innensechskant': csk,
      'linsensenkschraube, linsensenkkopfschraube': { head: 'raised-countersunk' },
      'linsenschraube, linsenkopfschraube, linsenschr': dome,
      flachkopfschraube: {},
      'halbrundschraube, rundkopfschraube': { head: 'round' },
      'rändelschraube, flügelschraube, daumenschraube': { head: 'thumb' },
      'passschraube, ansatzschraube, bundschraube, schulterschraube': { head: 'shoulder' },
      'flanschschraube, sechskantflanschschraube': { head: 'hex-flange' },
      'blechschraube, schneidschraube, gewindeformende schraube, gewindefurchende schraube, bohrschraube': {
        type: 'self-tapping',
      },
      'holzschraube, spanplattenschraube, spax': { type: 'wood' },
      kreuzschlitzschraube: { drive: 'phillips' },
      schlitzschraube: { drive: 'slotted' },
      torxschraube: { drive: 'torx' },
      'stiftschraube, ringschraube, augenschraube, hakenschraube, stellschraube, einstellschraube': {},
    },
    fr: {
      'vis, boulon, vis a metaux, vis metaux, vis machine': {},
      'vis chc, vis btr, vis a tete cylindrique hexagonale creuse, vis tete cylindrique six pans creux, vis cylindrique 6 pans creux, vis allen, vis 6 pans creux':
        cap,
      'vis bhc, vis tete bombee six pans creux': button,
      'vis fhc, vis tete fraisee six pans creux, vis tete fraisee hexagonale creuse': csk,
      'vis a tete hexagonale, vis tete hexagonale, vis th, vis hexagonale, vis h, vis tete h, vis hex': {
        head: 'hex',
      },
      'vis a embase, vis h a embase': { head: 'hex-flange' },
      'vis fbhc, vis tete basse': low,
      'vis tete ronde, vis a tete ronde, vis rl, vis ronde': { head: 'round' },
      'vis cbl, vis tete cylindrique bombee large': { head: 'pan' },
      'vis fs, vis fz': { head: 'countersunk' },
      'vis a tete fraisee, vis tete fraisee, vis fraisee, vis tf': { head: 'countersunk' },
      'vis a tete cylindrique, vis tete cylindrique, vis cylindrique, vis cyl': cylinder,
      'vis a tete bombee, vis tete bombee, vis bombee': dome,
      'vis a oreilles, vis moletee, vis papillon': { head: 'thumb' },
      'vis a epaulement, vis epaulee': { head: 'shoulder' },
      'vis autotaraudeuse, vis a tole, vis auto-taraudeuse, vis parker': { type: 'self-tapping' },
      'vis a bois': { type: 'wood' },
    },
    it: {
      'vite, viti, bullone, bulloni': {},
      'vite tcei, viti tcei, vite a brugola, viti a brugola, vite testa cilindrica esagono incassato, vite a testa cilindrica con esagono incassato':
        cap,
      'vite tbei, viti tbei': button,
      'vite tspei, viti tspei': csk,
      'vite te, viti te, vite a testa esagonale, vite testa esagonale': { head: 'hex' },
      'vite testa svasata, vite a testa svasata, vite svasata, viti svasate, viti testa svasata, vite tsp': {
        head: 'countersunk',
      },
      'vite testa bombata, vite a testa bombata': dome,
      'vite testa cilindrica, vite a testa cilindrica, vite tc, viti tc': cylinder,
      'vite testa tonda, vite a testa tonda': { head: 'round' },
      'vite flangiata, viti flangiate': { head: 'hex-flange' },
      'vite testa ribassata, vite a testa ribassata': low,
      'vite a farfalla, vite zigrinata, pomolo filettato': { head: 'thumb' },
      'vite a colletto, vite calibrata': { head: 'shoulder' },
      'vite autofilettante, viti autofilettanti': { type: 'self-tapping' },
      'vite per legno, viti per legno, vite da legno': { type: 'wood' },
    },
    es: {
      'tornillo, perno, bulon, tornillos': {},
      'tornillo allen, tornillo cabeza allen, tornillo de cabeza cilindrica con hexagono interior': cap,
      'tornillo hexagonal, tornillo cabeza hexagonal, tornillo de cabeza hexagonal': { head: 'hex' },
      'tornillo avellanado, tornillo cabeza avellanada, tornillo de cabeza avellanada': {
        head: 'countersunk',
      },
      'tornillo de cabeza redonda, tornillo cabeza redonda': { head: 'round' },
      'tornillo mariposa, tornillo moleteado': { head: 'thumb' },
      'tornillo autorroscante, tornillo rosca chapa, tornillo de rosca chapa, tornillo autoperforante': {
        type: 'self-tapping',
      },
      'tornillo para madera, tornillo de madera, tirafondo': { type: 'wood' },
    },
    nl: {
      'schroef, schroeven, bout, bouten, machineschroef, metaalschroef': {},
      'inbusbout, inbusschroef, cilinderkopschroef met binnenzeskant, binnenzeskantbout': cap,
      'cilinderkopschroef, cilinderschroef, cilinderkopbout': cylinder,
      'flensbout, zeskantflensbout': { head: 'hex-flange' },
      'zeskantbout, zeskantschroef': { head: 'hex' },
      'verzonken schroef, platkopschroef, verzonkenkopschroef, verzonken bout': { head: 'countersunk' },
      'bolkopschroef, bolkopbout': dome,
      'platverzonken schroef': { head: 'countersunk' },
      'bolverzonken schroef, lenskopschroef, bolverzonkenkopschroef': { head: 'raised-countersunk' },
      'vleugelschroef, kartelschroef, vleugelbout': { head: 'thumb' },
      'pasbout, kraagbout': { head: 'shoulder' },
      'plaatschroef, zelftapper, parker, zelftappende schroef': { type: 'self-tapping' },
      'houtschroef, spaanplaatschroef': { type: 'wood' },
      kruiskopschroef: { drive: 'phillips' },
    },
    ja: {
      'ネジ, ねじ, ビス, ボルト, 螺子, 小ねじ, 小ネジ, 止メビス': {},
      'キャップボルト, キャップスクリュー, 六角穴付ボルト, 六角穴付きボルト, 六角穴ボルト, キャップネジ, キャップねじ':
        cap,
      '低頭ボルト, 低頭キャップボルト, 低頭六角穴付ボルト, 低頭ネジ, 低頭ねじ, 低頭キャップスクリュー, 極低頭ボルト':
        low,
      'フランジボルト, フランジ付六角ボルト': { head: 'hex-flange' },
      六角ボルト: { head: 'hex' },
      '皿ネジ, 皿ねじ, 皿ビス, 皿小ねじ, 皿小ネジ': { head: 'countersunk' },
      '丸皿ネジ, 丸皿ねじ, 丸皿ビス': { head: 'raised-countersunk' },
      'ナベネジ, なべねじ, ナベビス, なべ小ねじ, ナベ小ネジ, 鍋ネジ, なべネジ': { head: 'pan' },
      'トラスネジ, トラスビス, トラス小ネジ': { head: 'truss' },
      'トラスPタイト, トラスBタイト': { head: 'truss', type: 'self-tapping' },
      'ナベPタイト, ナベBタイト, ナベSタイト, なべPタイト': { head: 'pan', type: 'self-tapping' },
      '皿Pタイト, 皿Bタイト, 皿Sタイト': { head: 'countersunk', type: 'self-tapping' },
      'バインドネジ, バインドねじ, バインド小ねじ, バインド小ネジ, バインドビス': {},
      'ボタンボルト, ボタンキャップ, ボタンキャップボルト, ボタンネジ, 六角穴付ボタンボルト, ボタンキャップスクリュー':
        button,
      '皿ボルト, 皿キャップボルト, 六角穴付皿ボルト, 皿キャップスクリュー': csk,
      '丸ネジ, 丸ねじ, 丸小ねじ, 丸ビス': { head: 'round' },
      '平ネジ, 平小ねじ, 丸平小ねじ, 平ビス': { head: 'cheese' },
      'タッピングネジ, タッピングビス, タッピンねじ, タッピング, Pタイト, Bタイト, Sタイト, Cタイト, バインドPタイト, バインドBタイト, バインドSタイト, Pタイトネジ, Bタイトネジ, Pタイトビス':
        { type: 'self-tapping' },
      '木ネジ, 木ねじ': { type: 'wood' },
      'つまみネジ, 蝶ネジ, ローレットネジ, 蝶ボルト': { head: 'thumb' },
      '段付ネジ, 段付きネジ, 段付ビス': { head: 'shoulder' },
    },
  },
  modifiers: {
    en: {
      'socket head, socket hd, soc hd, sock hd, sckt hd, cap head, socket cap, soc cap, cap hd, hex socket head, hexagon socket head, allen head, allen hd':
        cap,
      'low head, low hd, low profile, low head socket, low profile head': low,
      cap: { head: 'socket-cap' },
      'cs cap, csk cap, countersunk cap, flat socket, countersunk socket, csk socket': csk,
      'button cap, socket button': button,
      'cylinder head, cylindrical head, cyl head, cyl hd': cylinder,
      'button head, button hd, bh, button, btn, btn hd, btn head, bttn hd, but hd': { head: 'button' },
      'flat head, flathead, countersunk, csk, flat csk head, flat csk hd, countersunk head, csk head, csk hd, cs, c/s, c sunk, csunk, ctsk, cntsk, countersink, countersink head, cs head, cs hd, fh, fhd, flhd, flat hd, fl hd, flat, tapered head, tapered screw head, flt hd':
        { head: 'countersunk' },
      'raised countersunk head, raised csk head, raised csk hd, rsd csk, rsd csk hd, oval csk, oval countersunk, ovhd, ov hd, oval csk hd, raised countersunk, oval head, oval hd, raised csk, oval, oval csk head':
        {
          head: 'raised-countersunk',
        },
      'pan head, pan hd, pan, panhd, pnhd, pn hd, pnh, pnhd, ph head, panhead': { head: 'pan' },
      'cheese head, cheese hd, cheesehead, ch hd, chhd, ch head, chs hd, filister head, filister, fillister head screw, cheese, fillister head, fillister, fil hd, fillister hd':
        { head: 'cheese' },
      'truss head, truss, truss hd, trhd, tr hd, trs hd, mushroom head, mushroom': { head: 'truss' },
      'round head, round hd, rd hd, rdhd, rd head, round, rnd hd, rnd head, rhd': { head: 'round' },
      'hex head, hexagon head, hex hd, hexhd, hx hd, hexagonal head, hexagon hd, hex washer head, hwh, hex washer hd, indented hex, hex indented washer head':
        { head: 'hex' },
      'hex, hexagon, hexagonal': { hexagon: true },
      'flange head, hex flange, hex flange head, flanged head': { head: 'hex-flange' },
      'thumb, knurled, knurled head, wing': { head: 'thumb' },
      'shoulder, stepped, step': { head: 'shoulder' },
      'hex socket, hexagon socket, hexagonal socket, hex soc, allen, allen drive, hex drive, internal hex, internal hexagon, hex recess, inbus, socket':
        {
          drive: 'hex-socket',
        },
      'phillips, philips, philipps, phillip, cross slotted, ph3, x-recess, cross recess h, phl, phlps, cross recess, cross recessed, cross head, crosshead, cross, ph drive, phil, phillips head, philips head, phillips drive, cross-head, ph1, ph2, ph0, cross slot':
        { drive: 'phillips' },
      ph: { ph: true },
      'pozidriv, pozi, pz, pozidrive, posidriv, posidrive, pozidrv, posi, pz0, pz1, pz2, pz3, cross recess z, supadriv':
        { drive: 'pozidriv' },
      'slotted, slot, sl, slotted head, slotted hd, slot head, slot hd, slot drive, straight slot, single slot, slttd, slt':
        { drive: 'slotted' },
      'torx, hexalobular, hexalobular socket, six lobe, star drive, star recess, torx drive, t3, t4, t5, t6, t7, t8, t9, t10, t15, t20, t25, t27, t30, t40, t45, t50, tx5, tx6, tx8, tx10, tx15, tx20, tx25, tx30, tx40, tx, 6 lobe, 6-lobe, hexalobe, six-lobe':
        {
          drive: 'torx',
        },
      'square drive, robertson, square recess, square socket, sq drive': { drive: 'square' },
      'self tapping, tapping, self-tapping, thread forming, self tapper, thread cutting, sheet metal, tap': {
        type: 'self-tapping',
      },
      'wood, chipboard': { type: 'wood' },
    },
    de: {
      'zylinderkopf, zyl kopf, zyl-kopf': cylinder,
      'niedriger kopf, mit niedrigem kopf, niedrig, flacher zylinderkopf': { head: 'low-socket-cap' },
      'vierkantkopf, innenvierkant': { drive: 'square' },
      'bund, mit bund, flansch, mit flansch': { head: 'hex-flange' },
      'innensechskant, inbus, imbus, isk, ihk, in-6kt, innen-6kt, i-6kt, mit innensechskant, innen sechskant, innensechskt':
        {
          drive: 'hex-socket',
        },
      'senkkopf, senk, senkk, senk-kopf, sk': { head: 'countersunk' },
      'linsensenkkopf, linsensenk': { head: 'raised-countersunk' },
      'linsenkopf, linsen, linse': dome,
      flachkopf: {},
      'halbrundkopf, rundkopf, halbrund': { head: 'round' },
      'flachrundkopf, flachrund': { head: 'truss' },
      'sechskantkopf, sechskant, 6-kant, 6kt, skt, sechskt, aussensechskant': { head: 'hex' },
      'rändel, rändelkopf, flügel': { head: 'thumb' },
      'kreuzschlitz, kreuz, kreuzschlitz h, kreuzschl, kreuzschlitz ph, mit kreuzschlitz, kreuzschlitz-h': {
        drive: 'phillips',
      },
      'kreuzschlitz z, kreuzschlitz pz, kreuzschlitz-z, pozidriv': { drive: 'pozidriv' },
      'schlitz, mit schlitz, längsschlitz, geschlitzt': { drive: 'slotted' },
      'innensechsrund, innenvielzahn, isr, innen-torx, i-torx, torx, mit torx': { drive: 'torx' },
      ansatz: { head: 'shoulder' },
      'blech, selbstschneidend, gewindefurchend': { type: 'self-tapping' },
      holz: { type: 'wood' },
    },
    fr: {
      'tete fraisee, fraisee, tf, t fraisee, frais': { head: 'countersunk' },
      'tete fraisee bombee, fraisee bombee, tfb': { head: 'raised-countersunk' },
      'tete bombee, bombee': dome,
      'tete cylindrique, cylindrique, tete cyl': cylinder,
      'tete basse': { head: 'low-socket-cap' },
      'tete goutte de suif, goutte de suif': { head: 'raised-countersunk' },
      'tete plate cylindrique large, cbl': { head: 'pan' },
      'moletee, a tete moletee': { head: 'thumb' },
      epaulee: { head: 'shoulder' },
      'a embase, embase': { head: 'hex-flange' },
      'tete ronde': { head: 'round' },
      'tete hexagonale, hexagonale, tete hex, th': { head: 'hex' },
      'chc, btr': cap,
      bhc: button,
      fhc: csk,
      'six pans creux, a six pans creux, 6 pans creux, 6pc, hexagonale creuse, a hexagonale creuse, hex creuse, empreinte hexagonale, hexagonal creux, allen, btr creux':
        { drive: 'hex-socket' },
      'cruciforme, empreinte cruciforme, cruci, phillips, empreinte phillips': { drive: 'phillips' },
      'cruciforme pozidriv, empreinte pozidriv, pozidriv, pozi, cruciforme z': { drive: 'pozidriv' },
      'fendue, tete fendue, a fente, fente': { drive: 'slotted' },
      'torx, empreinte torx, six lobes, a six lobes, 6 lobes': { drive: 'torx' },
      'autotaraudeuse, auto-taraudeuse, autoformeuse, a tole': { type: 'self-tapping' },
      'a bois, bois': { type: 'wood' },
    },
    it: {
      'testa svasata, svasata, svasate, tsp, testa piana svasata': { head: 'countersunk' },
      'testa svasata con calotta, svasata calotta, svasata bombata, tgs': { head: 'raised-countersunk' },
      'testa ribassata, ribassata': { head: 'low-socket-cap' },
      'zigrinata, a testa zigrinata': { head: 'thumb' },
      'con flangia, flangiata': { head: 'hex-flange' },
      tcei: cap,
      tbei: button,
      tspei: csk,
      'testa esagonale, esagonale, te': { head: 'hex' },
      'testa cilindrica, cilindrica, tc': cylinder,
      'testa bombata, bombata': dome,
      'testa tonda, tonda': { head: 'round' },
      'esagono incassato, con esagono incassato, cava esagonale, con cava esagonale, esagono interno, brugola, a brugola':
        {
          drive: 'hex-socket',
        },
      'a croce, impronta a croce, croce, con croce, phillips, intaglio a croce, taglio a croce': {
        drive: 'phillips',
      },
      'pozidriv, croce pozidriv, croce pz': { drive: 'pozidriv' },
      'a taglio, taglio, con intaglio, intaglio, con taglio': { drive: 'slotted' },
      'torx, esalobato, cava torx, impronta torx': { drive: 'torx' },
      'autofilettante, autofilettanti': { type: 'self-tapping' },
      'per legno, da legno': { type: 'wood' },
    },
    es: {
      'cabeza avellanada, avellanado, avellanada, cab avellanada': { head: 'countersunk' },
      'cabeza gota de sebo, gota de sebo, avellanada abombada': { head: 'raised-countersunk' },
      'cabeza hexagonal, hexagonal, cab hexagonal, cab hex': { head: 'hex' },
      'cabeza cilindrica, cilindrica, cab cilindrica': cylinder,
      'cabeza redonda, cab redonda': { head: 'round' },
      'cabeza alomada, alomado, alomada': { head: 'pan' },
      'cabeza abombada, abombado, abombada, cabeza boton': { head: 'button' },
      'cabeza baja': { head: 'low-socket-cap' },
      'cabeza allen': cap,
      'moleteado, moleteada, mariposa': { head: 'thumb' },
      'con brida, con arandela estampada': { head: 'hex-flange' },
      'hexagono interior, hexagonal interior, allen, hueco hexagonal, hexagono embutido': {
        drive: 'hex-socket',
      },
      'phillips, philips, estrella, cruz, de estrella, en cruz': { drive: 'phillips' },
      'pozidriv, pozi': { drive: 'pozidriv' },
      'ranurado, ranura, ranurada, con ranura': { drive: 'slotted' },
      torx: { drive: 'torx' },
      'autorroscante, rosca chapa': { type: 'self-tapping' },
      'para madera, de madera': { type: 'wood' },
    },
    nl: {
      'verzonken kop, verzonken, platkop, platverzonken, vk': { head: 'countersunk' },
      'bolverzonken, bolverzonken kop, lenskop': { head: 'raised-countersunk' },
      'cilinderkop, cilinder, cil kop': cylinder,
      'bolkop, bolle kop': dome,
      'lage kop, laagkop': { head: 'low-socket-cap' },
      'rondkop, ronde kop, halfrond': { head: 'round' },
      'zeskantkop, zeskant, zesk': { head: 'hex' },
      'kartel, kartelkop, vleugel': { head: 'thumb' },
      'flens, met flens': { head: 'hex-flange' },
      'binnenzeskant, met binnenzeskant, inwendig zeskant, inbus, binnen-zeskant': { drive: 'hex-socket' },
      'kruiskop, kruis, kruisgleuf, kruissleuf, phillips, met kruiskop': { drive: 'phillips' },
      'pozidriv, kruiskop pz, kruisgleuf z': { drive: 'pozidriv' },
      'zaagsnede, gleuf, gleufkop, met gleuf, sleuf, zaaggleuf, met zaagsnede': { drive: 'slotted' },
      'torx, binnenzesrond': { drive: 'torx' },
      'zelftappend, zelftappende': { type: 'self-tapping' },
      hout: { type: 'wood' },
    },
    ja: {
      '皿, サラ, 皿頭': { head: 'countersunk' },
      丸皿: { head: 'raised-countersunk' },
      低頭: { head: 'low-socket-cap' },
      'ボタン, ボタン頭': { head: 'button' },
      キャップ: { head: 'socket-cap' },
      '六角, 六角頭': { hexagon: true },
      'つまみ, ローレット, 蝶': { head: 'thumb' },
      'ナベ, なべ, 鍋, ナベ頭': { head: 'pan' },
      トラス: { head: 'truss' },
      '六角穴付, 六角穴付き': { drive: 'hex-socket' },
      '十字穴, 十字, プラス, 十字穴付, 十字穴付き': { drive: 'phillips' },
      ポジドライブ: { drive: 'pozidriv' },
      'トルクス, ヘックスローブ, ヘクサロビュラ, 六ロブ': { drive: 'torx' },
      '六角穴, ヘキサゴン': { drive: 'hex-socket' },
      'マイナス, すりわり付, すりわり付き, すり割り付, すり割付, すりわり': { drive: 'slotted' },
      'タッピング, タッピン': { type: 'self-tapping' },
      木工用: { type: 'wood' },
      '段付, 段付き': { head: 'shoulder' },
    },
  },
  plain: {
    en: 'screw driver, screwdriver, hex key, allen key, torx key, hex wrench, allen wrench, hex driver, torx driver, screw hook, screw eye, screw cap, screw cover, bolt cutter, screw terminal, screw clamp, lead screw, leadscrew, ball screw, screw housing, screw extractor, screw jack, screw insert, screw plug, screw gauge, screw set, screw kit, power screw, worm screw',
    de: 'schraubendreher, schraubenzieher, schraubenschlüssel, schraubstock, spindelschraube, schraubkappe, schraubdeckel, verschlussschraube, verschlußschraube, schraubenset, schraubensatz, schraubzwinge, kugelgewindespindel, schraubenabdeckung',
    fr: 'tournevis, vis a billes, vis mere, vis trapezoidale',
    it: 'giravite, cacciavite, vite a ricircolo, vite trapezoidale',
    es: 'destornillador, husillo',
    nl: 'schroevendraaier, boutensnijder, schroefdop',
    ja: 'ネジ蓋, ドライバー, ボールねじ, ボールネジ',
  },
};
