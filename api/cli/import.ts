import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { duties } from '../../indexer/index.ts';
import { Refusal, refuse } from '../refusal.ts';
import { type Bench, type Client, withService } from './with-service.ts';

/**
 * Takes one document in as a diagram of a model, waits until it is read, and prints what became of it as JSON. Goes
 * through the running program where there is one; opens the data folder itself otherwise. Exit code 1 when refused.
 */
export async function importFile(file: string, options: Record<string, string | undefined>): Promise<number> {
  try {
    const answer = await withService(process.env, client => take(client, file, options));
    process.stdout.write(`${JSON.stringify(answer)}\n`);
    return answer.state === 'ready' ? 0 : 1;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    process.stderr.write(`fettle: ${error.place}: ${error.message}\n${error.remedy}\n`);
    return 1;
  }
}

async function take(
  client: Client,
  file: string,
  { maker, model, duty, bench }: Record<string, string | undefined>,
) {
  const form = new FormData();
  form.set('file', new File([await bytesOf(file)], basename(file)));
  form.set('maker', named(maker, '--maker'));
  form.set('model', named(model, '--model'));
  if (duty !== undefined) form.set('duty', dutyNamed(duty));
  const on = await benchNamed(client, bench);
  const { diagram, known } = await client.post(on, '/api/diagrams', form);
  const read = await untilRead(client, on, diagram.id);
  const { id, name, state, refusal, counts } = read;
  return {
    bench: on.name,
    diagram: id,
    name,
    maker: diagram.model.maker.name,
    model: diagram.model.name,
    known,
    state,
    refusal,
    ...counts,
  };
}

async function bytesOf(file: string): Promise<Buffer<ArrayBuffer>> {
  try {
    return Buffer.from(await readFile(file));
  } catch (error) {
    throw refuse('not-found', {
      place: file,
      message: `The file cannot be read (${(error as NodeJS.ErrnoException).code}).`,
      remedy: 'Check the path, and that you may read the file.',
    });
  }
}

function named(value: string | undefined, option: string): string {
  if (value?.trim()) return value;
  throw refuse('bad-request', {
    place: option,
    message: 'It is missing.',
    remedy: `Say whose list it is: ${option} "…".`,
  });
}

function dutyNamed(duty: string): string {
  if ((duties as readonly string[]).includes(duty)) return duty;
  throw refuse('bad-request', {
    place: '--duty',
    message: `There is no duty "${duty}".`,
    remedy: `Choose one of ${duties.join(', ')}.`,
  });
}

/** The bench of this name, or the one last opened. */
async function benchNamed(client: Client, name: string | undefined): Promise<Bench> {
  const { benches, current } = await client.get(null, '/api/benches');
  const found = (benches as Bench[]).find(bench =>
    name === undefined ? bench.id === current : bench.name === name,
  );
  if (found) return found;
  throw refuse('bench-not-found', {
    place: '--bench',
    message: name === undefined ? 'There is no bench yet.' : `There is no bench named "${name}".`,
    remedy: `Start one on the page, or choose one of: ${(benches as Bench[]).map(bench => bench.name).join(', ')}.`,
  });
}

async function untilRead(client: Client, bench: Bench, id: string) {
  for (;;) {
    const diagram = await client.get(bench, `/api/diagrams/${id}`);
    if (diagram.state === 'ready' || diagram.state === 'refused') return diagram;
    await new Promise(resolve => setTimeout(resolve, 100));
  }
}
