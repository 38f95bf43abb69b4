import type { Um } from '../units/length.ts';
import { type BallBearing, type Basis, bearingLookup } from './ball-bearing.ts';
import { boreCodes, boreMeant, diameterSeriesMeant } from './bearing-number.ts';
import { atLeast, defineTable, larger, unique } from './table.ts';

/**
 * Deep-groove ball bearings of bore 1 to 50 mm: the usual numbers, their outlines and the ISO 15 dimension series.
 *
 * Sources: rows marked `catalogue` stand in two or more of the texts of the NSK, FBJ, KYK, SKF and NKE catalogues, `single` in one;
 * ISO 15 series by matching the boundary table of the NSK catalogue. Where they differ: the open flange of MR93, MR105, MR126 and MR128 is
 * NSK's (FBJ prints the shielded one); F699ZZ is 6 wide (FBJ 5). Flanges from bore 10 up come from one open library alone,
 * 67xx open from FBJ alone, which prints 6700 in no closed form. Rows marked `memory` are from memory of the same catalogues and of ISO 15, unverified.
 *
 * A series is written width digit, diameter digit; null where the outline is not one of ISO 15, or the form is not made.
 */
const table = defineTable(
  'ISO 15 deep-groove ball bearings',
  'NSK, FBJ, KYK and SKF catalogues; ISO 15 boundary table as NSK prints it; memory where marked',
  [
    'designation: text',
    'bore: mm',
    'od: mm',
    'widthOpen: mm?',
    'widthShielded: mm?',
    'flangeOdOpen: mm?',
    'flangeWidthOpen: mm?',
    'flangeOdShielded: mm?',
    'flangeWidthShielded: mm?',
    'seriesOpen: text?',
    'seriesShielded: text?',
    'basis: text',
  ],
  [
    ['681', 1, 3, 1, null, 3.8, 0.3, null, null, '18', null, 'catalogue'],
    ['MR31', 1, 3, 1.5, null, null, null, null, null, '38', null, 'catalogue'],
    ['691', 1, 4, 1.6, null, 5, 0.5, null, null, '19', null, 'catalogue'],
    ['MR41X', 1.2, 4, 1.8, 2.5, 4.8, 0.4, null, null, null, null, 'single'],
    ['681X', 1.5, 4, 1.2, 2, 5, 0.4, 5, 0.6, '18', '38', 'catalogue'],
    ['691X', 1.5, 5, 2, 2.6, 6.5, 0.6, 6.5, 0.8, '19', '39', 'catalogue'],
    ['601X', 1.5, 6, 2.5, 3, 7.5, 0.6, 7.5, 0.8, '10', '30', 'single'],
    ['672', 2, 4, 1.2, 2, null, null, null, null, '17', '37', 'memory'],
    ['682', 2, 5, 1.5, 2.3, 6.1, 0.5, 6.1, 0.6, '18', '38', 'catalogue'],
    ['MR52', 2, 5, 2, 2.5, 6.2, 0.6, 6.2, 0.6, null, null, 'catalogue'],
    ['692', 2, 6, 2.3, 3, 7.5, 0.6, 7.5, 0.8, '19', '39', 'catalogue'],
    ['MR62', 2, 6, 2.5, 2.5, 7.2, 0.6, 7.2, 0.6, null, null, 'single'],
    ['MR72', 2, 7, 2.5, 3, 8.2, 0.6, 8.2, 0.6, null, null, 'single'],
    ['602', 2, 7, 2.8, 3.5, 8.5, 0.7, 8.5, 0.9, '10', '30', 'catalogue'],
    ['682X', 2.5, 6, 1.8, 2.6, 7.1, 0.5, 7.1, 0.8, '18', '38', 'catalogue'],
    ['692X', 2.5, 7, 2.5, 3.5, 8.5, 0.7, 8.5, 0.9, '19', '39', 'catalogue'],
    ['MR82X', 2.5, 8, 2.5, null, 9.2, 0.6, null, null, null, null, 'catalogue'],
    ['602X', 2.5, 8, 2.8, 4, 9.5, 0.7, 9.5, 0.9, '10', '30', 'catalogue'],
    ['MR63', 3, 6, 2, 2.5, 7.2, 0.6, 7.2, 0.6, '17', '27', 'catalogue'],
    ['673', 3, 6, 2, 2.5, null, null, null, null, '17', '27', 'memory'],
    ['683', 3, 7, 2, 3, 8.1, 0.5, 8.1, 0.8, '18', '38', 'catalogue'],
    ['MR83', 3, 8, 2.5, 3, 9.2, 0.6, null, null, null, '19', 'catalogue'],
    ['693', 3, 8, 3, 4, 9.5, 0.7, 9.5, 0.9, '19', '39', 'catalogue'],
    ['MR93', 3, 9, 2.5, 4, 10.2, 0.6, 10.6, 0.8, null, null, 'catalogue'],
    ['603', 3, 9, 3, 5, 10.5, 0.7, 10.5, 1, '10', '30', 'catalogue'],
    ['623', 3, 10, 4, 4, 11.5, 1, 11.5, 1, '02', '02', 'catalogue'],
    ['633', 3, 13, 5, 5, 15, 1, 15, 1, '03', '03', 'catalogue'],
    ['MR74', 4, 7, 2, 2.5, 8.2, 0.6, 8.2, 0.6, '17', '27', 'single'],
    ['674', 4, 7, 2, 2.5, null, null, null, null, '17', '27', 'memory'],
    ['MR84', 4, 8, 2, 3, 9.2, 0.6, 9.2, 0.6, null, null, 'catalogue'],
    ['684', 4, 9, 2.5, 4, 10.3, 0.6, 10.3, 1, '18', '38', 'catalogue'],
    ['628/4', 4, 9, null, 3.5, null, null, null, null, null, '28', 'single'],
    ['MR104', 4, 10, 3, 4, 11.2, 0.6, 11.6, 0.8, null, null, 'catalogue'],
    ['694', 4, 11, 4, 4, 12.5, 1, 12.5, 1, '19', '19', 'catalogue'],
    ['604', 4, 12, 4, 4, 13.5, 1, 13.5, 1, '10', '10', 'catalogue'],
    ['624', 4, 13, 5, 5, 15, 1, 15, 1, '02', '02', 'catalogue'],
    ['634', 4, 16, 5, 5, 18, 1, 18, 1, '03', '03', 'catalogue'],
    ['MR85', 5, 8, 2, 2.5, 9.2, 0.6, 9.2, 0.6, '17', '27', 'catalogue'],
    ['675', 5, 8, 2, 2.5, null, null, null, null, '17', '27', 'memory'],
    ['MR95', 5, 9, 2.5, 3, 10.2, 0.6, 10.2, 0.6, null, null, 'single'],
    ['MR105', 5, 10, 3, 4, 11.2, 0.6, 11.6, 0.8, null, null, 'catalogue'],
    ['685', 5, 11, 3, 5, 12.5, 0.8, 12.5, 1, '18', '38', 'catalogue'],
    ['MR115', 5, 11, null, 4, null, null, 12.6, 0.8, null, '28', 'catalogue'],
    ['695', 5, 13, 4, 4, 15, 1, 15, 1, '19', '19', 'catalogue'],
    ['605', 5, 14, 5, 5, 16, 1, 16, 1, '10', '10', 'catalogue'],
    ['625', 5, 16, 5, 5, 18, 1, 18, 1, '02', '02', 'catalogue'],
    ['635', 5, 19, 6, 6, 22, 1.5, 22, 1.5, '03', '03', 'catalogue'],
    ['MR106', 6, 10, 2.5, 3, 11.2, 0.6, 11.2, 0.6, '17', '27', 'catalogue'],
    ['676', 6, 10, 2.5, 3, null, null, null, null, '17', '27', 'memory'],
    ['MR126', 6, 12, 3, 4, 13.2, 0.6, 13.6, 0.8, null, null, 'catalogue'],
    ['686', 6, 13, 3.5, 5, 15, 1, 15, 1.1, '18', '28', 'catalogue'],
    ['696', 6, 15, 5, 5, 17, 1.2, 17, 1.2, '19', '19', 'catalogue'],
    ['606', 6, 17, 6, 6, 19, 1.2, 19, 1.2, '10', '10', 'catalogue'],
    ['626', 6, 19, 6, 6, 22, 1.5, 22, 1.5, '02', '02', 'catalogue'],
    ['636', 6, 22, 7, 7, 25, 1.5, 25, 1.5, '03', '03', 'catalogue'],
    ['MR117', 7, 11, 2.5, 3, 12.2, 0.6, 12.2, 0.6, '17', '27', 'catalogue'],
    ['677', 7, 11, 2.5, 3, null, null, null, null, '17', '27', 'memory'],
    ['MR137', 7, 13, 3, 4, 14.2, 0.6, 14.6, 0.8, null, null, 'catalogue'],
    ['687', 7, 14, 3.5, 5, 16, 1, 16, 1.1, '18', '28', 'catalogue'],
    ['697', 7, 17, 5, 5, 19, 1.2, 19, 1.2, '19', '19', 'catalogue'],
    ['607', 7, 19, 6, 6, 22, 1.5, 22, 1.5, '10', '10', 'catalogue'],
    ['627', 7, 22, 7, 7, 25, 1.5, 25, 1.5, '02', '02', 'catalogue'],
    ['637', 7, 26, 9, 9, null, null, null, null, '03', '03', 'catalogue'],
    ['MR128', 8, 12, 2.5, 3.5, 13.2, 0.6, 13.6, 0.8, '17', '37', 'catalogue'],
    ['678', 8, 12, 2.5, 3.5, null, null, null, null, '17', '37', 'memory'],
    ['MR148', 8, 14, 3.5, 4, 15.6, 0.8, 15.6, 0.8, null, null, 'catalogue'],
    ['688', 8, 16, 4, 5, 18, 1, 18, 1.1, '18', '28', 'catalogue'],
    ['638/8', 8, 16, null, 6, null, null, null, null, null, '38', 'single'],
    ['698', 8, 19, 6, 6, 22, 1.5, 22, 1.5, '19', '19', 'catalogue'],
    ['608', 8, 22, 7, 7, 25, 1.5, 25, 1.5, '10', '10', 'catalogue'],
    ['630/8', 8, 22, null, 11, null, null, null, null, null, '30', 'single'],
    ['628', 8, 24, 8, 8, null, null, null, null, '02', '02', 'catalogue'],
    ['638', 8, 28, 9, 9, null, null, null, null, '03', '03', 'catalogue'],
    ['679', 9, 14, 3, 4.5, null, null, null, null, '17', '37', 'memory'],
    ['689', 9, 17, 4, 5, 19, 1, 19, 1.1, '18', '28', 'catalogue'],
    ['699', 9, 20, 6, 6, 23, 1.5, 23, 1.5, '19', '19', 'catalogue'],
    ['609', 9, 24, 7, 7, 27, 1.5, 27, 1.5, '10', '10', 'catalogue'],
    ['629', 9, 26, 8, 8, null, null, null, null, '02', '02', 'catalogue'],
    ['639', 9, 30, 10, 10, null, null, null, null, '03', '03', 'catalogue'],
    ['6700', 10, 15, 3, 4, null, null, 16.8, 0.8, '17', null, 'mixed'],
    ['6800', 10, 19, 5, 5, null, null, 21, 1, '18', '18', 'catalogue'],
    ['63800', 10, 19, null, 7, null, null, null, null, null, '38', 'memory'],
    ['6900', 10, 22, 6, 6, null, null, 25, 1.5, '19', '19', 'mixed'],
    ['6000', 10, 26, 8, 8, null, null, 28.5, 1.5, '10', '10', 'mixed'],
    ['63000', 10, 26, null, 12, null, null, null, null, null, '30', 'catalogue'],
    ['16100', 10, 28, 8, null, null, null, null, null, null, null, 'catalogue'],
    ['6200', 10, 30, 9, 9, null, null, null, null, '02', '02', 'catalogue'],
    ['62200', 10, 30, null, 14, null, null, null, null, null, '22', 'catalogue'],
    ['6300', 10, 35, 11, 11, null, null, null, null, '03', '03', 'catalogue'],
    ['62300', 10, 35, null, 17, null, null, null, null, null, '23', 'single'],
    ['6701', 12, 18, 4, 4, null, null, 19.8, 0.8, '17', '17', 'mixed'],
    ['6801', 12, 21, 5, 5, null, null, 23.1, 1.1, '18', '18', 'mixed'],
    ['63801', 12, 21, null, 7, null, null, null, null, null, '38', 'memory'],
    ['6901', 12, 24, 6, 6, null, null, 26.5, 1.5, '19', '19', 'mixed'],
    ['16001', 12, 28, 7, null, null, null, null, null, '00', null, 'catalogue'],
    ['6001', 12, 28, 8, 8, null, null, 30.5, 1.5, '10', '10', 'mixed'],
    ['63001', 12, 28, null, 12, null, null, null, null, null, '30', 'catalogue'],
    ['16101', 12, 30, 8, null, null, null, null, null, null, null, 'single'],
    ['6201', 12, 32, 10, 10, null, null, null, null, '02', '02', 'catalogue'],
    ['62201', 12, 32, null, 14, null, null, null, null, null, '22', 'catalogue'],
    ['6301', 12, 37, 12, 12, null, null, null, null, '03', '03', 'catalogue'],
    ['62301', 12, 37, null, 17, null, null, null, null, null, '23', 'single'],
    ['6702', 15, 21, 4, 4, null, null, null, null, '17', '17', 'mixed'],
    ['6802', 15, 24, 5, 5, null, null, 26.1, 1.1, '18', '18', 'mixed'],
    ['63802', 15, 24, null, 7, null, null, null, null, null, '38', 'memory'],
    ['6902', 15, 28, 7, 7, null, null, null, null, '19', '19', 'catalogue'],
    ['16002', 15, 32, 8, null, null, null, null, null, '00', null, 'catalogue'],
    ['6002', 15, 32, 9, 9, null, null, null, null, '10', '10', 'catalogue'],
    ['63002', 15, 32, null, 13, null, null, null, null, null, '30', 'catalogue'],
    ['6202', 15, 35, 11, 11, null, null, null, null, '02', '02', 'catalogue'],
    ['62202', 15, 35, null, 14, null, null, null, null, null, '22', 'catalogue'],
    ['6302', 15, 42, 13, 13, null, null, null, null, '03', '03', 'catalogue'],
    ['62302', 15, 42, null, 17, null, null, null, null, null, '23', 'single'],
    ['6703', 17, 23, 4, 4, null, null, null, null, '17', '17', 'single'],
    ['6803', 17, 26, 5, 5, null, null, 28.1, 1.1, '18', '18', 'mixed'],
    ['63803', 17, 26, null, 7, null, null, null, null, null, '38', 'memory'],
    ['6903', 17, 30, 7, 7, null, null, 33.5, 1.5, '19', '19', 'mixed'],
    ['16003', 17, 35, 8, null, null, null, null, null, '00', null, 'catalogue'],
    ['6003', 17, 35, 10, 10, null, null, 37.5, 1.5, '10', '10', 'mixed'],
    ['63003', 17, 35, null, 14, null, null, null, null, null, '30', 'catalogue'],
    ['6203', 17, 40, 12, 12, null, null, null, null, '02', '02', 'catalogue'],
    ['62203', 17, 40, null, 16, null, null, null, null, null, '22', 'catalogue'],
    ['6303', 17, 47, 14, 14, null, null, null, null, '03', '03', 'catalogue'],
    ['62303', 17, 47, null, 19, null, null, null, null, null, '23', 'single'],
    ['6403', 17, 62, 17, 17, null, null, null, null, '04', '04', 'catalogue'],
    ['6704', 20, 27, 4, 4, null, null, null, null, '17', '17', 'mixed'],
    ['6804', 20, 32, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['63804', 20, 32, null, 10, null, null, null, null, null, '38', 'memory'],
    ['6904', 20, 37, 9, 9, null, null, 40.5, 1.5, '19', '19', 'mixed'],
    ['16004', 20, 42, 8, null, null, null, null, null, '00', null, 'catalogue'],
    ['6004', 20, 42, 12, 12, null, null, null, null, '10', '10', 'catalogue'],
    ['63004', 20, 42, null, 16, null, null, null, null, null, '30', 'catalogue'],
    ['6204', 20, 47, 14, 14, null, null, null, null, '02', '02', 'catalogue'],
    ['62204', 20, 47, null, 18, null, null, null, null, null, '22', 'catalogue'],
    ['6304', 20, 52, 15, 15, null, null, null, null, '03', '03', 'catalogue'],
    ['62304', 20, 52, null, 21, null, null, null, null, null, '23', 'single'],
    ['6404', 20, 72, 19, 19, null, null, null, null, '04', '04', 'catalogue'],
    ['60/22', 22, 44, 12, 12, null, null, null, null, '10', '10', 'catalogue'],
    ['62/22', 22, 50, 14, 14, null, null, null, null, '02', '02', 'catalogue'],
    ['63/22', 22, 56, 16, 16, null, null, null, null, '03', '03', 'catalogue'],
    ['6705', 25, 32, 4, 4, null, null, null, null, '17', '17', 'single'],
    ['6805', 25, 37, 7, 7, null, null, 40.2, 1.5, '18', '18', 'mixed'],
    ['63805', 25, 37, null, 10, null, null, null, null, null, '38', 'memory'],
    ['6905', 25, 42, 9, 9, null, null, null, null, '19', '19', 'catalogue'],
    ['16005', 25, 47, 8, null, null, null, null, null, '00', null, 'catalogue'],
    ['6005', 25, 47, 12, 12, null, null, null, null, '10', '10', 'catalogue'],
    ['63005', 25, 47, null, 16, null, null, null, null, null, '30', 'catalogue'],
    ['6205', 25, 52, 15, 15, null, null, null, null, '02', '02', 'catalogue'],
    ['62205', 25, 52, null, 18, null, null, null, null, null, '22', 'catalogue'],
    ['6305', 25, 62, 17, 17, null, null, null, null, '03', '03', 'catalogue'],
    ['62305', 25, 62, null, 24, null, null, null, null, null, '23', 'single'],
    ['6405', 25, 80, 21, 21, null, null, null, null, '04', '04', 'catalogue'],
    ['60/28', 28, 52, 12, 12, null, null, null, null, '10', '10', 'catalogue'],
    ['62/28', 28, 58, 16, 16, null, null, null, null, '02', '02', 'catalogue'],
    ['63/28', 28, 68, 18, 18, null, null, null, null, '03', '03', 'catalogue'],
    ['6706', 30, 37, 4, 4, null, null, null, null, '17', '17', 'mixed'],
    ['6806', 30, 42, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['63806', 30, 42, null, 10, null, null, null, null, null, '38', 'memory'],
    ['6906', 30, 47, 9, 9, null, null, null, null, '19', '19', 'catalogue'],
    ['16006', 30, 55, 9, null, null, null, null, null, '00', null, 'catalogue'],
    ['6006', 30, 55, 13, 13, null, null, 57.5, 1.5, '10', '10', 'mixed'],
    ['63006', 30, 55, null, 19, null, null, null, null, null, '30', 'catalogue'],
    ['6206', 30, 62, 16, 16, null, null, null, null, '02', '02', 'catalogue'],
    ['62206', 30, 62, null, 20, null, null, null, null, null, '22', 'catalogue'],
    ['6306', 30, 72, 19, 19, null, null, null, null, '03', '03', 'catalogue'],
    ['62306', 30, 72, null, 27, null, null, null, null, null, '23', 'single'],
    ['6406', 30, 90, 23, 23, null, null, null, null, '04', '04', 'catalogue'],
    ['60/32', 32, 58, 13, 13, null, null, null, null, '10', '10', 'catalogue'],
    ['62/32', 32, 65, 17, 17, null, null, null, null, '02', '02', 'catalogue'],
    ['63/32', 32, 75, 20, 20, null, null, null, null, '03', '03', 'catalogue'],
    ['6707', 35, 44, 5, 5, null, null, null, null, '17', '17', 'single'],
    ['6807', 35, 47, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['6907', 35, 55, 10, 10, null, null, null, null, '19', '19', 'catalogue'],
    ['16007', 35, 62, 9, null, null, null, null, null, '00', null, 'catalogue'],
    ['6007', 35, 62, 14, 14, null, null, null, null, '10', '10', 'catalogue'],
    ['63007', 35, 62, null, 20, null, null, null, null, null, '30', 'catalogue'],
    ['6207', 35, 72, 17, 17, null, null, null, null, '02', '02', 'catalogue'],
    ['62207', 35, 72, null, 23, null, null, null, null, null, '22', 'catalogue'],
    ['6307', 35, 80, 21, 21, null, null, null, null, '03', '03', 'catalogue'],
    ['62307', 35, 80, null, 31, null, null, null, null, null, '23', 'single'],
    ['6407', 35, 100, 25, 25, null, null, null, null, '04', '04', 'catalogue'],
    ['6708', 40, 50, 6, 6, null, null, null, null, '17', '17', 'single'],
    ['6808', 40, 52, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['6908', 40, 62, 12, 12, null, null, null, null, '19', '19', 'catalogue'],
    ['16008', 40, 68, 9, null, null, null, null, null, '00', null, 'catalogue'],
    ['6008', 40, 68, 15, 15, null, null, null, null, '10', '10', 'catalogue'],
    ['63008', 40, 68, null, 21, null, null, null, null, null, '30', 'catalogue'],
    ['6208', 40, 80, 18, 18, null, null, null, null, '02', '02', 'catalogue'],
    ['62208', 40, 80, null, 23, null, null, null, null, null, '22', 'catalogue'],
    ['6308', 40, 90, 23, 23, null, null, null, null, '03', '03', 'catalogue'],
    ['62308', 40, 90, null, 33, null, null, null, null, null, '23', 'single'],
    ['6408', 40, 110, 27, 27, null, null, null, null, '04', '04', 'catalogue'],
    ['6709', 45, 55, 6, 6, null, null, null, null, '17', '17', 'single'],
    ['6809', 45, 58, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['6909', 45, 68, 12, 12, null, null, null, null, '19', '19', 'catalogue'],
    ['16009', 45, 75, 10, null, null, null, null, null, '00', null, 'catalogue'],
    ['6009', 45, 75, 16, 16, null, null, null, null, '10', '10', 'catalogue'],
    ['63009', 45, 75, null, 23, null, null, null, null, null, '30', 'catalogue'],
    ['6209', 45, 85, 19, 19, null, null, null, null, '02', '02', 'catalogue'],
    ['62209', 45, 85, null, 23, null, null, null, null, null, '22', 'catalogue'],
    ['6309', 45, 100, 25, 25, null, null, null, null, '03', '03', 'catalogue'],
    ['62309', 45, 100, null, 36, null, null, null, null, null, '23', 'single'],
    ['6409', 45, 120, 29, 29, null, null, null, null, '04', '04', 'catalogue'],
    ['6710', 50, 62, 6, 6, null, null, null, null, '17', '17', 'memory'],
    ['6810', 50, 65, 7, 7, null, null, null, null, '18', '18', 'catalogue'],
    ['6910', 50, 72, 12, 12, null, null, null, null, '19', '19', 'catalogue'],
    ['16010', 50, 80, 10, null, null, null, null, null, '00', null, 'catalogue'],
    ['6010', 50, 80, 16, 16, null, null, null, null, '10', '10', 'catalogue'],
    ['63010', 50, 80, null, 23, null, null, null, null, null, '30', 'catalogue'],
    ['6210', 50, 90, 20, 20, null, null, null, null, '02', '02', 'catalogue'],
    ['62210', 50, 90, null, 23, null, null, null, null, null, '22', 'catalogue'],
    ['6310', 50, 110, 27, 27, null, null, null, null, '03', '03', 'catalogue'],
    ['62310', 50, 110, null, 40, null, null, null, null, null, '23', 'single'],
    ['6410', 50, 130, 31, 31, null, null, null, null, '04', '04', 'catalogue'],
  ],
  unique('designation'),
  larger('od', 'bore'),
  atLeast('widthShielded', 'widthOpen'),
  larger('flangeOdOpen', 'od'),
  larger('flangeOdShielded', 'od'),
  larger('widthOpen', 'flangeWidthOpen'),
  larger('widthShielded', 'flangeWidthShielded'),
  (row, previous) => (previous && previous.bore > row.bore ? 'bore is below that of the row above' : null),
  row => ((row.widthOpen ?? row.widthShielded) ? null : 'no width at all'),
  row => (numberFits(row) ? null : 'the number does not mean this bore or this diameter series'),
);

/** A deep-groove ball bearing of ISO 15, lengths in micrometres. */
export interface DeepGrooveBearing extends BallBearing {
  /** ISO 15 series of the open and of the shielded form, e.g. `18`, or null. */
  readonly seriesOpen: string | null;
  readonly seriesShielded: string | null;
}

/** All published sizes, smallest bore first. */
export const deepGrooveBearings: readonly DeepGrooveBearing[] = table.rows.map(row => ({
  ...row,
  basis: row.basis as Basis,
}));

function numberFits(row: {
  designation: string;
  bore: Um;
  seriesOpen: string | null;
  seriesShielded: string | null;
}): boolean {
  const bore = boreMeant(row.designation);
  if (bore !== null && bore !== row.bore) return false;
  const series = row.seriesOpen ?? row.seriesShielded;
  const meant = diameterSeriesMeant(row.designation);
  return series === null || meant === null || series[1] === meant;
}

/**
 * The number in the style of ISO for one form: `617/3` where the maker writes MR63, `638/5` for the shielded 685. It says
 * that the outlines are equal, not that a maker lists the number. Null where the outline is none of ISO 15.
 */
export function isoDesignation(bearing: DeepGrooveBearing, form: 'open' | 'shielded'): string | null {
  const series = form === 'open' ? bearing.seriesOpen : bearing.seriesShielded;
  if (series === null) return null;
  const [width, diameter] = [series[0]!, series[1]!];
  const bore = bearing.bore / 1000;
  // The plain families drop the width digit: 60 is series 10, 62, 63 and 64 are 02, 03 and 04, 160 is 00.
  const family =
    series === '00'
      ? '160'
      : series === '10'
        ? '60'
        : width === '0'
          ? `6${diameter}`
          : `6${width}${diameter}`;
  const short = family.length === 2 && Number.isInteger(bore);
  if (bore < 10) return short ? `${family}${bore}` : `${family}/${bore}`;
  if (bore % 5 !== 0 && bore !== 12 && bore !== 17) return `${family}/${bore}`;
  const code =
    Object.keys(boreCodes).find(key => boreCodes[key] === bore) ?? String(bore / 5).padStart(2, '0');
  return `${family}${code}`;
}

/** ISO numbers of single forms that the maker's list does not print: each has one width, whatever closes it. */
function isoAliases(): ReadonlyMap<string, DeepGrooveBearing> {
  const aliases = new Map<string, DeepGrooveBearing>();
  const printed = new Set(deepGrooveBearings.map(bearing => bearing.designation));
  for (const bearing of deepGrooveBearings) {
    for (const form of ['open', 'shielded'] as const) {
      const designation = isoDesignation(bearing, form);
      if (designation === null || printed.has(designation) || aliases.has(designation)) continue;
      const width = form === 'open' ? bearing.widthOpen : bearing.widthShielded;
      aliases.set(designation, { ...bearing, designation, widthOpen: width, widthShielded: width });
    }
  }
  return aliases;
}

const lookup = bearingLookup(deepGrooveBearings, isoAliases());

/** The bearing of a bare number in capitals (`623`, `MR115`, `6202`, `628/5`); widths stand for both forms apart. */
export const deepGrooveByDesignation = lookup.byDesignation;

/** Bearings of a bore, outside diameter and, where given, width (micrometres), each with the forms that have that width. */
export const deepGrooveByDims = lookup.byDims;

/** Bearings of a bore in micrometres, thinnest first. */
export const deepGrooveByBore = lookup.byBore;
