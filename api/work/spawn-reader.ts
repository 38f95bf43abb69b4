import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { GivenColumns } from '../../indexer/intake/column-meanings.ts';
import type { DocumentRows, Row } from '../../indexer/intake/rows.ts';
import type { WorkerAnswer, WorkerRequest } from '../../indexer/worker.ts';
import { type Refusal, refuse } from '../refusal.ts';
import { residentBytes } from './resident.ts';

const mebibyte = 1024 * 1024;

/** What one document may cost. Beyond any of these its reader is killed and the document refused. */
export interface ReadLimits {
  /** Bytes of the document. */
  bytes: number;
  /** From start to answer, or for each page of a document that has pages, in milliseconds. */
  time: number;
  /** For all pages together, in milliseconds. */
  allPages: number;
  /** Resident memory of the reader, in bytes. */
  memory: number;
  /** Lines of the list. */
  rows: number;
  /** Bytes of the answer. */
  output: number;
}

export const usualLimits: ReadLimits = {
  bytes: 25 * mebibyte,
  time: 60_000,
  allPages: 600_000,
  memory: 512 * mebibyte,
  rows: 200_000,
  output: 256 * mebibyte,
};

export interface ReadInChildOptions {
  name: string;
  mediaType?: string | undefined;
  /** What a person says that its columns hold. */
  columns?: GivenColumns | undefined;
  onProgress?: (rowsDone: number, rowsTotal: number) => void;
  limits?: Partial<ReadLimits>;
  /** The built `indexer/worker.ts`; left out, the one beside the running program. */
  workerFile?: string;
  /** Ends the reading early: the child is killed and the signal's reason thrown. */
  signal?: AbortSignal;
}

/** How often the child's memory is looked at, in milliseconds: a grower takes far longer to fill a machine. */
const watchEvery = 50;
/** The JavaScript heap of the child, in MiB: below the resident limit, which buffers count towards too. */
const heapMebibytes = 320;

/**
 * Reads a document in a child process that has nothing: no environment, no shell, no folder, only the bytes on a pipe.
 * @throws {Refusal} `too-large`, `too-slow`, `too-much-memory`, `unreadable`, `unknown-kind` or `no-rows`, with place and remedy
 */
export async function readInChild(bytes: Uint8Array, options: ReadInChildOptions): Promise<DocumentRows> {
  const limits = { ...usualLimits, ...options.limits };
  if (bytes.byteLength > limits.bytes)
    throw refuse('too-large', {
      place: options.name,
      message: `The document has ${inMebibytes(bytes.byteLength)}, the most that is read is ${inMebibytes(limits.bytes)}.`,
      remedy: 'Split it, or send only the pages that hold the parts list.',
    });
  options.signal?.throwIfAborted();
  return new Promise((resolve, reject) => {
    const child = startReader(options.workerFile ?? besideProgram());
    const reader = new Reader(child, options, limits, resolve, reject);
    reader.send(bytes);
  });
}

/** The worker stands beside the built program; run from its source, in the build's folder. */
function besideProgram(): string {
  const here = import.meta.url;
  return fileURLToPath(new URL(here.endsWith('.ts') ? '../../dist/worker.js' : './worker.js', here));
}

function startReader(workerFile: string): ChildProcess {
  const heap = [`--max-old-space-size=${heapMebibytes}`, '--max-semi-space-size=8'];
  return spawn(process.execPath, [...heap, workerFile], {
    cwd: '/',
    env: {},
    shell: false,
    stdio: ['pipe', 'pipe', 'pipe'],
    windowsHide: true,
  });
}

/** One child on its way from bytes to an answer; whatever comes first, an answer, a limit or its end, settles it. */
class Reader {
  private readonly child: ChildProcess;
  private readonly options: ReadInChildOptions;
  private readonly limits: ReadLimits;
  private readonly resolve: (rows: DocumentRows) => void;
  private readonly reject: (reason: unknown) => void;
  private readonly timers: NodeJS.Timeout[] = [];
  private readonly rows: Row[] = [];
  private slow: NodeJS.Timeout;
  private partial: Buffer[] = [];
  private received = 0;
  private complaint = '';
  private settled = false;

  constructor(
    child: ChildProcess,
    options: ReadInChildOptions,
    limits: ReadLimits,
    resolve: (rows: DocumentRows) => void,
    reject: (reason: unknown) => void,
  ) {
    this.child = child;
    this.options = options;
    this.limits = limits;
    this.resolve = resolve;
    this.reject = reject;
    child.on('error', error => this.fail(error));
    child.on('close', (code, signal) => this.fail(this.died(code, signal)));
    child.stdout!.on('data', (chunk: Buffer) => this.receive(chunk));
    child.stderr!.on('data', (chunk: Buffer) => {
      if (this.complaint.length < 4000) this.complaint += chunk.toString('utf8');
    });
    options.signal?.addEventListener('abort', this.aborted, { once: true });
    this.slow = setTimeout(() => this.fail(this.tooSlow()), limits.time);
    this.timers.push(setTimeout(() => this.fail(this.tooSlow()), limits.allPages));
    this.timers.push(setInterval(() => void this.watchMemory(), watchEvery));
  }

  send(bytes: Uint8Array): void {
    const { name, mediaType, columns } = this.options;
    const request: WorkerRequest = { name, mediaType, columns, limits: { rows: this.limits.rows } };
    const input = this.child.stdin!;
    // A child that is killed or refuses early closes its end; its answer or its end says why.
    input.on('error', () => undefined);
    input.write(`${JSON.stringify(request)}\n`);
    input.end(bytes);
  }

  private receive(chunk: Buffer): void {
    this.received += chunk.length;
    if (this.received > this.limits.output) {
      this.fail(this.tooMuchOutput());
      return;
    }
    let start = 0;
    for (let end = chunk.indexOf(10); end >= 0; end = chunk.indexOf(10, start)) {
      this.partial.push(chunk.subarray(start, end));
      const line = Buffer.concat(this.partial);
      this.partial = [];
      start = end + 1;
      this.hear(JSON.parse(line.toString('utf8')) as WorkerAnswer);
    }
    if (start < chunk.length) this.partial.push(chunk.subarray(start));
  }

  private hear(answer: WorkerAnswer): void {
    if (this.settled) return;
    if ('rows' in answer) this.rows.push(...answer.rows);
    else if ('page' in answer) this.turnPage(answer.page);
    else if ('progress' in answer)
      this.options.onProgress?.(answer.progress.rowsDone, answer.progress.rowsTotal);
    else if ('refusal' in answer) this.fail(refuse(answer.refusal.code, this.placed(answer.refusal)));
    else {
      this.settle();
      this.resolve({ ...answer.result, rows: this.rows });
    }
  }

  /** A document with pages has the usual time for each of them. */
  private turnPage({ page, pages }: { page: number; pages: number }): void {
    clearTimeout(this.slow);
    this.slow = setTimeout(() => this.fail(this.tooSlow()), this.limits.time);
    this.options.onProgress?.(page - 1, pages);
  }

  private placed(facts: { place: string; message: string; remedy: string }) {
    return { ...facts, place: `${this.options.name}, ${facts.place}` };
  }

  private readonly aborted = () => this.fail(this.options.signal!.reason);

  private fail(reason: unknown): void {
    if (this.settled) return;
    this.settle();
    this.reject(reason);
  }

  private settle(): void {
    this.settled = true;
    clearTimeout(this.slow);
    for (const timer of this.timers) clearInterval(timer);
    this.options.signal?.removeEventListener('abort', this.aborted);
    this.child.kill('SIGKILL');
    this.partial = [];
  }

  private async watchMemory(): Promise<void> {
    const { pid } = this.child;
    if (this.settled || pid === undefined) return;
    const resident = await residentBytes(pid);
    if (resident !== null && resident > this.limits.memory) this.fail(this.tooMuchMemory());
  }

  private tooSlow(): Refusal {
    return refuse('too-slow', {
      place: this.options.name,
      message: `The document was not read within ${this.limits.time / 1000} seconds.`,
      remedy: 'Split it into smaller parts and send them one by one.',
    });
  }

  private tooMuchMemory(): Refusal {
    return refuse('too-much-memory', {
      place: this.options.name,
      message: `Reading the document took more than ${inMebibytes(this.limits.memory)} of memory.`,
      remedy: 'Split it into smaller parts and send them one by one.',
    });
  }

  private tooMuchOutput(): Refusal {
    return refuse('too-large', {
      place: this.options.name,
      message: `What was read from the document is more than ${inMebibytes(this.limits.output)}.`,
      remedy: 'Split it into smaller parts and send them one by one.',
    });
  }

  /** A child that ends without an answer: its heap was full, or it broke on this document. */
  private died(code: number | null, signal: NodeJS.Signals | null): Refusal {
    if (/heap out of memory|allocation failed/i.test(this.complaint) || signal === 'SIGABRT')
      return this.tooMuchMemory();
    return refuse(
      'unreadable',
      {
        place: this.options.name,
        message: 'The document could not be read: its reader stopped without an answer.',
        remedy: 'Copy the list and paste it as text, or save it again as CSV.',
      },
      new Error(`reader ended with ${signal ?? `code ${code}`}: ${this.complaint.trim()}`),
    );
  }
}

function inMebibytes(bytes: number): string {
  return `${Math.round((bytes / mebibyte) * 10) / 10} MiB`;
}
