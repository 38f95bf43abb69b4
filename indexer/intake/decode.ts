import { isProse } from './clean.ts';
import { looksJapanese } from './encoding/japanese.ts';
import { wideOrder } from './encoding/wide-order.ts';
import { Unreadable } from './unreadable.ts';

/** Text of a document, and how it was written. Characters that could not be read are U+FFFD. */
export interface Decoded {
  text: string;
  encoding: string;
}

/**
 * Bytes to text. A byte order mark decides; else zero bytes where one order of UTF-16 makes sense of them; else UTF-8
 * where the sequences hold together, a few broken ones aside; else Shift JIS or EUC-JP where it gives Japanese words,
 * and Windows-1252.
 * @throws {Unreadable} `unreadable` when the bytes are not text
 */
export function decode(bytes: Uint8Array): Decoded {
  const decoded = decodeAny(bytes);
  if (!isProse(decoded.text)) notText('the document', 'it is full of control characters');
  return decoded;
}

/** The same for a web page or XML, which may name its encoding itself: believed where the bytes bear it out. */
export function decodeMarkup(bytes: Uint8Array): string {
  const start = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 2048)).toString('latin1');
  const named =
    /<meta[^>]+charset\s*=\s*["']?\s*([\w:.-]+)/i.exec(start) ??
    /^<\?xml[^>]+encoding\s*=\s*["']([\w:.-]+)/i.exec(start);
  const decoder = named && !bytes.includes(0) ? decoderOf(named[1]!) : null;
  if (!decoder || decoder.encoding === 'utf-8') return decode(bytes).text;
  return decoder.encoding === 'windows-1252' ? decodeWindows1252(bytes) : decoder.decode(bytes);
}

function decoderOf(label: string): TextDecoder | null {
  try {
    return new TextDecoder(label);
  } catch {
    return null;
  }
}

function notText(place: string, why: string): never {
  throw new Unreadable('unreadable', {
    place,
    message: `This is not text: ${why}.`,
    remedy: 'Send the list as CSV or text, or copy it and paste it.',
  });
}

function decodeAny(bytes: Uint8Array): Decoded {
  const [a, b, c] = bytes;
  if (a === 0xff && b === 0xfe) return decodeAs('utf-16le', bytes);
  if (a === 0xfe && b === 0xff) return decodeAs('utf-16be', bytes);
  if (a === 0xef && b === 0xbb && c === 0xbf) return decodeAs('utf-8', bytes);
  const wide = wideOrder(bytes);
  if (wide) return decodeAs(wide, bytes);
  if (bytes.includes(0)) notText(`byte ${bytes.indexOf(0)}`, 'it holds zero bytes');
  const utf8 = decodeAs('utf-8', bytes);
  const broken = count(utf8.text, /�/g);
  if (broken === 0) return utf8;
  // Two bytes that make one character together hardly ever do so by chance: more whole than broken is UTF-8.
  if (count(utf8.text, /[^\x00-\x7f�]/g) > broken) return utf8;
  for (const encoding of ['euc-jp', 'shift_jis'] as const) {
    const japanese = decodeAs(encoding, bytes);
    if (looksJapanese(japanese.text)) return japanese;
  }
  return { text: decodeWindows1252(bytes), encoding: 'windows-1252' };
}

function decodeAs(encoding: string, bytes: Uint8Array): Decoded {
  return { text: new TextDecoder(encoding).decode(bytes), encoding };
}

/**
 * The characters of bytes 80 to 9F, which Latin-1 has no printed signs for (Unicode mapping table CP1252; the five
 * unused stay as they are). Read here because some releases of Node.js read this encoding as Latin-1.
 */
const windowsOnly = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ';

function decodeWindows1252(bytes: Uint8Array): string {
  const latin = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  return latin.replace(/[\x80-\x9f]/g, sign => windowsOnly[sign.charCodeAt(0) - 0x80]!);
}

function count(text: string, pattern: RegExp): number {
  let found = 0;
  for (const _ of text.matchAll(pattern)) found += 1;
  return found;
}
