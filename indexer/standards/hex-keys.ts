import { inch, type Um } from '../units/length.ts';
import { setScrew } from './set-screws.ts';
import { defineTable, indexBy, larger, rising } from './table.ts';

/**
 * Hexagon keys (ISO 2936) and the screws they turn, metric and inch.
 *
 * Sources: metric keys and sockets from open CAD libraries and suppliers' pages (ISO 4762, 7380-1, 10642, 7379, 4026 to 4029, DIN 6912
 * and 7984); socket limits are those of ISO 4028 and 4762, some libraries print tighter older ones, one prints 4095 for 4.095.
 * Sizes outside the standards but sold: cap M1.4, button M2 and M2.5. The list of ISO 2936 stands in an open CAD library, its limits
 * are from memory, as are sockets above 12 mm and the inch table (ASME B18.3).
 */
const sockets = defineTable(
  'hexagon sockets by key',
  'ISO 4028 and 4762; above 12 mm from memory',
  ['key: mm', 'socketMin: mm', 'socketMax: mm'],
  [
    [0.7, 0.71, 0.724],
    [0.9, 0.887, 0.913],
    [1.3, 1.275, 1.3],
    [1.5, 1.52, 1.58],
    [2, 2.02, 2.08],
    [2.5, 2.52, 2.58],
    [3, 3.02, 3.08],
    [4, 4.02, 4.095],
    [5, 5.02, 5.14],
    [6, 6.02, 6.14],
    [8, 8.025, 8.175],
    [10, 10.025, 10.175],
    [12, 12.032, 12.212],
    [14, 14.032, 14.212],
    [17, 17.05, 17.23],
    [19, 19.065, 19.275],
    [22, 22.065, 22.275],
    [27, 27.065, 27.275],
  ],
  rising(['key']),
  larger('socketMax', 'socketMin'),
  row => (row.socketMax - row.socketMin <= 210 ? null : 'the socket is too loose'),
  row => (Math.abs(row.socketMin - row.key) <= 65 ? null : 'the socket does not take its key'),
);

const keys = defineTable(
  'ISO 2936 hexagon keys',
  'sizes from an open CAD library; limits from memory',
  ['key: mm', 'max: mm', 'min: mm'],
  [
    [0.7, 0.711, 0.698],
    [0.9, 0.889, 0.876],
    [1.3, 1.27, 1.244],
    [1.5, 1.5, 1.46],
    [2, 2, 1.96],
    [2.5, 2.5, 2.46],
    [3, 3, 2.96],
    [3.5, 3.5, 3.45],
    [4, 4, 3.95],
    [4.5, 4.5, 4.45],
    [5, 5, 4.95],
    [6, 6, 5.95],
    [7, 7, 6.94],
    [8, 8, 7.94],
    [9, 9, 8.94],
    [10, 10, 9.94],
    [11, 11, 10.89],
    [12, 12, 11.89],
    [13, 13, 12.89],
    [14, 14, 13.89],
    [15, 15, 14.89],
    [16, 16, 15.89],
    [17, 17, 16.89],
    [18, 18, 17.89],
    [19, 19, 18.87],
    [21, 21, 20.87],
    [22, 22, 21.87],
    [23, 23, 22.87],
    [24, 24, 23.87],
    [27, 27, 26.87],
    [29, 29, 28.87],
    [30, 30, 29.87],
    [32, 32, 31.84],
    [36, 36, 35.84],
  ],
  rising(['key']),
  larger('max', 'min'),
  // The three smallest keys are named by a rounded size and may be a hundredth over it.
  row => (Math.abs(row.max - row.key) <= (row.key < 1500 ? 30 : 0) ? null : 'the key is over its size'),
  row => (row.max - row.min <= 160 ? null : 'the key is too loose'),
);

const metric = defineTable(
  'hexagon keys by screw',
  'open CAD libraries and suppliers’ pages; M18 and M22 of ISO 4762, which DIN 912 has, from memory',
  [
    'thread: text',
    'ISO 4762: mm?',
    'ISO 7380-1: mm?',
    'ISO 10642: mm?',
    'DIN 7984: mm?',
    'DIN 6912: mm?',
    'ISO 7379: mm?',
  ],
  [
    ['M1.4', 1.3, null, null, null, null, null],
    ['M1.6', 1.5, null, null, null, null, null],
    ['M2', 1.5, 1.3, 1.3, null, null, null],
    ['M2.5', 2, 1.5, 1.5, null, null, null],
    ['M3', 2.5, 2, 2, 2, null, 2],
    ['M4', 3, 2.5, 2.5, 2.5, 3, 2.5],
    ['M5', 4, 3, 3, 3, 4, 3],
    ['M6', 5, 4, 4, 4, 5, 4],
    ['M8', 6, 5, 5, 5, 6, 5],
    ['M10', 8, 6, 6, 7, 8, 6],
    ['M12', 10, 8, 8, 8, 10, 8],
    ['M14', 12, null, 10, 10, 12, null],
    ['M16', 14, 10, 10, 12, 14, 10],
    ['M18', 14, null, null, 12, 14, null],
    ['M20', 17, null, 12, 14, 17, 12],
    ['M22', 17, null, null, 14, 17, null],
    ['M24', 19, null, null, 17, 19, null],
    ['M30', 22, null, null, null, 22, null],
    ['M36', 27, null, null, null, 27, null],
  ],
  // A cap head takes the largest key of all heads on the same thread.
  row =>
    [row['ISO 7380-1'], row['ISO 10642'], row['DIN 7984']].every(
      key => key === null || row['ISO 4762'] === null || key < row['ISO 4762'],
    )
      ? null
      : 'a lower head takes a larger key than the cap head',
  row => (row['ISO 4762']! < Number(row.thread.slice(1)) * 1000 ? null : 'key is too large for the thread'),
);

const inches = defineTable(
  'ASME B18.3 hexagon keys by screw',
  'ASME B18.3 from memory, unverified',
  ['size: text', 'cap: inch', 'button: inch?', 'flat: inch?', 'set: inch'],
  [
    ['0', 0.05, 0.035, 0.035, 0.028],
    ['1', 1 / 16, 0.05, 0.05, 0.035],
    ['2', 5 / 64, 0.05, 0.05, 0.035],
    ['3', 5 / 64, 1 / 16, 1 / 16, 0.05],
    ['4', 3 / 32, 1 / 16, 1 / 16, 0.05],
    ['5', 3 / 32, 5 / 64, 5 / 64, 1 / 16],
    ['6', 7 / 64, 5 / 64, 5 / 64, 1 / 16],
    ['8', 9 / 64, 3 / 32, 3 / 32, 5 / 64],
    ['10', 5 / 32, 1 / 8, 1 / 8, 3 / 32],
    ['1/4', 3 / 16, 5 / 32, 5 / 32, 1 / 8],
    ['5/16', 1 / 4, 3 / 16, 3 / 16, 5 / 32],
    ['3/8', 5 / 16, 7 / 32, 7 / 32, 3 / 16],
    ['1/2', 3 / 8, 5 / 16, 5 / 16, 1 / 4],
  ],
  larger('cap', 'button'),
  larger('cap', 'flat'),
  larger('cap', 'set'),
  (row, previous) =>
    previous && previous.cap > row.cap ? 'key is smaller than that of a smaller thread' : null,
);

/** Sizes of metric keys, in micrometres, smallest first (ISO 2936). */
export const hexKeySizes: readonly Um[] = keys.rows.map(row => row.key);

/** Sizes of inch keys, in micrometres, smallest first. */
const inchHexKeySizes: readonly Um[] = [
  ...new Set(inches.rows.flatMap(row => [row.cap, row.button ?? row.cap, row.flat ?? row.cap, row.set])),
].sort((a, b) => a - b);

type Standard = Exclude<keyof (typeof metric.rows)[number], 'thread'>;

/** Standards that share the keys of another. */
const sameAs: Readonly<Record<string, Standard>> = {
  'DIN 912': 'ISO 4762',
  'ISO 21269': 'ISO 4762',
  'ISO 7380': 'ISO 7380-1',
  'ISO 7380-2': 'ISO 7380-1',
  'DIN 7991': 'ISO 10642',
  'DIN 9841': 'ISO 7379',
  'ISO 12474': 'ISO 4762',
  'JIS B 1176': 'ISO 4762',
};

const setScrewNumbers = /^(?:ISO 402[6-9]|DIN 91[3-6])$/;
const byThread = indexBy(metric.rows, row => row.thread);
const bySize = indexBy(inches.rows, row => row.size);
const bySocket = indexBy(sockets.rows, row => row.key);

/** The hexagon key of a screw by its standard, DIN or ISO, and thread, in micrometres: `hexKey('DIN 912', 'M3')` is 2500. */
export function hexKey(standard: string, thread: string): Um | undefined {
  if (setScrewNumbers.test(standard)) return setScrew(thread)?.key;
  const own = (sameAs[standard] ?? standard) as Standard;
  return byThread.get(thread)?.[own] ?? undefined;
}

/** The key of a hexagon socket screw by head, where no standard is printed, in micrometres. */
export function hexKeyOfHead(head: string, thread: string): Um | undefined {
  const standard = {
    'socket-cap': 'ISO 4762',
    'low-socket-cap': 'DIN 7984',
    button: 'ISO 7380-1',
    countersunk: 'ISO 10642',
  }[head];
  return standard === undefined ? undefined : hexKey(standard, thread);
}

/** The key of an inch socket screw by head and size (`6`, `1/4`), in micrometres (ASME B18.3, from memory). */
export const inchHexKey = (head: 'cap' | 'button' | 'flat' | 'set', size: string): Um | undefined =>
  bySize.get(size)?.[head] ?? undefined;

/** Threads of a standard that a key in micrometres turns, smallest first: a 1.5 key turns cap screws M1.6 and M2. */
export const threadsForKey = (standard: string, key: Um): string[] =>
  metric.rows.filter(row => hexKey(standard, row.thread) === key).map(row => row.thread);

/** Least and greatest across flats of the socket that a key in micrometres fits. */
export const socketOf = (key: Um) => bySocket.get(key);

/** Inch keys that a metric key is easily taken for, and by how much they differ, in micrometres: a key that rocks is the wrong one. */
export const lookAlikes = (key: Um): { key: Um; differs: Um }[] =>
  inchHexKeySizes
    .map(other => ({ key: other, differs: other - key }))
    .filter(({ differs }) => Math.abs(differs) <= inch(0.005));

const byKey = indexBy(keys.rows, row => row.key);

/** Greatest and least across flats of the bar of a metric key, in micrometres (ISO 2936): a bar under its least is worn out. */
export const keyLimits = (key: Um) => byKey.get(key);
