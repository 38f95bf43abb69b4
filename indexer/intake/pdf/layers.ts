import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Tells whether a layer of the document is switched on. */
export type LayerShown = (layer: unknown) => boolean;

/** Tells which layers of a document (ISO 32000-1, 8.11) are switched on as it opens; all are where it can't be told. */
export async function layersOf(pdf: PDFDocumentProxy): Promise<LayerShown> {
  try {
    const layers = await pdf.getOptionalContentConfig();
    return layer => layers.isVisible(layer as Parameters<typeof layers.isVisible>[0]);
  } catch {
    return () => true;
  }
}
