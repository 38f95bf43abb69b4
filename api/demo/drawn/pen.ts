/** A point of the sheet, in points of 1/72 inch from its lower left. */
export type Point = readonly [x: number, y: number];

export interface Text {
  size: number;
  bold?: boolean;
  align?: 'left' | 'middle' | 'right';
}

/** Lines and letters of one sheet, written as PDF content (ISO 32000-1, 8 and 9). */
export class Pen {
  private readonly written: string[] = ['1 J 1 j'];

  /** A line through points, or the outline of a shape, which is then white inside and hides what lies behind it. */
  path(points: readonly Point[], weight: number, { closed = false, filled = false } = {}): void {
    const steps = points.map(([x, y], nth) => `${number(x)} ${number(y)} ${nth === 0 ? 'm' : 'l'}`);
    this.written.push(`${number(weight)} w 1 g ${steps.join(' ')} ${filled ? 'b' : closed ? 's' : 'S'}`);
  }

  line(from: Point, to: Point, weight: number): void {
    this.path([from, to], weight);
  }

  /** A chain line, as axes are drawn (ISO 128-2, type 04.1). */
  chain(from: Point, to: Point, weight: number): void {
    this.written.push('[12 2.5 1.5 2.5] 0 d');
    this.line(from, to, weight);
    this.written.push('[] 0 d');
  }

  fill(points: readonly Point[], grey: number): void {
    const steps = points.map(([x, y], nth) => `${number(x)} ${number(y)} ${nth === 0 ? 'm' : 'l'}`);
    this.written.push(`${number(grey)} g ${steps.join(' ')} f`);
  }

  /** An ellipse by four curves, its first half axis turned by an angle in radians. */
  ellipse([x, y]: Point, a: number, b: number, angle: number, weight: number, filled = true): void {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const at = (u: number, v: number) =>
      `${number(x + a * u * cos - b * v * sin)} ${number(y + a * u * sin + b * v * cos)}`;
    // The handles of a quarter circle of radius 1 are this long.
    const k = 0.5523;
    const quarters = [
      [1, k, k, 1, 0, 1],
      [-k, 1, -1, k, -1, 0],
      [-1, -k, -k, -1, 0, -1],
      [k, -1, 1, -k, 1, 0],
    ].map(([a1, b1, a2, b2, a3, b3]) => `${at(a1!, b1!)} ${at(a2!, b2!)} ${at(a3!, b3!)} c`);
    this.written.push(`${number(weight)} w 1 g ${at(1, 0)} m ${quarters.join(' ')} ${filled ? 'b' : 's'}`);
  }

  circle(middle: Point, radius: number, weight: number, filled = true): void {
    this.ellipse(middle, radius, radius, 0, weight, filled);
  }

  text(text: string, [x, y]: Point, { size, bold = false, align = 'left' }: Text): void {
    const width = widthOf(text) * size;
    const left = align === 'left' ? x : align === 'middle' ? x - width / 2 : x - width;
    this.written.push(
      `BT 0 g /${bold ? 'B' : 'F'} ${number(size)} Tf ${number(left)} ${number(y)} Td (${escaped(text)}) Tj ET`,
    );
  }

  /** The sheet as a document of one page. */
  pdf(width: number, height: number): Buffer {
    const content = this.written.join('\n');
    const font = (name: string) =>
      `<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`;
    const objects = [
      '<< /Type /Catalog /Pages 2 0 R >>',
      '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${width} ${height}] /Contents 4 0 R /Resources << /Font << /F 5 0 R /B 6 0 R >> >> >>`,
      `<< /Length ${Buffer.byteLength(content, 'latin1')} >>\nstream\n${content}\nendstream`,
      font('Helvetica'),
      font('Helvetica-Bold'),
    ];
    let written = '%PDF-1.7\n';
    const places = objects.map((object, nth) => {
      const place = written.length;
      written += `${nth + 1} 0 obj\n${object}\nendobj\n`;
      return `${String(place).padStart(10, '0')} 00000 n \n`;
    });
    const index = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${places.join('')}`;
    const trailer = `trailer\n<< /Root 1 0 R /Size ${objects.length + 1} >>\nstartxref\n${written.length}\n%%EOF\n`;
    return Buffer.from(written + index + trailer, 'latin1');
  }
}

const number = (value: number): string => String(Math.round(value * 100) / 100);
const escaped = (text: string): string => text.replace(/[\\()]/g, sign => `\\${sign}`);

/** About how wide a text is, as a part of its height: figures of Helvetica are 0.556 wide (Adobe's metrics of it). */
const widthOf = (text: string): number =>
  [...text].reduce(
    (sum, letter) => sum + (/[0-9]/.test(letter) ? 0.556 : /[A-Z]/.test(letter) ? 0.68 : 0.5),
    0,
  );
