/** Invented lists as people paste and save them, with the rows and relations that each must give. */
export interface ListCase {
  title: string;
  /** What the file holds; written as Windows-1252 where `latin` says so. */
  text: string;
  latin?: boolean;
  language?: string;
  unit?: 'mm' | 'in' | null;
  /** Each taken row as `ref | part number | description | quantity | remarks`, quantity `-` where there is none. */
  rows: string[];
  /** Reasons of the skipped rows in order, and codes of the faults. */
  skipped?: string[];
  faults?: string[];
  relations?: object[];
  parents?: Record<string, string>;
  variants?: Record<string, Record<string, number>>;
}

export const lists: ListCase[] = [
  {
    title: 'a German semicolon file with title rows, decimal commas, a group heading and a total',
    latin: true,
    text: `Hestrel Tornau 6;;;;
Ersatzteilliste Ausgabe 4;;;;
;;;;
Pos.;Teile-Nr.;Bezeichnung;Stück;Bemerkung
Getriebe;;;;
1;7.204.11;Gehäuse;1;
2;7.204.12;Kugellager 5 x 11 x 4;2;ersetzt durch 7.310.02
2A;7.204.13;Passscheibe 5,1 x 8 x 0,2;n.B.;
3;7.204.14;Antrieb, komplett;1;besteht aus Pos. 4-6
4;7.204.15;Ritzel 12 Zähne;1;
5;7.204.16;Zylinderstift 2 x 10;1;nicht einzeln erhältlich
6;7.204.17;Zylinderschraube M2,5x6;4;ab Serien-Nr. 5501
;;Summe;11;`,
    language: 'de',
    unit: 'mm',
    rows: [
      '1 | 7.204.11 | Gehäuse | 1 |',
      '2 | 7.204.12 | Kugellager 5 x 11 x 4 | 2 | ersetzt durch 7.310.02',
      '2A | 7.204.13 | Passscheibe 5,1 x 8 x 0,2 | - |',
      '3 | 7.204.14 | Antrieb, komplett | 1 | besteht aus Pos. 4-6',
      '4 | 7.204.15 | Ritzel 12 Zähne | 1 |',
      '5 | 7.204.16 | Zylinderstift 2 x 10 | 1 | nicht einzeln erhältlich',
      '6 | 7.204.17 | Zylinderschraube M2,5x6 | 4 | ab Serien-Nr. 5501',
    ],
    skipped: ['heading', 'heading', 'header', 'heading', 'total'],
    relations: [
      { kind: 'superseded-by', ref: '2', of: '7.204.12', partNumber: '7.310.02' },
      { kind: 'as-required', ref: '2A', of: '7.204.13' },
      { kind: 'includes', ref: '3', of: '7.204.14', refs: ['4', '5', '6'] },
      { kind: 'not-sold-separately', ref: '5', of: '7.204.16' },
      { kind: 'serial', ref: '6', of: '7.204.17', from: '5501' },
    ],
    parents: { 4: '3', 5: '3', 6: '3' },
  },
  {
    title: 'commas, quoted cells with line breaks and separators, number first and reference last',
    text: `"Part Number","Description","Qty","Ref"
"PW-1001-A","Drive shaft,
8 x 60","1","4"
"PW-1002-A","Washer, flat
(brass)","3","5"
"PW-1003-B","Nut ""lock"" M4","2","6A"
`,
    language: 'en',
    rows: [
      '4 | PW-1001-A | Drive shaft, 8 x 60 | 1 |',
      '5 | PW-1002-A | Washer, flat (brass) | 3 |',
      '6A | PW-1003-B | Nut "lock" M4 | 2 |',
    ],
  },
  {
    title: 'no header, four columns of blanks, number first',
    text: `BW-4410   Crank handle            1    1
BW-4411   Grip, walnut            1    2
BW-4412   Screw M4x20             2    3
BW-4420   Ratchet wheel 24T       1    4
BW-4421   Pawl                    2    5
BW-4430   Spring 0,8x6x18         2    6`,
    rows: [
      '1 | BW-4410 | Crank handle | 1 |',
      '2 | BW-4411 | Grip, walnut | 1 |',
      '3 | BW-4412 | Screw M4x20 | 2 |',
      '4 | BW-4420 | Ratchet wheel 24T | 1 |',
      '5 | BW-4421 | Pawl | 2 |',
      '6 | BW-4430 | Spring 0,8x6x18 | 2 |',
    ],
  },
  {
    title: 'quantity first, single blanks, no header',
    text: `2 HS-20-114 Ball bearing 6x13x5
1 HS-20-115 Side plate
4 HS-20-116 Screw M3x8
1 HS-20-121 Spool
2 HS-20-133 Shim 6,1x10x0,1
1 HS-20-140 Cover plate, rear`,
    rows: [
      ' | HS-20-114 | Ball bearing 6x13x5 | 2 |',
      ' | HS-20-115 | Side plate | 1 |',
      ' | HS-20-116 | Screw M3x8 | 4 |',
      ' | HS-20-121 | Spool | 1 |',
      ' | HS-20-133 | Shim 6,1x10x0,1 | 2 |',
      ' | HS-20-140 | Cover plate, rear | 1 |',
    ],
  },
  {
    title: 'tabs with empty cells, Italian',
    text: `Rif.\tCodice\tDescrizione\tQ.tà\tNote
1\tCV 301 22\tAlbero principale\t1\t
2\tCV 301 23\tCuscinetto a sfere 8x16x5\t2\tsostituito da CV 388 01
3\t\tVite M3x10\t6\tnon venduta separatamente
4\tCV 301 25\tRondella 3,2x7x0,5\tq.b.\t
5\tCV 301 26\tCoperchio sinistro\t1\tfino al n. 2400
6\tCV 301 27\tCoperchio destro\t1\topzionale`,
    language: 'it',
    unit: 'mm',
    rows: [
      '1 | CV 301 22 | Albero principale | 1 |',
      '2 | CV 301 23 | Cuscinetto a sfere 8x16x5 | 2 | sostituito da CV 388 01',
      '3 |  | Vite M3x10 | 6 | non venduta separatamente',
      '4 | CV 301 25 | Rondella 3,2x7x0,5 | - |',
      '5 | CV 301 26 | Coperchio sinistro | 1 | fino al n. 2400',
      '6 | CV 301 27 | Coperchio destro | 1 | opzionale',
    ],
    relations: [
      { kind: 'superseded-by', ref: '2', of: 'CV 301 23', partNumber: 'CV 388 01' },
      { kind: 'not-sold-separately', ref: '3' },
      { kind: 'as-required', ref: '4', of: 'CV 301 25' },
      { kind: 'serial', ref: '5', of: 'CV 301 26', to: '2400' },
      { kind: 'option', ref: '6', of: 'CV 301 27' },
      { kind: 'left-right', ref: '5', of: 'CV 301 26', refs: ['6'], partNumber: 'CV 301 27' },
    ],
  },
  {
    title: 'Spanish with pipes as Markdown draws them',
    text: `| N.º | Código | Descripción | Cant. | Observaciones |
|-----|--------|-------------|------:|---------------|
| 1 | OD-7781 | Carcasa | 1 | |
| 2 | OD-7782 | Tornillo M4x12 | 4 | reemplazado por OD-9001 |
| 3 | OD-7783 | Conjunto de manivela | 1 | incluye 4-5, 7 |
| 4 | OD-7784 | Empuñadura | 1 | no se vende por separado |
| 5 | OD-7785 | Tuerca M4 | 1 | |
| 6 | OD-7786 | Junta | 1 | desde el n.º 3310 |
| 7 | OD-7787 | Arandela 4,3x9x0,8 | 2 | |`,
    language: 'es',
    rows: [
      '1 | OD-7781 | Carcasa | 1 |',
      '2 | OD-7782 | Tornillo M4x12 | 4 | reemplazado por OD-9001',
      '3 | OD-7783 | Conjunto de manivela | 1 | incluye 4-5, 7',
      '4 | OD-7784 | Empuñadura | 1 | no se vende por separado',
      '5 | OD-7785 | Tuerca M4 | 1 |',
      '6 | OD-7786 | Junta | 1 | desde el n.º 3310',
      '7 | OD-7787 | Arandela 4,3x9x0,8 | 2 |',
    ],
    relations: [
      { kind: 'superseded-by', ref: '2', of: 'OD-7782', partNumber: 'OD-9001' },
      { kind: 'includes', ref: '3', of: 'OD-7783', refs: ['4', '5', '7'] },
      { kind: 'not-sold-separately', ref: '4', of: 'OD-7784' },
      { kind: 'serial', ref: '6', of: 'OD-7786', from: '3310' },
    ],
    parents: { 4: '3', 5: '3', 7: '3' },
  },
  {
    title: 'Dutch, blanks, description before the number',
    text: `Nr.  Omschrijving               Artikelnr.   Aantal  Opmerking

1    Huis                       WK 220-1     1
2    Kogellager 7x14x5          WK 220-2     2       vervangen door WK 240-9
3    Veer                       WK 220-3     1       niet los verkrijgbaar
4    Vulring 7,1x10x0,3         WK 220-4     -       naar behoefte
                                - 1 -
5    Schroef M2,5x5             WK 220-5     6       vanaf nr. 8801`,
    language: 'nl',
    rows: [
      '1 | WK 220-1 | Huis | 1 |',
      '2 | WK 220-2 | Kogellager 7x14x5 | 2 | vervangen door WK 240-9',
      '3 | WK 220-3 | Veer | 1 | niet los verkrijgbaar',
      '4 | WK 220-4 | Vulring 7,1x10x0,3 | - | naar behoefte',
      '5 | WK 220-5 | Schroef M2,5x5 | 6 | vanaf nr. 8801',
    ],
    skipped: ['header', 'footer'],
    relations: [
      { kind: 'superseded-by', ref: '2', of: 'WK 220-2', partNumber: 'WK 240-9' },
      { kind: 'not-sold-separately', ref: '3', of: 'WK 220-3' },
      { kind: 'as-required', ref: '4', of: 'WK 220-4' },
      { kind: 'serial', ref: '5', of: 'WK 220-5', from: '8801' },
    ],
  },
  {
    title: 'Japanese, full-width digits and prices',
    text: `番号,部品番号,部品名,個数,備考,価格
１,ＴＲ－１００１,ボディ,１,,"2,400"
2,TR-1002,ベアリング 5x11x4,2,TR-2002に変更,850
3,TR-1003,ワッシャー,適量,,90
4,TR-1004,ハンドル組,1,5〜6を含む,"3,100"
5,TR-1005,ノブ,1,単品販売不可,
6,TR-1006,ネジ M3x8,2,左ねじ,60`,
    language: 'ja',
    rows: [
      '1 | ＴＲ－１００１ | ボディ | 1 |',
      '2 | TR-1002 | ベアリング 5x11x4 | 2 | TR-2002に変更',
      '3 | TR-1003 | ワッシャー | - |',
      '4 | TR-1004 | ハンドル組 | 1 | 5〜6を含む',
      '5 | TR-1005 | ノブ | 1 | 単品販売不可',
      '6 | TR-1006 | ネジ M3x8 | 2 | 左ねじ',
    ],
    relations: [
      { kind: 'superseded-by', ref: '2', of: 'TR-1002', partNumber: 'TR-2002' },
      { kind: 'as-required', ref: '3', of: 'TR-1003' },
      { kind: 'includes', ref: '4', of: 'TR-1004', refs: ['5', '6'] },
      { kind: 'not-sold-separately', ref: '5', of: 'TR-1005' },
    ],
    parents: { 5: '4', 6: '4' },
  },
  {
    title: 'wrapped descriptions under their column, ragged margins, a heading between, headers repeated',
    text: `CORVANE  Lathmore 9
Key  Part no.    Description                         Qty

FRAME
 1   CL-9-100    Frame, cast                          1
2    CL-9-101    Screw, hexagon socket head,          4
                 M5x20, stainless
 3   CL-9-102    Ball bearing with two shields        2
                 8x16x5 (drive side)
Corvane Lathmore 9                     Page 3 of 12
Key  Part no.    Description                         Qty
DRIVE
4    CL-9-110    Worm wheel, 30 teeth                 1
  5  CL-9-111    Pin 3x12                             1   option`,
    language: 'en',
    unit: 'mm',
    rows: [
      '1 | CL-9-100 | Frame, cast | 1 |',
      '2 | CL-9-101 | Screw, hexagon socket head, M5x20, stainless | 4 |',
      '3 | CL-9-102 | Ball bearing with two shields 8x16x5 (drive side) | 2 |',
      '4 | CL-9-110 | Worm wheel, 30 teeth | 1 |',
      '5 | CL-9-111 | Pin 3x12 | 1 | option',
    ],
    skipped: ['heading', 'header', 'heading', 'footer', 'header', 'heading'],
  },
  {
    title: 'two lists side by side, blanks',
    text: `No.  Part No.   Description      Qty     No.  Part No.   Description      Qty
1    HB-101     Cover            1       5    HB-105     Washer           2
2    HB-102     Screw M3x6       3       6    HB-106     Spacer           1
3    HB-103     Bearing 4x9x4    1       7    HB-107     E-clip 3         1
4    HB-104     Spool            1`,
    rows: [
      '1 | HB-101 | Cover | 1 |',
      '2 | HB-102 | Screw M3x6 | 3 |',
      '3 | HB-103 | Bearing 4x9x4 | 1 |',
      '4 | HB-104 | Spool | 1 |',
      '5 | HB-105 | Washer | 2 |',
      '6 | HB-106 | Spacer | 1 |',
      '7 | HB-107 | E-clip 3 | 1 |',
    ],
  },
  {
    title: 'two lists side by side in a file, a blank column between',
    text: `Pos;Nr;Bezeichnung;Menge;;Pos;Nr;Bezeichnung;Menge
1;AA-10;Deckel;1;;3;AA-12;Feder;2
2;AA-11;Schraube M3x6;4;;4;AA-13;Welle;1`,
    rows: [
      '1 | AA-10 | Deckel | 1 |',
      '2 | AA-11 | Schraube M3x6 | 4 |',
      '3 | AA-12 | Feder | 2 |',
      '4 | AA-13 | Welle | 1 |',
    ],
  },
  {
    title: 'a column of quantities for each model, and one without a title that holds remarks',
    text: `Ref,Part No,Description,Qty 20,Qty 40,Qty 60,
1,MK-100,Frame,1,1,1,
2,MK-101,Ball bearing 5x13x4,2,2,4,use MK-201
3,MK-102,Spacer,-,1,2,
4,MK-103,Drag washer,3,,5,NSS`,
    rows: [
      '1 | MK-100 | Frame | - |',
      '2 | MK-101 | Ball bearing 5x13x4 | - | use MK-201',
      '3 | MK-102 | Spacer | - |',
      '4 | MK-103 | Drag washer | - | NSS',
    ],
    variants: {
      1: { 20: 1, 40: 1, 60: 1 },
      2: { 20: 2, 40: 2, 60: 4 },
      3: { 20: 0, 40: 1, 60: 2 },
      4: { 20: 3, 40: 0, 60: 5 },
    },
    relations: [
      { kind: 'superseded-by', ref: '2', of: 'MK-101', partNumber: 'MK-201' },
      { kind: 'not-sold-separately', ref: '4', of: 'MK-103' },
    ],
  },
  {
    title: 'a header over two rows, a unit and a price column, no reference column',
    text: `Part;;;Unit;Price
number;Description;Qty;;EUR
7100-22;Bushing 6x8x10;2;pcs;1,20
7100-23;Grease;1;tube;4,50
7100-31;Knob;AR;pcs;0,80`,
    rows: [' | 7100-22 | Bushing 6x8x10 | 2 |', ' | 7100-23 | Grease | 1 |', ' | 7100-31 | Knob | - |'],
  },
  {
    title: 'points for depth, attaching parts, references with a colon, NS',
    text: `ITEM   PART NUMBER   NOMENCLATURE                       QTY
1      4471-100      WINCH, HAND                        1
2      4471-110      . DRUM ASSEMBLY                    1
3      4471-111      . . BUSHING                        2
4      4471-112      . . DRUM                           1     NS
5      4471-120      . HANDLE                           1
5:1    4471-121      . GRIP                             1
       (ATTACHING PARTS)
6      4471-130      . SCREW, MACHINE 10-32 X 3/8       4
7      4471-131      . WASHER, LOCK NO. 10              4
       ---*---
8      4471-140      . COVER                            REF`,
    rows: [
      '1 | 4471-100 | WINCH, HAND | 1 |',
      '2 | 4471-110 | DRUM ASSEMBLY | 1 |',
      '3 | 4471-111 | BUSHING | 2 |',
      '4 | 4471-112 | DRUM | 1 | NS',
      '5 | 4471-120 | HANDLE | 1 |',
      '5:1 | 4471-121 | GRIP | 1 |',
      '6 | 4471-130 | SCREW, MACHINE 10-32 X 3/8 | 4 |',
      '7 | 4471-131 | WASHER, LOCK NO. 10 | 4 |',
      '8 | 4471-140 | COVER | - |',
    ],
    parents: { 2: '1', 3: '2', 4: '2', 5: '1', '5:1': '5', 6: '1', 7: '1', 8: '1' },
    relations: [
      { kind: 'attaching', ref: '6', of: '4471-130', refs: ['5:1'] },
      { kind: 'attaching', ref: '7', of: '4471-131', refs: ['5:1'] },
      { kind: 'reference-only', ref: '8', of: '4471-140' },
      { kind: 'includes', ref: '1', of: '4471-100', refs: ['2', '5', '6', '7', '8'] },
      { kind: 'includes', ref: '2', of: '4471-110', refs: ['3', '4'] },
      { kind: 'includes', ref: '5', of: '4471-120', refs: ['5:1'] },
    ],
  },
  {
    title: 'a row with more cells than columns is faulted, the rest is read',
    text: `Pos,Number,Description,Qty
1,AB-501,Screw M3x6,2
2,AB-502,Washer 3,2x7x0,5,4
3,AB-503,Nut M3,2`,
    rows: ['1 | AB-501 | Screw M3x6 | 2 |', '3 | AB-503 | Nut M3 | 2 |'],
    faults: ['more-cells-than-columns'],
  },
  {
    title: 'a branch, a condition and a range of serial numbers',
    text: `Ref  Part number  Description     Qty  Remarks
1    TK-3310      Pawl            1    replaced by TK-4410 and TK-4411
2    TK-3311      Pawl spring     1    from s/n 5200 replaced by TK-4420
3    TK-3312      Drag plate      2    s/n 1000-1999
4    TK-3313      Drag plate      2    serial 2000 and up
5    TK-3314      Side plate L    1    use with TK-3315
6    TK-3315      Side plate R    1    before serial 3000`,
    rows: [
      '1 | TK-3310 | Pawl | 1 | replaced by TK-4410 and TK-4411',
      '2 | TK-3311 | Pawl spring | 1 | from s/n 5200 replaced by TK-4420',
      '3 | TK-3312 | Drag plate | 2 | s/n 1000-1999',
      '4 | TK-3313 | Drag plate | 2 | serial 2000 and up',
      '5 | TK-3314 | Side plate L | 1 | use with TK-3315',
      '6 | TK-3315 | Side plate R | 1 | before serial 3000',
    ],
    relations: [
      { kind: 'superseded-by', ref: '1', of: 'TK-3310', partNumber: 'TK-4410' },
      { kind: 'superseded-by', ref: '1', of: 'TK-3310', partNumber: 'TK-4411' },
      { kind: 'superseded-by', ref: '2', of: 'TK-3311', partNumber: 'TK-4420', from: '5200' },
      { kind: 'serial', ref: '3', of: 'TK-3312', from: '1000', to: '1999' },
      { kind: 'serial', ref: '4', of: 'TK-3313', from: '2000' },
      { kind: 'serial', ref: '6', of: 'TK-3315', to: '2999' },
      { kind: 'left-right', ref: '5', of: 'TK-3314', refs: ['6'], partNumber: 'TK-3315' },
    ],
  },
  {
    title: 'inches with fractions and quote marks in unquoted cells',
    text: `Item,Part,Description,Quantity
1,HX-22,Screw 1/4-20 x 5/8",4
2,HX-23,Ball bearing 3/8" x 7/8" x 9/32",2
3,HX-24,Shaft 3/8" dia,1`,
    unit: 'in',
    rows: [
      '1 | HX-22 | Screw 1/4-20 x 5/8" | 4 |',
      '2 | HX-23 | Ball bearing 3/8" x 7/8" x 9/32" | 2 |',
      '3 | HX-24 | Shaft 3/8" dia | 1 |',
    ],
  },
  {
    title: 'words alone: a size makes a part of them, none in a list that counts makes a heading',
    text: `Fasteners
2x Screw M3x8
4x Nut M3
Ball bearing 5x11x4`,
    rows: [' |  | Screw M3x8 | 2 |', ' |  | Nut M3 | 4 |', ' |  | Ball bearing 5x11x4 | - |'],
    skipped: ['heading'],
  },
  {
    title: 'one column of names',
    text: 'Frame\r\nSpool\r\nWasher 3.2x7x0.5\r\n',
    rows: [' |  | Frame | - |', ' |  | Spool | - |', ' |  | Washer 3.2x7x0.5 | - |'],
  },
  {
    title: 'a reference without a part, a part without anything but words, a size and a material column',
    text: `Pos;Bestell-Nr.;Benennung;Abmessung;Werkstoff;Anz.
1;55-01;Scheibe;5,3x10x1;Messing;2
2;-;nicht belegt;;;
3;55-03;Sechskantmutter;M5;;2
;;Fett;;;1`,
    rows: [
      '1 | 55-01 | Scheibe | 2 | 5,3x10x1; Messing',
      '3 | 55-03 | Sechskantmutter | 2 | M5',
      ' |  | Fett | 1 |',
    ],
    skipped: ['header', 'empty'],
  },
];
