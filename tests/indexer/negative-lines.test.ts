import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';

/** Lines that hold a part's word and are another part, or none. Common practice: what such a line is to a repairer. */
const otherParts = [
  'BEARING CAP',
  'BEARING HOUSING',
  'Bearing puller',
  'Bearing retainer plate',
  'Lagerdeckel',
  'Lagergehäuse',
  'Couvercle de roulement',
  'Tapa de rodamiento',
  'Coperchio cuscinetto',
  'Lagerdeksel',
  'ベアリングケース',
  'SCREWDRIVER PH1',
  'Schraubendreher',
  'Tournevis',
  'Schroevendraaier',
  'Screw terminal block',
  'Nut driver',
  'NUT PLATE',
  'Threaded insert M3',
  'Gewindeeinsatz M3',
  'Rivet nut M4',
  'PIN HOLDER',
  'Pin header 2x10',
  'Stiftleiste',
  'Pin punch 3 mm',
  'Spring seat',
  'Spring retainer',
  'spring steel sheet 0.3',
  'Federteller',
  'Federdraht',
  'Ring terminal 3mm',
  'Circlip pliers',
  'DIN clips',
  'Key ring',
  'Shaft collar 8 mm',
  'Shaft coupling 5x8',
  'Threaded rod M8',
  'Gewindestange M6',
  'Ball joint',
  'Ball valve',
  'BALL KNOB',
  'Kugelknopf',
  'Gear box',
  'GEAR CASE',
  'Getriebegehäuse',
  'ギアケース',
  'Seal kit',
  'O-ring kit',
  'Oil filter',
  'Grease nipple',
  'Schmiernippel',
  'Riemenscheibe',
  'Bremsscheibe 160 mm',
  'Washer bottle',
  'Roller clutch cover',
  'Spacer 5x8x10',
  'Magnet 6x3',
  'Plate 608 L',
];

const noParts = [
  'continued overleaf',
  'END OF FIGURE',
  '$3.50',
  '12.04.2019',
  '2021-03-01',
  'March 1987',
  'Total',
  'Subtotal: 12.50',
  'Page 3 of 7',
  'PARTS LIST',
  'Stückliste',
  'Ersatzteilliste',
  'Seite 4',
  'Fortsetzung',
  'Liste des pièces',
  'Elenco ricambi',
  'Lista de piezas',
  'Onderdelenlijst',
  'パーツリスト',
  '合計',
  'Item | Qty | Description',
  'Pos. | Menge | Bezeichnung',
  'Rep. | Désignation | Qté',
  'Pos. | Descrizione | Q.tà',
  'Aantal | Omschrijving',
  '番号 | 部品名 | 個数',
  'Drawing No. 4711',
  'All dimensions in mm',
  'Scale 1:2',
  'See note 3',
];

const undecided = ['5x8', '5x11x4', 'M3', '3.2', '12', '??', '?? see sketch', '-', 'x'];

describe('another part', () => {
  test.each(otherParts)('%s', line => {
    const { category, dims, size } = read(line);
    expect({ category, dims, size }).toEqual({ category: 'plain', dims: {}, size: null });
  });
});

describe('no part', () => {
  test.each(noParts)('%s', line => expect(read(line).category).toBe('not-a-part'));
});

describe('a person must say', () => {
  test.each(undecided)('%s', line => {
    const reading = read(line);
    expect(reading.review || reading.certainty < 0.7 || reading.category === 'not-a-part').toBe(true);
    expect(reading.size).toBeNull();
  });
});
