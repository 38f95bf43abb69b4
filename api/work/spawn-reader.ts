import { pageTooMuch, restUnread } from '../../indexer/intake/pdf/tell.ts';
import type { DocumentRows, Row } from '../../indexer/intake/rows.ts';
import type { GivenColumns } from '../../indexer/reading/column-meanings.ts';
import type { WorkerAnswer, WorkerRequest } from '../../indexer/worker.ts';
import { type Refusal, type RefusalFacts, refuse } from '../refusal.ts';
import { besideProgram, ChildEnded, type ChildLimits, WatchedChild } from './watched-child.ts';

const mebibyte = 1024 * 1024;

/** What one document may cost. Beyond any of these its reader is killed and the document refused. */
export interface ReadLimits extends ChildLimits {
  /** Bytes of the document. */
  bytes: number;
  /** For all pages of a document that has pages, in milliseconds; `time` is for each of them then. */
  allPages: number;
  /** Lines of the list. */
  rows: number;
  /** Pages read at once; further ones are left, and told. */
  pages: number;
}

export const usualLimits: ReadLimits = {
  bytes: 25 * mebibyte,
  time: 60_000,
  allPages: 600_000,
  memory: 512 * mebibyte,
  rows: 200_000,
  pages: 500,
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
  /** First and last page to read of a document that has pages, counted from 1. */
  pages?: { from: number; to: number } | undefined;
  /** Ends the reading early: the child is killed and the signal's reason thrown. */
  signal?: AbortSignal;
}

/**
 * Reads a document in a child process that has nothing: no environment, no shell, no folder, only the bytes on a pipe.
 * @throws {Refusal} `too-large`, `too-slow`, `too-much-memory`, `unreadable`, `unknown-kind` or `no-rows`, with place and remedy
 */
export async function readInChild(bytes: Uint8Array, options: ReadInChildOptions): Promise<DocumentRows> {
  const { name } = options;
  const limits = { ...usualLimits, ...options.limits };
  if (bytes.byteLength > limits.bytes)
    throw refuse('too-large', {
      place: name,
      message: `The document has ${inMebibytes(bytes.byteLength)}, the most that is read is ${inMebibytes(limits.bytes)}.`,
      remedy: 'Split it, or send only the pages that hold the parts list.',
    });
  const reached: Reached = { page: 1, pages: 1 };
  try {
    return await readOnce(bytes, options, limits, reached);
  } catch (error) {
    if (!(error instanceof ChildEnded)) throw error;
    const refusal = refusalOf(error, name, limits);
    const from = options.pages?.from ?? 1;
    if (reached.page <= from) throw refusal;
    // The pages before the one that was too much are read again, by themselves, and kept.
    const before = { ...options, pages: { from, to: reached.page - 1 } };
    const read = await readOnce(bytes, before, limits, { page: 1, pages: 1 }).catch(() => {
      throw refusal;
    });
    const told = read.faults.filter(({ code }) => code !== 'pages-not-read');
    return {
      ...read,
      faults: [
        ...told,
        pageTooMuch(reached.page, refusal.message),
        ...(reached.page < reached.pages ? [restUnread(reached.page + 1, reached.pages)] : []),
      ],
    };
  }
}

/** The page that was being read, and how many there are. */
interface Reached {
  page: number;
  pages: number;
}

async function readOnce(
  bytes: Uint8Array,
  options: ReadInChildOptions,
  limits: ReadLimits,
  reached: Reached,
): Promise<DocumentRows> {
  const { name, mediaType, columns, pages, signal, workerFile = besideProgram('worker.js') } = options;
  const request: WorkerRequest = {
    name,
    mediaType,
    columns,
    pages,
    limits: { rows: limits.rows, pages: limits.pages },
  };
  const rows: Row[] = [];
  const child = new WatchedChild({ program: workerFile, request, bytes, limits, signal });
  const started = Date.now();
  for await (const line of linesOf(child.output())) {
    const answer = JSON.parse(line) as WorkerAnswer;
    if ('rows' in answer) rows.push(...answer.rows);
    else if ('page' in answer) {
      Object.assign(reached, answer.page);
      if (Date.now() - started > limits.allPages) throw new ChildEnded('time');
      child.restartClock();
      options.onProgress?.(answer.page.page - 1, answer.page.pages);
    } else if ('progress' in answer)
      options.onProgress?.(answer.progress.rowsDone, answer.progress.rowsTotal);
    else if ('refusal' in answer) throw refuse(answer.refusal.code, placedIn(name, answer.refusal));
    else return { ...answer.result, rows };
  }
  throw new ChildEnded('died', 'ended without an answer');
}

async function* linesOf(chunks: AsyncIterable<Buffer>): AsyncGenerator<string> {
  let partial: Buffer[] = [];
  for await (const chunk of chunks) {
    let start = 0;
    for (let end = chunk.indexOf(10); end >= 0; end = chunk.indexOf(10, start)) {
      partial.push(chunk.subarray(start, end));
      yield Buffer.concat(partial).toString('utf8');
      partial = [];
      start = end + 1;
    }
    if (start < chunk.length) partial.push(chunk.subarray(start));
  }
}

const placedIn = (name: string, facts: RefusalFacts): RefusalFacts => ({
  ...facts,
  place: `${name}, ${facts.place}`,
});

/** What is said of a document whose reader was ended, or broke on it. */
function refusalOf(ended: ChildEnded, place: string, limits: ReadLimits): Refusal {
  const remedy = 'Split it into smaller parts and send them one by one.';
  switch (ended.why) {
    case 'time':
      return refuse('too-slow', {
        place,
        message: `The document was not read within ${limits.time / 1000} seconds.`,
        remedy,
      });
    case 'memory':
      return refuse('too-much-memory', {
        place,
        message: `Reading the document took more than ${inMebibytes(limits.memory)} of memory.`,
        remedy,
      });
    case 'output':
      return refuse('too-large', {
        place,
        message: `What was read from the document is more than ${inMebibytes(limits.output)}.`,
        remedy,
      });
    case 'died':
      return refuse(
        'unreadable',
        {
          place,
          message: 'The document could not be read: its reader stopped without an answer.',
          remedy: 'Copy the list and paste it as text, or save it again as CSV.',
        },
        ended,
      );
  }
}

function inMebibytes(bytes: number): string {
  return `${Math.round((bytes / mebibyte) * 10) / 10} MiB`;
}
