import { refuse } from '../refusal.ts';
import { configurationOf } from './configuration.ts';
import { answering } from './keeping.ts';

/** `fettle ready`: asks the program that serves on this machine whether it can do its work. Exit code 1 when it cannot. */
export const askReady = (env: NodeJS.ProcessEnv = process.env): Promise<number> =>
  answering(async () => {
    const { port } = configurationOf(env);
    const address = `http://127.0.0.1:${port}/api/ready`;
    const response = await fetch(address, { signal: AbortSignal.timeout(4000) }).catch(() => null);
    if (response?.ok) return response.json();
    throw refuse('not-ready', {
      place: address,
      message: response ? `It is not ready: ${await response.text()}` : 'Nothing answers there.',
      remedy: 'Look at the log of the program.',
    });
  });
