import type { Language } from '../reading/dictionary.ts';

/**
 * Words of finish, colour, place and rank that stand beside any part and change neither its kind nor its size. A plated or
 * coated part is not of what covers it. The bodies of standards are known words too. Common practice.
 */
export const finishWords: Record<Language, string> = {
  en: `thread, threads, coarse thread, din, iso, jis, ansi, asme, type, form, zinc, zinc plated, zinc-plated, zn, zp, bzp, bright zinc plated, galvanised, galvanized, galv, nickel plated, chrome plated, chromed, tin plated, brass plated, copper plated, cadmium plated,
    ptfe coated, teflon coated, rubber coated, nylon coated, nylon patch, plated, coated, black oxide, blackened, black, phosphated, passivated, anodised, anodized, painted, polished, ground, hardened, tempered, annealed, plain finish, finish,
    white, red, blue, green, grey, gray, yellow, orange, silver, gold, brown, natural, clear,
    upper, lower, top, bottom, front, rear, back, center, centre, middle, main, sub, side, end, drive, driven, idle, idler, small, large, big, medium, mini, short, thick, thin, heavy, heavy duty, light, high, special, standard size, std, spare, new, old type, new type, precision, quality, metric, imperial, inch size,
    first, second, 1st, 2nd, complete, comp, cpl, music, piano, single, double, twin, triple, fine, fine thread, coarse, full thread, fully threaded, partially threaded, with head, headless, male, female, hollow, solid, deep groove, radial, annular, sealed, greased, dry, fixed, adjustable`,
  de: `verzinkt, galv, galvanisch verzinkt, verz, vernickelt, verchromt, brüniert, schwarz, geschwärzt, phosphatiert, passiviert, eloxiert, lackiert, poliert, geschliffen, gehärtet, vergütet, blank, roh,
    weiss, rot, blau, grün, grau, gelb, orange, silber,
    oben, unten, vorn, vorne, hinten, obere, obererer, oberer, oberes, untere, unterer, unteres, vordere, vorderer, hintere, hinterer, mitte, mittlere, klein, kleine, kleiner, groß, grosse, grosser, kurz, lang, dick, dünn, neu, alt, komplett, kompl, kpl, einfach, doppelt, fein, feingewinde, grob, metrisch, zöllig, gross, aussen, innen`,
  fr: `zingue, zinguee, zing, zn, nickele, nickelee, chrome, chromee, bruni, brunie, noir, noire, phosphate, passive, anodise, anodisee, peint, poli, polie, rectifie, trempe, trempee, brut,
    blanc, blanche, rouge, bleu, bleue, vert, verte, gris, grise, jaune, argent,
    superieur, superieure, inferieur, inferieure, avant, arriere, haut, bas, milieu, central, centrale, principal, principale, petit, petite, grand, grande, court, courte, epais, epaisse, mince, neuf, complet, complete, simple, double, fin, metrique, sortie, entree`,
  it: `zincato, zincata, zincate, zincati, zinc, nichelato, nichelata, cromato, cromata, brunito, brunita, brunite, nero, nera, fosfatato, anodizzato, verniciato, lucidato, rettificato, rettificata, temprato, temprata, grezzo,
    bianco, bianca, rosso, rossa, blu, verde, grigio, grigia, giallo, argento,
    superiore, inferiore, anteriore, posteriore, centrale, principale, piccolo, piccola, grande, corto, corta, lungo, lunga, spesso, sottile, nuovo, completo, completa, semplice, singolo, doppio, doppia, fine, metrico`,
  es: `zincado, zincada, cincado, cincada, galvanizado, galvanizada, niquelado, niquelada, cromado, cromada, pavonado, pavonada, negro, negra, fosfatado, anodizado, pintado, pulido, rectificado, rectificada, templado, templada, bruto,
    blanco, blanca, rojo, roja, azul, verde, gris, amarillo, plata,
    superior, inferior, delantero, delantera, trasero, trasera, central, principal, pequeno, pequena, grande, corto, corta, grueso, gruesa, fino, fina, nuevo, completo, completa, sencillo, simple, doble, metrico, metrica`,
  nl: `verzinkt, gegalvaniseerd, vernikkeld, verchroomd, gebruneerd, zwart, zwarte, gefosfateerd, geanodiseerd, gelakt, gepolijst, geslepen, gehard, blank,
    wit, witte, rood, rode, blauw, blauwe, groen, groene, grijs, grijze, geel, zilver,
    boven, onder, voor, achter, bovenste, onderste, voorste, achterste, midden, middelste, klein, kleine, groot, grote, kort, korte, dun, dunne, dikke, nieuw, compleet, cpl, enkel, enkele, dubbel, dubbele, fijn, metrisch`,
  ja: `黒, 白, 赤, 青, 緑, 灰, 黄, 銀, 金, 黒染, 黒染め, ユニクロ, クロメート, ニッケル, ニッケルメッキ, メッキ, 三価, クロム, 焼入, 研磨, 無電解ニッケル,
    上, 下, 前, 後, 中, 大, 小, 長, 短, 太, 細, 内, 外, 新, 旧, 上部, 下部, 前側, 後側, 付, 付き, 用, 型, 形, 組, 完成`,
};
