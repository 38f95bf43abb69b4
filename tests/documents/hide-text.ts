import { type PDFDocument, PDFName, PDFOperator, PDFString } from 'pdf-lib';
import type { Face } from './faces.ts';
import type { Sheet } from './pdf-page.ts';
import type { Chance } from './random.ts';

/** Ways in which a document holds text that nobody sees. */
const ways = [
  'filled',
  'pictured',
  'white',
  'transparent',
  'unmarked',
  'clipped',
  'off page',
  'layer',
] as const;

/** Writes something beside a place that a person does not see there: neither a row nor a balloon. */
export function hideText(sheet: Sheet, x: number, y: number, font: Face, size: number, chance: Chance): void {
  const text = chance.pick(['99', 'XX-9999', 'OLD SCREW M9 x 99', '77']);
  const box = [x - 2, y - 8, x + font.widthOfTextAtSize(text, size) + 2, y + 2.5] as const;
  const words = { x, y, text, size, font };
  switch (chance.pick(ways)) {
    case 'filled':
      sheet.text(words);
      sheet.fill(...box, 1);
      break;
    case 'pictured':
      sheet.text(words);
      sheet.picture(...box);
      break;
    case 'white':
      sheet.text({ ...words, grey: 1 });
      break;
    case 'transparent':
      sheet.transparent(words);
      break;
    case 'unmarked':
      sheet.text({ ...words, mode: 3 });
      break;
    case 'clipped':
      sheet.within(x - 300, y - 300, x - 290, y - 290, () => sheet.text(words));
      break;
    case 'off page':
      sheet.text({ ...words, x: -40 - box[2] + box[0], y });
      break;
    case 'layer':
      sheet.inHiddenLayer(() => sheet.text(words));
      break;
  }
}

/** A layer that is switched off as the document opens (ISO 32000-1, 8.11). */
export function hiddenLayer(pdf: PDFDocument) {
  const { context, catalog } = pdf;
  const known = catalog.get(PDFName.of('OCProperties'));
  if (known) return layers.get(pdf)!;
  const layer = context.register(context.obj({ Type: 'OCG', Name: PDFString.of('old') }));
  catalog.set(
    PDFName.of('OCProperties'),
    context.obj({ OCGs: [layer], D: { OFF: [layer], Order: [layer] } }),
  );
  layers.set(pdf, layer);
  return layer;
}
const layers = new WeakMap<PDFDocument, ReturnType<PDFDocument['context']['register']>>();

export const beginLayer = (name: string) =>
  PDFOperator.of('BDC' as never, [PDFName.of('OC'), PDFName.of(name)] as never);
export const endLayer = () => PDFOperator.of('EMC' as never);
