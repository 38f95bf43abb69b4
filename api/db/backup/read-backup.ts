import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { createGunzip } from 'node:zlib';
import { extract } from 'tar-stream';
import { Refusal, refuse } from '../../refusal.ts';
import { errorCode } from '../errors.ts';
import { formatVersion, type Manifest, manifestName, manifestShape, tableOf } from './manifest.ts';

/** What the tar gives as a stream of its own kind is read as the pieces it is. */
type Content = AsyncIterable<Buffer>;

/** A manifest lists some hundred bytes a member; larger than this it is none of ours. */
const manifestLimit = 64 << 20;

const notABackup = (file: string, message: string, cause?: unknown) =>
  refuse(
    'backup-not-readable',
    { place: file, message, remedy: 'Nothing was changed. Use another backup, or a fresh copy of this one.' },
    cause,
  );

/**
 * Reads a backup through and checks all of it against its manifest. Refused, with what is wrong, where it is cut
 * short, garbled, not a backup at all, or made by a newer program.
 */
export async function verifyBackup(file: string): Promise<Manifest> {
  const found = new Map<string, { bytes: number; sha256: string }>();
  let text: string | null = null;
  await eachMember(file, async (name, content) => {
    if (text !== null) throw notABackup(file, `"${name}" comes after the manifest.`);
    if (name === manifestName) {
      text = await readText(file, content);
      return;
    }
    if (tableOf(name) === null) throw notABackup(file, `It holds "${name}", which no backup does.`);
    const hash = createHash('sha256');
    let bytes = 0;
    for await (const piece of content) {
      hash.update(piece);
      bytes += piece.length;
    }
    if (found.has(name)) throw notABackup(file, `It holds "${name}" twice.`);
    found.set(name, { bytes, sha256: hash.digest('hex') });
  });
  if (text === null)
    throw notABackup(file, 'It has no manifest: it is cut short, or not a backup of Fettlebench.');
  const manifest = parseManifest(file, text);
  for (const { name, bytes, sha256 } of manifest.members) {
    const member = found.get(name);
    if (!member) throw notABackup(file, `"${name}" is missing.`);
    if (member.bytes !== bytes || member.sha256 !== sha256)
      throw notABackup(file, `"${name}" is not what was written: its SHA-256 differs.`);
    found.delete(name);
  }
  for (const name of found.keys()) throw notABackup(file, `"${name}" is not in the manifest.`);
  return manifest;
}

function parseManifest(file: string, text: string): Manifest {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw notABackup(file, 'Its manifest is garbled.', error);
  }
  const { kind, format } = (value ?? {}) as { kind?: unknown; format?: unknown };
  if (kind !== 'fettlebench backup') throw notABackup(file, 'It is not a backup of Fettlebench.');
  if (typeof format === 'number' && format > formatVersion)
    throw refuse('backup-newer', {
      place: file,
      message: `The backup has format ${format}; this program reads up to ${formatVersion}.`,
      remedy: 'Nothing was changed. Restore it with the newer program that made it.',
    });
  const parsed = manifestShape.safeParse(value);
  if (!parsed.success) throw notABackup(file, 'Its manifest is garbled.', parsed.error);
  return parsed.data;
}

/** Calls `take` with each piece of a table, in the order of the file. Verify the backup first. */
export async function eachPiece(
  file: string,
  take: (table: string, rows: Content) => Promise<void>,
): Promise<void> {
  await eachMember(file, async (name, content) => {
    const table = tableOf(name);
    if (table) await take(table, content);
  });
}

async function eachMember(
  file: string,
  take: (name: string, content: Content) => Promise<void>,
): Promise<void> {
  const members = extract();
  const read = pipeline(createReadStream(file), createGunzip(), members);
  // Its failure reaches the loop below through the stream; that one is told.
  read.catch(() => {});
  try {
    for await (const member of members) {
      await take(member.header.name, member as Content);
      member.resume();
    }
    await read;
  } catch (error) {
    members.destroy();
    throw error instanceof Refusal ? error : readRefusal(file, error);
  }
}

function readRefusal(file: string, error: unknown): unknown {
  const code = errorCode(error) ?? '';
  const said = error instanceof Error ? error.message : '';
  if (['ENOENT', 'EACCES', 'EISDIR', 'ENOTDIR'].includes(code))
    return refuse(
      'file-not-readable',
      {
        place: file,
        message: `The file cannot be read (${code}).`,
        remedy: 'Name a backup that is there and that you may read.',
      },
      error,
    );
  if (code === 'Z_BUF_ERROR' || said.includes('Unexpected end of data'))
    return notABackup(file, 'It is cut short.', error);
  if (code.startsWith('Z_') || /tar header|checksum/i.test(said))
    return notABackup(file, 'It is garbled, or not a backup of Fettlebench.', error);
  return error;
}

async function readText(file: string, content: Content): Promise<string> {
  const pieces: Buffer[] = [];
  let bytes = 0;
  for await (const piece of content) {
    bytes += piece.length;
    if (bytes > manifestLimit) throw notABackup(file, 'Its manifest is too large.');
    pieces.push(piece);
  }
  return Buffer.concat(pieces).toString('utf8');
}
