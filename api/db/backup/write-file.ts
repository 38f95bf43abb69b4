import { createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Writable } from 'node:stream';
import { finished } from 'node:stream/promises';
import { refuse } from '../../refusal.ts';
import { errorCode } from '../errors.ts';

/**
 * Writes a file that is either there as a whole, on the disk, or not at all: under another name first, then renamed.
 * A file that stood there before stays until then. `write` ends the stream.
 */
export async function writeWholeFile<T>(file: string, write: (out: Writable) => Promise<T>): Promise<T> {
  const unfinished = `${file}.unfinished-${process.pid}`;
  // Flushed to the disk before it is closed, which the end of the writing waits for.
  const out = createWriteStream(unfinished, { mode: 0o600, flush: true });
  const closed = finished(out);
  closed.catch(() => {});
  try {
    const done = await write(out);
    await closed;
    await rename(unfinished, file);
    await syncFolder(dirname(file));
    return done;
  } catch (error) {
    out.destroy();
    // What is still being opened would stand there again after it was removed.
    await closed.catch(() => {});
    await rm(unfinished, { force: true }).catch(() => {});
    throw fileRefusal(file, error);
  }
}

/** The new name is safe only once the folder was written out too; some systems cannot, and do it by themselves. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder);
  await handle.sync().catch(() => {});
  await handle.close();
}

function fileRefusal(file: string, error: unknown): unknown {
  const code = errorCode(error) ?? '';
  if (code === 'ENOSPC' || code === 'EDQUOT')
    return refuse(
      'disk-full',
      {
        place: file,
        message: 'There is no room for the file; nothing of it was left behind.',
        remedy: 'Make room there, or name a file on another disk.',
      },
      error,
    );
  if (['ENOENT', 'EACCES', 'EROFS', 'EISDIR', 'ENOTDIR', 'EPERM', 'ENAMETOOLONG'].includes(code))
    return refuse(
      'file-not-writable',
      {
        place: file,
        message: `The file cannot be written (${code}).`,
        remedy: 'Name a file in a folder that is there and that you may write to.',
      },
      error,
    );
  return error;
}
