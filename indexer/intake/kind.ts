import { Unreadable } from './unreadable.ts';

/** What the first bytes say: how a document is opened, and what it is called to a person. */
export interface Kind {
  opened: 'as a zip' | 'as markup' | 'as a PDF' | 'not';
  name: string;
}

/** First bytes of the kinds of file that people send, as Latin-1 text. */
const signatures: [name: string, start: string][] = [
  ['a PNG image', '\x89PNG\r\n'],
  ['a JPEG image', '\xff\xd8\xff'],
  ['a GIF image', 'GIF8'],
  ['a TIFF image', 'II*\0'],
  ['a TIFF image', 'MM\0*'],
  ['a WebP image', 'RIFF'],
  ['a rich-text document', '{\\rtf'],
  ['a gzip archive', '\x1f\x8b'],
  ['a 7-Zip archive', "7z\xbc\xaf'\x1c"],
  ['a program', '\x7fELF'],
  ['a program', 'MZ\x90\0'],
];
/** The container of old documents, and of new ones that a password protects. */
const compound = '\xd0\xcf\x11\xe0';
/** Streams that tell what it holds, UTF-16 as its directory writes them. */
const streams: [name: string, stream: string][] = [
  ['a spreadsheet that a password protects', 'EncryptedPackage'],
  ['a spreadsheet of the old kind (.xls)', 'Workbook'],
  ['a spreadsheet of the old kind (.xls)', 'Book'],
  ['a word-processor document of the old kind (.doc)', 'WordDocument'],
];
/** Within the first 1024 bytes, as readers of PDF have always taken it (ISO 32000-1, annex H). */
const pdfSign = '%PDF-';
const zipped = ['PK\x03\x04', 'PK\x05\x06'];

const markup =
  /^\s*(?:<!--[\s\S]*?-->\s*)*<(?:!doctype|!--|html|head|title|meta|link|style|body|base|table|thead|tbody|caption|colgroup|tr|td|th|div|span|p|h[1-6]|pre|ul|ol|center|font|section|article|main|form|\?xml|svg|google-sheets-html-origin)\b/i;
/** What some programs put before the page on the clipboard. */
const clipboard = /^Version:[\d.]+\s+StartHTML:/;

/** What the first bytes say a document is; null for text. The name is never asked: it can say anything. */
export function kindOf(bytes: Uint8Array): Kind | null {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const start = buffer.toString('latin1', 0, 2048);
  if (zipped.some(sign => start.startsWith(sign))) return { opened: 'as a zip', name: 'a zipped document' };
  if (start.startsWith(compound)) return { opened: 'not', name: compoundName(buffer) };
  if (start.slice(0, 1024 + pdfSign.length).includes(pdfSign)) return { opened: 'as a PDF', name: 'a PDF' };
  for (const [name, signature] of signatures) if (start.startsWith(signature)) return { opened: 'not', name };
  const letters = start.replaceAll('\0', '').replace(/^(?:\xef\xbb\xbf|\xff\xfe|\xfe\xff)/, '');
  if (markup.test(letters) || clipboard.test(letters))
    return { opened: 'as markup', name: 'a web page or XML' };
  return null;
}

const compoundName = (bytes: Buffer): string =>
  streams.find(([, stream]) => bytes.includes(Buffer.from(stream, 'utf16le')))?.[0] ??
  'an old spreadsheet or word-processor document';

/** What is said of a document that is not read, by what it is. */
export function unknownKind(name: string): Unreadable {
  return new Unreadable('unknown-kind', {
    place: 'the document',
    message: `This is ${name}; Fettlebench reads PDF, XLSX, ODS, CSV, web pages and pasted text so far.`,
    remedy: /password/.test(name)
      ? 'Open it, save it without the password, and send that.'
      : 'Open it, save the list as XLSX or CSV, or copy the list and paste it as text.',
  });
}
