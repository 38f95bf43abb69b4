import type { ColumnMeaning } from './column-meanings.ts';

/** What a column of a parts list holds, as {@link ColumnMeaning} says. */
export type Role = ColumnMeaning;

/** Each role with how much a header word speaks for it, 0 to 1. */
export type Roles = Partial<Record<Role, number>>;

/**
 * Header words of parts lists in English, German, French, Italian, Spanish, Dutch and Japanese (common practice of
 * printed lists), folded as {@link foldHeader} does. A phrase under two roles is ambiguous: the cells decide.
 */
const words: [Role, number, string][] = [
  [
    'ref',
    1,
    `key, key no, key nr, ref nr, index nr, item nr, seq, seq no, sequence, illus no, illustration, dwg no, dwg pos, drawing no, bubble, bubble no,
     tag, tag no, balloon nr, bild, abb, abbildung, abb nr, ziffer, kennziffer, kennz, zeichn pos, pos zeichnung, lfd, laufende nr, stelle,
     rep n, n rep, numero repere, ref vue, repere n, tav pos, tavola pos, n pos, ref plano, marca n, posicion n, n posicion, positienr, volgnummer,
     図番号, 見出し番号, 見出番号, キー番号, キーno, 見出no, 項目番号, 符号番号, ref no, item no, index no, pos, pos nr, pos no, posnr, position, fig, fig no, balloon,
     balloon no, callout, find no, diagram no, illustration no, lfd nr, bild nr, bildnr, positionsnummer, rep, repere, n repere,
     poste, rif, riferimento, posizione, n rif, marca, posicion, volgnr, positie, tek nr, 照合番号, 見出番号, 照番,
     符号, 図番, 展開図番号, 図示番号, 見出し番号, 見出番号, 見出し`,
  ],
  [
    'ref',
    0.8,
    'no, nr, n, num, number, ref, item, numero, nummer, 番号, id, index, key number, teil nr, 項番',
  ],
  ['ref', 0.5, 'reference, riferimento n, referencia, teil'],
  ['ref', 0.3, 'code'],
  [
    'partNumber',
    1,
    `part no, parts no, material no, mfr part no, mfg part no, manufacturer part no, manufacturer part number, spare part no, spare no,
     spares no, cat nr, catalogue nr, product no, product code, product number, order code, ordering code, stock code, part ref, ref code,
     e nr, et nummer, mat nummer, ersatznummer, produktnummer, warennummer, identnummer, identnr, ref piece, ref article, no article,
     n article, reference article, n de commande, no de commande, numero dordine, n dordine, dordine, cod ric, codice pezzo, cod art, n articolo,
     n pieza, no pieza, n de referencia, numero de referencia, codigo de pieza, cod pieza, cod articulo, art nummer, ond nr,
     productnummer, productcode, パーツナンバー, 注文コード, 注文番号, 品目番号, 製品番号, 部品no, parts number, parts code, part number, part nr, part num, partno, part code, partnumber, p n, pn, code no, catalogue no,
     catalog no, cat no, order no, ordering no, order number, stock no, stock number, sku, article no, article number, art no,
     item code, item number, teile nr, teilenr, teilenummer, bestell nr, bestellnr, bestellnummer, artikel nr, artikelnr,
     artikelnummer, art nr, artnr, sachnummer, sach nr, sachnr, ersatzteil nr, ersatzteilnr, ersatzteilnummer, ident nr,
     et nr, materialnummer, mat nr, reference piece, code article, n de piece, no de piece, numero de piece, n piece, code piece,
     no piece, codice, cod, codice ricambio, cod ricambio, numero parte, n parte, codice articolo, cod articolo, n codice, codigo,
     n de pieza, no de pieza, numero de pieza, no de parte, n de parte, numero de parte, n de articulo, onderdeelnr,
     onderdeelnummer, onderdeel nr, bestelnr, bestel nr, bestelnummer, 部品番号, 品番, 部番, 部品コード, 品目コード, 商品コード,
     コード, パーツ番号, パーツno`,
  ],
  ['partNumber', 0.9, 'code'],
  ['partNumber', 0.7, 'reference, referencia, ref article, article, artikel, articolo, articulo'],
  ['partNumber', 0.6, 'part, number, num, ref, numero, nummer'],
  ['partNumber', 0.4, 'no, nr, n, 番号, item, teil nr, teil'],
  [
    'description',
    1,
    `description, descr, desc, details, text, item name, description of part, component name, benennung typ, gegenstand, artikeltext,
     nom, nom de la piece, designation des pieces, intitule, designazione, nome, particolare, descrizione articolo, concepto,
     descripcion de la pieza, nombre de la pieza, beschrijving, artikelomschrijving, onderdeelnaam, 品目, 名, 部品の名称, 摘要名称, name, part name, parts name, designation, denomination, nomenclature, title, name of part,
     part description, item description, bezeichnung, benennung, beschreibung, teilebezeichnung, artikelbezeichnung, libelle, descrizione,
     denominazione, descripcion, denominacion, designacion, nombre, omschrijving, benaming, naam, 部品名, 品名, 名称,
     部品名称, 名前, パーツ名, 商品名`,
  ],
  [
    'description',
    0.5,
    'part, parts, article, artikel, articolo, articulo, item, teil, piece, pieza, pezzo, onderdeel, component',
  ],
  [
    'qty',
    1,
    `qty, quantity, quant, number req, number reqd, nos req, qty off, per unit qty, no per unit, quantities, each, mengen, stck, stuck stuck,
     menge stuck, quantites, qte app, nb de pieces, nombre pieces, nr pz, n pz, numero pezzi, quantitativo, n piezas, no piezas,
     numero de piezas, cantidades, stuk, aantal st, aantallen, 必要数, 必要個数, 使用数量, no off, number off, no req, no reqd, no required, req, reqd, required, qty per, qty per unit, qty unit,
     qty per assy, per unit, per assy, pcs, pieces, no of pieces, number of pieces, pezzi per, piezas, stuckzahlen, count, amount, menge, stk, stuck, stuckzahl, stckz, anzahl, anz, mge, qte, quantite,
     nombre, nbre, nb, qt, qts, qta, quantita, q, n pezzi, pezzi, pz, cant, cantidad, uds, unidades, ctd, cdad, aantal, st,
     stuks, hoeveelheid, aant, ct, cnt, nos, no of, number of, nbr, no needed, number needed, qty needed, quantity needed,
     needed, qty required, quantity required, total qty, total quantity, qty total, units, how many, stucke, benotigt,
     anzahl gesamt, gesamtanzahl, gesamtmenge, bedarf, quantite totale, nb pieces, nombre de pieces, unites, quantita totale,
     cantidad total, unidades, aantal stuks, totaal aantal, 個数, 数量, 員数, 個, 数, 使用数, 使用個数`,
  ],
  ['description', 0.3, 'nombre, material'],
  [
    'unit',
    1,
    'unit, uom, u m, units of measure, unit of measure, einh, einheit, mengeneinheit, me, unite, unita, um, unidad, ud, eenheid, eenh, 単位',
  ],
  [
    'remarks',
    1,
    `remarks, remark, additional information, additional info, usage notes, further information, zusatz, zusatzinfo, bemerkung hinweis, kommentar,
     commentaire, commentaires, commenti, osserv, comentario, comentarios, notitie, toelichting, bijzonderheden, 特記事項, 注意, notes, note, comments, comment, observations, observation, obs, info, information, bemerkung, bemerkungen,
     bem, hinweis, hinweise, anmerkung, anmerkungen, notiz, remarque, remarques, osservazioni, annotazioni, observaciones,
     observacion, nota, notas, opmerking, opmerkingen, opm, 備考, 備考欄, 摘要, 摘要欄, 注記, 備 考, 注`,
  ],
  [
    'price',
    1,
    `price, unit price, retail, net price, price each, netto, einzelpreis netto, preis eur, eur, usd, gbp, tarif, listino, prezzo unit, brutoprijs, list price, retail price, cost, unit cost, rrp, preis, einzelpreis, stuckpreis, listenpreis, vk preis, prix,
     prix unitaire, pu, p u, prix ht, prix ttc, prezzo, prezzo unitario, precio, precio unitario, pvp, prijs, stukprijs, 価格,
     total price, total cost, cost each, price each, price per unit, unit price, line total, subtotal, sub total, approx price,
     betrag, gesamtpreis, kosten, summe, montant, montant ht, montant ttc, cout, cout unitaire, prix total, sous total, costo,
     costo unitario, prezzo totale, importo, coste, coste unitario, precio total, importe, bedrag, kostprijs, totaalprijs,
     単価, 金額, 税抜, 税込, 価格 税抜, 価格 税込, 定価, 本体価格`,
  ],
  [
    'size',
    1,
    `size, sizes, dimensions, dimension, dim, dims, measurements, abmessung, abmessungen, grosse, masse, mass, cote, cotes,
     taille, dimensioni, misura, misure, medida, medidas, dimensiones, tamano, afmeting, afmetingen, maat, maten, 寸法, 規格,
     サイズ, spec, specification, specifications, standard, norm, norme, norma`,
  ],
  ['size', 0.4, 'type, typ, tipo'],
  ['material', 1, 'material, werkstoff, matiere, materiau, materiale, materiaal, 材質, 材料'],
  ['price', 0.5, 'total, gesamt, totale, totaal'],
  ['level', 1, 'level, stufe, ebene, niveau, livello, nivel, indent, レベル'],
  [
    'other',
    1,
    `weight, gewicht, poids, peso, stock, in stock, on hand, stock qty, stock level, bin, shelf, bestand, lagerbestand, lager, lagerort,
     auf lager, en stock, giacenza, magazzino, existencias, almacen, voorraad, magazijn, date, datum, data, fecha, 在庫, 在庫数, 棚番, zone, grid, sheet, page, seite, drawing, revision, rev, supplier, suppliers, vendor, vendors,
     manufacturer, mfr, mfg, brand, source, sources, shop, store, where to buy, link, links, url, image, picture, photo, use, used in,
     used for, usage, purpose, application, location, where used, function, category, group, subassembly, assembly, colour, color,
     farbe, lieferant, hersteller, bezugsquelle, quelle, verwendung, zweck, bild, fournisseur, fabricant, lien, utilisation, usage,
     emplacement, photo, fornitore, produttore, uso, utilizzo, proveedor, fabricante, enlace, uso, leverancier, fabrikant, gebruik,
     仕入先, メーカー, 用途, リンク, 購入先`,
  ],
];

export const headerWords: ReadonlyMap<string, Roles> = (() => {
  const map = new Map<string, Roles>();
  for (const [role, weight, list] of words)
    for (const word of list.split(',')) {
      const phrase = word.trim().replace(/\s+/g, ' ');
      const roles = map.get(phrase) ?? {};
      roles[role] = Math.max(roles[role] ?? 0, weight);
      map.set(phrase, roles);
    }
  return map;
})();

/** A header as its words are kept: small letters without accents, points and signs; `Art.-Nr.` gives `art nr`. */
export function foldHeader(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\u0300-\u0308\u0327]/g, '')
    .normalize('NFC')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/№|#/g, ' no ')
    .replace(/['’`´.]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** True for words that are a title as they stand. */
export const isTitle = (text: string): boolean => headerWords.has(foldHeader(text));

const longestHeader = 60;

/** What a cell's words say of its column; null where they are no header words. Part of a longer header counts less. */
export function headerRoles(cell: string): Roles | null {
  if (cell.length > longestHeader) return null;
  const folded = foldHeader(cell);
  const whole = headerWords.get(folded) ?? headerWords.get(folded.replaceAll(' ', ''));
  if (whole) return whole;
  const parts = folded.split(' ');
  for (let length = Math.min(3, parts.length - 1); length > 0; length -= 1) {
    // A header begins with its noun in these languages ("Qty per unit"), or ends with it ("Spare part number").
    for (const at of [0, parts.length - length]) {
      const phrase = parts.slice(at, at + length).join(' ');
      const roles = phrase.length > 2 || length > 1 ? headerWords.get(phrase) : undefined;
      if (roles && parts.length - length <= 3) return scaled(roles, 0.7);
    }
  }
  return null;
}

function scaled(roles: Roles, by: number): Roles {
  return Object.fromEntries(Object.entries(roles).map(([role, weight]) => [role, weight * by]));
}
