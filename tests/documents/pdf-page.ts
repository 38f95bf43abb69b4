import {
  asPDFNumber,
  clip,
  degrees,
  endPath,
  type PDFDocument,
  PDFName,
  PDFOperator,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rectangle,
  rgb,
  setGraphicsState,
} from 'pdf-lib';
import type { Face } from './faces.ts';
import { type Hand, plainHand, write } from './hand.ts';
import { beginLayer, endLayer, hiddenLayer } from './hide-text.ts';
import type { Chance } from './random.ts';

type Grey = number;

interface Text {
  x: number;
  y: number;
  text: string;
  size: number;
  font: Face;
  grey?: Grey;
  mode?: number;
}

/** A sheet to draw on: points from its top left, y downwards; it may be turned on its page, and the page as it is shown. */
export class Sheet {
  readonly width: number;
  readonly height: number;
  private readonly page: PDFPage;
  private readonly byContent: number;
  private readonly byPage: number;
  private readonly pdf: PDFDocument;
  private readonly hand: Hand;
  private readonly later: (() => void)[] = [];

  constructor(
    pdf: PDFDocument,
    width: number,
    height: number,
    turn: { content?: number; page?: number } = {},
    hand: Hand = plainHand,
  ) {
    this.pdf = pdf;
    this.hand = hand;
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

  text({ x, y, text, size, font, grey = 0, mode }: Text): void {
    if (!text) return;
    const start = this.inFile(x, y);
    const next = this.inFile(x + 1, y);
    const angle = Math.atan2(next.y - start.y, next.x - start.x);
    write(
      this.page,
      { ...start, angle, text, size, font, grey, ...(mode !== undefined && { mode }) },
      this.hand,
    );
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

  private boxInFile(left: number, top: number, right: number, bottom: number) {
    const a = this.inFile(left, top);
    const b = this.inFile(right, bottom);
    return {
      x: Math.min(a.x, b.x),
      y: Math.min(a.y, b.y),
      width: Math.abs(a.x - b.x),
      height: Math.abs(a.y - b.y),
    };
  }

  fill(left: number, top: number, right: number, bottom: number, grey: Grey): void {
    this.page.drawRectangle({
      ...this.boxInFile(left, top, right, bottom),
      color: rgb(grey, grey, grey),
    });
  }

  /** A grey picture of one dot, drawn large. */
  picture(left: number, top: number, right: number, bottom: number): void {
    const { x, y, width, height } = this.boxInFile(left, top, right, bottom);
    const image = this.pdf.context.stream(new Uint8Array([250]), {
      Type: 'XObject',
      Subtype: 'Image',
      Width: 1,
      Height: 1,
      ColorSpace: 'DeviceGray',
      BitsPerComponent: 8,
    });
    const name = this.page.node.newXObject('Picture', this.pdf.context.register(image));
    this.page.pushOperators(
      pushGraphicsState(),
      operator('cm', width, 0, 0, height, x, y),
      operator('Do', name),
      popGraphicsState(),
    );
  }

  /** What is drawn inside a box alone is seen. */
  within(left: number, top: number, right: number, bottom: number, draw: () => void): void {
    const { x, y, width, height } = this.boxInFile(left, top, right, bottom);
    this.page.pushOperators(pushGraphicsState(), rectangle(x, y, width, height), clip(), endPath());
    draw();
    this.page.pushOperators(popGraphicsState());
  }

  inHiddenLayer(draw: () => void): void {
    const { context } = this.pdf;
    const resources = this.page.node.Resources()!;
    const key = PDFName.of('Properties');
    if (!resources.has(key)) resources.set(key, context.obj({ Old: hiddenLayer(this.pdf) }));
    this.page.pushOperators(beginLayer('Old'));
    draw();
    this.page.pushOperators(endLayer());
  }

  /** A line through several points, in one stroke. */
  path(points: readonly (readonly [number, number])[], closed = false, thickness = 0.6): void {
    this.stroke(
      thickness,
      points.map((point, nth) => operator(nth === 0 ? 'm' : 'l', ...this.numbers(point))),
      closed,
    );
  }

  /** Part of a circle, from one angle to another in radians, by curves of an eighth of it at most. */
  arc(x: number, y: number, radius: number, from: number, to: number, thickness = 0.7): void {
    const steps = Math.max(1, Math.ceil((to - from) / (Math.PI / 4) - 1e-9));
    const step = (to - from) / steps;
    const reach = (4 / 3) * Math.tan(step / 4) * radius;
    const at = (angle: number, along = 0): [number, number] => [
      x + radius * Math.cos(angle) - along * Math.sin(angle),
      y + radius * Math.sin(angle) + along * Math.cos(angle),
    ];
    const operators = [operator('m', ...this.numbers(at(from)))];
    for (let nth = 0; nth < steps; nth += 1) {
      const [a, b] = [from + nth * step, from + (nth + 1) * step];
      operators.push(
        operator('c', ...this.numbers(at(a, reach)), ...this.numbers(at(b, -reach)), ...this.numbers(at(b))),
      );
    }
    this.stroke(thickness, operators, false);
  }

  private numbers([x, y]: readonly [number, number]): [number, number] {
    const point = this.inFile(x, y);
    return [point.x, point.y];
  }

  private stroke(thickness: number, operators: PDFOperator[], closed: boolean): void {
    this.page.pushOperators(
      pushGraphicsState(),
      operator('w', thickness),
      ...operators,
      operator(closed ? 's' : 'S'),
      popGraphicsState(),
    );
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

  /** Text that is drawn as clear as glass. */
  transparent(text: Omit<Text, 'grey'>): void {
    const state = this.pdf.context.obj({ Type: 'ExtGState', ca: 0, CA: 0 });
    const name = this.page.node.newExtGState('Clear', this.pdf.context.register(state));
    this.page.pushOperators(pushGraphicsState(), setGraphicsState(name));
    this.text(text);
    this.page.pushOperators(popGraphicsState());
  }
}

const operator = (name: string, ...operands: (number | PDFName)[]): PDFOperator =>
  PDFOperator.of(
    name as never,
    operands.map(each => (typeof each === 'number' ? asPDFNumber(each) : each)) as never,
  );
