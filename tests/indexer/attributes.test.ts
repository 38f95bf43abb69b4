import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';
import { agree } from '../../indexer/reading/agree.ts';

/** Lines and the attributes they state. Standards: titles as fastener makers' lists quote them; words: common practice. */
const stated: [line: string, attrs: Record<string, unknown>][] = [
  // A cylinder head is named by its drive: DIN 912 and DIN 84.
  ['Zylinderkopfschraube Innensechskant M5 x 30', { head: 'socket-cap', drive: 'hex-socket' }],
  ['Vis à tête cylindrique six pans creux M5x20', { head: 'socket-cap', drive: 'hex-socket' }],
  ['Cilinderkopschroef binnenzeskant M5x16', { head: 'socket-cap', drive: 'hex-socket' }],
  ['Vite testa cilindrica a taglio M3x8', { head: 'cheese', drive: 'slotted' }],
  ['Linsenkopfschraube Kreuzschlitz M3x8', { head: 'pan', drive: 'phillips' }],
  ['Schraube M3x8 Zylinderkopf', {}],
  // What the name alone suggests gives way to what is described.
  ['SCREW, CAP, HEXAGON HEAD, 1/4-28 x 3/4', { head: 'hex' }],
  ['Tornillo allen M6x20 avellanado', { head: 'countersunk', drive: 'hex-socket' }],
  ['Screw M4 hex x 16mm', { head: 'hex' }],
  ['button hex M4x16', { head: 'button', drive: 'hex-socket' }],
  ['screw M4x8 ch hd brass', { head: 'cheese', material: 'brass' }],
  ['M4×8低頭ボルト', { head: 'low-socket-cap', drive: 'hex-socket' }],
  ['Vis H M10x35 8.8', { head: 'hex', grade: '8.8' }],
  ['hex bolt 3/8-24 x 1 gr. 8', { head: 'hex', grade: '8' }],
  ['Dado esagonale M10 classe 8', { type: 'hex', grade: '8' }],
  ['M6 washer, A2', { grade: 'A2', material: 'stainless' }],
  // ISO 898-2 classes behind a nut's standard; ISO 4757 letters behind a screw's.
  ['Prevailing torque hexagon nut ISO 7040-M5-8', { type: 'lock', grade: '8' }],
  ['hex nut M3 ISO 4032 8', { type: 'hex', grade: '8' }],
  ['DIN 7985 M3x16 Z', { head: 'pan', drive: 'pozidriv' }],
  ['DIN 7985 M3x16 - H', { head: 'pan', drive: 'phillips' }],
  // The finer kind stands, whichever comes first.
  ['Sechskantmutter DIN 985 M5', { type: 'lock' }],
  ['NUT, CASTELLATED, HEXAGON, M5', { type: 'castle' }],
  ['washer, stainless steel, M4', { material: 'stainless' }],
  ['E-clip for 4 mm shaft', { type: 'e-clip' }],
  ['Federstecker 2 mm', { type: 'r-clip' }],
  ['Goupille bêta 3', { type: 'r-clip' }],
  ['Borgring as 8', { type: 'external' }],
];

/** Left and right: the hand of a thread or a spring, else which of two parts it is. */
const handed: [line: string, attrs: Record<string, unknown>][] = [
  ['NUT M6 (LEFT)', { hand: 'left' }],
  ['Schenkelfeder links', { hand: 'left' }],
  ['Drehfeder, rechtsgewickelt', { hand: 'right' }],
  ['ねじりばね（左巻）', { hand: 'left' }],
  ['Screw M5x10 left', { hand: 'left' }],
  ['PAWL, L.H.', { side: 'left' }],
  ['Pedal axle, left hand thread', { hand: 'left' }],
  ['PIN COVER (L)', { side: 'left' }],
  ['Side plate R', { side: 'right' }],
];

const contradictory = [
  'Screw M3x8 pan head countersunk',
  '608-2RS ZZ',
  'bolt M6 stainless brass',
  'bolt M6x20 stainless 10.9', // property classes are of steel: ISO 898-1
  'circlip 10 internal external',
  'Senkschraube M3x8 ISO 4762',
  'screw M4x8 slotted torx',
];

describe('attributes', () => {
  test.each(stated)('%s', (line, attrs) => {
    expect(read(line)).toMatchObject({ attrs });
    if (Object.keys(attrs).length === 0) expect(read(line).attrs).toEqual({});
  });

  test.each(handed)('%s', (line, attrs) => {
    const given = read(line).attrs;
    expect(given).toMatchObject(attrs);
    expect('hand' in given && 'side' in given).toBe(false);
  });

  test.each(contradictory)('%s asks', line => {
    const { review, notes } = read(line);
    expect(review).toBe(true);
    expect(notes.length).toBeGreaterThan(0);
  });

  test('a metal bonded to rubber is no contradiction, and neither is given', () => {
    const { attrs, review } = read('bonded washer M6 steel / NBR');
    expect(attrs['material']).toBeUndefined();
    expect(review).toBe(false);
  });
});

describe('two values of one attribute', () => {
  test('the finer stands in either order; others contradict', () => {
    expect(agree('head', 'countersunk', 'raised-countersunk')).toEqual({ kept: 'raised-countersunk' });
    expect(agree('head', 'raised-countersunk', 'countersunk')).toEqual({ kept: 'raised-countersunk' });
    expect(agree('seal', 'two-shields', 'two-contact-seals')).toBe('contradict');
    expect(agree('type', 'lock', 'star')).toEqual({ kept: 'lock' });
  });
});
