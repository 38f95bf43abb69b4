import type {
  Bench,
  Benches,
  DiagramAnswer,
  DiagramRow,
  DiagramRowsAnswer,
  Diagrams,
  DutyAnswer,
  DutyRequest,
  Found,
  Interchange,
  JobChange,
  JobPage,
  Jobs,
  Makers,
  ModelAnswer,
  Models,
  NeedAnswer,
  NeedChange,
  NewBench,
  NewCorrection,
  NewDiagramText,
  NewJob,
  NewNeed,
  OrderAnswer,
  PartAnswer,
  Paste,
  Pasted,
  SizeAnswer,
  Uploaded,
} from '../api/answers/index.ts';
import { Problem } from './problem.ts';
import { randomId } from './random.ts';

let shown: string | null = null;

/** Every request from now on names this bench. */
export function showBench(id: string | null): void {
  shown = id;
}

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/** Asks the service; what it refuses is thrown as a {@link Problem}. */
async function ask<T>(method: Method, path: string, body?: unknown): Promise<T> {
  const headers = new Headers({ Accept: 'application/json' });
  if (shown) headers.set('Workshop', shown);
  if (method === 'POST') headers.set('Idempotency-Key', randomId());
  const form = body instanceof FormData;
  if (body !== undefined && !form) headers.set('Content-Type', 'application/json');
  const response = await fetch(path, {
    method,
    headers,
    body: body === undefined ? null : form ? body : JSON.stringify(body),
  });
  if (!response.ok) throw await Problem.of(response);
  return (await response.json()) as T;
}

const at = encodeURIComponent;

/** What the page asks of the service, one line a question. */
export const api = {
  benches: () => ask<Benches>('GET', '/api/benches'),
  newBench: (body: NewBench) => ask<Bench>('POST', '/api/benches', body),
  openBench: (bench: string) => ask<Bench>('POST', `/api/benches/${bench}/open`),

  read: (body: Paste) => ask<Pasted>('POST', '/api/read', body),
  find: (q: string) => ask<Found>('GET', `/api/find?q=${at(q)}`),
  size: (size: string) => ask<SizeAnswer>('GET', `/api/sizes/${at(size)}`),
  part: (part: string) => ask<PartAnswer>('GET', `/api/parts/${part}`),
  interchange: (part: string) => ask<Interchange>('GET', `/api/parts/${part}/interchange`),

  makers: () => ask<Makers>('GET', '/api/makers'),
  models: () => ask<Models>('GET', '/api/models'),
  model: (model: string) => ask<ModelAnswer>('GET', `/api/models/${model}`),
  modelDuty: (model: string, body: DutyRequest) => ask<DutyAnswer>('PUT', `/api/models/${model}/duty`, body),
  partDuty: (part: string, body: DutyRequest) => ask<DutyAnswer>('PUT', `/api/parts/${part}/duty`, body),

  diagrams: () => ask<Diagrams>('GET', '/api/diagrams'),
  diagram: (diagram: string) => ask<DiagramAnswer>('GET', `/api/diagrams/${diagram}`),
  keepText: (body: NewDiagramText) => ask<Uploaded>('POST', '/api/diagrams/text', body),
  keepFile: (form: FormData) => ask<Uploaded>('POST', '/api/diagrams', form),
  rows: (diagram: string, offset: number) =>
    ask<DiagramRowsAnswer>('GET', `/api/diagrams/${diagram}/rows?first=doubtful&offset=${offset}&limit=200`),
  readAgain: (diagram: string) => ask<DiagramAnswer>('POST', `/api/diagrams/${diagram}/read-again`),
  correct: (diagram: string, row: string, body: NewCorrection) =>
    ask<DiagramRow>('POST', `/api/diagrams/${diagram}/rows/${row}/correction`, body),
  takeBack: (diagram: string, row: string) =>
    ask<DiagramRow>('DELETE', `/api/diagrams/${diagram}/rows/${row}/correction`),

  jobs: (state: 'open' | 'closed' | 'all') => ask<Jobs>('GET', `/api/jobs?state=${state}`),
  job: (job: string) => ask<JobPage>('GET', `/api/jobs/${job}`),
  newJob: (body: NewJob) => ask<JobPage>('POST', '/api/jobs', body),
  changeJob: (job: string, body: JobChange) => ask<JobPage>('PATCH', `/api/jobs/${job}`, body),
  addNeed: (job: string, body: NewNeed) => ask<NeedAnswer>('POST', `/api/jobs/${job}/needs`, body),
  changeNeed: (need: string, body: NeedChange) => ask<NeedAnswer>('PATCH', `/api/needs/${need}`, body),
  removeNeed: (need: string) => ask<NeedAnswer>('DELETE', `/api/needs/${need}`),

  order: (jobs: string[]) => ask<OrderAnswer>('GET', `/api/order?jobs=${jobs.join(',')}`),
};

/** The order as a file for a spreadsheet; fetched, since a plain link could not name the bench. */
export async function orderFile(jobs: string[]): Promise<Blob> {
  const response = await fetch(`/api/order.csv?jobs=${jobs.join(',')}`, {
    headers: shown ? { Workshop: shown } : {},
  });
  if (!response.ok) throw await Problem.of(response);
  return response.blob();
}

/** The stream that tells how far the reading of a diagram has come. */
export async function follow(diagram: string, signal: AbortSignal): Promise<ReadableStream<Uint8Array>> {
  const response = await fetch(`/api/diagrams/${diagram}/progress`, {
    headers: { Accept: 'text/event-stream', ...(shown ? { Workshop: shown } : {}) },
    signal,
  });
  if (!response.ok || !response.body) throw await Problem.of(response);
  return response.body;
}
