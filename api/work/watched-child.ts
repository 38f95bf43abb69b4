import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { residentBytes } from './resident.ts';

/** What a child may cost; beyond any of these it is killed. */
export interface ChildLimits {
  /** From start to end, or for each piece of its work, in milliseconds. */
  time: number;
  /** Resident memory, in bytes. */
  memory: number;
  /** Bytes of its output. */
  output: number;
}

/** A child that was killed for what it cost, or that broke by itself. */
export class ChildEnded extends Error {
  override readonly name = 'ChildEnded';
  readonly why: keyof ChildLimits | 'died';

  constructor(why: keyof ChildLimits | 'died', detail = `beyond its limit of ${why}`) {
    super(detail);
    this.why = why;
  }
}

interface Run {
  /** The built program. */
  program: string;
  /** A line of JSON that says what is asked, then the document's bytes. */
  request: unknown;
  bytes: Uint8Array;
  limits: ChildLimits;
  /** Ends it early: the child is killed and the signal's reason thrown. */
  signal?: AbortSignal | undefined;
}

/** How often the child's memory is looked at, in milliseconds: a grower takes far longer to fill a machine. */
const watchEvery = 50;
/** The JavaScript heap of the child, in MiB: below the resident limit, which buffers count towards too. */
const heapMebibytes = 320;

/**
 * A program of ours in a child process that has nothing: no environment, no shell, no folder, only the request on a
 * pipe.
 */
export class WatchedChild {
  private readonly run: Run;
  private readonly child: ChildProcess;
  private clock: NodeJS.Timeout | undefined;
  private reason: unknown;

  constructor(run: Run) {
    run.signal?.throwIfAborted();
    this.run = run;
    this.child = start(run.program);
  }

  /**
   * What it says, until it ends; a caller that stops listening ends it.
   * @throws {ChildEnded} when it costs too much, or ends in failure
   */
  async *output(): AsyncGenerator<Buffer> {
    const { child } = this;
    const { request, bytes, limits, signal } = this.run;
    const aborted = () => this.kill(signal!.reason);
    signal?.addEventListener('abort', aborted, { once: true });
    const watch = setInterval(() => void this.watchMemory(), watchEvery);
    const ended = endOf(child);
    try {
      this.restartClock();
      send(child, request, bytes);
      let received = 0;
      for await (const chunk of child.stdout! as AsyncIterable<Buffer>) {
        received += chunk.length;
        if (received > limits.output) this.kill(new ChildEnded('output'));
        if (this.reason) break;
        yield chunk;
      }
      const failure = await ended;
      if (this.reason ?? failure) throw this.reason ?? failure;
    } finally {
      clearTimeout(this.clock);
      clearInterval(watch);
      signal?.removeEventListener('abort', aborted);
      child.kill('SIGKILL');
    }
  }

  /** Gives it its time anew, for the next piece of its work. */
  restartClock(): void {
    clearTimeout(this.clock);
    this.clock = setTimeout(() => this.kill(new ChildEnded('time')), this.run.limits.time);
  }

  private kill(reason: unknown): void {
    this.reason ??= reason;
    this.child.kill('SIGKILL');
  }

  private async watchMemory(): Promise<void> {
    if (this.child.pid === undefined) return;
    const resident = await residentBytes(this.child.pid);
    if (resident !== null && resident > this.run.limits.memory) this.kill(new ChildEnded('memory'));
  }
}

/** A built program that stands beside this one; run from its source, in the build's folder. */
export function besideProgram(name: string): string {
  const here = import.meta.url;
  return fileURLToPath(new URL(here.endsWith('.ts') ? `../../dist/${name}` : `./${name}`, here));
}

function start(program: string): ChildProcess {
  const heap = [`--max-old-space-size=${heapMebibytes}`, '--max-semi-space-size=8'];
  return spawn(process.execPath, [...heap, program], {
    cwd: '/',
    env: {},
    shell: false,
    stdio: ['pipe', 'pipe', 'pipe'],
    windowsHide: true,
  });
}

function send(child: ChildProcess, request: unknown, bytes: Uint8Array): void {
  const input = child.stdin!;
  // A child that is killed or refuses early closes its end; its answer or its end says why.
  input.on('error', () => undefined);
  input.write(`${JSON.stringify(request)}\n`);
  input.end(bytes);
}

/** Why it failed once it has ended; null where it did not. A full heap counts as too much memory. */
function endOf(child: ChildProcess): Promise<ChildEnded | null> {
  let complaint = '';
  child.stderr!.on('data', (chunk: Buffer) => {
    if (complaint.length < 4000) complaint += chunk.toString('utf8');
  });
  return new Promise(resolve => {
    child.once('error', error => resolve(new ChildEnded('died', error.message)));
    child.once('close', (code, signal) => {
      if (code === 0) return resolve(null);
      if (/heap out of memory|allocation failed/i.test(complaint) || signal === 'SIGABRT')
        return resolve(new ChildEnded('memory'));
      resolve(new ChildEnded('died', `ended with ${signal ?? `code ${code}`}: ${complaint.trim()}`));
    });
  });
}
