import { Unreadable } from './unreadable.ts';

/** First bytes of the kinds of file that people send, as Latin-1 text. */
const signatures: [kind: string, start: string][] = [
  ['a PDF', '%PDF-'],
  ['a PNG image', '\x89PNG\r\n'],
  ['a JPEG image', '\xff\xd8\xff'],
  ['a GIF image', 'GIF8'],
  ['a TIFF image', 'II*\0'],
  ['a TIFF image', 'MM\0*'],
  ['a WebP image', 'RIFF'],
  ['a spreadsheet or another zipped document', 'PK\x03\x04'],
  ['an empty zipped document', 'PK\x05\x06'],
  ['an old spreadsheet or word document', '\xd0\xcf\x11\xe0'],
  ['a rich-text document', '{\\rtf'],
  ['a gzip archive', '\x1f\x8b'],
  ['a 7-Zip archive', "7z\xbc\xaf'\x1c"],
  ['a program', '\x7fELF'],
  ['a program', 'MZ\x90\0'],
];

const markup = /^\s*(?:<!--[\s\S]*?-->\s*)*<(?:!doctype\s+html|html|head|body|table|div|\?xml|svg)\b/i;

/** What the first bytes say a document is; null for text. The name is never asked: it can say anything. */
export function kindOf(bytes: Uint8Array): string | null {
  const start = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.byteLength, 2048)).toString(
    'latin1',
  );
  for (const [kind, signature] of signatures) if (start.startsWith(signature)) return kind;
  if (start.slice(0, 1024).includes('%PDF-')) return 'a PDF';
  if (markup.test(start.replaceAll('\0', '').replace(/^(?:\xef\xbb\xbf|\xff\xfe|\xfe\xff)/, '')))
    return 'a web page or XML';
  return null;
}

/** Refuses a document that is not text, naming what it is. */
export function mustBeText(bytes: Uint8Array): void {
  const kind = kindOf(bytes);
  if (kind !== null)
    throw new Unreadable('unknown-kind', {
      place: 'the document',
      message: `This is ${kind}; Fettlebench reads CSV and pasted text so far.`,
      remedy: 'Open it, copy the list and paste it as text, or save the list as CSV.',
    });
}
