import { Agent, request } from 'node:http';
import { connect, type Server } from '../../api/db/server.ts';
import { askAtARate, type Latencies } from './open-loop.ts';

/** What one round asks: addresses of the service, or one statement with its parameters. */
export type Round = { name: string; rate: number } & (
  | { paths: string[] }
  | { statement: string; parameters: (string | string[])[][] }
);

export interface Asker {
  origin: string;
  workshop: string;
  server: Server;
}

/** Asks from a process of its own, so that the service has its thread to itself as it has where it is used. */
const { origin, workshop, server } = JSON.parse(process.argv[2]!) as Asker;
const agent = new Agent({ keepAlive: true, maxSockets: 64 });

function fetchWhole(path: string): Promise<void> {
  return new Promise((resolve, reject) => {
    request(`${origin}${path}`, { agent, headers: { Workshop: workshop } }, answer => {
      answer.resume();
      answer.on('end', () =>
        answer.statusCode === 200 ? resolve() : reject(new Error(`${path}: ${answer.statusCode}`)),
      );
      answer.on('error', reject);
    })
      .on('error', reject)
      .end();
  });
}

/** Connections of the keeper, past row-level security: the look-up and nothing else. */
const bare = connect(server, 'fettle_admin', {
  max: 10,
  connection: { role: 'fettle_keeper' } as Record<string, string>,
});
const statementOnce = async (statement: string, parameters: (string | string[])[]) => {
  await bare.unsafe(statement, parameters as string[], { prepare: true });
};

process.on('message', async (round: Round | 'end') => {
  if (round === 'end') {
    agent.destroy();
    await bare.end({ timeout: 5 });
    process.disconnect();
    return;
  }
  const ask =
    'paths' in round
      ? (nth: number) => fetchWhole(round.paths[nth]!)
      : (nth: number) => statementOnce(round.statement, round.parameters[nth]!);
  const count = 'paths' in round ? round.paths.length : round.parameters.length;
  // Connections are opened and caches warmed by a few that are not timed.
  for (let nth = 0; nth < Math.min(20, count); nth++) await ask(nth).catch(() => {});
  const latencies: Latencies = await askAtARate(ask, { rate: round.rate, count });
  process.send!({ name: round.name, ...latencies });
});
