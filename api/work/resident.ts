import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** The resident memory of a process in bytes, by `/proc` on Linux and `ps` elsewhere; null once it is gone. */
export async function residentBytes(pid: number): Promise<number | null> {
  try {
    const kibibytes =
      process.platform === 'linux'
        ? /^VmRSS:\s*(\d+) kB/m.exec(await readFile(`/proc/${pid}/status`, 'utf8'))?.[1]
        : (await run('/bin/ps', ['-o', 'rss=', '-p', String(pid)], { env: {} })).stdout.trim();
    return kibibytes ? Number(kibibytes) * 1024 : null;
  } catch {
    return null;
  }
}
