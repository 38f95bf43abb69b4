import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { runningPostmaster } from '../../api/db/postmaster.ts';

const built = fileURLToPath(new URL('../../dist/fettle.js', import.meta.url));

/** The built program over one data folder, which is killed and started again. */
export class Program {
  #child: ChildProcess | null = null;
  #said = '';
  address = '';

  readonly folder: string;

  constructor(folder: string) {
    this.folder = folder;
  }

  /** Starts it and waits until it answers; says how many milliseconds that took. */
  async start(): Promise<number> {
    const began = performance.now();
    const { DATABASE_URL: _, ...env } = process.env;
    const child = spawn(process.execPath, ['--enable-source-maps', built, 'serve'], {
      env: { ...env, FETTLE_DATA: this.folder, PORT: '0' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.#child = child;
    this.#said = '';
    this.address = '';
    const hear = (chunk: Buffer) => {
      this.#said = (this.#said + chunk).slice(-4000);
      this.address ||= /serves (http:\/\/127\.0\.0\.1:\d+)/.exec(this.#said)?.[1] ?? '';
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    while (!this.address) {
      if (child.exitCode !== null)
        throw new Error(`It ended with ${child.exitCode}. It said:\n${this.#said}`);
      await sleep(10);
    }
    await this.healthy();
    return performance.now() - began;
  }

  /** Waits until page and database answer; says how many milliseconds that took. */
  async healthy(): Promise<number> {
    const began = performance.now();
    for (;;) {
      const answer = await fetch(`${this.address}/api/health`).catch(() => null);
      if (answer?.ok) return performance.now() - began;
      if (performance.now() - began > 60_000) throw new Error(`It does not answer. It said:\n${this.#said}`);
      await sleep(20);
    }
  }

  get running(): boolean {
    return this.#child !== null && this.#child.exitCode === null && this.#child.signalCode === null;
  }

  async killApplication(): Promise<void> {
    const ended = once(this.#child!, 'exit');
    this.#child!.kill('SIGKILL');
    await ended;
  }

  killDatabase(): void {
    const pointer = join(this.folder, 'postgres-is-at');
    const data = existsSync(pointer) ? readFileSync(pointer, 'utf8').trim() : join(this.folder, 'postgres');
    const postgres = runningPostmaster(data);
    if (postgres) process.kill(postgres.pid, 'SIGKILL');
  }

  /** Closes it in order; the exit code. */
  async stop(): Promise<number | null> {
    const ended = once(this.#child!, 'exit');
    this.#child!.kill('SIGTERM');
    await ended;
    return this.#child!.exitCode;
  }
}
