import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** A process that holds a data folder and writes to it: what it said so far, and how to wait for more. */
export interface Holder {
  process: ChildProcess;
  lines: string[];
  /** The rows that were acknowledged. */
  kept(): string[];
  /** The first line from now on, or any so far, that begins so. */
  line(start: string, from?: number): Promise<string>;
  /** Sends a signal to the whole process group, as a terminal does, and waits for the end; answers the exit code. */
  end(signal: NodeJS.Signals): Promise<number | null>;
}

const program = fileURLToPath(new URL('hold-folder.ts', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));

export function startHolder(
  folder: string,
  common: string,
  options: { uid?: number; gid?: number; env?: NodeJS.ProcessEnv } = {},
): Holder {
  const child = spawn(process.execPath, ['--import', 'tsx', program, folder, common], {
    cwd: root,
    // A group of its own stands for a terminal's foreground group.
    detached: true,
    stdio: ['ignore', 'pipe', 'inherit'],
    ...options,
    env: { ...process.env, ...options.env },
  });
  const lines: string[] = [];
  const waiting = new Set<() => void>();
  const wake = () => {
    for (const one of waiting) one();
  };
  createInterface({ input: child.stdout! }).on('line', line => {
    lines.push(line);
    wake();
  });
  child.once('close', wake);
  return {
    process: child,
    lines,
    kept: () => lines.filter(line => line.startsWith('kept ')).map(line => line.slice(5)),
    async line(start, from = 0) {
      for (;;) {
        const found = lines.slice(from).find(line => line.startsWith(start));
        if (found !== undefined) return found;
        if (child.exitCode !== null || child.signalCode !== null)
          throw new Error(`It ended without "${start}". It said:\n${lines.slice(-20).join('\n')}`);
        await new Promise<void>(resolve => {
          const go = () => {
            waiting.delete(go);
            resolve();
          };
          waiting.add(go);
        });
      }
    },
    async end(signal) {
      if (child.exitCode === null && child.signalCode === null) {
        const ended = once(child, 'close');
        process.kill(-child.pid!, signal);
        await ended;
      }
      return child.exitCode;
    },
  };
}
