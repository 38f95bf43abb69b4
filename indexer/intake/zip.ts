import { Inflate } from 'fflate';
import { Unreadable } from './unreadable.ts';

interface Member {
  method: number;
  encrypted: boolean;
  /** Bytes inflated, as the directory says; believed only for refusing. */
  declared: number;
  start: number;
  size: number;
}

/** Bytes of all members that are read together, inflated: a list of two hundred thousand rows has a third of it. */
const mostInflated = 128 * 1024 * 1024;
const mostMembers = 10_000;
/** Bytes handed to the inflater at once; what comes out is at most a thousand times as many. */
const step = 8192;

/**
 * A zipped document: its members by name, inflated piece by piece and never further than the limit. Names are only
 * looked up, so what they look like does not matter.
 */
export class Zip {
  private readonly bytes: Uint8Array;
  private readonly members: ReadonlyMap<string, Member>;
  private inflated = 0;

  /** @throws {Unreadable} `unreadable` where there is no directory of members */
  constructor(bytes: Uint8Array) {
    this.bytes = bytes;
    this.members = readDirectory(bytes);
  }

  has(name: string): boolean {
    return this.members.has(keyOf(name));
  }

  /**
   * Hands a member's bytes on in pieces; false where there is none of that name.
   * @throws {Unreadable} `too-large` beyond the limit, whatever the directory says; `unreadable` when it is damaged
   */
  read(name: string, take: (piece: Uint8Array) => void): boolean {
    const member = this.members.get(keyOf(name));
    if (!member) return false;
    if (member.encrypted) throw damaged(name, 'it is protected by a password');
    if (this.inflated + member.declared > mostInflated) throw tooLarge(name);
    const data = dataOf(this.bytes, name, member);
    const count = (piece: Uint8Array) => {
      this.inflated += piece.length;
      if (this.inflated > mostInflated) throw tooLarge(name);
      take(piece);
    };
    if (member.method === 0) count(data);
    else if (member.method === 8) inflate(name, data, count);
    else throw damaged(name, 'it is packed in a way that spreadsheets do not use');
    return true;
  }
}

/** Names are compared without their case; some programs write them with backslashes or from the root. */
const keyOf = (name: string): string => name.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();

function inflate(name: string, data: Uint8Array, take: (piece: Uint8Array) => void): void {
  const inflater = new Inflate();
  inflater.ondata = take;
  try {
    for (let at = 0; at < data.length; at += step)
      inflater.push(data.subarray(at, at + step), at + step >= data.length);
  } catch (error) {
    // The inflater's own errors have a number; a limit that was met, or what takes the pieces, has none.
    if (typeof (error as { code?: unknown }).code === 'number')
      throw damaged(name, 'it is cut off or damaged');
    throw error;
  }
}

/** The directory at the end of a zip file (APPNOTE.TXT 6.3.9, sections 4.3.12 and 4.3.16). */
function readDirectory(bytes: Uint8Array): Map<string, Member> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  if (count > mostMembers) throw tooLarge('its directory');
  const members = new Map<string, Member>();
  const names = new TextDecoder();
  let at = view.getUint32(end + 16, true);
  for (let nth = 0; nth < count; nth += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) break;
    const nameLength = view.getUint16(at + 28, true);
    const name = keyOf(names.decode(bytes.subarray(at + 46, at + 46 + nameLength)));
    if (!members.has(name))
      members.set(name, {
        encrypted: (view.getUint16(at + 8, true) & 1) === 1,
        method: view.getUint16(at + 10, true),
        size: view.getUint32(at + 20, true),
        declared: view.getUint32(at + 24, true),
        start: view.getUint32(at + 42, true),
      });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return members;
}

/** Where the end record begins: before a comment of at most 65535 bytes. */
function findEnd(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 65_557); at -= 1)
    if (view.getUint32(at, true) === 0x06054b50) return at;
  throw damaged('the document', 'its end is missing');
}

function dataOf(bytes: Uint8Array, name: string, { start, size }: Member): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (start + 30 > bytes.length || view.getUint32(start, true) !== 0x04034b50)
    throw damaged(name, 'it is not where the directory says');
  const from = start + 30 + view.getUint16(start + 26, true) + view.getUint16(start + 28, true);
  if (from + size > bytes.length) throw damaged(name, 'it is cut off');
  return bytes.subarray(from, from + size);
}

const damaged = (place: string, why: string): Unreadable =>
  new Unreadable('unreadable', {
    place,
    message: `This zipped document cannot be opened: ${why}.`,
    remedy: 'Open it in the program it came from, save it again without a password, and send that.',
  });

const tooLarge = (place: string): Unreadable =>
  new Unreadable('too-large', {
    place,
    message: `Unpacked, this document is larger than ${mostInflated / 1024 / 1024} MiB; no parts list is.`,
    remedy: 'Copy the sheet with the parts list into a new file and send that, or save it as CSV.',
  });
