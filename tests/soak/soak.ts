import { randomInt } from 'node:crypto';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Diagram } from './answers.ts';
import { Program } from './program.ts';
import { Work } from './work.ts';

export interface Figures {
  rounds: number;
  killed: { application: number; database: number };
  diagrams: number;
  rows: number;
  corrections: number;
  repeated: number;
  /** Milliseconds until all was served again: the longest and the middle one. */
  back: { longest: number; middle: number };
  /** What was acknowledged and is not there, and what is there twice: both must be empty. */
  lost: string[];
  doubled: string[];
}

/**
 * Kills the application, PostgreSQL, or both, once a round, in the middle of importing and correcting, starts again
 * without any help, and in the end compares what is there with what was acknowledged.
 */
export async function soak(rounds: number, say: (line: string) => void = () => {}): Promise<Figures> {
  const root = await mkdtemp(join(tmpdir(), 'fettle-soak-'));
  await chmod(root, 0o711);
  const program = new Program(join(root, 'data'));
  const killed = { application: 0, database: 0 };
  const back: number[] = [];
  try {
    await program.start();
    const work = new Work(program, await startBench(program));
    const working = Promise.all([work.importing(), work.importing(), work.correcting(), work.correcting()]);
    working.catch(() => {});
    while (work.done.corrections.size === 0) await Promise.race([sleep(50), working]);
    for (let round = 0; round < rounds; round++) {
      await Promise.race([sleep(randomInt(100, 2000)), working]);
      const database = round % 3 !== 0;
      const application = round % 3 !== 1;
      if (database) program.killDatabase();
      if (application) await program.killApplication();
      killed.database += Number(database);
      killed.application += Number(application);
      back.push(application ? await program.start() : await program.healthy());
      say(
        `round ${round + 1}: back after ${Math.round(back.at(-1)!)} ms, ${work.done.diagrams.size} lists, ${work.done.corrections.size} corrections`,
      );
    }
    work.ending = true;
    await working;
    const found = await compare(program, work, say);
    if ((await program.stop()) !== 0) throw new Error('It did not close in order.');
    back.sort((a, b) => a - b);
    return {
      rounds,
      killed,
      diagrams: work.done.diagrams.size,
      corrections: work.done.corrections.size,
      repeated: work.done.repeated,
      back: { longest: Math.round(back.at(-1) ?? 0), middle: Math.round(back[back.length >> 1] ?? 0) },
      ...found,
    };
  } finally {
    if (program.running) await program.stop();
    program.killDatabase();
    await rm(root, { recursive: true, force: true });
  }
}

async function startBench(program: Program): Promise<string> {
  const answer = await fetch(`${program.address}/api/benches`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'Idempotency-Key': crypto.randomUUID() },
    body: JSON.stringify({ name: 'Soak' }),
  });
  const said = (await answer.json()) as { id: string };
  if (!answer.ok) throw new Error(`No bench: ${JSON.stringify(said)}`);
  return said.id;
}

/** Every document once, every line of it once and in order, every correction standing. */
async function compare(program: Program, work: Work, say: (line: string) => void) {
  const lost: string[] = [];
  const doubled: string[] = [];
  let rows = 0;
  const answer = await fetch(`${program.address}/api/diagrams`, { headers: { Workshop: work.bench } });
  const { diagrams } = (await answer.json()) as { diagrams: Diagram[] };
  const names = diagrams.map(one => one.name);
  doubled.push(...names.filter((name, at) => names.indexOf(name) !== at));
  for (const [name, { id, lines }] of work.done.diagrams) {
    if (!diagrams.some(one => one.id === id)) {
      lost.push(name);
      continue;
    }
    const found = await whenRead(work, id, say);
    rows += found.length;
    const parts = found.map(row => row.partNumber);
    lost.push(...lines.filter(line => !parts.includes(line)).map(line => `${name} ${line}`));
    doubled.push(...parts.filter((part, at) => parts.indexOf(part) !== at).map(part => `${name} ${part}`));
    if (lost.length + doubled.length === 0 && parts.join() !== lines.join()) lost.push(`${name}: its order`);
    for (const row of found) {
      const said = work.done.corrections.get(`${id}/${row.partNumber}`);
      if (said !== undefined && row.correction?.qty !== said)
        lost.push(`correction of ${name} ${row.partNumber}`);
    }
  }
  return { rows, lost, doubled };
}

/** The rows of a document once it is read; one whose reader was killed is taken up when its lease has run out. */
async function whenRead(work: Work, id: string, say: (line: string) => void) {
  for (let tries = 0; ; tries++) {
    const rows = await work.readyRows(id);
    if (rows) return rows;
    if (tries > 6000) throw new Error(`The document ${id} is never read.`);
    if (tries % 300 === 299) say('waiting for documents to be read');
    await sleep(50);
  }
}
