import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { FontMatrices } from './font-matrices.ts';
import type { LayerShown } from './layers.ts';
import type { OpenedPdf } from './library.ts';
import { type Matrix, times } from './matrix.ts';
import { operators as op } from './operators.ts';
import type { PageContent } from './page-content.ts';
import { colourOf, Painting } from './painting.ts';
import { ShapeWriter } from './write-shapes.ts';
import { type Glyph, TextWriter } from './write-text.ts';

type Arguments = readonly unknown[] | null;

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

/** Follows the pen over a page: keeps its state, and hands what it paints to the writers of text and of shapes. */
class PageReader {
  readonly content: PageContent;
  private readonly fonts: FontMatrices;
  private readonly layerShown: LayerShown;
  private readonly base: Painting;
  private readonly saved: Painting[] = [];
  private readonly text: TextWriter;
  private readonly shapes: ShapeWriter;
  private now: Painting;
  private order = 0;
  private clipping = false;
  /** For each open marked stretch, whether it is of a layer that is switched off. */
  private readonly marked: boolean[] = [];

  constructor(width: number, height: number, map: Matrix, fonts: FontMatrices, layerShown: LayerShown) {
    this.content = { width, height, pieces: [], rules: [], covers: [], rings: [], strokes: [], arcs: [] };
    this.fonts = fonts;
    this.layerShown = layerShown;
    this.now = new Painting(map, { left: 0, top: 0, right: width, bottom: height });
    this.base = this.now.copy();
    this.text = new TextWriter(this.content.pieces);
    this.shapes = new ShapeWriter(this.content);
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
        this.order += 1;
        if (!this.hidden) this.shapes.picture(now, this.order);
        break;
      case op.shadingFill:
        this.order += 1;
        if (!this.hidden) this.shapes.shading(now, this.order);
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

  private path(args: readonly unknown[]): void {
    this.order += 1;
    const [painted, [path], bounds] = args as [number, [Float32Array | null], ArrayLike<number> | null];
    if (this.clipping) {
      this.clipping = false;
      if (bounds) this.now.clipTo(bounds[0]!, bounds[1]!, bounds[2]!, bounds[3]!);
    }
    if (path && !this.hidden) this.shapes.path(painted, path, this.now, this.order);
  }
}
