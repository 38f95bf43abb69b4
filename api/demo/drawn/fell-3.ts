import { Pen, type Point } from './pen.ts';
import { Axis } from './turned.ts';

const width = 842;
const height = 595;

/** Reference, part number, description, quantity; beside it where the balloon points: along the axis, off it, and the balloon's own place off it. */
const parts = [
  ['1', '30-1101', 'Cap nut M6', '1', { along: 4, off: 8, out: 46 }],
  ['2', '30-1102', 'Crank handle, complete', '1', { along: 34, off: -30, out: -64 }],
  ['3', '30-1103', 'Star knob', '1', { along: 76, off: 20, out: 58 }],
  ['4', '30-1104', 'Disc spring 6.2 x 24 x 1', '2', { along: 104, off: -13, out: -58 }],
  ['5', '30-1105', 'Screw M4 x 10, pan head', '3', { along: 100, off: 41, out: 78 }],
  ['6', '30-1106', 'Side plate, crank side', '1', { along: 146, off: -46, out: -84 }],
  ['7', '30-1107', 'Ball bearing 12 x 28 x 8', '2', { along: 186, off: 17, out: 76 }],
  ['8', '30-1108', 'Shim 12 x 18 x 0.2', 'AR', { along: 212, off: -13, out: -70 }],
  ['9', '30-1109', 'Main gear, 48 teeth', '1', { along: 242, off: 33, out: 76 }],
  ['10', '30-1110', 'Drag washer 12.5 x 44 x 1.5', '2', { along: 270, off: -25, out: -72 }],
  ['11', '30-1111', 'Ratchet wheel', '1', { along: 296, off: 20, out: 72 }],
  ['12', '30-1112', 'Spindle', '1', { along: 346, off: -8, out: -66 }],
  ['13', '30-1113', 'Spool', '1', { along: 394, off: 47, out: 88 }],
  ['7', '', '', '', { along: 476, off: -17, out: -72 }],
  ['14', '30-1114', 'Compression spring 1 x 10 x 24', '1', { along: 506, off: 11, out: 70 }],
  ['15', '30-1115', 'E-clip 9', '1', { along: 538, off: -11, out: -66 }],
  ['16', '30-1116', 'Frame plate with foot', '1', { along: 578, off: 50, out: 86 }],
] as const;

/** A hand line reel, taken apart along its spindle. */
function drawParts(axis: Axis): void {
  axis.centreLine(-18, 612);
  // From the far end to the near one, so that what is near covers what is behind it.
  axis.drum(572, 9, 50);
  axis.face(572, 43);
  axis.drum(572, 2, 14);
  axis.face(572, 9);
  axis.rays(572, 20, 41, 6);
  axis.drum(536, 2, 11);
  axis.face(536, 6);
  axis.coil(498, 24, 9, 7);
  bearing(axis, 472);
  axis.drum(442, 6, 47);
  axis.drum(398, 44, 22);
  axis.drum(392, 6, 47);
  axis.face(392, 40);
  axis.face(392, 13);
  axis.rays(392, 16, 38, 9);
  axis.drum(338, 34, 5);
  axis.drum(326, 12, 8);
  axis.drum(314, 12, 5);
  axis.drum(296, 6, 15);
  axis.teeth(296, 17, 14);
  axis.face(296, 6);
  axis.drum(272, 2, 25);
  axis.face(272, 8);
  axis.drum(266, 2, 25);
  axis.face(266, 8);
  axis.drum(242, 9, 31);
  axis.teeth(242, 31, 34);
  axis.face(242, 24);
  axis.drum(242, 1, 9);
  axis.face(242, 6);
  axis.drum(212, 1, 13);
  axis.face(212, 9);
  bearing(axis, 182);
  axis.drum(146, 7, 48);
  axis.face(146, 42);
  axis.face(146, 14);
  for (const off of [36, -36]) axis.face(146, 3.2, off);
  for (const off of [36, -36]) {
    axis.centreLine(98, 146, off);
    axis.screw(92, 16, 5.5, off);
  }
  axis.drum(106, 1.5, 13);
  axis.face(106, 5);
  axis.drum(101, 1.5, 13);
  axis.face(101, 5);
  axis.drum(70, 12, 18);
  axis.rays(70, 13, 18, 26);
  axis.face(70, 13);
  axis.face(70, 4);
  crank(axis);
  axis.drum(0, 9, 8);
  axis.rays(0, 5, 8, 6);
  axis.face(0, 5);
}

function bearing(axis: Axis, along: number): void {
  axis.drum(along, 8, 17);
  axis.face(along, 14);
  axis.rays(along, 10.5, 13.5, 12);
  axis.face(along, 10);
  axis.face(along, 7);
}

/** An arm across the axis, with a knob at its end. */
function crank(axis: Axis): void {
  axis.drum(36, 5, 7, -44);
  axis.drum(34, 5, 9);
  axis.bar(34, -7, -43, 4.5);
  axis.face(34, 4);
  axis.drum(12, 24, 7.5, -44);
  axis.face(12, 5.5, -44);
}

function drawBalloons(pen: Pen, axis: Axis): void {
  for (const [ref, , , , { along, off, out }] of parts) {
    const [foot, middle] = [axis.at(along, off), axis.at(along + out * 0.12, out)];
    const far = Math.hypot(foot[0] - middle[0], foot[1] - middle[1]);
    const edge: Point = [
      middle[0] + ((foot[0] - middle[0]) * 9) / far,
      middle[1] + ((foot[1] - middle[1]) * 9) / far,
    ];
    pen.line(edge, foot, 0.5);
    pen.circle(foot, 1.1, 0.5);
    pen.circle(middle, 9, 0.7);
    pen.text(ref, [middle[0], middle[1] - 3.2], { size: 9, align: 'middle' });
  }
}

function drawList(pen: Pen): void {
  const [left, right, top, step] = [574, 812, 349, 15];
  const columns = [left, left + 28, left + 82, right - 28, right];
  const rows = [
    ['Ref', 'Part No.', 'Description', 'Qty'],
    ...parts.filter(([, number]) => number).map(row => row.slice(0, 4) as string[]),
  ];
  rows.forEach((cells, nth) => {
    const y = top - nth * step;
    cells.forEach((cell, at) => {
      pen.text(cell, [columns[at]! + 4, y - 10.5], { size: nth === 0 ? 7 : 8, bold: nth === 0 });
    });
    pen.line([left, y - step], [right, y - step], nth === 0 ? 0.9 : 0.3);
  });
  for (const x of columns) pen.line([x, top], [x, top - rows.length * step], 0.5);
  pen.line([left, top], [right, top], 0.9);
}

function drawTitle(pen: Pen): void {
  const [left, right, top, bottom] = [574, 812, 92, 30];
  pen.path(
    [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
    0.9,
    { closed: true },
  );
  pen.line([left, 56], [right, 56], 0.4);
  for (const x of [654, 734]) pen.line([x, bottom], [x, 56], 0.4);
  pen.text('Ondrey', [left + 8, 72], { size: 13, bold: true });
  pen.text('Fell 3 line reel', [left + 72, 72], { size: 13 });
  const cells = [
    ['SHEET', '1 of 1'],
    ['REV', 'B'],
    ['SCALE', 'none'],
  ];
  cells.forEach(([label, value], nth) => {
    pen.text(label!, [left + 6 + nth * 80, 47], { size: 5.5 });
    pen.text(value!, [left + 6 + nth * 80, 35], { size: 8.5 });
  });
}

/** A sheet with an exploded drawing and its list, as a maker prints it. */
function drawn(): Buffer {
  const pen = new Pen();
  const axis = new Axis(pen, [62, 108], (31 * Math.PI) / 180);
  drawParts(axis);
  drawBalloons(pen, axis);
  drawList(pen);
  drawTitle(pen);
  pen.path(
    [
      [30, 30],
      [812, 30],
      [812, 565],
      [30, 565],
    ],
    0.9,
    { closed: true },
  );
  pen.text('Fell 3', [46, 532], { size: 20, bold: true });
  pen.text('Line reel, exploded view', [46, 516], { size: 10 });
  pen.text('Grease the gear and the ratchet before fitting. Spring 14 is under load.', [46, 42], {
    size: 7.5,
  });
  return pen.pdf(width, height);
}

export const fell3 = {
  maker: 'Ondrey',
  model: 'Fell 3',
  duty: 'ordinary',
  file: 'fell-3.pdf',
  mediaType: 'application/pdf',
  bytes: drawn,
} as const;
