import type { Attrs, Dims } from '../../reading/reading.ts';
import { headsOf } from '../../standards/screw-heads.ts';
import { toMm } from '../../units/length.ts';
import {
  axis,
  circles,
  type Drawing,
  hexagon,
  type Path,
  polygon,
  polyline,
  sheet,
  type View,
  view,
} from '../drawing.ts';
import { type DrawnThread, threadToDraw } from '../thread-to-draw.ts';

/** A head as it is drawn, in millimetres. */
interface Head {
  form: 'block' | 'domed' | 'hexagon' | 'cone';
  width: number;
  height: number;
  /** From the standard's table; else by the usual proportions, and then without a dimension. */
  known: boolean;
}

const forms: Record<string, Head['form']> = {
  countersunk: 'cone',
  'raised-countersunk': 'cone',
  pan: 'domed',
  button: 'domed',
  round: 'domed',
  truss: 'domed',
  hex: 'hexagon',
  'hex-flange': 'hexagon',
};

/**
 * A screw from its side, and its head from the end. The length is measured as the trade does: overall with a countersunk
 * head, else under the head. A head that is not stated is dashed. Null without a thread and a length.
 */
export function drawing(dims: Dims, attrs: Attrs = {}): Drawing | null {
  const thread = threadToDraw(dims);
  const { length } = dims;
  if (!thread || typeof length !== 'number' || !(length > 0)) return null;
  const head = headOf(thread, attrs.head, dims);
  const cone = head.form === 'cone';
  const shank = { from: head.height, to: cone ? length : head.height + length };
  const middle = head.width / 2;
  const outlineOfHead = headPath(head, thread, middle);
  const lines = shankLines(thread, shank, middle);
  return sheet(shank.to, head.width, {
    outlines: [...(attrs.head === undefined ? [] : [outlineOfHead]), ...lines.outlines],
    hidden: attrs.head === undefined ? [outlineOfHead] : [],
    thin: lines.thin,
    centre: [axis(0, shank.to, middle)],
    dimensions: [
      {
        key: 'length',
        from: [cone ? 0 : shank.from, head.width],
        to: [shank.to, head.width],
        offset: 6,
        text: `${length}`,
      },
      {
        key: thread.text.startsWith('Ø') ? 'dia' : 'thread',
        from: [shank.to, middle - thread.outside / 2],
        to: [shank.to, middle + thread.outside / 2],
        offset: 9,
        text: thread.text,
      },
      ...(head.known
        ? [
            {
              key: head.form === 'hexagon' ? 'acrossFlats' : 'headDiameter',
              from: [0, 0] as const,
              to: [0, head.width] as const,
              offset: -5,
              text: head.form === 'hexagon' ? `${head.width}` : `Ø${head.width}`,
            },
          ]
        : []),
      ...(typeof dims.headHeight === 'number'
        ? [
            {
              key: 'headHeight',
              from: [0, 0] as const,
              to: [head.height, 0] as const,
              offset: -6,
              text: `${head.height}`,
            },
          ]
        : []),
    ],
    face: faceOf(head, attrs.drive),
  });
}

/** A head as it was measured, else as its standard's table has it, else by the usual proportions. */
function headOf(thread: DrawnThread, head: Attrs[string] | undefined, dims: Dims): Head {
  const form = forms[String(head)] ?? 'block';
  const listed = tabledHead(head, dims.thread);
  // The usual proportions of heads (common practice).
  const wide = form === 'block' ? 1.75 : 1.9;
  const high = form === 'cone' ? 0.5 : 0.65;
  const measured = form === 'hexagon' ? (dims.acrossFlats ?? dims.headDiameter) : dims.headDiameter;
  const width = typeof measured === 'number' ? measured : (listed?.width ?? null);
  return {
    form,
    width: width ?? round(thread.outside * wide),
    height:
      typeof dims.headHeight === 'number'
        ? dims.headHeight
        : (listed?.height ?? round(thread.outside * high)),
    known: width !== null,
  };
}

function tabledHead(head: Attrs[string] | undefined, thread: Dims[string] | undefined) {
  const listed =
    typeof head === 'string' && typeof thread === 'string' ? headsOf(head, thread)[0] : undefined;
  const width = listed ? (listed.dkMax ?? listed.sMax ?? null) : null;
  return listed && width !== null ? { width: toMm(width), height: toMm(listed.kMax) } : null;
}

const round = (length: number) => Math.round(length * 10) / 10;

function headPath({ form, width, height }: Head, thread: DrawnThread, middle: number): Path {
  const [top, bottom] = [middle - thread.outside / 2, middle + thread.outside / 2];
  if (form === 'cone') return polygon([0, 0], [height, top], [height, bottom], [0, width]);
  if (form === 'domed') {
    const flat = width * 0.3;
    return [
      { to: 'move', at: [height, 0] },
      { to: 'line', at: [height * 0.62, 0] },
      { to: 'arc', at: [0, flat], radius: width * 0.42, large: false, clockwise: false },
      { to: 'line', at: [0, width - flat] },
      { to: 'arc', at: [height * 0.62, width], radius: width * 0.42, large: false, clockwise: false },
      { to: 'line', at: [height, width] },
      { to: 'close' },
    ];
  }
  const edge = form === 'hexagon' ? height * 0.15 : 0;
  return polygon([edge, 0], [height, 0], [height, width], [edge, width], [0, width - edge], [0, edge]);
}

function shankLines(thread: DrawnThread, { from, to }: { from: number; to: number }, middle: number) {
  const [out, root] = [thread.outside / 2, thread.root / 2];
  const edge = Math.min(out - root, (to - from) * 0.3);
  return {
    outlines: [
      polyline(
        [from, middle - out],
        [to - edge, middle - out],
        [to, middle - root],
        [to, middle + root],
        [to - edge, middle + out],
        [from, middle + out],
      ),
      polyline([to - edge, middle - out], [to - edge, middle + out]),
      polyline([from, middle - out], [from, middle + out]),
    ],
    thin: [
      polyline([from + thread.pitch, middle - root], [to, middle - root]),
      polyline([from + thread.pitch, middle + root], [to, middle + root]),
    ],
  };
}

/** The head from its end, with the drive where it is stated. */
function faceOf(head: Head, drive: Attrs[string] | undefined): View {
  const { width } = head;
  const middle = width / 2;
  if (head.form === 'hexagon') {
    const corners = (width * 2) / Math.sqrt(3);
    const face = circles(corners, []);
    return { ...face, outlines: [hexagon(corners / 2, corners / 2, width)] };
  }
  const face = circles(width, [middle]);
  const [arm, half] = [width * 0.26, width * 0.07];
  if (drive === 'hex-socket') face.outlines.push(hexagon(middle, middle, width * 0.45));
  if (drive === 'torx') face.outlines.push(...circles(width, [width * 0.24]).outlines);
  if (drive === 'square')
    face.outlines.push(
      polygon(
        [middle - arm / 1.4, middle - arm / 1.4],
        [middle + arm / 1.4, middle - arm / 1.4],
        [middle + arm / 1.4, middle + arm / 1.4],
        [middle - arm / 1.4, middle + arm / 1.4],
      ),
    );
  if (drive === 'slotted')
    face.outlines.push(
      polyline([middle - half, width * 0.02], [middle - half, width * 0.98]),
      polyline([middle + half, width * 0.02], [middle + half, width * 0.98]),
    );
  if (drive === 'phillips' || drive === 'pozidriv') face.outlines.push(cross(middle, arm, half));
  return head.known || drive !== undefined
    ? face
    : view(width, width, { centre: face.centre, hidden: face.outlines });
}

const cross = (m: number, arm: number, half: number): Path =>
  polygon(
    [m - half, m - arm],
    [m + half, m - arm],
    [m + half, m - half],
    [m + arm, m - half],
    [m + arm, m + half],
    [m + half, m + half],
    [m + half, m + arm],
    [m - half, m + arm],
    [m - half, m + half],
    [m - arm, m + half],
    [m - arm, m - half],
    [m - half, m - half],
  );
