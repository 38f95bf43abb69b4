import { PDFDocument, type PDFPage, rgb, StandardFonts } from 'pdf-lib';

export interface SmallPdf {
  /** Reference, part number, description, quantity. */
  lines: [string, string, string, string][];
  /** Balloons of the drawing, at fractions of the page from its top left. */
  balloons: { ref: string; x: number; y: number }[];
}

const width = 595;
const height = 842;

/** A page with a drawing above its parts list, ruled, as a maker prints it. */
export async function smallPdf({ lines, balloons }: SmallPdf): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([width, height]);
  for (const { ref, x, y } of balloons) drawBalloon(page, ref, x * width, height - y * height);
  const columns = [50, 90, 180, 480];
  const rows = [['Ref', 'Part No', 'Description', 'Qty'], ...lines];
  rows.forEach((cells, at) => {
    const y = 360 - at * 18;
    for (const [column, cell] of cells.entries())
      page.drawText(cell, { x: columns[column]!, y, size: 10, font });
    page.drawLine({ start: { x: 45, y: y - 5 }, end: { x: 540, y: y - 5 }, thickness: 0.5 });
  });
  return pdf.save();

  function drawBalloon(on: PDFPage, ref: string, x: number, y: number) {
    on.drawCircle({ x, y, size: 10, borderWidth: 1, borderColor: rgb(0, 0, 0) });
    on.drawLine({ start: { x: x + 10, y }, end: { x: x + 40, y: y + 20 }, thickness: 0.7 });
    on.drawText(ref, { x: x - font.widthOfTextAtSize(ref, 9) / 2, y: y - 3, size: 9, font });
  }
}
