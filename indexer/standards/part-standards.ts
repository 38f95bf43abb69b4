import { defineTable, groupBy, indexBy, unique } from './table.ts';

/**
 * What a standard's number says of a part: category, form, drive, point, type. Numbers of DIN, ISO, JIS and ASME that parts
 * lists print. `equivalent` is the standard that took its place or shares its main dimensions; where a size differs, the table
 * of that size says so. Values are those of a reading's attributes, null where the standard leaves it open.
 *
 * Sources: titles of the standards, most from memory; pairs of DIN and ISO as suppliers' conversion tables give them. A cross
 * recess is form H (phillips) unless Z is printed.
 */
const source = 'titles of the standards from memory; DIN to ISO by suppliers’ conversion tables';

/** A number as it is written here: body, blank, number. */
const written = ({ standard, equivalent }: { standard: string; equivalent: string | null }) => {
  if (!/^(?:DIN|ISO|EN|JIS [A-Z]|ASME [A-Z]|AS)\s?\d[\d.-]*$/.test(standard))
    return 'no such way to write a standard';
  return equivalent === standard ? 'equivalent to itself' : null;
};

const screws = defineTable(
  'standards of screws',
  source,
  ['standard: text', 'equivalent: text?', 'head: text?', 'drive: text?', 'type: text?', 'title: text'],
  [
    // Screws with a hexagon or hexalobular socket
    ['DIN 912', 'ISO 4762', 'socket-cap', 'hex-socket', null, 'head cap screw'],
    ['ISO 4762', 'DIN 912', 'socket-cap', 'hex-socket', null, 'head cap screw'],
    ['ISO 21269', null, 'socket-cap', 'hex-socket', null, 'head cap screw, fine pitch'],
    ['ISO 12474', null, 'socket-cap', 'hex-socket', null, 'head cap screw, fine pitch'],
    ['JIS B 1176', 'ISO 4762', 'socket-cap', 'hex-socket', null, 'head cap screw'],
    ['ASME B18.3', null, null, 'hex-socket', null, 'socket head screw, inch'],
    ['ISO 14579', null, 'socket-cap', 'torx', null, 'head cap screw'],
    ['DIN 6912', null, 'low-socket-cap', 'hex-socket', null, 'low head cap screw, pilot hole'],
    ['DIN 7984', null, 'low-socket-cap', 'hex-socket', null, 'low head cap screw'],
    ['ISO 14580', null, 'cheese', 'torx', null, 'cheese head screw'],
    ['ISO 7380', 'ISO 7380-1', 'button', 'hex-socket', null, 'button head screw'],
    ['ISO 7380-1', null, 'button', 'hex-socket', null, 'button head screw'],
    ['ISO 7380-2', null, 'button', 'hex-socket', null, 'button head screw with collar'],
    ['DIN 7991', 'ISO 10642', 'countersunk', 'hex-socket', null, 'countersunk screw'],
    ['ISO 10642', 'DIN 7991', 'countersunk', 'hex-socket', null, 'countersunk screw'],
    ['ISO 14581', null, 'countersunk', 'torx', null, 'countersunk screw'],
    ['ISO 14582', null, 'countersunk', 'torx', null, 'countersunk screw, high head'],
    ['ISO 14583', null, 'pan', 'torx', null, 'pan head screw'],
    ['ISO 14584', null, 'raised-countersunk', 'torx', null, 'raised countersunk screw'],
    ['ISO 7379', null, 'shoulder', 'hex-socket', null, 'head shoulder screw'],
    ['DIN 9841', 'ISO 7379', 'shoulder', 'hex-socket', null, 'head shoulder screw'],
    ['DIN 923', null, 'shoulder', 'slotted', null, 'pan head screw with shoulder'],
    ['DIN 927', null, 'shoulder', 'slotted', null, 'shoulder screw'],
    // Screws with a cross recess
    ['DIN 7985', 'ISO 7045', 'pan', 'phillips', null, 'raised cheese (pan) head screw'],
    ['ISO 7045', 'DIN 7985', 'pan', 'phillips', null, 'pan head screw'],
    ['DIN 965', 'ISO 7046', 'countersunk', 'phillips', null, 'countersunk screw'],
    ['ISO 7046', 'DIN 965', 'countersunk', 'phillips', null, 'countersunk screw'],
    ['ISO 7046-1', 'DIN 965', 'countersunk', 'phillips', null, 'countersunk screw'],
    ['ISO 7046-2', 'DIN 965', 'countersunk', 'phillips', null, 'countersunk screw'],
    ['DIN 966', 'ISO 7047', 'raised-countersunk', 'phillips', null, 'raised countersunk screw'],
    ['ISO 7047', 'DIN 966', 'raised-countersunk', 'phillips', null, 'raised countersunk screw'],
    ['ISO 7048', null, 'cheese', 'phillips', null, 'cheese head screw'],
    ['DIN 967', null, 'pan', 'phillips', null, 'pan head screw with collar'],
    ['JIS B 1111', null, null, 'phillips', null, 'machine screw'],
    ['ASME B18.6.3', null, null, null, null, 'machine screw, inch'],
    // Screws with a slot
    ['DIN 84', 'ISO 1207', 'cheese', 'slotted', null, 'cheese head screw'],
    ['ISO 1207', 'DIN 84', 'cheese', 'slotted', null, 'cheese head screw'],
    ['DIN 85', 'ISO 1580', 'pan', 'slotted', null, 'pan head screw'],
    ['ISO 1580', 'DIN 85', 'pan', 'slotted', null, 'pan head screw'],
    ['DIN 963', 'ISO 2009', 'countersunk', 'slotted', null, 'countersunk screw'],
    ['ISO 2009', 'DIN 963', 'countersunk', 'slotted', null, 'countersunk screw'],
    ['DIN 964', 'ISO 2010', 'raised-countersunk', 'slotted', null, 'raised countersunk screw'],
    ['ISO 2010', 'DIN 964', 'raised-countersunk', 'slotted', null, 'raised countersunk screw'],
    ['DIN 920', null, 'pan', 'slotted', null, 'pan head screw, small head'],
    ['DIN 921', null, 'pan', 'slotted', null, 'pan head screw, large head'],
    ['DIN 404', null, 'cheese', 'slotted', null, 'capstan screw'],
    ['JIS B 1101', null, null, 'slotted', null, 'machine screw'],
    // Hexagon head screws and bolts
    ['DIN 931', 'ISO 4014', 'hex', null, null, 'hexagon head bolt, part thread'],
    ['ISO 4014', 'DIN 931', 'hex', null, null, 'hexagon head bolt, part thread'],
    ['DIN 933', 'ISO 4017', 'hex', null, null, 'hexagon head screw, full thread'],
    ['ISO 4017', 'DIN 933', 'hex', null, null, 'hexagon head screw, full thread'],
    ['DIN 558', 'ISO 4018', 'hex', null, null, 'hexagon head screw, product grade C'],
    ['ISO 4018', 'DIN 558', 'hex', null, null, 'hexagon head screw, product grade C'],
    ['DIN 601', 'ISO 4016', 'hex', null, null, 'hexagon head bolt, product grade C'],
    ['ISO 4016', 'DIN 601', 'hex', null, null, 'hexagon head bolt, product grade C'],
    ['DIN 960', 'ISO 8765', 'hex', null, null, 'hexagon head bolt, fine pitch, part thread'],
    ['ISO 8765', 'DIN 960', 'hex', null, null, 'hexagon head bolt, fine pitch, part thread'],
    ['DIN 961', 'ISO 8676', 'hex', null, null, 'hexagon head screw, fine pitch, full thread'],
    ['ISO 8676', 'DIN 961', 'hex', null, null, 'hexagon head screw, fine pitch, full thread'],
    ['DIN 6921', 'ISO 4162', 'hex-flange', null, null, 'hexagon flange screw'],
    ['EN 1665', 'DIN 6921', 'hex-flange', null, null, 'hexagon flange screw, heavy series'],
    ['ISO 4162', 'DIN 6921', 'hex-flange', null, null, 'hexagon flange screw, small series'],
    ['ISO 15071', 'ISO 4162', 'hex-flange', null, null, 'hexagon flange screw, small series'],
    ['DIN 610', null, 'hex', null, null, 'hexagon fit bolt'],
    ['JIS B 1180', 'ISO 4014', 'hex', null, null, 'hexagon head bolt'],
    // Thumb, carriage and other screws
    ['DIN 464', null, 'thumb', null, null, 'knurled thumb screw, high'],
    ['DIN 653', null, 'thumb', null, null, 'knurled thumb screw, flat'],
    ['DIN 316', null, 'thumb', null, null, 'wing screw'],
    ['DIN 465', null, 'thumb', 'slotted', null, 'knurled thumb screw, high'],
    ['DIN 603', 'ISO 8677', 'round', null, null, 'mushroom head square neck (carriage) bolt'],
    ['ISO 8677', 'DIN 603', 'round', null, null, 'cup head square neck (carriage) bolt'],
    // Thread-forming, tapping and wood screws
    ['DIN 7500', null, null, null, 'self-tapping', 'thread-forming screw for metal'],
    ['DIN 7504', null, null, null, 'self-tapping', 'self-drilling tapping screw'],
    ['ISO 15480', null, 'hex', null, 'self-tapping', 'hexagon washer head self-drilling screw'],
    ['DIN 7513', null, null, null, 'self-tapping', 'thread-cutting screw'],
    ['DIN 7516', null, null, 'phillips', 'self-tapping', 'thread-cutting screw'],
    ['DIN 7971', 'ISO 1481', 'pan', 'slotted', 'self-tapping', 'pan head tapping screw'],
    ['ISO 1481', 'DIN 7971', 'pan', 'slotted', 'self-tapping', 'pan head tapping screw'],
    ['DIN 7972', 'ISO 1482', 'countersunk', 'slotted', 'self-tapping', 'countersunk tapping screw'],
    ['ISO 1482', 'DIN 7972', 'countersunk', 'slotted', 'self-tapping', 'countersunk tapping screw'],
    ['DIN 7973', 'ISO 1483', 'raised-countersunk', 'slotted', 'self-tapping', 'raised tapping screw'],
    ['ISO 1483', 'DIN 7973', 'raised-countersunk', 'slotted', 'self-tapping', 'raised tapping screw'],
    ['DIN 7976', 'ISO 1479', 'hex', null, 'self-tapping', 'hexagon head tapping screw'],
    ['ISO 1479', 'DIN 7976', 'hex', null, 'self-tapping', 'hexagon head tapping screw'],
    ['DIN 7981', 'ISO 7049', 'pan', 'phillips', 'self-tapping', 'pan head tapping screw'],
    ['ISO 7049', 'DIN 7981', 'pan', 'phillips', 'self-tapping', 'pan head tapping screw'],
    ['DIN 7982', 'ISO 7050', 'countersunk', 'phillips', 'self-tapping', 'countersunk tapping screw'],
    ['ISO 7050', 'DIN 7982', 'countersunk', 'phillips', 'self-tapping', 'countersunk tapping screw'],
    ['DIN 7983', 'ISO 7051', 'raised-countersunk', 'phillips', 'self-tapping', 'raised tapping screw'],
    ['ISO 7051', 'DIN 7983', 'raised-countersunk', 'phillips', 'self-tapping', 'raised tapping screw'],
    ['DIN 968', null, 'pan', 'phillips', 'self-tapping', 'pan head tapping screw with collar'],
    ['ISO 14585', null, 'pan', 'torx', 'self-tapping', 'pan head tapping screw'],
    ['ISO 14586', null, 'countersunk', 'torx', 'self-tapping', 'countersunk tapping screw'],
    ['ISO 14587', null, 'raised-countersunk', 'torx', 'self-tapping', 'raised tapping screw'],
    ['JIS B 1122', null, null, 'phillips', 'self-tapping', 'tapping screw'],
    ['DIN 95', null, 'raised-countersunk', 'slotted', 'wood', 'raised countersunk wood screw'],
    ['DIN 96', null, 'round', 'slotted', 'wood', 'round head wood screw'],
    ['DIN 97', null, 'countersunk', 'slotted', 'wood', 'countersunk wood screw'],
    ['DIN 571', null, 'hex', null, 'wood', 'hexagon head wood screw'],
    ['DIN 7995', null, 'raised-countersunk', 'phillips', 'wood', 'raised countersunk wood screw'],
    ['DIN 7996', null, 'round', 'phillips', 'wood', 'round head wood screw'],
    ['DIN 7997', null, 'countersunk', 'phillips', 'wood', 'countersunk wood screw'],
  ],
  unique('standard'),
  written,
);

const setScrews = defineTable(
  'standards of set screws',
  source,
  ['standard: text', 'equivalent: text?', 'drive: text', 'point: text?', 'title: text'],
  [
    ['DIN 913', 'ISO 4026', 'hex-socket', 'flat', 'set screw, flat point'],
    ['ISO 4026', 'DIN 913', 'hex-socket', 'flat', 'set screw, flat point'],
    ['DIN 914', 'ISO 4027', 'hex-socket', 'cone', 'set screw, cone point'],
    ['ISO 4027', 'DIN 914', 'hex-socket', 'cone', 'set screw, cone point'],
    ['DIN 915', 'ISO 4028', 'hex-socket', 'dog', 'set screw, dog point'],
    ['ISO 4028', 'DIN 915', 'hex-socket', 'dog', 'set screw, dog point'],
    ['DIN 916', 'ISO 4029', 'hex-socket', 'cup', 'set screw, cup point'],
    ['ISO 4029', 'DIN 916', 'hex-socket', 'cup', 'set screw, cup point'],
    ['DIN 417', 'ISO 7435', 'slotted', 'dog', 'set screw, long dog point'],
    ['ISO 7435', 'DIN 417', 'slotted', 'dog', 'set screw, long dog point'],
    ['DIN 438', 'ISO 7436', 'slotted', 'cup', 'set screw, cup point'],
    ['ISO 7436', 'DIN 438', 'slotted', 'cup', 'set screw, cup point'],
    ['DIN 551', 'ISO 4766', 'slotted', 'flat', 'set screw, flat point'],
    ['ISO 4766', 'DIN 551', 'slotted', 'flat', 'set screw, flat point'],
    ['DIN 553', 'ISO 7434', 'slotted', 'cone', 'set screw, cone point'],
    ['ISO 7434', 'DIN 553', 'slotted', 'cone', 'set screw, cone point'],
    ['JIS B 1177', null, 'hex-socket', null, 'set screw'],
    ['JIS B 1117', null, 'slotted', null, 'set screw'],
  ],
  unique('standard'),
  written,
);

const others = defineTable(
  'standards of other parts',
  source,
  ['standard: text', 'equivalent: text?', 'category: text', 'type: text?', 'title: text'],
  [
    // Nuts
    ['DIN 934', 'ISO 4032', 'nut', 'hex', 'hexagon nut'],
    ['ISO 4032', 'DIN 934', 'nut', 'hex', 'hexagon nut, style 1'],
    ['ISO 4033', null, 'nut', 'hex', 'hexagon nut, style 2'],
    ['ISO 8673', null, 'nut', 'hex', 'hexagon nut, style 1, fine pitch'],
    ['JIS B 1181', 'ISO 4032', 'nut', 'hex', 'hexagon nut'],
    ['DIN 439', 'ISO 4035', 'nut', 'jam', 'hexagon thin nut'],
    ['DIN 936', 'ISO 4035', 'nut', 'jam', 'hexagon thin nut'],
    ['ISO 4035', 'DIN 439', 'nut', 'jam', 'hexagon thin nut, chamfered'],
    ['ISO 4036', null, 'nut', 'jam', 'hexagon thin nut, unchamfered'],
    ['DIN 982', 'ISO 7040', 'nut', 'lock', 'prevailing torque hexagon nut with insert, high'],
    ['DIN 985', 'ISO 10511', 'nut', 'lock', 'prevailing torque hexagon nut with insert, low'],
    ['DIN 980', 'ISO 7042', 'nut', 'lock', 'prevailing torque hexagon nut, all metal'],
    ['DIN 6924', 'ISO 7040', 'nut', 'lock', 'prevailing torque hexagon nut with insert'],
    ['DIN 6925', 'ISO 7042', 'nut', 'lock', 'prevailing torque hexagon nut, all metal'],
    ['ISO 7040', 'DIN 982', 'nut', 'lock', 'prevailing torque hexagon nut with insert'],
    ['ISO 7042', 'DIN 980', 'nut', 'lock', 'prevailing torque hexagon nut, all metal'],
    ['ISO 10511', 'DIN 985', 'nut', 'lock', 'prevailing torque hexagon thin nut with insert'],
    ['DIN 917', null, 'nut', 'cap', 'cap nut, low'],
    ['DIN 986', null, 'nut', 'cap', 'prevailing torque domed cap nut'],
    ['DIN 1587', null, 'nut', 'cap', 'domed cap nut, high'],
    ['DIN 935', 'ISO 7035', 'nut', 'castle', 'hexagon slotted or castle nut'],
    ['ISO 7035', 'DIN 935', 'nut', 'castle', 'hexagon slotted or castle nut'],
    ['DIN 937', null, 'nut', 'castle', 'hexagon thin slotted or castle nut'],
    ['DIN 979', null, 'nut', 'castle', 'hexagon thin slotted or castle nut'],
    ['DIN 6923', 'ISO 4161', 'nut', 'flange', 'hexagon flange nut'],
    ['ISO 4161', 'DIN 6923', 'nut', 'flange', 'hexagon flange nut'],
    ['DIN 6926', 'ISO 7043', 'nut', 'flange', 'prevailing torque flange nut with insert'],
    ['ISO 7043', 'DIN 6926', 'nut', 'flange', 'prevailing torque flange nut with insert'],
    ['DIN 557', null, 'nut', 'square', 'square nut'],
    ['DIN 562', null, 'nut', 'square', 'square thin nut'],
    ['DIN 508', 'ISO 299', 'nut', 't-nut', 'nut for T-slots'],
    ['ISO 299', 'DIN 508', 'nut', 't-nut', 'nut for T-slots'],
    ['DIN 315', null, 'nut', 'wing', 'wing nut'],
    ['DIN 466', null, 'nut', null, 'knurled nut, high'],
    ['DIN 467', null, 'nut', null, 'knurled nut, low'],
    ['DIN 546', null, 'nut', null, 'slotted round nut'],
    ['DIN 1804', null, 'nut', null, 'slotted round nut for hook spanner'],
    ['DIN 981', null, 'nut', 'lock', 'locknut for bearings'],
    ['DIN 6330', null, 'nut', 'hex', 'hexagon nut, 1.5 d high'],
    // Washers and shims
    ['DIN 125', 'ISO 7089', 'washer', 'flat', 'plain washer'],
    ['DIN 126', 'ISO 7091', 'washer', 'flat', 'plain washer, product grade C'],
    ['ISO 7089', 'DIN 125', 'washer', 'flat', 'plain washer, normal series'],
    ['ISO 7090', 'DIN 125', 'washer', 'flat', 'plain washer, chamfered'],
    ['ISO 7091', 'DIN 126', 'washer', 'flat', 'plain washer, product grade C'],
    ['DIN 433', 'ISO 7092', 'washer', 'flat', 'plain washer for cheese head screws, small'],
    ['ISO 7092', 'DIN 433', 'washer', 'flat', 'plain washer, small series'],
    ['DIN 9021', 'ISO 7093', 'washer', 'flat', 'plain washer, outside three times the thread'],
    ['ISO 7093', 'DIN 9021', 'washer', 'flat', 'plain washer, large series'],
    ['ISO 7093-1', 'DIN 9021', 'washer', 'flat', 'plain washer, large series'],
    ['ISO 7094', 'DIN 440', 'washer', 'flat', 'plain washer, extra large series'],
    ['DIN 440', 'ISO 7094', 'washer', 'flat', 'plain washer for wood'],
    ['DIN 1440', 'ISO 8738', 'washer', 'flat', 'plain washer for clevis pins'],
    ['ISO 8738', 'DIN 1440', 'washer', 'flat', 'plain washer for clevis pins'],
    ['DIN 6340', null, 'washer', 'flat', 'thick washer for clamping'],
    ['DIN 7349', null, 'washer', 'flat', 'thick washer for spring pins'],
    ['JIS B 1256', 'ISO 7089', 'washer', 'flat', 'plain washer'],
    ['DIN 127', null, 'washer', 'spring', 'split spring lock washer'],
    ['DIN 128', null, 'washer', 'spring', 'curved spring lock washer'],
    ['DIN 7980', null, 'washer', 'spring', 'spring lock washer for cheese head screws'],
    ['JIS B 1251', null, 'washer', 'spring', 'spring lock washer'],
    ['DIN 137', null, 'washer', 'wave', 'curved or wave spring washer'],
    ['DIN 42013', null, 'washer', 'wave', 'wave spring washer for bearings'],
    ['DIN 6796', null, 'washer', 'spring', 'conical spring washer'],
    ['DIN 6797', null, 'washer', 'star', 'toothed lock washer'],
    ['DIN 6798', null, 'washer', 'star', 'serrated lock washer'],
    ['DIN 6907', null, 'washer', 'star', 'toothed lock washer for screw assemblies'],
    ['DIN 93', null, 'washer', 'lock', 'tab washer'],
    ['DIN 432', null, 'washer', 'lock', 'external tab washer'],
    ['DIN 463', null, 'washer', 'lock', 'tab washer with two tabs'],
    ['DIN 5406', null, 'washer', 'lock', 'lock washer for bearing nuts'],
    ['DIN 25201', null, 'washer', 'lock', 'wedge lock washer'],
    ['DIN 988', null, 'shim', null, 'shim ring'],
    // Retaining rings
    ['DIN 471', null, 'retaining-ring', 'external', 'retaining ring for shafts'],
    ['DIN 472', null, 'retaining-ring', 'internal', 'retaining ring for bores'],
    ['DIN 983', null, 'retaining-ring', 'external', 'retaining ring with lugs for shafts'],
    ['DIN 984', null, 'retaining-ring', 'internal', 'retaining ring with lugs for bores'],
    ['DIN 6799', null, 'retaining-ring', 'e-clip', 'retaining washer for shafts (E-clip)'],
    ['DIN 5417', null, 'retaining-ring', null, 'snap ring for bearings with groove'],
    ['DIN 7993', null, 'retaining-ring', null, 'round wire snap ring'],
    ['DIN 9045', null, 'retaining-ring', null, 'wire snap ring'],
    ['JIS B 2804', null, 'retaining-ring', null, 'retaining ring'],
    ['JIS B 2805', null, 'retaining-ring', null, 'retaining ring'],
    ['DIN 11024', null, 'pin', null, 'spring cotter (R-clip)'],
    // Pins
    ['DIN 1', 'ISO 2339', 'pin', 'taper', 'taper pin'],
    ['ISO 2339', 'DIN 1', 'pin', 'taper', 'taper pin'],
    ['DIN 7977', 'ISO 8737', 'pin', 'taper', 'taper pin with external thread'],
    ['DIN 7978', 'ISO 8736', 'pin', 'taper', 'taper pin with internal thread'],
    ['DIN 7', 'ISO 2338', 'pin', 'dowel', 'parallel pin'],
    ['ISO 2338', 'DIN 7', 'pin', 'dowel', 'parallel pin, unhardened'],
    ['DIN 6325', 'ISO 8734', 'pin', 'dowel', 'parallel pin, hardened'],
    ['ISO 8734', 'DIN 6325', 'pin', 'dowel', 'parallel pin, hardened'],
    ['DIN 7979', 'ISO 8735', 'pin', 'dowel', 'parallel pin with internal thread'],
    ['ISO 8735', 'DIN 7979', 'pin', 'dowel', 'parallel pin with internal thread, hardened'],
    ['ISO 8733', null, 'pin', 'dowel', 'parallel pin with internal thread, unhardened'],
    ['JIS B 1354', 'ISO 2338', 'pin', 'dowel', 'parallel pin'],
    ['DIN 1481', 'ISO 8752', 'pin', 'spring', 'spring pin, slotted, heavy'],
    ['ISO 8752', 'DIN 1481', 'pin', 'spring', 'spring pin, slotted, heavy'],
    ['DIN 7346', 'ISO 13337', 'pin', 'spring', 'spring pin, slotted, light'],
    ['ISO 13337', 'DIN 7346', 'pin', 'spring', 'spring pin, slotted, light'],
    ['DIN 7343', 'ISO 8750', 'pin', 'spring', 'spring pin, coiled, standard'],
    ['ISO 8750', 'DIN 7343', 'pin', 'spring', 'spring pin, coiled, standard'],
    ['DIN 7344', 'ISO 8748', 'pin', 'spring', 'spring pin, coiled, heavy'],
    ['ISO 8748', 'DIN 7344', 'pin', 'spring', 'spring pin, coiled, heavy'],
    ['ISO 8751', null, 'pin', 'spring', 'spring pin, coiled, light'],
    ['JIS B 2808', null, 'pin', 'spring', 'spring pin'],
    ['DIN 94', 'ISO 1234', 'pin', 'cotter', 'split (cotter) pin'],
    ['ISO 1234', 'DIN 94', 'pin', 'cotter', 'split (cotter) pin'],
    ['JIS B 1351', 'ISO 1234', 'pin', 'cotter', 'split (cotter) pin'],
    ['DIN 1433', 'ISO 2340', 'pin', 'clevis', 'clevis pin without head'],
    ['ISO 2340', 'DIN 1433', 'pin', 'clevis', 'clevis pin without head'],
    ['DIN 1443', 'ISO 2340', 'pin', 'clevis', 'clevis pin without head'],
    ['DIN 1434', 'ISO 2341', 'pin', 'clevis', 'clevis pin with head'],
    ['DIN 1444', 'ISO 2341', 'pin', 'clevis', 'clevis pin with head'],
    ['ISO 2341', 'DIN 1444', 'pin', 'clevis', 'clevis pin with head'],
    ['DIN 1470', 'ISO 8739', 'pin', 'grooved', 'grooved pin with guide'],
    ['DIN 1471', 'ISO 8744', 'pin', 'grooved', 'grooved pin, full length taper'],
    ['DIN 1472', 'ISO 8745', 'pin', 'grooved', 'grooved pin, half length taper'],
    ['DIN 1473', 'ISO 8740', 'pin', 'grooved', 'grooved pin, full length'],
    ['DIN 1474', 'ISO 8741', 'pin', 'grooved', 'grooved pin, half length reverse taper'],
    ['DIN 1475', 'ISO 8742', 'pin', 'grooved', 'grooved pin, centre grooves'],
    ['DIN 1476', 'ISO 8746', 'pin', 'grooved', 'grooved pin with round head'],
    ['ISO 8740', 'DIN 1473', 'pin', 'grooved', 'grooved pin, full length'],
    ['ISO 8739', 'DIN 1470', 'pin', 'grooved', 'grooved pin with guide'],
    ['ISO 8741', 'DIN 1474', 'pin', 'grooved', 'grooved pin, half length reverse taper'],
    ['ISO 8742', 'DIN 1475', 'pin', 'grooved', 'grooved pin, centre grooves'],
    ['ISO 8744', 'DIN 1471', 'pin', 'grooved', 'grooved pin, full length taper'],
    ['ISO 8745', 'DIN 1472', 'pin', 'grooved', 'grooved pin, half length taper'],
    ['ISO 8746', 'DIN 1476', 'pin', 'grooved', 'grooved pin with round head'],
    // Bearings, bushings, balls
    ['DIN 625', 'ISO 15', 'bearing', null, 'deep-groove ball bearing'],
    ['DIN 625-1', 'ISO 15', 'bearing', null, 'deep-groove ball bearing, single row'],
    ['ISO 15', 'DIN 625', 'bearing', null, 'radial rolling bearing'],
    ['DIN 618', 'ISO 3245', 'bearing', 'needle', 'drawn-cup needle bearing'],
    ['ISO 3245', 'DIN 618', 'bearing', 'needle', 'drawn-cup needle bearing'],
    ['DIN 617', null, 'bearing', 'needle', 'needle bearing with cage'],
    ['DIN 711', 'ISO 104', 'bearing', 'thrust', 'thrust ball bearing'],
    ['ISO 104', 'DIN 711', 'bearing', 'thrust', 'thrust bearing'],
    ['DIN 5405', null, 'bearing', 'thrust', 'needle thrust bearing'],
    ['ISO 10285', null, 'bearing', 'linear', 'linear ball bearing'],
    ['DIN 648', 'ISO 12240', 'bearing', 'rod-end', 'rod end'],
    ['ISO 12240-4', 'DIN 648', 'bearing', 'rod-end', 'rod end'],
    ['DIN 5401', 'ISO 3290', 'ball', null, 'ball for bearings'],
    ['ISO 3290', 'DIN 5401', 'ball', null, 'ball for bearings'],
    ['ISO 3290-1', 'DIN 5401', 'ball', null, 'steel ball for bearings'],
    ['DIN 1850', 'ISO 4379', 'bushing', null, 'plain bushing'],
    ['ISO 2795', null, 'bushing', null, 'sintered plain bushing'],
    ['ISO 3547', 'DIN 1494', 'bushing', null, 'wrapped bushing'],
    ['DIN 1494', 'ISO 3547', 'bushing', null, 'wrapped bushing'],
    ['ISO 4379', 'DIN 1850', 'bushing', null, 'copper alloy bushing'],
    // Seals and O-rings
    ['AS568', 'ISO 3601-1', 'o-ring', null, 'O-ring, inch sizes'],
    ['DIN 3771', 'ISO 3601-1', 'o-ring', null, 'O-ring'],
    ['ISO 3601', null, 'o-ring', null, 'O-ring'],
    ['ISO 3601-1', 'DIN 3771', 'o-ring', null, 'O-ring'],
    ['JIS B 2401', null, 'o-ring', null, 'O-ring'],
    ['DIN 3760', 'ISO 6194', 'seal', null, 'rotary shaft lip seal'],
    ['ISO 6194', 'DIN 3760', 'seal', null, 'rotary shaft lip seal'],
    ['DIN 3761', null, 'seal', null, 'rotary shaft lip seal for vehicles'],
    ['DIN 5419', null, 'seal', null, 'felt ring'],
    ['DIN 7603', null, 'seal', 'gasket', 'sealing ring (gasket)'],
    // Springs, shafts and gears
    ['ISO 286', null, 'shaft', null, 'tolerances of shafts'],
    ['DIN 867', 'ISO 53', 'gear', null, 'basic rack of gears'],
    ['ISO 53', 'DIN 867', 'gear', null, 'basic rack of gears'],
    ['DIN 2093', 'ISO 19690', 'spring', 'belleville', 'disc spring'],
    ['DIN 2095', 'DIN EN 15800', 'spring', 'compression', 'cold coiled compression spring'],
    ['DIN 2098', null, 'spring', 'compression', 'cold coiled compression spring'],
    ['DIN 2097', null, 'spring', 'extension', 'cold coiled extension spring'],
    ['DIN 2194', null, 'spring', 'torsion', 'cold coiled torsion spring'],
    // Parts of no category here
    ['DIN 660', null, 'plain', null, 'round head rivet'],
    ['DIN 661', null, 'plain', null, 'countersunk rivet'],
    ['DIN 7337', 'ISO 15977', 'plain', null, 'blind rivet'],
    ['DIN 6885', 'ISO 2491', 'plain', null, 'parallel key'],
    ['DIN 6888', 'ISO 3912', 'plain', null, 'woodruff key'],
    ['DIN 71412', null, 'plain', null, 'grease nipple'],
    ['DIN 580', 'ISO 3266', 'plain', null, 'lifting eye bolt'],
    ['DIN 582', null, 'plain', null, 'lifting eye nut'],
    ['DIN 908', null, 'plain', null, 'hexagon socket plug'],
    ['DIN 976', null, 'plain', null, 'threaded rod'],
    ['DIN 975', 'DIN 976', 'plain', null, 'threaded rod'],
    ['DIN 703', 'DIN 705', 'plain', null, 'adjusting ring (shaft collar), heavy'],
    ['DIN 911', 'ISO 2936', 'plain', null, 'hexagon key'],
    ['ISO 2936', 'DIN 911', 'plain', null, 'hexagon key'],
    ['DIN 705', null, 'plain', null, 'adjusting ring (shaft collar)'],
  ],
  unique('standard'),
  written,
);

/** What a standard's number defines. */
export interface PartStandard {
  /** As `DIN 912`, `ISO 7380-1`, `JIS B 1111`, `AS568`. */
  readonly standard: string;
  readonly category: string;
  /** As the trade calls it. */
  readonly title: string;
  readonly head: string | null;
  readonly drive: string | null;
  readonly point: string | null;
  readonly type: string | null;
  readonly equivalent: string | null;
}

/** All standards known here. */
export const partStandards: readonly PartStandard[] = [
  ...screws.rows.map(row => ({ ...row, category: 'screw', point: null })),
  ...setScrews.rows.map(row => ({ ...row, category: 'set-screw', head: null, type: null })),
  ...others.rows.map(row => ({ ...row, head: null, drive: null, point: null })),
];

const byNumber = indexBy(partStandards, row => row.standard);
const byCategory = groupBy(partStandards, row => row.category);

/** The standards of a category. */
export const standardsOf = (category: string): readonly PartStandard[] => byCategory.get(category) ?? [];

/**
 * A standard's number in one way of writing: capitals, one space, no year: `din912` is `DIN 912`, `ISO 7093-1:2000` is
 * `ISO 7093-1`, `DIN EN ISO 4762` is `ISO 4762`. Null where the text is no such number.
 */
export function writeStandard(text: string): string | null {
  const tidy = text
    .toUpperCase()
    .replace(/[:(].*$/, '')
    .trim();
  const found =
    /^(?:(?:DIN|BS|NF|UNI|SS)[\s-]*)?(?:EN[\s-]*(?=ISO))?(ISO|DIN|JIS|ASME|ANSI|AS|EN)[\s./-]*([A-Z])?[\s./-]*(\d[\d.]*(?:-\d(?!\d))?)/.exec(
      tidy,
    );
  if (!found) return null;
  const [, body, letter, number] = found;
  if (body === 'AS') return `AS${number}`;
  const of = body === 'ANSI' ? 'ASME' : body;
  return `${of} ${letter ? `${letter}${of === 'JIS' ? ' ' : ''}` : ''}${number!.replace(/\.$/, '')}`;
}

/** What a standard defines, however its number is written; a part of a standard (`ISO 7089-1`) falls back on the whole. */
export function partStandard(text: string): PartStandard | undefined {
  const number = writeStandard(text);
  if (number === null) return undefined;
  return byNumber.get(number) ?? byNumber.get(number.replace(/-\d$/, ''));
}

/** The standard and those that share its main dimensions, itself first. */
export function equivalents(text: string): string[] {
  const own = partStandard(text);
  if (!own) return [];
  const linked = partStandards.filter(row => row.equivalent === own.standard).map(row => row.standard);
  return [...new Set([own.standard, ...(own.equivalent === null ? [] : [own.equivalent]), ...linked])];
}

/** What a few standards say beyond head, drive, point and type. */
const further: Readonly<Record<string, Readonly<Record<string, string | boolean>>>> = {
  'ISO 7380-2': { flanged: true },
  'DIN 5419': { material: 'felt' },
};

/** The standards of a category with the attributes of a reading that each defines: what a line that prints its number says. */
export function attributesOf(
  category: string,
): Readonly<Record<string, Readonly<Record<string, string | boolean>>>> {
  return Object.fromEntries(
    standardsOf(category).map(({ standard, head, drive, point, type }) => {
      const said = Object.entries({ head, drive, point, type }).flatMap(([key, value]) =>
        value === null ? [] : [[key, value] as const],
      );
      // A line's standard has a blank behind its body: AS 568.
      return [standard.replace(/^AS(?=\d)/, 'AS '), { ...Object.fromEntries(said), ...further[standard] }];
    }),
  );
}
