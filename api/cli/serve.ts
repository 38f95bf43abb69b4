import { Refusal } from '../refusal.ts';

/** Serves until told to stop (Ctrl-C or SIGTERM). Exit code 1 when it cannot start, with why and the remedy. */
export async function serveFolder(env: NodeJS.ProcessEnv): Promise<number> {
  const { serve } = await import('../main.ts');
  const { seedDemo } = await import('../demo/seed.ts');
  try {
    const server = await serve({
      folder: env.FETTLE_DATA ?? './data',
      databaseUrl: env.DATABASE_URL,
      port: portFrom(env.PORT),
      ...(env.FETTLE_PAGE_PORT && { alsoAt: [portFrom(env.FETTLE_PAGE_PORT)] }),
      say: line => process.stdout.write(`${line}\n`),
      prepare: seedDemo,
    });
    return await server.stopped;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    process.stderr.write(`fettle: ${error.place}: ${error.message}\n${error.remedy}\n`);
    return 1;
  }
}

function portFrom(text: string | undefined): number {
  const port = Number(text ?? 4180);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  throw new Refusal('bad-port', {
    place: 'PORT',
    message: `"${text}" is no port number.`,
    remedy: 'Set PORT to a whole number from 1 to 65535, or leave it out for 4180.',
  });
}
