import { once } from 'node:events';
import { readDocument, Unreadable } from './intake/index.ts';

/**
 * One document: on standard input a line of JSON, {@link WorkerRequest}, then the document's bytes; on standard
 * output lines of JSON, {@link WorkerAnswer}: progress, then one result or one refusal. No database, no network, no
 * environment; whoever starts it watches its time and memory and ends it.
 */
export interface WorkerRequest {
  name: string;
  mediaType?: string | undefined;
  limits: { rows: number };
}

export type WorkerAnswer =
  | { progress: { rowsDone: number; rowsTotal: number } }
  | { result: import('./intake/index.ts').DocumentRows }
  | { refusal: { code: string; place: string; message: string; remedy: string } };

const newline = 10;

async function readInput(): Promise<{ request: WorkerRequest; bytes: Uint8Array }> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  const input = Buffer.concat(chunks);
  const end = input.indexOf(newline);
  return {
    request: JSON.parse(input.toString('utf8', 0, end)) as WorkerRequest,
    bytes: input.subarray(end + 1),
  };
}

function say(answer: WorkerAnswer): boolean {
  return process.stdout.write(`${JSON.stringify(answer)}\n`);
}

function answerTo(request: WorkerRequest, bytes: Uint8Array): WorkerAnswer {
  try {
    const result = readDocument(bytes, request.name, request.mediaType, {
      mostRows: request.limits.rows,
      onProgress: (rowsDone, rowsTotal) => say({ progress: { rowsDone, rowsTotal } }),
    });
    return { result };
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    const { code, place, message, remedy } = error;
    return { refusal: { code, place, message, remedy } };
  }
}

const { request, bytes } = await readInput();
if (!say(answerTo(request, bytes))) await once(process.stdout, 'drain');
