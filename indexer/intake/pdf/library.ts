import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { FontMatrices } from './font-matrices.ts';

type Listener = (event: { data: unknown }) => void;

/** What pdf.js sends between its two halves, as far as it is looked at here. */
interface Message {
  action?: string;
  callbackId?: number;
  data?: unknown;
  chunk?: { fnArray?: number[]; argsArray?: unknown[]; length?: number };
}

/**
 * One end of the line between the two halves of pdf.js, which here run in one process: messages are handed over as
 * they are, where its own line copies each one. Fonts and images are for painting, and go no further.
 */
class Port {
  other: Port | null = null;
  private readonly listeners = new Set<Listener>();
  private readonly overhear: (message: Message) => Message;

  constructor(overhear: (message: Message) => Message = message => message) {
    this.overhear = overhear;
  }

  postMessage(message: Message): void {
    const data = this.overhear(message);
    const painting = message.action === 'obj' || message.action === 'commonobj';
    if (painting && message.callbackId === undefined) return;
    queueMicrotask(() => {
      for (const listener of this.other!.listeners) listener({ data });
    });
  }

  addEventListener(_: string, listener: Listener): void {
    this.listeners.add(listener);
  }

  removeEventListener(_: string, listener: Listener): void {
    this.listeners.delete(listener);
  }
}

/** What is painted on a page, as pdf.js lists it: its operators and the arguments of each. */
class PaintedList {
  operators: number[][] = [];
  arguments: unknown[][] = [];

  /** Takes a part of the list out of a message on its way; its sender empties it once it is sent. */
  take(message: Message): Message {
    const { chunk } = message;
    if (!chunk?.fnArray || !chunk.argsArray) return message;
    this.operators.push(chunk.fnArray.slice());
    this.arguments.push(chunk.argsArray.slice());
    return { ...message, chunk: { ...chunk, fnArray: [], argsArray: [], length: 0 } };
  }

  /** Gives each operator with its arguments, and forgets them. */
  drain(use: (operator: number, args: readonly unknown[] | null) => void): void {
    const { operators, arguments: args } = this;
    this.operators = [];
    this.arguments = [];
    operators.forEach((part, nth) => {
      for (let at = 0; at < part.length; at += 1) use(part[at]!, args[nth]![at] as readonly unknown[] | null);
    });
  }
}

/** The most pixels of an image that is looked at; what covers a page at 600 dpi has 35 million. */
const mostPixels = 36_000_000;

export interface OpenedPdf {
  pdf: PDFDocumentProxy;
  fonts: FontMatrices;
  painted: PaintedList;
}

/**
 * Opens a PDF by pdf.js. No script runs, nothing that the document names is fetched, its fonts are not made into faces.
 * @throws what pdf.js throws: `PasswordException`, `InvalidPDFException` and others, told apart by their `name`
 */
export async function openPdf(bytes: Uint8Array): Promise<OpenedPdf> {
  const { pdfjs, worker: half, folder } = await load();
  const fonts = new FontMatrices();
  const near = new Port();
  const painted = new PaintedList();
  const far = new Port(message => {
    if (message.action === 'commonobj') fonts.learn(message.data);
    return painted.take(message);
  });
  near.other = far;
  far.other = near;
  half.WorkerMessageHandler.initializeFromPort(far);
  const worker = new pdfjs.PDFWorker({ port: near as never, verbosity: 0 });
  const pdf = await pdfjs.getDocument({
    data: bytes,
    worker,
    verbosity: 0,
    isEvalSupported: false,
    disableFontFace: false,
    useSystemFonts: false,
    enableXfa: false,
    maxImageSize: mostPixels,
    standardFontDataUrl: `${join(folder, 'standard_fonts')}/`,
    cMapUrl: `${join(folder, 'cmaps')}/`,
    cMapPacked: true,
  } as Parameters<typeof pdfjs.getDocument>[0]).promise;
  return { pdf, fonts, painted };
}

interface WorkerHalf {
  WorkerMessageHandler: { initializeFromPort(port: unknown): void };
}

/** The library, loaded when the first PDF comes: most documents are none. */
async function load() {
  const require = createRequire(import.meta.url);
  drawsWithout(require);
  // The build for older programs replaces this for all, by a slower one.
  const { push } = Array.prototype;
  const pdfjs = await import('pdfjs-dist/legacy/build/pdf.mjs');
  // @ts-expect-error the half that parses comes without types
  const worker = (await import('pdfjs-dist/legacy/build/pdf.worker.mjs')) as WorkerHalf;
  Array.prototype.push = push;
  return { pdfjs, worker, folder: dirname(require.resolve('pdfjs-dist/package.json')) };
}

/** pdf.js names a matrix of browsers as it loads; where no canvas library brings one, an empty class will do to read. */
function drawsWithout(require: NodeJS.Require): void {
  try {
    require.resolve('@napi-rs/canvas');
  } catch {
    (globalThis as { DOMMatrix?: unknown }).DOMMatrix ??= class {};
  }
}
