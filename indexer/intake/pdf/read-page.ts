import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { FontMatrices } from './font-matrices.ts';
import type { OpenedPdf } from './library.ts';
import { type Matrix, mapBox, times } from './matrix.ts';
import { operators as op } from './operators.ts';
import type { PageContent } from './page-content.ts';
import { colourOf, faintest, Painting, white } from './painting.ts';
import { addRing, isRectangle, readSubpaths, type Subpath } from './read-path.ts';
import { type Glyph, TextWriter } from './write-text.ts';

type Arguments = readonly unknown[] | null;

/** Tells whether a layer of the document is switched on. */
export type LayerShown = (layer: unknown) => boolean;

/** Reads what stands on a page from the list of what is painted on it, in one pass. */
export async function readPage(
  page: PDFPageProxy,
  { fonts, painted }: OpenedPdf,
  layerShown: LayerShown,
): Promise<PageContent> {
  const { width, height, transform } = page.getViewport({ scale: 1 });
  await page.getOperatorList();
  const painter = new PageReader(width, height, transform as unknown as Matrix, fonts, layerShown);
  painted.drain((operator, args) => painter.take(operator, args));
  return painter.content;
}

/** A stroke or fill thinner than this is a line, in points. */
const thinnest = 2.2;
/** The share of what lies under it that an opaque thing lets through, at most. */
const opaque = 0.9;
/** Corners of a path that is looked at closely. */
const mostCorners = 200_000;

class PageReader {
  readonly content: PageContent;
  private readonly fonts: FontMatrices;
  private readonly layerShown: LayerShown;
  private readonly base: Painting;
  private readonly saved: Painting[] = [];
  private readonly text: TextWriter;
  private now: Painting;
  private order = 0;
  private corners = 0;
  private clipping = false;
  /** For each open marked stretch, whether it is of a layer that is switched off. */
  private readonly marked: boolean[] = [];

  constructor(width: number, height: number, map: Matrix, fonts: FontMatrices, layerShown: LayerShown) {
    this.content = { width, height, pieces: [], rules: [], covers: [], rings: [], strokes: [] };
    this.fonts = fonts;
    this.layerShown = layerShown;
    this.now = new Painting(map, { left: 0, top: 0, right: width, bottom: height });
    this.base = this.now.copy();
    this.text = new TextWriter(this.content.pieces);
  }

  private get hidden(): boolean {
    return this.marked.includes(true);
  }

  take(operator: number, args: Arguments): void {
    const { now, text } = this;
    const numbers = args as readonly number[];
    switch (operator) {
      case op.save:
        this.saved.push(now.copy());
        break;
      case op.restore:
        this.restore();
        break;
      case op.transform:
        now.map = times(now.map, numbers as unknown as Matrix);
        break;
      case op.setGState:
        now.set(args![0] as [string, unknown][]);
        break;
      case op.setLineWidth:
        now.lineWidth = numbers[0]!;
        break;
      case op.setFillRGBColor:
        now.fill = colourOf(args![0]);
        break;
      case op.setStrokeRGBColor:
        now.stroke = colourOf(args![0]);
        break;
      case op.setFillColorN:
      case op.setFillTransparent:
        now.fill = null;
        break;
      case op.setStrokeColorN:
      case op.setStrokeTransparent:
        now.stroke = null;
        break;
      case op.beginText:
        text.begin();
        break;
      case op.setFont:
        now.font = args![0] as string;
        now.fontSize = args![1] as number;
        break;
      case op.setCharSpacing:
        now.charSpacing = numbers[0]!;
        break;
      case op.setWordSpacing:
        now.wordSpacing = numbers[0]!;
        break;
      case op.setHScale:
        now.stretch = numbers[0]! / 100;
        break;
      case op.setLeading:
        now.leading = -numbers[0]!;
        break;
      case op.setTextRise:
        now.rise = numbers[0]!;
        break;
      case op.setTextRenderingMode:
        now.mode = numbers[0]!;
        break;
      case op.setTextMatrix:
        text.setMatrix((ArrayBuffer.isView(args![0]) || Array.isArray(args![0]) ? args![0] : args) as Matrix);
        break;
      case op.moveText:
        text.move(numbers[0]!, numbers[1]!);
        break;
      case op.setLeadingMoveText:
        now.leading = numbers[1]!;
        text.move(numbers[0]!, numbers[1]!);
        break;
      case op.nextLine:
        text.move(0, now.leading);
        break;
      case op.showText:
        this.order += 1;
        text.show(args![0] as (Glyph | number)[], now, this.fonts.of(now.font), this.order, !this.hidden);
        break;
      case op.clip:
      case op.eoClip:
        this.clipping = true;
        break;
      case op.constructPath:
        this.path(args!);
        break;
      case op.paintFormXObjectBegin:
        this.beginForm(args!);
        break;
      case op.beginGroup: {
        this.saved.push(now.copy());
        const { bbox, matrix } = args![0] as { bbox?: number[]; matrix?: Matrix };
        if (bbox) this.clipBox(bbox, matrix ? times(now.map, matrix) : now.map);
        break;
      }
      case op.beginAnnotation:
        this.beginAnnotation(args!);
        break;
      case op.paintFormXObjectEnd:
      case op.endGroup:
      case op.endAnnotation:
        this.restore();
        break;
      case op.beginMarkedContent:
        this.marked.push(false);
        break;
      case op.beginMarkedContentProps:
        this.marked.push(args![0] === 'OC' && !this.layerShown(args![1]));
        break;
      case op.endMarkedContent:
        this.marked.pop();
        break;
      case op.paintImageXObject:
      case op.paintInlineImageXObject:
        this.picture();
        break;
      case op.shadingFill:
        this.order += 1;
        this.cover(this.now.clip, null, null, false);
        break;
      default:
    }
  }

  private restore(): void {
    const last = this.saved.pop();
    if (last) this.now = last;
  }

  private beginForm(args: readonly unknown[]): void {
    this.saved.push(this.now.copy());
    const [matrix, bbox] = args as [Matrix | null, number[] | null];
    if (matrix) this.now.map = times(this.now.map, matrix);
    if (bbox) this.clipBox(bbox, this.now.map);
  }

  private beginAnnotation(args: readonly unknown[]): void {
    const [, rect, transform, matrix] = args as [string, number[] | null, Matrix, Matrix];
    this.saved.push(this.now.copy());
    this.now = this.base.copy();
    if (rect) this.clipBox(rect, this.now.map);
    this.now.map = times(times(this.now.map, transform), matrix);
  }

  private clipBox([left, top, right, bottom]: readonly number[], map: Matrix): void {
    this.now.clipTo(left!, top!, right!, bottom!, map);
  }

  private picture(): void {
    this.order += 1;
    const { map, fillAlpha, masked, blends } = this.now;
    if (fillAlpha < opaque || masked || blends) return;
    this.cover(mapBox(map, 0, 0, 1, 1), null, null, true);
  }

  private cover(
    box: PageContent['covers'][number]['box'],
    outline: number[] | null,
    colour: number | null,
    picture: boolean,
  ) {
    if (this.hidden) return;
    const { clip } = this.now;
    const seen = {
      left: Math.max(box.left, clip.left),
      top: Math.max(box.top, clip.top),
      right: Math.min(box.right, clip.right),
      bottom: Math.min(box.bottom, clip.bottom),
    };
    if (seen.right - seen.left < thinnest || seen.bottom - seen.top < thinnest) return;
    this.content.covers.push({ box: seen, outline, colour, order: this.order, picture });
  }

  private path(args: readonly unknown[]): void {
    this.order += 1;
    const [painted, [path], bounds] = args as [number, [Float32Array | null], ArrayLike<number> | null];
    const { now } = this;
    if (this.clipping) {
      this.clipping = false;
      if (bounds) now.clipTo(bounds[0]!, bounds[1]!, bounds[2]!, bounds[3]!);
    }
    if (!path || painted === op.endPath || this.hidden) return;
    this.corners += path.length;
    if (this.corners > mostCorners * 2) return;
    const fills = painted === op.fill || painted === op.eoFill || bothWays.has(painted);
    const strokes = !fills || bothWays.has(painted);
    const filled = fills && now.fillAlpha > faintest;
    const stroked = strokes && now.strokeAlpha > faintest && now.stroke !== white;
    if (!filled && !stroked) return;
    for (const subpath of readSubpaths(path, now.map)) {
      if (painted === op.closeStroke) subpath.closed = true;
      if (outside(subpath, now.clip)) continue;
      if (stroked) this.stroked(subpath);
      if (filled) this.filled(subpath, stroked);
    }
  }

  private stroked(subpath: Subpath): void {
    addRing(subpath, this.content);
    const { points, closed, curves } = subpath;
    if (curves > 0 && subpath.lines === 0) return;
    for (let at = 2; at < points.length; at += 2)
      this.segment(points[at - 2]!, points[at - 1]!, points[at]!, points[at + 1]!);
    const end = points.length - 2;
    if (closed && end > 2) this.segment(points[end]!, points[end + 1]!, points[0]!, points[1]!);
  }

  private segment(x1: number, y1: number, x2: number, y2: number): void {
    const across = Math.abs(x2 - x1);
    const down = Math.abs(y2 - y1);
    if (across + down < 1) return;
    this.content.strokes.push(x1, y1, x2, y2);
    if (across < 0.4 && down > 3) this.rule(true, (x1 + x2) / 2, y1, y2);
    else if (down < 0.4 && across > 3) this.rule(false, (y1 + y2) / 2, x1, x2);
  }

  private rule(upright: boolean, at: number, a: number, b: number): void {
    const { clip } = this.now;
    const [low, high] = upright ? [clip.top, clip.bottom] : [clip.left, clip.right];
    const from = Math.max(Math.min(a, b), low);
    const to = Math.min(Math.max(a, b), high);
    const seen = upright
      ? at >= clip.left - 1 && at <= clip.right + 1
      : at >= clip.top - 1 && at <= clip.bottom + 1;
    if (seen && to - from > 3) this.content.rules.push({ upright, at, from, to });
  }

  private filled(subpath: Subpath, stroked: boolean): void {
    const { box, points } = subpath;
    const { fill, fillAlpha, blends, masked } = this.now;
    const width = box.right - box.left;
    const height = box.bottom - box.top;
    if (Math.min(width, height) <= thinnest) {
      if (fill === white || stroked) return;
      if (height > width && height > 3) this.rule(true, (box.left + box.right) / 2, box.top, box.bottom);
      else if (width > 3) this.rule(false, (box.top + box.bottom) / 2, box.left, box.right);
      if (Math.max(width, height) > 3) this.content.strokes.push(...longest(points));
      return;
    }
    if (!stroked && fill !== white) addRing(subpath, this.content);
    if (fillAlpha < opaque || blends || masked) return;
    this.cover(box, isRectangle(subpath) ? null : points, fill, false);
  }
}

const bothWays = new Set<number>([op.fillStroke, op.eoFillStroke, op.closeFillStroke, op.closeEOFillStroke]);

const outside = ({ box }: Subpath, clip: Subpath['box']): boolean =>
  box.right < clip.left || box.left > clip.right || box.bottom < clip.top || box.top > clip.bottom;

/** A thin filled shape is the line between those of its corners that are farthest apart. */
function longest(points: readonly number[]): [number, number, number, number] {
  let best: [number, number, number, number] = [0, 0, 0, 0];
  let most = -1;
  const count = Math.min(points.length, 40);
  for (let a = 0; a < count; a += 2)
    for (let b = a + 2; b < count; b += 2) {
      const length = Math.hypot(points[a]! - points[b]!, points[a + 1]! - points[b + 1]!);
      if (length > most) {
        most = length;
        best = [points[a]!, points[a + 1]!, points[b]!, points[b + 1]!];
      }
    }
  return best;
}
