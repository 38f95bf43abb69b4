import { mm, toMm, type Um } from '../units/length.ts';
import { hexKey } from './hex-keys.ts';
import { defineTable, indexBy, larger, rising } from './table.ts';

/**
 * What turns a screw: number of the cross recess (ISO 4757), size of the hexalobular socket (ISO 10664), width of the slot.
 *
 * Sources: ISO 7045 to 7048, 14580, 14581, 14583, 1207, 1580 and 2009 from open CAD libraries and suppliers' pages; ISO 7047
 * from one page; DIN 7985 M2 from a note that it has recess 1 where ISO 7045 M2 has 0. DIN 965, the other DIN 7985 rows,
 * JIS B 1111 and tapping screws from memory. Slips in libraries: T10 for ISO 14581 M3.5 (T15) and M4 (T20), 59 for
 * ISO 14580 M10 (T50).
 */
const crossRecess = defineTable(
  'ISO 4757 cross recess numbers by screw',
  'open CAD libraries and suppliers’ pages; DIN 965, DIN 7985 but M2, JIS B 1111 from memory',
  ['thread: text', 'ISO 7045: number?', 'ISO 7048: number?', 'DIN 7985: number?', 'JIS B 1111: number?'],
  [
    ['M1.6', 0, null, 0, null],
    ['M2', 0, null, 1, 1],
    ['M2.5', 1, 1, 1, 1],
    ['M2.6', null, null, null, 1],
    ['M3', 1, 2, 1, 2],
    ['M3.5', 2, 2, 2, 2],
    ['M4', 2, 2, 2, 2],
    ['M5', 2, 2, 2, 2],
    ['M6', 3, 3, 3, 3],
    ['M8', 4, 3, 4, 3],
    ['M10', 4, null, 4, null],
  ],
  (row, previous) =>
    previous && (row['ISO 7045'] ?? 9) < (previous['ISO 7045'] ?? 0)
      ? 'recess is smaller than that of a smaller thread'
      : null,
  row => (row['ISO 7045'] === null || [0, 1, 2, 3, 4].includes(row['ISO 7045']) ? null : 'no such recess'),
);

const tapping = defineTable(
  'tapping screws: cross recess and hexalobular size',
  'ISO 7049 to 7051 and 14585 to 14587 from memory, unverified',
  ['thread: text', 'recess: number', 'torx: number?'],
  [
    ['ST2.2', 0, null],
    ['ST2.9', 1, 10],
    ['ST3.5', 2, 15],
    ['ST4.2', 2, 20],
    ['ST4.8', 2, 25],
    ['ST5.5', 3, 25],
    ['ST6.3', 3, 30],
  ],
  rising(['thread']),
);

const hexalobular = defineTable(
  'ISO 10664 hexalobular sizes',
  'open CAD libraries',
  ['size: number', 'point: mm'],
  [
    [6, 1.75],
    [8, 2.4],
    [10, 2.8],
    [15, 3.35],
    [20, 3.95],
    [25, 4.5],
    [30, 5.6],
    [40, 6.75],
    [45, 7.93],
    [50, 8.95],
    [55, 11.35],
    [60, 13.45],
    [70, 15.7],
    [80, 17.75],
    [90, 20.2],
    [100, 22.4],
  ],
  rising(['size', 'point']),
  (row, previous) => (previous && previous.point >= row.point ? 'point does not grow' : null),
);

const torx = defineTable(
  'hexalobular size by screw',
  'ISO 14579, 14580, 14581 and 14583 from open CAD libraries',
  ['thread: text', 'ISO 14583: number?', 'ISO 14579: number?'],
  [
    ['M2', 6, 6],
    ['M2.5', 8, 8],
    ['M3', 10, 10],
    ['M3.5', 15, null],
    ['M4', 20, 20],
    ['M5', 25, 25],
    ['M6', 30, 30],
    ['M8', 45, 45],
    ['M10', 50, 50],
    ['M12', null, 55],
    ['M14', null, 60],
    ['M16', null, 70],
    ['M18', null, 80],
    ['M20', null, 90],
  ],
  row =>
    hexalobular.rows.some(({ size }) => size === (row['ISO 14583'] ?? row['ISO 14579']))
      ? null
      : 'no such size',
);

const slots = defineTable(
  'slot width by screw',
  'ISO 1207, 1580 and 2009 in open CAD libraries',
  ['thread: text', 'blade: mm', 'slotMin: mm', 'slotMax: mm'],
  [
    ['M1.6', 0.4, 0.46, 0.6],
    ['M2', 0.5, 0.56, 0.7],
    ['M2.5', 0.6, 0.66, 0.8],
    ['M3', 0.8, 0.86, 1],
    ['M3.5', 1, 1.06, 1.2],
    ['M4', 1.2, 1.26, 1.51],
    ['M5', 1.2, 1.26, 1.51],
    ['M6', 1.6, 1.66, 1.91],
    ['M8', 2, 2.06, 2.31],
    ['M10', 2.5, 2.56, 2.81],
  ],
  larger('slotMin', 'blade'),
  larger('slotMax', 'slotMin'),
);

const setScrewSlots = defineTable(
  'slot width by set screw',
  'ISO 4766, 7434, 7435 and 7436, nominal width n, from memory',
  ['thread: text', 'blade: mm'],
  [
    ['M1.2', 0.2],
    ['M1.6', 0.25],
    ['M2', 0.25],
    ['M2.5', 0.4],
    ['M3', 0.4],
    ['M4', 0.6],
    ['M5', 0.8],
    ['M6', 1],
    ['M8', 1.2],
    ['M10', 1.6],
    ['M12', 2],
  ],
);
const bySetScrewSlot = indexBy(setScrewSlots.rows, row => row.thread);

/** Nominal width of a slotted set screw's slot in micrometres (ISO 4766, 7434, 7435, 7436). */
export const setScrewSlotOf = (thread: string) => bySetScrewSlot.get(thread)?.blade;

/** What turns a screw. `size` is the recess or hexalobular number, or the key or blade in millimetres. */
export interface Driver {
  readonly drive: 'phillips' | 'pozidriv' | 'torx' | 'slotted' | 'hex-socket';
  readonly size: number;
  /** As the tool is marked: `PH1`, `PZ2`, `T10`, `2.5 mm`. */
  readonly mark: string;
}

/** Standards by the column that gives their recess; `Z` asks for the pozidriv form where a standard has both. */
const recessOf: Readonly<Record<string, 'ISO 7045' | 'ISO 7048' | 'DIN 7985' | 'JIS B 1111'>> = {
  'ISO 7045': 'ISO 7045',
  'ISO 7046': 'ISO 7045',
  'ISO 7046-1': 'ISO 7045',
  'ISO 7046-2': 'ISO 7045',
  'ISO 7047': 'ISO 7045',
  'ISO 7048': 'ISO 7048',
  'DIN 7985': 'DIN 7985',
  'DIN 965': 'DIN 7985',
  'DIN 966': 'DIN 7985',
  'DIN 967': 'DIN 7985',
  'JIS B 1111': 'JIS B 1111',
};

const torxOf: Readonly<Record<string, 'ISO 14583' | 'ISO 14579'>> = {
  'ISO 14580': 'ISO 14583',
  'ISO 14581': 'ISO 14583',
  'ISO 14582': 'ISO 14583',
  'ISO 14583': 'ISO 14583',
  'ISO 14584': 'ISO 14583',
  'ISO 14579': 'ISO 14579',
};

const slotted = new Set([
  'ISO 1207',
  'ISO 1580',
  'ISO 2009',
  'ISO 2010',
  'DIN 84',
  'DIN 85',
  'DIN 963',
  'DIN 964',
]);
const tappingStandards = /^(?:ISO 70(?:49|50|51)|DIN 798[123]|ISO 1458[567])$/;

const byRecess = indexBy(crossRecess.rows, row => row.thread);
const byTorx = indexBy(torx.rows, row => row.thread);
const bySlot = indexBy(slots.rows, row => row.thread);
const byTapping = indexBy(tapping.rows, row => row.thread);

const cross = (size: number, pozidriv: boolean): Driver => ({
  drive: pozidriv ? 'pozidriv' : 'phillips',
  size,
  mark: `${pozidriv ? 'PZ' : 'PH'}${size}`,
});
const lobes = (size: number): Driver => ({ drive: 'torx', size, mark: `T${size}` });
const measured = (drive: 'slotted' | 'hex-socket', um: Um): Driver => ({
  drive,
  size: toMm(um),
  mark: `${toMm(um)} mm`,
});

/**
 * The driver of a screw by its standard and thread: `driverOf('ISO 7045', 'M3')` is PH1. With `pozidriv` a cross recess is
 * taken as form Z. Undefined where the standard or the size is not in the tables.
 */
export function driverOf(standard: string, thread: string, pozidriv = false): Driver | undefined {
  const recess = recessOf[standard];
  if (recess) {
    const number = byRecess.get(thread)?.[recess];
    return number === null || number === undefined ? undefined : cross(number, pozidriv);
  }
  const column = torxOf[standard];
  if (column) {
    const size = byTorx.get(thread)?.[column];
    return size === null || size === undefined ? undefined : lobes(size);
  }
  if (slotted.has(standard)) {
    const slot = bySlot.get(thread);
    return slot && measured('slotted', slot.blade);
  }
  if (tappingStandards.test(standard)) {
    const row = byTapping.get(thread);
    if (!row) return undefined;
    if (!standard.startsWith('ISO 145')) return cross(row.recess, pozidriv);
    return row.torx === null ? undefined : lobes(row.torx);
  }
  const key = hexKey(standard, thread);
  return key === undefined ? undefined : measured('hex-socket', key);
}

/** Least and greatest width of the slot on a thread, and its blade, in micrometres (ISO 1207, 1580, 2009). */
export const slotOf = (thread: string) => bySlot.get(thread);

/** Point diameter of a hexalobular size, in micrometres (ISO 10664, A). */
export const hexalobularPoint = (size: number): Um | undefined =>
  hexalobular.rows.find(row => row.size === size)?.point ?? undefined;

/** Hexalobular size nearest to a measured point diameter in micrometres, within 0.15 mm. */
export const hexalobularNear = (point: Um): number | undefined =>
  hexalobular.rows.find(row => Math.abs(row.point - point) <= mm(0.15))?.size;
