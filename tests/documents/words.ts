import { moreWords } from './more-words.ts';

/** Words of invented lists in one language: parts' names, titles of columns and remarks, as lists print them. */
export interface Words {
  header: {
    ref: string[];
    partNumber: string[];
    description: string[];
    qty: string[];
    remarks: string[];
    price: string[];
    unit: string[];
  };
  /** The unit that parts are counted in. */
  piece: string;
  /** Names of parts; `#` stands for a size of the kind named after it. */
  parts: string[];
  assembly: string;
  headings: string[];
  title: string;
  total: string;
  page: string;
  asRequired: string[];
  remarks: {
    includes: string[];
    superseded: string[];
    notSold: string[];
    from: string[];
    to: string[];
    option: string[];
  };
  sides: [left: string, right: string];
}

const en: Words = {
  header: {
    ref: ['Ref', 'Item', 'Key No.', 'Pos', 'No.'],
    partNumber: ['Part No.', 'Part Number', 'Order No.', 'P/N'],
    description: ['Description', 'Name', 'Part Name', 'Designation'],
    qty: ['Qty', 'Quantity', 'Pcs', 'Q.ty'],
    remarks: ['Remarks', 'Notes', 'Comment'],
    price: ['Price', 'List price'],
    unit: ['Unit'],
  },
  piece: 'pcs',
  parts: [
    'Ball bearing #bearing',
    'Screw #screw',
    'Screw, countersunk, #screw',
    'Hex nut #nut',
    'Washer #washer',
    'Shim #washer',
    'E-clip #dia',
    'O-ring #oring',
    'Dowel pin #pin',
    'Side plate',
    'Main gear',
    'Drive shaft #pin',
    'Crank handle',
    'Knob',
    'Spool',
    'Brake pad',
    'Return spring',
    'Lever',
    'Cover',
    'Bushing',
    'Name plate',
    'Grease',
    'Pawl',
    'Oil tube, 5 ml',
  ],
  assembly: 'Gear assembly',
  headings: ['Housing', 'Drive', 'Brake and clutch', 'Accessories'],
  title: 'Parts list',
  total: 'Total',
  page: 'Page',
  asRequired: ['AR', 'A/R', 'as req.'],
  remarks: {
    includes: ['Includes {a}-{b}', 'Consists of items {a}-{b}', 'incl. {a}-{b}'],
    superseded: ['Replaced by {n}', 'Superseded, use {n}', 'use {n}'],
    notSold: ['Not sold separately', 'NSS'],
    from: ['from s/n {s}', 'serial {s} and up'],
    to: ['up to serial no. {s}', 'to s/n {s}'],
    option: ['Optional', 'Accessory'],
  },
  sides: ['left', 'right'],
};

const de: Words = {
  header: {
    ref: ['Pos.', 'Pos.-Nr.', 'Bild-Nr.', 'Lfd. Nr.'],
    partNumber: ['Teile-Nr.', 'Bestell-Nr.', 'Artikelnummer', 'Ersatzteil-Nr.'],
    description: ['Bezeichnung', 'Benennung', 'Beschreibung'],
    qty: ['Stück', 'Menge', 'Anzahl', 'Stk.'],
    remarks: ['Bemerkung', 'Hinweise', 'Bemerkungen'],
    price: ['Preis', 'Einzelpreis'],
    unit: ['Einheit'],
  },
  piece: 'Stk',
  parts: [
    'Kugellager #bearing',
    'Zylinderschraube #screw',
    'Senkschraube #screw',
    'Sechskantmutter #nut',
    'Scheibe #washer',
    'Passscheibe #washer',
    'Sicherungsring #dia',
    'O-Ring #oring',
    'Zylinderstift #pin',
    'Seitenplatte',
    'Antriebsrad',
    'Welle #pin',
    'Kurbel',
    'Knauf',
    'Spule',
    'Bremsbelag',
    'Rückholfeder',
    'Hebel',
    'Gehäusedeckel',
    'Buchse',
    'Typenschild',
    'Fett',
    'Sperrklinke',
  ],
  assembly: 'Getriebe, komplett',
  headings: ['Gehäuse', 'Antrieb', 'Bremse und Kupplung', 'Zubehör'],
  title: 'Ersatzteilliste',
  total: 'Summe',
  page: 'Seite',
  asRequired: ['n.B.', 'nach Bedarf'],
  remarks: {
    includes: ['Besteht aus Pos. {a}-{b}', 'enthält {a} bis {b}'],
    superseded: ['Ersetzt durch {n}', 'ersetzt durch Nr. {n}'],
    notSold: ['Nicht einzeln erhältlich', 'nur komplett lieferbar'],
    from: ['ab Serien-Nr. {s}', 'ab Masch.-Nr. {s}'],
    to: ['bis Serien-Nr. {s}'],
    option: ['Option', 'Sonderzubehör'],
  },
  sides: ['links', 'rechts'],
};

const fr: Words = {
  header: {
    ref: ['Repère', 'Rep.', 'N° repère'],
    partNumber: ['Référence', 'Code article', 'N° de pièce'],
    description: ['Désignation', 'Libellé'],
    qty: ['Qté', 'Quantité', 'Nbre'],
    remarks: ['Observations', 'Remarques'],
    price: ['Prix', 'Prix unitaire'],
    unit: ['Unité'],
  },
  piece: 'pce',
  parts: [
    'Roulement à billes #bearing',
    'Vis #screw',
    'Vis à tête fraisée #screw',
    'Écrou #nut',
    'Rondelle #washer',
    'Cale #washer',
    'Circlip #dia',
    'Joint torique #oring',
    'Goupille #pin',
    'Flasque',
    'Pignon',
    'Arbre #pin',
    'Manivelle',
    'Bouton',
    'Bobine',
    'Garniture',
    'Ressort de rappel',
    'Levier',
    'Couvercle',
    'Bague',
    'Plaque',
    'Graisse',
    'Cliquet',
  ],
  assembly: 'Ensemble pignon',
  headings: ['Carter', 'Transmission', 'Frein', 'Accessoires'],
  title: 'Liste des pièces',
  total: 'Total',
  page: 'Page',
  asRequired: ['s.b.', 'selon besoin'],
  remarks: {
    includes: ['Comprend {a}-{b}', 'comprend repères {a} à {b}'],
    superseded: ['Remplacé par {n}', 'remplacée par {n}'],
    notSold: ['Non vendu séparément', 'ne se vend pas séparément'],
    from: ['à partir du n° de série {s}'],
    to: ["jusqu'au n° de série {s}"],
    option: ['En option'],
  },
  sides: ['gauche', 'droite'],
};

const it: Words = {
  header: {
    ref: ['Rif.', 'Pos.', 'Posizione'],
    partNumber: ['Codice', 'Cod. articolo', 'Codice ricambio'],
    description: ['Descrizione', 'Denominazione'],
    qty: ['Q.tà', 'Quantità', 'Pz.'],
    remarks: ['Note', 'Osservazioni'],
    price: ['Prezzo'],
    unit: ['U.M.'],
  },
  piece: 'pz',
  parts: [
    'Cuscinetto a sfere #bearing',
    'Vite #screw',
    'Vite svasata #screw',
    'Dado #nut',
    'Rondella #washer',
    'Spessore #washer',
    'Anello elastico #dia',
    'Guarnizione OR #oring',
    'Spina #pin',
    'Fiancata',
    'Ingranaggio',
    'Albero #pin',
    'Manovella',
    'Pomello',
    'Bobina',
    'Molla di ritorno',
    'Leva',
    'Coperchio',
    'Boccola',
    'Targhetta',
    'Grasso',
    'Nottolino',
  ],
  assembly: 'Gruppo ingranaggi',
  headings: ['Carcassa', 'Trasmissione', 'Freno', 'Accessori'],
  title: 'Elenco ricambi',
  total: 'Totale',
  page: 'Pagina',
  asRequired: ['q.b.'],
  remarks: {
    includes: ['Comprende {a}-{b}', 'composto da {a}-{b}'],
    superseded: ['Sostituito da {n}', 'sostituita da {n}'],
    notSold: ['Non venduto separatamente'],
    from: ['dalla matricola {s}'],
    to: ['fino alla matricola {s}'],
    option: ['Opzionale', 'a richiesta'],
  },
  sides: ['sinistro', 'destro'],
};

const es: Words = {
  header: {
    ref: ['Pos.', 'Posición', 'Marca'],
    partNumber: ['Código', 'N.º de pieza', 'Referencia'],
    description: ['Descripción', 'Denominación'],
    qty: ['Cant.', 'Cantidad', 'Uds.'],
    remarks: ['Observaciones', 'Notas'],
    price: ['Precio'],
    unit: ['Unidad'],
  },
  piece: 'ud',
  parts: [
    'Rodamiento de bolas #bearing',
    'Tornillo #screw',
    'Tornillo avellanado #screw',
    'Tuerca #nut',
    'Arandela #washer',
    'Suplemento #washer',
    'Anillo elástico #dia',
    'Junta tórica #oring',
    'Pasador #pin',
    'Placa lateral',
    'Engranaje',
    'Eje #pin',
    'Manivela',
    'Perilla',
    'Carrete',
    'Muelle de retorno',
    'Palanca',
    'Tapa',
    'Casquillo',
    'Rótulo',
    'Grasa',
    'Trinquete',
  ],
  assembly: 'Conjunto de engranajes',
  headings: ['Carcasa', 'Transmisión', 'Freno', 'Accesorios'],
  title: 'Lista de piezas',
  total: 'Total',
  page: 'Página',
  asRequired: ['s.n.', 'según necesidad'],
  remarks: {
    includes: ['Incluye {a}-{b}', 'compuesto por {a}-{b}'],
    superseded: ['Sustituido por {n}', 'reemplazado por {n}'],
    notSold: ['No se vende por separado'],
    from: ['desde el número de serie {s}'],
    to: ['hasta el número de serie {s}'],
    option: ['Opcional'],
  },
  sides: ['izquierda', 'derecha'],
};

const nl: Words = {
  header: {
    ref: ['Pos.', 'Positie', 'Volgnr.'],
    partNumber: ['Onderdeelnr.', 'Artikelnr.', 'Bestelnummer'],
    description: ['Omschrijving', 'Benaming'],
    qty: ['Aantal', 'Stuks'],
    remarks: ['Opmerking', 'Opmerkingen'],
    price: ['Prijs'],
    unit: ['Eenheid'],
  },
  piece: 'st',
  parts: [
    'Kogellager #bearing',
    'Schroef #screw',
    'Verzonken schroef #screw',
    'Moer #nut',
    'Sluitring #washer',
    'Vulring #washer',
    'Borgring #dia',
    'O-ring #oring',
    'Paspen #pin',
    'Zijplaat',
    'Tandwiel',
    'As #pin',
    'Slinger',
    'Knop',
    'Spoel',
    'Trekveer',
    'Hendel',
    'Deksel',
    'Bus',
    'Typeplaat',
    'Vet',
    'Pal',
  ],
  assembly: 'Tandwielset compleet',
  headings: ['Huis', 'Aandrijving', 'Rem', 'Toebehoren'],
  title: 'Onderdelenlijst',
  total: 'Totaal',
  page: 'Blad',
  asRequired: ['naar behoefte'],
  remarks: {
    includes: ['Bestaat uit {a} t/m {b}', 'bevat {a}-{b}'],
    superseded: ['Vervangen door {n}'],
    notSold: ['Niet los verkrijgbaar'],
    from: ['vanaf serienummer {s}'],
    to: ['tot en met serienummer {s}'],
    option: ['Optie'],
  },
  sides: ['links', 'rechts'],
};

const ja: Words = {
  header: {
    ref: ['照合番号', '見出番号', '符号', '番号'],
    partNumber: ['部品番号', '品番', '部品コード'],
    description: ['部品名', '品名', '名称'],
    qty: ['個数', '数量', '員数'],
    remarks: ['備考', '摘要'],
    price: ['価格', '単価'],
    unit: ['単位'],
  },
  piece: '個',
  parts: [
    'ボールベアリング #bearing',
    'ネジ #screw',
    '皿ネジ #screw',
    '六角ナット #nut',
    'ワッシャー #washer',
    '調整座金 #washer',
    'Eリング #dia',
    'Oリング #oring',
    '平行ピン #pin',
    '側板',
    'メインギヤ',
    '軸 #pin',
    'ハンドル',
    'ツマミ',
    'スプール',
    '戻しバネ',
    'レバー',
    'カバー',
    'ブッシュ',
    '銘板',
    'グリス',
    'ラチェット爪',
  ],
  assembly: 'ギヤ組立',
  headings: ['本体部', '駆動部', 'ブレーキ部', '付属品'],
  title: '部品表',
  total: '合計',
  page: 'ページ',
  asRequired: ['適量', '必要数'],
  remarks: {
    includes: ['{a}～{b}を含む', '{a}-{b}で構成'],
    superseded: ['{n}に変更', '代替：{n}'],
    notSold: ['単品販売不可', '非売品'],
    from: ['機番{s}から'],
    to: ['機番{s}まで'],
    option: ['オプション', '別売'],
  },
  sides: ['左', '右'],
};

export type Language = 'en' | 'de' | 'fr' | 'it' | 'es' | 'nl' | 'ja';

const first: Record<Language, Words> = { en, de, fr, it, es, nl, ja };

/** The words of each language: those above, and as many again. */
export const words = Object.fromEntries(
  Object.entries(first).map(([language, own]) => [language, widened(own, moreWords[language as Language])]),
) as Record<Language, Words>;

function widened(own: Words, more: (typeof moreWords)[Language]): Words {
  const both = <Lists extends Record<string, string[]>>(lists: Lists, others: Partial<Lists>): Lists =>
    Object.fromEntries(
      Object.entries(lists).map(([key, list]) => [key, [...list, ...(others[key] ?? [])]]),
    ) as Lists;
  return {
    ...own,
    header: both(own.header, more.header),
    asRequired: [...own.asRequired, ...more.asRequired],
    remarks: both(own.remarks, more.remarks),
  };
}
