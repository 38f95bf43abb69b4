import { degrees, type PDFDocument, type PDFFont, type PDFPage, rgb } from 'pdf-lib';
import type { Chance } from './random.ts';

type Grey = number;

interface Text {
  x: number;
  y: number;
  text: string;
  size: number;
  font: PDFFont;
  grey?: Grey;
}

/** A sheet to draw on: points from its top left, y downwards; it may be turned on its page, and the page as it is shown. */
export class Sheet {
  readonly width: number;
  readonly height: number;
  private readonly page: PDFPage;
  private readonly byContent: number;
  private readonly byPage: number;
  private readonly later: (() => void)[] = [];

  constructor(
    pdf: PDFDocument,
    width: number,
    height: number,
    turn: { content?: number; page?: number } = {},
  ) {
    this.width = width;
    this.height = height;
    this.byContent = turn.content ?? 0;
    this.byPage = turn.page ?? 0;
    const [shownWidth, shownHeight] = this.shownSize();
    this.page = pdf.addPage(this.byPage % 180 === 0 ? [shownWidth, shownHeight] : [shownHeight, shownWidth]);
    this.page.setRotation(degrees(this.byPage));
  }

  private shownSize(): [number, number] {
    return this.byContent % 180 === 0 ? [this.width, this.height] : [this.height, this.width];
  }

  /** Where a point of the sheet is on the page as shown, as fractions from its top left. */
  shown(x: number, y: number): { x: number; y: number } {
    const [width, height] = this.shownSize();
    const [sx, sy] = this.onPage(x, y);
    return { x: sx / width, y: sy / height };
  }

  private onPage(x: number, y: number): [number, number] {
    if (this.byContent === 90) return [this.height - y, x];
    if (this.byContent === 180) return [this.width - x, this.height - y];
    if (this.byContent === 270) return [y, this.width - x];
    return [x, y];
  }

  /** ISO 32000-1, table 30: /Rotate turns the page clockwise as it is shown. */
  private inFile(x: number, y: number): { x: number; y: number } {
    const [sx, sy] = this.onPage(x, y);
    const { width, height } = this.page.getSize();
    if (this.byPage === 90) return { x: sy, y: sx };
    if (this.byPage === 180) return { x: width - sx, y: sy };
    if (this.byPage === 270) return { x: width - sy, y: height - sx };
    return { x: sx, y: height - sy };
  }

  text({ x, y, text, size, font, grey = 0 }: Text): void {
    if (!text) return;
    const start = this.inFile(x, y);
    const next = this.inFile(x + 1, y);
    const angle = (Math.atan2(next.y - start.y, next.x - start.x) * 180) / Math.PI;
    this.page.drawText(text, { ...start, size, font, color: rgb(grey, grey, grey), rotate: degrees(angle) });
  }

  /** Text that is written when all the others are, in any order. */
  textLater(text: Text): void {
    this.later.push(() => this.text(text));
  }

  finish(chance: Chance, shuffled: boolean): void {
    const order = this.later.splice(0);
    if (shuffled)
      for (let at = order.length - 1; at > 0; at -= 1) {
        const other = chance.whole(0, at);
        [order[at], order[other]] = [order[other]!, order[at]!];
      }
    for (const write of order) write();
  }

  line(x1: number, y1: number, x2: number, y2: number, thickness = 0.6): void {
    this.page.drawLine({ start: this.inFile(x1, y1), end: this.inFile(x2, y2), thickness });
  }

  fill(left: number, top: number, right: number, bottom: number, grey: Grey): void {
    const a = this.inFile(left, top);
    const b = this.inFile(right, bottom);
    this.page.drawRectangle({
      x: Math.min(a.x, b.x),
      y: Math.min(a.y, b.y),
      width: Math.abs(a.x - b.x),
      height: Math.abs(a.y - b.y),
      color: rgb(grey, grey, grey),
    });
  }

  circle(x: number, y: number, radius: number, stretch = 1): void {
    const upright = (this.byContent + this.byPage) % 180 === 0;
    this.page.drawEllipse({
      ...this.inFile(x, y),
      xScale: upright ? radius * stretch : radius,
      yScale: upright ? radius : radius * stretch,
      color: rgb(1, 1, 1),
      borderColor: rgb(0, 0, 0),
      borderWidth: 0.7,
    });
  }

  box(left: number, top: number, right: number, bottom: number): void {
    this.line(left, top, right, top);
    this.line(right, top, right, bottom);
    this.line(right, bottom, left, bottom);
    this.line(left, bottom, left, top);
  }

  /** Text that is drawn and not seen: rendering mode 3 is what scanners' programs write. */
  invisible(text: Omit<Text, 'grey'>, font: PDFFont): void {
    const { x, y } = this.inFile(text.x, text.y);
    this.page.drawText(text.text, { x, y, size: text.size, font, opacity: 0 });
  }
}
