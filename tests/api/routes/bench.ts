import { randomUUID } from 'node:crypto';
import { expect } from 'vitest';
import type { Problem, Uploaded } from '../../../api/answers/index.ts';
import { createApp } from '../../../api/app.ts';
import { refuse } from '../../../api/refusal.ts';
import { postgresEngine } from '../../../api/search/postgres.ts';
import type { Service } from '../../../api/service.ts';
import { drawInChild } from '../../../api/work/draw-in-child.ts';
import { type ReadDocument, readWaiting } from '../../../api/work/read-waiting.ts';
import { readDocument, Unreadable } from '../../../indexer/intake/index.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

/** The reader in this process: what a child would answer, without starting one for each list. */
export const readHere: ReadDocument = async (bytes, { name, mediaType, columns }) => {
  try {
    return await readDocument(bytes, name, mediaType, { columns });
  } catch (error) {
    throw error instanceof Unreadable ? refuse(error.code, error) : error;
  }
};

interface Asked {
  method?: string;
  body?: unknown;
  headers?: Record<string, string>;
  /** Null leaves the header out; left out, a new one for each POST. */
  key?: string | null;
}

/** A service over a database of its own, asked in process. */
export async function openService(options: Partial<Service> = {}) {
  const store: TestStore = await createTestStore();
  const logged: Record<string, unknown>[] = [];
  const app = createApp({
    store,
    engine: postgresEngine,
    readDocument: readHere,
    drawPage: drawInChild,
    wake: () => {},
    log: entry => void logged.push(entry),
    ports: [],
    pageFolder: null,
    ...options,
  });

  async function ask(
    path: string,
    { method = 'GET', body, headers = {}, key }: Asked = {},
  ): Promise<Response> {
    const sent = new Headers(headers);
    if (method === 'POST' && key !== null) sent.set('Idempotency-Key', key ?? randomUUID());
    if (body !== undefined && !(body instanceof FormData)) sent.set('Content-Type', 'application/json');
    return app.request(path, {
      method,
      headers: sent,
      ...(body === undefined ? {} : { body: body instanceof FormData ? body : JSON.stringify(body) }),
    });
  }

  /** Reads every document that waits. */
  async function readAll(): Promise<void> {
    while (await readWaiting(store, options.readDocument ?? readHere));
  }

  return { app, store, logged, ask, readAll, close: () => store.close() };
}

export type TestService = Awaited<ReturnType<typeof openService>>;

/** A bench of its own in the service, with ways to ask it; `as` is what a browser sends that is signed in. */
export async function openBench(service: TestService, name = 'Quayside', as: Record<string, string> = {}) {
  const started = await service.ask('/api/benches', { method: 'POST', body: { name }, headers: as });
  const { id } = (await started.json()) as { id: string };
  return benchAs(service, id, as);
}

/** The same bench, asked as somebody else. */
export function benchAs(service: TestService, id: string, as: Record<string, string> = {}) {
  const ask = (path: string, asked: Asked = {}) =>
    service.ask(path, { ...asked, headers: { Workshop: id, ...as, ...asked.headers } });

  /** Asks, and expects the answer to be good. */
  async function good<Answer>(path: string, asked: Asked = {}): Promise<Answer> {
    const response = await ask(path, asked);
    const text = await response.text();
    expect(response.status, `${text} ${JSON.stringify(service.logged.at(-1))}`).toBeLessThan(300);
    return JSON.parse(text) as Answer;
  }

  /** Asks, and expects to be refused. */
  async function refused(path: string, asked: Asked = {}): Promise<Problem> {
    const response = await ask(path, asked);
    expect(response.headers.get('Content-Type')).toBe('application/problem+json');
    return (await response.json()) as Problem;
  }

  /** Takes a list in as CSV and reads it; answers the diagram's id. */
  async function take(maker: string, model: string, lines: string[], extra: object = {}): Promise<string> {
    const text = ['Ref,Part No,Description,Qty,Remarks', ...lines].join('\n');
    const { diagram } = await good<Uploaded>('/api/diagrams/text', {
      method: 'POST',
      body: { maker, model, text, name: `${model}.csv`, ...extra },
    });
    await service.readAll();
    return diagram.id;
  }

  return { id, ask, good, refused, take };
}

export type TestBench = ReturnType<typeof benchAs>;
