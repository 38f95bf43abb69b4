import { randomUUID } from 'node:crypto';
import { Refusal } from '../refusal.ts';
import { announced } from '../work/announce.ts';
import { configurationOf } from './configuration.ts';

export interface Bench {
  id: string;
  name: string;
}

/** Asks the service as the page does; refusals come back as refusals. A bench of null names none. */
export interface Client {
  // biome-ignore lint/suspicious/noExplicitAny: answers are checked where they are made, and picked apart here at once
  get(bench: Bench | null, path: string): Promise<any>;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  post(bench: Bench | null, path: string, body: FormData): Promise<any>;
}

/** Runs `work` against the program that serves the data folder; where none does, one is started for as long. */
export async function withService<T>(
  env: NodeJS.ProcessEnv,
  work: (client: Client) => Promise<T>,
): Promise<T> {
  const { folder, databaseUrl } = configurationOf(env);
  // Over a server's database people sign in; whoever may name the database may go in without.
  const running = databaseUrl ? null : await announced(folder);
  if (running) return work(clientAt(running.address));
  const { serve } = await import('../main.ts');
  const { seedDemo } = await import('../demo/seed.ts');
  const server = await serve({
    folder,
    databaseUrl,
    port: 0,
    say: line => process.stderr.write(`${line}\n`),
    ...(!databaseUrl && { prepare: seedDemo }),
  });
  try {
    return await work(clientAt(server.address));
  } finally {
    await server.stop();
  }
}

function clientAt(address: string): Client {
  const ask = async (bench: Bench | null, path: string, init: RequestInit) => {
    const headers = { ...(bench && { Workshop: bench.id }), ...(init.headers as Record<string, string>) };
    const response = await fetch(address + path, { ...init, headers });
    const answer = await response.json();
    if (response.ok) return answer;
    throw new Refusal(answer.code, { place: answer.place, message: answer.detail, remedy: answer.remedy });
  };
  return {
    get: (bench, path) => ask(bench, path, {}),
    post: (bench, path, body) =>
      ask(bench, path, {
        method: 'POST',
        body,
        headers: { 'Idempotency-Key': randomUUID(), Origin: address },
      }),
  };
}
