/**
 * A gauge sheet: parts at true size on paper, to lay a loose one on. An SVG whose unit is the millimetre, so that it prints 1:1, with a
 * bar of 100 mm to check that the printer did. Screens know no millimetre: a bank card held to the glass gives theirs.
 */

/** What is drawn of a part: circles one in another, a bar of a length, or a comb of thread crests; millimetres. */
export type GaugeShape =
  | { readonly kind: 'circles'; readonly diameters: readonly number[] }
  | { readonly kind: 'bar'; readonly length: number; readonly thickness: number }
  | { readonly kind: 'comb'; readonly pitch: number; readonly pitches: number; readonly thickness: number };

export interface Gauge {
  /** Written under it, as `bearing 5x11x4`. */
  readonly label: string;
  readonly shapes: readonly GaugeShape[];
}

export interface Paper {
  readonly width: number;
  readonly height: number;
  /** What no printer reaches. */
  readonly margin: number;
}

/** ISO 216 A4. */
const a4: Paper = { width: 210, height: 297, margin: 12 };

/** The bar that a ruler is laid on, in millimetres. */
export const checkBar = 100;

/** A bank card is 85.60 mm wide (ISO/IEC 7810 ID-1). */
export const bankCardWidth = 85.6;

/** CSS pixels a millimetre of this screen, from the width in CSS pixels at which a drawn card met the real one. */
export const pixelsPerMillimetre = (cardPixels: number): number => cardPixels / bankCardWidth;

const between = 6;
const labelHeight = 5;
const headHeight = 18;

/** Width and height of a shape, in millimetres. */
function extent(shape: GaugeShape): { width: number; height: number } {
  if (shape.kind === 'circles') {
    const across = Math.max(...shape.diameters);
    return { width: across, height: across };
  }
  const width = shape.kind === 'bar' ? shape.length : shape.pitch * shape.pitches;
  return { width, height: shape.thickness };
}

const number = (value: number) => String(Math.round(value * 1000) / 1000);
const text = (value: string) =>
  value.replace(/[&<>"]/g, mark => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[mark]!);

function drawn(shape: GaugeShape, x: number, y: number): string {
  const { width, height } = extent(shape);
  if (shape.kind === 'circles') {
    const middle = `cx="${number(x + width / 2)}" cy="${number(y + height / 2)}"`;
    return shape.diameters.map(diameter => `<circle ${middle} r="${number(diameter / 2)}"/>`).join('');
  }
  const outline = `<rect x="${number(x)}" y="${number(y)}" width="${number(width)}" height="${number(height)}"/>`;
  if (shape.kind === 'bar') return outline;
  const crests = Array.from({ length: shape.pitches + 1 }, (_, at) => number(x + at * shape.pitch));
  return crests.map(at => `<path d="M${at} ${number(y)}v${number(height)}"/>`).join('');
}

/** Widest label beside its shapes, in millimetres: about 1.7 a letter. */
function block({ label, shapes }: Gauge): { width: number; height: number } {
  const all = shapes.map(extent);
  const width = all.reduce((sum, each) => sum + each.width, 0) + between * (all.length - 1);
  return {
    width: Math.max(width, 1.7 * label.length),
    height: Math.max(...all.map(each => each.height)) + labelHeight,
  };
}

/** A gauge where it lies on its sheet. */
interface Laid {
  readonly gauge: Gauge;
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** Gauges in rows, sheet by sheet. */
function lay(gauges: readonly Gauge[], paper: Paper): Laid[][] {
  const right = paper.width - paper.margin;
  const bottom = paper.height - paper.margin;
  const top = paper.margin + headHeight;
  const sheets: Laid[][] = [];
  let [x, y, row] = [paper.margin, top, 0];
  for (const gauge of gauges) {
    const { width, height } = block(gauge);
    if (width > right - paper.margin || height > bottom - top)
      throw new RangeError(`${gauge.label} is larger than the sheet; leave it out or take larger paper.`);
    if (x + width > right) [x, y, row] = [paper.margin, y + row + between, 0];
    if (sheets.length === 0 || y + height > bottom) {
      sheets.push([]);
      [x, y, row] = [paper.margin, top, 0];
    }
    sheets.at(-1)!.push({ gauge, x, y, height });
    x += width + between;
    row = Math.max(row, height);
  }
  return sheets;
}

/**
 * The sheets that hold these gauges at true size, each a whole SVG document, laid out in rows.
 *
 * @throws RangeError naming a gauge that the paper does not hold.
 */
export const gaugeSheets = (gauges: readonly Gauge[], paper: Paper = a4): string[] =>
  lay(gauges, paper).map(laid => sheet(laid.map(placed).join(''), paper));

/** How far down each of those sheets is drawn on, in millimetres from its top, with its margin below: a screen need show no more. */
export const gaugeSheetEnds = (gauges: readonly Gauge[], paper: Paper = a4): number[] =>
  lay(gauges, paper).map(laid => Math.max(...laid.map(({ y, height }) => y + height)) + paper.margin);

function placed({ gauge: { label, shapes }, x, y, height }: Laid): string {
  let at = x;
  const marks = shapes.map(shape => {
    const mark = drawn(shape, at, y);
    at += extent(shape).width + between;
    return mark;
  });
  return `<g>${marks.join('')}<text x="${number(x)}" y="${number(y + height - 1)}">${text(label)}</text></g>`;
}

function sheet(marks: string, { width, height, margin }: Paper): string {
  const [left, line] = [number(margin), number(margin + 6)];
  const bar = `<path d="M${left} ${line}h${checkBar}m0 -2v4m-${checkBar} 0v-4"/>`;
  const says = `<text x="${left}" y="${number(margin + 2)}">This bar is ${checkBar} mm. Where it is not, print again at 100 %, without fitting to the page.</text>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">` +
    `<g fill="none" stroke="#000" stroke-width="0.15"><style>text{fill:#000;stroke:none;font:3px sans-serif}</style>${bar}${says}${marks}</g></svg>`
  );
}
