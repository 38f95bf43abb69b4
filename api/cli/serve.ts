import { Refusal } from '../refusal.ts';
import { configurationOf } from './configuration.ts';

/** Serves until told to stop (Ctrl-C or SIGTERM). Exit code 1 when it cannot start, with why and the remedy. */
export async function serveFolder(env: NodeJS.ProcessEnv): Promise<number> {
  try {
    const { pagePort, ...configuration } = configurationOf(env);
    const { serve } = await import('../main.ts');
    const { seedDemo } = await import('../demo/seed.ts');
    const server = await serve({
      ...configuration,
      alsoAt: pagePort === undefined ? [] : [pagePort],
      say: line => process.stdout.write(`${line}\n`),
      // Where people sign in, every bench is somebody's.
      ...(configuration.accounts === null && { prepare: seedDemo }),
    });
    return await server.stopped;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    process.stderr.write(`fettle: ${error.place}: ${error.message}\n${error.remedy}\n`);
    return 1;
  }
}
