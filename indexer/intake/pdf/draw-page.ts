import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type Canvas, createCanvas } from '@napi-rs/canvas';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page drawn as WebP. */
export interface Picture {
  /** In pixels. */
  width: number;
  height: number;
  bytes: Uint8Array;
}

/** Fine enough to read the smallest number on a sheet of A4; a larger sheet gets fewer dots to the inch. */
const dotsPerInch = 300;
const mostPixels = 16_000_000;
/** Each picture by the last: whole, half, quarter. */
const parts = [1, 2, 4];
const quality = 80;

/** Draws one page, 1-based, as it is shown, at several scales, the largest first. */
export async function drawPage(bytes: Uint8Array, number: number): Promise<Picture[]> {
  const folder = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));
  const loading = getDocument({
    // A copy: the library takes what it is given for itself.
    data: new Uint8Array(bytes),
    isEvalSupported: false,
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    cMapPacked: true,
    standardFontDataUrl: `${join(folder, 'standard_fonts')}/`,
    cMapUrl: `${join(folder, 'cmaps')}/`,
    wasmUrl: `${join(folder, 'wasm')}/`,
  });
  try {
    const page = await (await loading.promise).getPage(number);
    const asPrinted = page.getViewport({ scale: 1 });
    const viewport = page.getViewport({ scale: scaleFor(asPrinted.width, asPrinted.height) });
    const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
    await page.render({
      canvas: canvas as unknown as HTMLCanvasElement,
      viewport,
      background: 'white',
    }).promise;
    return await Promise.all(parts.map(part => shrunk(canvas, part)));
  } finally {
    await loading.destroy();
  }
}

/** Pixels to the point. */
function scaleFor(width: number, height: number): number {
  return Math.min(dotsPerInch / 72, Math.sqrt(mostPixels / (width * height)));
}

async function shrunk(full: Canvas, part: number): Promise<Picture> {
  const width = Math.max(1, Math.round(full.width / part));
  const height = Math.max(1, Math.round(full.height / part));
  const canvas = part === 1 ? full : createCanvas(width, height);
  if (part !== 1) {
    const context = canvas.getContext('2d');
    context.imageSmoothingQuality = 'high';
    context.drawImage(full, 0, 0, width, height);
  }
  return { width, height, bytes: await canvas.encode('webp', quality) };
}
