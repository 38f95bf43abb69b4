import { type DocumentRows, type GivenColumns, openDocument, type Row, Unreadable } from './intake/index.ts';
import { readInput } from './read-input.ts';

/**
 * One document: on standard input a line of JSON, {@link WorkerRequest}, then the document's bytes; on standard
 * output lines of JSON, {@link WorkerAnswer}: rows in batches with the progress, then the rest of the result, or one
 * refusal. No database, no network, no environment; whoever starts it watches its time and memory and ends it.
 */
export interface WorkerRequest {
  name: string;
  mediaType?: string | undefined;
  columns?: GivenColumns | undefined;
  /** First and last page to read, where not all. */
  pages?: { from: number; to: number } | undefined;
  /** Lines of its list, and pages read at once. */
  limits: { rows: number; pages?: number | undefined };
}

export type WorkerAnswer =
  | { page: { page: number; pages: number } }
  | { progress: { rowsDone: number; rowsTotal: number } }
  | { rows: Row[] }
  | { result: Omit<DocumentRows, 'rows'> }
  | { refusal: { code: string; place: string; message: string; remedy: string } };

/** Resident memory beyond which no further page is begun, in bytes: well below what the reader is ended for. */
const mostResident = 430 * 1024 * 1024;

function say(line: WorkerAnswer): void {
  process.stdout.write(`${JSON.stringify(line)}\n`);
}

/** Rows in one line of the answer. The whole list as one text, or all its readings at once, would fill the memory. */
const batch = 500;

async function answer({ name, columns, pages, limits }: WorkerRequest, bytes: Uint8Array): Promise<void> {
  try {
    const { rows, rowsTotal, ...result } = await openDocument(bytes, name, {
      columns,
      pages,
      mostRows: limits.rows,
      mostPages: limits.pages,
      onPage: (page, pages) => say({ page: { page, pages } }),
      mayGoOn: () => process.memoryUsage.rss() < mostResident,
    });
    let rowsDone = 0;
    let ready: Row[] = [];
    const hand = () => {
      say({ rows: ready });
      say({ progress: { rowsDone, rowsTotal } });
      ready = [];
    };
    say({ progress: { rowsDone, rowsTotal } });
    for (const row of rows()) {
      ready.push(row);
      if (row.reading) rowsDone += 1;
      if (ready.length === batch) hand();
    }
    hand();
    say({ result });
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    const { code, place, message, remedy } = error;
    say({ refusal: { code, place, message, remedy } });
  }
}

const { request, bytes } = await readInput<WorkerRequest>();
await answer(request, bytes);
