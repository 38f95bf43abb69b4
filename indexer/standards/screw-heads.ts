import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Heads of machine screws: diameter `dk`, height `k`, across flats `s`. `dkTheoretical` is the sharp edge of a countersunk
 * cone; ISO 10642 gives that and the least real one, no real maximum.
 *
 * Sources: rows marked `library` in open CAD libraries and suppliers' pages, two or more each; `memory` from memory of the
 * standard. Least values of ISO 4762, 7045, 1207 are published; others follow product grade A of ISO 4759-1 (h13 for dk; for k
 * h13 up to M5, h14 above), which fits all published ones. Where they differ: countersunk heads of ISO 7046 and 2009 are 5.5,
 * 8.4 and 9.3 at M3, M4 and M5 (one prints DIN 963's 5.6, 7.5, 9.2: a row of its own here); ISO 10642 is not DIN 7991; ISO 1207
 * M2 and M2.5 are 1.4 and 1.8 high (one prints DIN 84's); ISO 4017 M3.5 is 6 across flats (one gives 5.5); one page labels
 * DIN 7985 as ISO 7045. Head size alone does not identify a standard.
 */
const table = defineTable(
  'heads of machine screws',
  'ISO 4762, 7380-1, 10642, 7045 to 7048, 1207, 1580, 2009, 4017, 14580 to 14584 in open CAD libraries; memory where marked',
  [
    'standard: text',
    'head: text',
    'thread: text',
    'dkMax: mm?',
    'dkMin: mm?',
    'dkTheoretical: mm?',
    'kMax: mm',
    'kMin: mm?',
    'sMax: mm?',
    'sMin: mm?',
    'basis: text',
  ],
  [
    ['ISO 4762', 'socket-cap', 'M1.6', 3, 2.86, null, 1.6, 1.46, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M2', 3.8, 3.62, null, 2, 1.86, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M2.5', 4.5, 4.32, null, 2.5, 2.36, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M3', 5.5, 5.32, null, 3, 2.86, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M4', 7, 6.78, null, 4, 3.82, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M5', 8.5, 8.28, null, 5, 4.82, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M6', 10, 9.78, null, 6, 5.7, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M8', 13, 12.73, null, 8, 7.64, null, null, 'memory'],
    ['ISO 4762', 'socket-cap', 'M10', 16, 15.73, null, 10, 9.64, null, null, 'memory'],
    ['ISO 4762', 'socket-cap', 'M12', 18, 17.73, null, 12, 11.57, null, null, 'library'],
    ['ISO 4762', 'socket-cap', 'M14', 21, 20.67, null, 14, 13.57, null, null, 'memory'],
    ['ISO 4762', 'socket-cap', 'M16', 24, 23.67, null, 16, 15.57, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M3', 5.5, 5.32, null, 2, 1.86, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M4', 7, 6.78, null, 2.8, 2.66, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M5', 8.5, 8.28, null, 3.5, 3.32, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M6', 10, 9.78, null, 4, 3.82, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M8', 13, 12.73, null, 5, 4.82, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M10', 16, 15.73, null, 6, 5.7, null, null, 'memory'],
    ['DIN 7984', 'low-socket-cap', 'M12', 18, 17.73, null, 7, 6.64, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M4', 7, 6.78, null, 2.8, 2.66, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M5', 8.5, 8.28, null, 3.5, 3.32, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M6', 10, 9.78, null, 4, 3.82, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M8', 13, 12.73, null, 5, 4.82, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M10', 16, 15.73, null, 6.5, 6.14, null, null, 'memory'],
    ['DIN 6912', 'low-socket-cap', 'M12', 18, 17.73, null, 7.5, 7.14, null, null, 'memory'],
    ['ISO 7380-1', 'button', 'M3', 5.7, 5.4, null, 1.65, 1.4, null, null, 'library'],
    ['ISO 7380-1', 'button', 'M4', 7.6, 7.24, null, 2.2, 1.95, null, null, 'library'],
    ['ISO 7380-1', 'button', 'M5', 9.5, 9.14, null, 2.75, 2.5, null, null, 'library'],
    ['ISO 7380-1', 'button', 'M6', 10.5, 10.07, null, 3.3, 3, null, null, 'library'],
    ['ISO 7380-1', 'button', 'M8', 14, 13.57, null, 4.4, 4.1, null, null, 'library'],
    ['ISO 7380-1', 'button', 'M10', 17.5, 17.07, null, 5.5, 5.2, null, null, 'memory'],
    ['ISO 7380-1', 'button', 'M12', 21, 20.48, null, 6.6, 6.24, null, null, 'memory'],
    ['ISO 10642', 'countersunk', 'M2', null, null, 4.09, 1.24, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M2.5', null, null, 5.08, 1.55, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M3', null, 5.54, 6.72, 1.86, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M4', null, 7.53, 8.96, 2.48, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M5', null, 9.43, 11.2, 3.1, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M6', null, 11.34, 13.44, 3.72, null, null, null, 'library'],
    ['ISO 10642', 'countersunk', 'M8', null, 15.24, 17.92, 4.96, null, null, null, 'memory'],
    ['ISO 10642', 'countersunk', 'M10', null, 19.22, 22.4, 6.2, null, null, null, 'memory'],
    ['ISO 10642', 'countersunk', 'M12', null, 23.12, 26.88, 7.44, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M3', 6, 5.82, null, 1.7, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M4', 8, 7.78, null, 2.3, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M5', 10, 9.78, null, 2.8, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M6', 12, 11.73, null, 3.3, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M8', 16, 15.73, null, 4.4, null, null, null, 'memory'],
    ['DIN 7991', 'countersunk', 'M10', 20, 19.67, null, 5.5, null, null, null, 'library'],
    ['DIN 7991', 'countersunk', 'M12', 24, 23.67, null, 6.5, null, null, null, 'memory'],
    ['ISO 7045', 'pan', 'M1.6', 3.2, 2.9, null, 1.3, 1.16, null, null, 'memory'],
    ['ISO 7045', 'pan', 'M2', 4, 3.7, null, 1.6, 1.46, null, null, 'library'],
    ['ISO 7045', 'pan', 'M2.5', 5, 4.7, null, 2.1, 1.96, null, null, 'library'],
    ['ISO 7045', 'pan', 'M3', 5.6, 5.3, null, 2.4, 2.26, null, null, 'library'],
    ['ISO 7045', 'pan', 'M3.5', 7, 6.64, null, 2.6, 2.46, null, null, 'library'],
    ['ISO 7045', 'pan', 'M4', 8, 7.64, null, 3.1, 2.92, null, null, 'library'],
    ['ISO 7045', 'pan', 'M5', 9.5, 9.14, null, 3.7, 3.52, null, null, 'library'],
    ['ISO 7045', 'pan', 'M6', 12, 11.57, null, 4.6, 4.3, null, null, 'library'],
    ['ISO 7045', 'pan', 'M8', 16, 15.57, null, 6, 5.7, null, null, 'library'],
    ['ISO 7045', 'pan', 'M10', 20, 19.48, null, 7.5, 7.14, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M2', 4, 3.7, null, 1.72, 1.48, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M2.5', 5, 4.7, null, 2.12, 1.88, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M3', 6, 5.7, null, 2.52, 2.28, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M3.5', 7, 6.64, null, 2.82, 2.58, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M4', 8, 7.64, null, 3.25, 2.95, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M5', 10, 9.64, null, 3.95, 3.65, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M6', 12, 11.57, null, 4.75, 4.45, null, null, 'memory'],
    ['DIN 7985', 'pan', 'M8', 16, 15.57, null, 6.15, 5.85, null, null, 'memory'],
    ['ISO 14583', 'pan', 'M2', 4, 3.7, null, 1.6, 1.46, null, null, 'library'],
    ['ISO 14583', 'pan', 'M2.5', 5, 4.7, null, 2.1, 1.96, null, null, 'library'],
    ['ISO 14583', 'pan', 'M3', 5.6, 5.3, null, 2.4, 2.26, null, null, 'library'],
    ['ISO 14583', 'pan', 'M3.5', 7, 6.64, null, 2.6, 2.46, null, null, 'library'],
    ['ISO 14583', 'pan', 'M4', 8, 7.64, null, 3.1, 2.92, null, null, 'library'],
    ['ISO 14583', 'pan', 'M5', 9.5, 9.14, null, 3.7, 3.52, null, null, 'library'],
    ['ISO 14583', 'pan', 'M6', 12, 11.57, null, 4.6, 4.3, null, null, 'library'],
    ['ISO 14583', 'pan', 'M8', 16, 15.57, null, 6, 5.7, null, null, 'library'],
    ['ISO 14583', 'pan', 'M10', 20, 19.48, null, 7.5, 7.14, null, null, 'memory'],
    ['ISO 1580', 'pan', 'M1.6', 3.2, 2.9, null, 1, 0.86, null, null, 'library'],
    ['ISO 1580', 'pan', 'M2', 4, 3.7, null, 1.3, 1.16, null, null, 'library'],
    ['ISO 1580', 'pan', 'M2.5', 5, 4.7, null, 1.5, 1.36, null, null, 'library'],
    ['ISO 1580', 'pan', 'M3', 5.6, 5.3, null, 1.8, 1.66, null, null, 'library'],
    ['ISO 1580', 'pan', 'M3.5', 7, 6.64, null, 2.1, 1.96, null, null, 'library'],
    ['ISO 1580', 'pan', 'M4', 8, 7.64, null, 2.4, 2.26, null, null, 'library'],
    ['ISO 1580', 'pan', 'M5', 9.5, 9.14, null, 3, 2.86, null, null, 'library'],
    ['ISO 1580', 'pan', 'M6', 12, 11.57, null, 3.6, 3.3, null, null, 'library'],
    ['ISO 1580', 'pan', 'M8', 16, 15.57, null, 4.8, 4.5, null, null, 'memory'],
    ['ISO 1580', 'pan', 'M10', 20, 19.48, null, 6, 5.7, null, null, 'memory'],
    ['ISO 7046', 'countersunk', 'M1.6', 3, 2.7, 3.6, 1, null, null, null, 'memory'],
    ['ISO 7046', 'countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'library'],
    ['ISO 7046', 'countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 7046', 'countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M1.6', 3, 2.7, 3.6, 1, null, null, null, 'memory'],
    ['ISO 7047', 'raised-countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'library'],
    ['ISO 7047', 'raised-countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 7047', 'raised-countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M1.6', 3, 2.7, 3.6, 1, null, null, null, 'memory'],
    ['ISO 2009', 'countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'library'],
    ['ISO 2009', 'countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 2009', 'countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'library'],
    ['ISO 2010', 'raised-countersunk', 'M1.6', 3, 2.7, 3.6, 1, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 2010', 'raised-countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 14581', 'countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M2', 3.8, 3.5, 4.4, 1.2, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M2.5', 4.7, 4.4, 5.5, 1.5, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M3', 5.5, 5.2, 6.3, 1.65, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M3.5', 7.3, 6.94, 8.2, 2.35, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M4', 8.4, 8.04, 9.4, 2.7, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M5', 9.3, 8.94, 10.4, 2.7, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M6', 11.3, 10.87, 12.6, 3.3, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M8', 15.8, 15.37, 17.3, 4.65, null, null, null, 'memory'],
    ['ISO 14584', 'raised-countersunk', 'M10', 18.3, 17.78, 20, 5, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M1', 1.9, 1.76, null, 0.6, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M1.2', 2.3, 2.16, null, 0.72, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M1.4', 2.6, 2.46, null, 0.84, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M1.6', 3, 2.86, null, 0.96, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M2', 3.8, 3.62, null, 1.2, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M2.5', 4.7, 4.52, null, 1.5, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M3', 5.6, 5.42, null, 1.65, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M3.5', 6.5, 6.28, null, 1.93, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M4', 7.5, 7.28, null, 2.2, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M5', 9.2, 8.98, null, 2.5, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M6', 11, 10.73, null, 3, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M8', 14.5, 14.23, null, 4, null, null, null, 'memory'],
    ['DIN 963', 'countersunk', 'M10', 18, 17.73, null, 5, null, null, null, 'memory'],
    ['ISO 1207', 'cheese', 'M1.6', 3, 2.86, null, 1.1, 0.96, null, null, 'memory'],
    ['ISO 1207', 'cheese', 'M2', 3.8, 3.62, null, 1.4, 1.26, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M2.5', 4.5, 4.32, null, 1.8, 1.66, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M3', 5.5, 5.32, null, 2, 1.86, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M3.5', 6, 5.82, null, 2.4, 2.26, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M4', 7, 6.78, null, 2.6, 2.46, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M5', 8.5, 8.28, null, 3.3, 3.12, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M6', 10, 9.78, null, 3.9, 3.6, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M8', 13, 12.73, null, 5, 4.7, null, null, 'library'],
    ['ISO 1207', 'cheese', 'M10', 16, 15.73, null, 6, 5.7, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M2.5', 4.5, 4.32, null, 1.8, 1.66, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M3', 5.5, 5.32, null, 2, 1.86, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M3.5', 6, 5.82, null, 2.4, 2.26, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M4', 7, 6.78, null, 2.6, 2.46, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M5', 8.5, 8.28, null, 3.3, 3.12, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M6', 10, 9.78, null, 3.9, 3.6, null, null, 'memory'],
    ['ISO 7048', 'cheese', 'M8', 13, 12.73, null, 5, 4.7, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M2', 3.8, 3.62, null, 1.55, 1.41, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M2.5', 4.5, 4.32, null, 1.85, 1.71, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M3', 5.5, 5.32, null, 2.4, 2.26, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M3.5', 6, 5.82, null, 2.6, 2.46, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M4', 7, 6.78, null, 3.1, 2.92, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M5', 8.5, 8.28, null, 3.65, 3.47, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M6', 10, 9.78, null, 4.4, 4.1, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M8', 13, 12.73, null, 5.8, 5.5, null, null, 'memory'],
    ['ISO 14580', 'cheese', 'M10', 16, 15.73, null, 6.9, 6.54, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M1', 2, 1.86, null, 0.7, 0.56, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M1.2', 2.3, 2.16, null, 0.8, 0.66, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M1.4', 2.6, 2.46, null, 0.9, 0.76, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M1.6', 3, 2.86, null, 1, 0.86, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M2', 3.8, 3.62, null, 1.3, 1.16, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M2.5', 4.5, 4.32, null, 1.6, 1.46, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M3', 5.5, 5.32, null, 2, 1.86, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M3.5', 6, 5.82, null, 2.4, 2.26, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M4', 7, 6.78, null, 2.6, 2.46, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M5', 8.5, 8.28, null, 3.3, 3.12, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M6', 10, 9.78, null, 3.9, 3.6, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M8', 13, 12.73, null, 5, 4.7, null, null, 'memory'],
    ['DIN 84', 'cheese', 'M10', 16, 15.73, null, 6, 5.7, null, null, 'memory'],
    ['ISO 4017', 'hex', 'M1.6', null, null, null, 1.225, 0.975, 3.2, 3.02, 'memory'],
    ['ISO 4017', 'hex', 'M2', null, null, null, 1.525, 1.275, 4, 3.82, 'library'],
    ['ISO 4017', 'hex', 'M2.5', null, null, null, 1.825, 1.575, 5, 4.82, 'library'],
    ['ISO 4017', 'hex', 'M3', null, null, null, 2.125, 1.875, 5.5, 5.32, 'library'],
    ['ISO 4017', 'hex', 'M3.5', null, null, null, 2.525, 2.275, 6, 5.82, 'library'],
    ['ISO 4017', 'hex', 'M4', null, null, null, 2.925, 2.675, 7, 6.78, 'library'],
    ['ISO 4017', 'hex', 'M5', null, null, null, 3.65, 3.35, 8, 7.78, 'library'],
    ['ISO 4017', 'hex', 'M6', null, null, null, 4.15, 3.85, 10, 9.78, 'library'],
    ['ISO 4017', 'hex', 'M8', null, null, null, 5.45, 5.15, 13, 12.73, 'library'],
    ['ISO 4017', 'hex', 'M10', null, null, null, 6.58, 6.22, 16, 15.73, 'memory'],
    ['ISO 4017', 'hex', 'M12', null, null, null, 7.68, 7.32, 18, 17.73, 'library'],
    ['DIN 933', 'hex', 'M10', null, null, null, 6.58, 6.22, 17, 16.73, 'library'],
    ['DIN 933', 'hex', 'M12', null, null, null, 7.68, 7.32, 19, 18.67, 'memory'],
  ],
  unique('standard', 'thread'),
  larger('dkMax', 'dkMin'),
  larger('dkTheoretical', 'dkMax'),
  larger('dkTheoretical', 'dkMin'),
  larger('kMax', 'kMin'),
  larger('sMax', 'sMin'),
  row =>
    within(row.dkMax, row.dkMin, 600) && within(row.kMax, row.kMin, 600) ? null : 'the limits are too wide',
  row => (within(row.sMax, row.sMin, 500) ? null : 'the across flats limits are too wide'),
  row =>
    within(row.dkTheoretical, row.dkMax, 0.2 * diameterOf(row.thread) + 500) ? null : 'the cone is too sharp',
  (row, previous) =>
    previous?.standard === row.standard &&
    (width(previous) >= width(row) || (previous.dkMin ?? 0) > (row.dkMin ?? 0))
      ? 'head is no wider than that of a smaller thread'
      : null,
  row => (width(row) < diameterOf(row.thread) * 2.3 ? null : 'head is too wide'),
  row =>
    (row.dkMax ?? row.dkTheoretical ?? row.sMax ?? 0) > diameterOf(row.thread) * 1.4
      ? null
      : 'head is too small',
  row => (row.kMax < diameterOf(row.thread) * 1.01 ? null : 'head is higher than the thread is thick'),
  (row, previous) =>
    previous?.standard === row.standard &&
    (diameterOf(previous.thread) >= diameterOf(row.thread) || previous.kMax > row.kMax)
      ? 'thread or head height does not rise'
      : null,
);

/** Whether two limits, where both are given, lie no further apart than `room`. */
function within(max: Um | null, min: Um | null, room: Um): boolean {
  return max === null || min === null || max - min <= room;
}

/** The width by which a head is known: its diameter, the sharp cone's, or its flats. */
function width(row: { dkMax: Um | null; dkTheoretical: Um | null; sMax: Um | null }): Um {
  return row.dkMax ?? row.dkTheoretical ?? row.sMax ?? 0;
}

function diameterOf(thread: string): Um {
  return Number(thread.slice(1)) * 1000;
}

/** A screw's head; lengths in micrometres. */
export type ScrewHead = (typeof table.rows)[number];

/** All heads, by standard and thread. */
export const screwHeads: readonly ScrewHead[] = table.rows;

/** Numbers that share the heads of another. */
const sameAs: Readonly<Record<string, string>> = {
  'DIN 912': 'ISO 4762',
  'ISO 7380': 'ISO 7380-1',
  'DIN 965': 'DIN 963',
  'DIN 964': 'DIN 963',
  'DIN 966': 'DIN 963',
  'DIN 85': 'ISO 1580',
  'ISO 4014': 'ISO 4017',
  'DIN 931': 'DIN 933',
};

/** DIN 933 differs from ISO 4017 at M10 and M12 alone. */
const elseAs: Readonly<Record<string, string>> = { 'DIN 933': 'ISO 4017' };

const byThread = indexBy(screwHeads, head => `${head.standard} ${head.thread}`);
const byForm = groupBy(screwHeads, head => `${head.head} ${head.thread}`);

/** The head of a screw by standard, DIN or ISO, and thread: `screwHead('DIN 912', 'M3')`. */
export function screwHead(standard: string, thread: string): ScrewHead | undefined {
  const own = sameAs[standard] ?? standard;
  return byThread.get(`${own} ${thread}`) ?? byThread.get(`${elseAs[own]} ${thread}`);
}

/** The heads of a form (`pan`) on a thread, over all standards. */
export const headsOf = (form: string, thread: string): readonly ScrewHead[] =>
  byForm.get(`${form} ${thread}`) ?? [];
