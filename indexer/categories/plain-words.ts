import type { Language } from '../reading/dictionary.ts';

/** Nouns that make a line a part of no measured kind, whatever words stand before them: a bearing cap is a cap. */
export const plainNouns: Record<Language, string> = {
  en: `ring, bottle, cap, cover, plate, holder, housing, case, casing, body, frame, base, bracket, support, mount, mounting, lever, knob, handle, arm,
    box, tool, key, wrench, spanner, driver, puller, kit, assembly, assy, asm, guide, seat, hub, wheel, pulley, belt, stop, stopper, block, grip,
    spool, rotor, drum, crank, cam, pawl, ratchet, dog, clutch, coupling, collar, spacer, standoff, stand-off, insert, rivet, magnet, motor, fan, cable, wire, wiring,
    harness, connector, terminal, switch, sensor, pcb, board, battery, led, lamp, bulb, fuse, resistor, capacitor, display, lens,
    hose, tube, tubing, pipe, fitting, valve, piston, cylinder, pump, filter, tank, nozzle, hook, eye, eyelet, chain, sprocket, rack, rail, extrusion, profile,
    sheet, panel, door, lid, hinge, latch, clip, clamp, strap, band, sleeve, liner, pad, foot, feet, label, sticker, decal, nameplate, name plate, badge, manual, tape,
    glue, adhesive, screw driver, pliers, brush, blade, knife, needle, bobbin, pedal, fork, bail, bail arm, line roller, roller, rod holder, seatpost, stem, spoke, rim, tyre, tire,
    reel seat, side plate, sideplate, retainer, adapter, adaptor, carrier, cage, cup, cone, race, shell, yoke, link, linkage, slider, slide, carriage, bed, column,
    crosswind block, worm shaft cover, trigger, button cover, actuator, indicator, gauge, dial, ring gear cover, counterweight, weight, balance, bridge, spider, disc, disk, brake shoe,
    brake, caliper, brake pad, lining, drive train, gearbox, transmission, winch, hoist, handle assembly, frame assembly, spool assembly, drag knob, drag, click, clicker,
    groove, keyring, key ring, pillar, hex pillar, pillar hex, hex standoff, push button, nut splitter, snap fastener, press stud, button, push buttons, washer fluid, spring scale, ballast weight, pipe plug, woodruff key, end stop, limit switch, threaded spacer,
    zip tie, ziptie, cable tie, cable clip, foam, rod tip, tip, ferrule, plug, socket, jack, stud plate, anchor, wall plug, dowel plate, bushing plate, mat, tray, drawer, shelf, foot pad, caster, castor,
    heatsink, heat sink, hotend, extruder, nozzle, bowden, printhead, print head, power supply, psu, relay, controller, stepper, stepper motor, servo, encoder, camera, antenna, speaker,
    glass, mirror, filament, tie, gusset, shroud, duct, skirt, mask, armature, stator, commutator, carbon brush, cord, plug top, guard, shield, deflector, hood, bumper, reflector, chute, funnel, gland, oil cup, oiler, nipple, grease nipple,
    handwheel, hand wheel, crankshaft cover, connecting rod, conrod, feed dog, presser foot, needle plate, tensioner, take-up lever, bobbin case, idler, idler pulley, timing belt, v belt, jaw, chuck, collet, arbor, mandrel, tool rest, toolholder
    , blanking plate, end cap, end plate, cover plate, face plate, faceplate, back plate, backplate, bottom plate, top plate, mounting plate, stopper plate, lock plate, key plate, click plate, din clip, rail clip, knob cap, screw cap`,
  de: `ring, lagerring, stopfbuchse, deckel, abdeckung, kappe, gehäuse, halter, halterung, platte, hebel, knopf, griff, kurbel, rad, rolle, riemen, zahnriemen, keilriemen, bügel, spule, spulenkern, rotor, motor, kabel, schalter,
    stecker, buchse elektrisch, klemme, schelle, schlauch, rohr, zange, schlüssel, werkzeug, abzieher, dreher, kasten, rahmen, fuß, sockel, träger, bock, führung, anschlag, sperrklinke, klinke, kupplung, nocken, exzenter, trommel,
    kette, haken, öse, band, bremse, bremsbelag, bremsbacke, bremsklotz, belag, abstandshalter, distanzhülse, abstandshülse, distanzbolzen, distanzstück, hülse, rohrhülse, niete, niet, passfeder, paßfeder, magnet, schild, typenschild, aufkleber, etikett, satz, set, montagesatz, baugruppe,
    blech, leiste, schiene, profil, winkel, lasche, gabel, pedal, sattel, felge, speiche, reifen, mantel, nadel, messer, klinge, bürste, kohlebürste, pumpe, ventil, kolben, zylinder, filter, düse, behälter,
    tank, lampe, birne, sicherung, platine, sensor, anzeige, skala, zeiger, handrad, riemenscheibe, antrieb, getriebe, winde, seil, seilrolle, rohling, einsatz, gewindeeinsatz, spannrolle, umlenkrolle, laufrolle, einlage, klotz, stopfen, verschluss, verschluß, aufnahme, schieber, schlitten, klammer, stange, bremstrommel, spindel, ritzelabdeckung, nutenkeil, keil, spannfutter, futter, backe, stütze`,
  fr: `couvercle, capot, cache, carter, boitier, corps, support, plaque, levier, bouton, poignee, manivelle, roue, poulie, courroie, bobine, rotor, moteur, cable, interrupteur, connecteur, collier, tube, tuyau, cle, pince, outil,
    extracteur, cadre, pied, socle, guide, butoir, cliquet, embrayage, came, tambour, chaine, crochet, oeillet, bande, frein, plaquette, patin, entretoise, manchon, rivet, clavette, aimant, etiquette, autocollant, kit, jeu de, ensemble, equerre, profile,
    tole, panneau, charniere, loquet, fourche, pedale, selle, jante, rayon, pneu, aiguille, lame, brosse, balai, pompe, soupape, piston, cylindre, filtre, buse, reservoir, lampe, ampoule, fusible, carte, capteur, cadran, volant, galet, axe de roue, bague entretoise, ventilateur, ventilateurs, embout, bouchon, chape, coussin, semelle, attache, tige, barre, flasque, cage, cuvette, mandrin, machoire`,
  it: `coperchio, calotta, carter, cassa, corpo, supporto, piastra, leva, pomello, manopola, maniglia, manovella, ruota, puleggia, cinghia, bobina, rotore, motore, cavo, interruttore, connettore, fascetta, tubo, chiave, pinza, attrezzo,
    estrattore, telaio, piede, guida, fermo, nottolino, frizione, camma, tamburo, catena, gancio, occhiello, nastro, freno, pastiglia, pattino, distanziale, manicotto, rivetto, chiavetta, linguetta, magnete, etichetta, kit, gruppo, staffa, profilo,
    lamiera, pannello, cerniera, forcella, pedale, sella, cerchio, raggio, pneumatico, ago, lama, spazzola, pompa, valvola, pistone, cilindro, filtro, ugello, serbatoio, lampada, fusibile, scheda, sensore, quadrante, volantino, rullo, tappo, archetto, barra, asta, mandrino, ganascia`,
  es: `tapa, cubierta, carcasa, caja, cuerpo, soporte, placa, palanca, boton, perilla, mango, manivela, rueda, polea, correa, bobina, carrete, rotor, motor, cable, interruptor, conector, abrazadera, tubo, llave, alicate, alicates, herramienta,
    extractor, bastidor, pie, guia, tope, trinquete, embrague, leva, tambor, cadena, gancho, ojal, cinta, freno, pastilla, zapata, separador, distanciador, manguito, remache, chaveta, iman, etiqueta, kit, juego, conjunto, escuadra, perfil,
    chapa, panel, bisagra, horquilla, pedal, sillin, llanta, radio, neumatico, aguja, cuchilla, cepillo, escobilla, bomba, valvula, piston, cilindro, filtro, boquilla, deposito, lampara, fusible, sensor, esfera, volante, rodillo, tapon, barra, varilla, mordaza, mandril`,
  nl: `naaf, naven, deksel, kap, afdekking, huis, behuizing, houder, plaat, hendel, knop, handvat, greep, slinger, wiel, poelie, riem, spoel, rotor, motor, kabel, schakelaar, stekker, klem, slang, buis, sleutel, tang, gereedschap,
    trekker, frame, voet, geleider, aanslag, pal, koppeling, nok, trommel, ketting, haak, oog, band, rem, remblok, remvoering, afstandsbus, afstandhouder, huls, klinknagel, spie, magneet, sticker, set, samenstel, beugel, profiel,
    scharnier, vork, pedaal, zadel, velg, spaak, naald, mes, borstel, pomp, klep, zuiger, cilinder, filter, tank, lamp, zekering, wijzer, handwiel, rol, stop, dop, steun, staaf, schijf, remschijf, blok, kast, lier`,
  ja: `ケース, カバー, ホルダー, プレート, キャップ, ノブ, レバー, アーム, ハンドル, ボディ, ボデー, スプール, ベルト, タイミングベルト, モーター, 本体, フレーム, ベース, ブラケット, ローター, クランク, カム, ストッパー, クラッチ, カラー, スペーサー,
    スリーブ, マグネット, 磁石, ケーブル, スイッチ, センサー, 基板, ホース, チューブ, パイプ, バルブ, ピストン, シリンダー, フィルター, フック, チェーン, レール, パネル, ローラー, ラインローラー, ベール, ガイド, グリップ, ラベル, シール銘板, 銘板, 工具, レンチ, ドライバー,
    セット, 一式, プーリー, キー, リベット, ラチェット, 爪, ツメ, 蓋, フタ, 台, 脚, ブレーキ, パッド, ツマミ, つまみ, フレーム組, ブロック, リテーナー, スライダー, ヨーク, リング`,
};

/** Ways a line says that what follows only qualifies the part: screw *for* bearing cap. */
export const prepositions: Record<Language, string> = {
  en: 'for, of, in, with, without, w, w/o, from, on, to, at, under, between, used with, used to, used for, fits, incl, including, not including, holds, secures, attaches, made of',
  de: 'für, zu, zum, zur, von, vom, mit, ohne, aus, an, am, auf, unter, bei, im, in, inkl',
  fr: 'pour, de, du, des, d, avec, sans, en, sur, sous, a, au, aux',
  it: 'per, di, del, della, dei, degli, delle, con, senza, in, su, da, dal, d',
  es: 'para, de, del, con, sin, en, sobre, por',
  nl: 'voor, van, met, zonder, op, aan, in, onder, uit, t.b.v.',
  ja: '用',
};

/** Kits, assortments and open choices: several parts under one name. */
export const looseWords: Record<Language, string> = {
  en: 'various, assorted, assortment, misc, miscellaneous, as required sizes, several, or similar, tbd, tbc, unknown, to be confirmed, see sketch, mixed, selection, any',
  de: 'diverse, verschiedene, sortiment, div, unbekannt',
  fr: 'divers, assortiment, inconnu',
  it: 'vari, varie, assortimento, assortiti',
  es: 'varios, varias, surtido, desconocido',
  nl: 'diverse, assortiment, onbekend',
  ja: '各種, 不明',
};
