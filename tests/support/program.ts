import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const built = fileURLToPath(new URL('../../dist/fettle.js', import.meta.url));

/** The built program, serving a data folder of its own on a free port. */
export interface Program {
  /** `http://127.0.0.1:…` */
  origin: string;
  /** Its process. */
  pid: number;
  stop(): Promise<void>;
}

/** Somebody who owns a bench and signs in. */
export interface Owner {
  signIn: string;
  password: string;
  bench: string;
}

/**
 * Starts the program as a person does and waits for the address it prints; fails with all it said. With an owner,
 * people sign in.
 */
export async function startProgram(owner?: Owner): Promise<Program> {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-page-'));
  const { DATABASE_URL: _, MEILI_URL: __, ...outer } = process.env;
  const env = {
    ...outer,
    FETTLE_DATA: join(folder, 'data'),
    PORT: '0',
    FETTLE_ACCOUNTS: owner ? 'on' : 'off',
  };
  if (owner) {
    const { signIn, password, bench } = owner;
    const args = [built, 'person', 'add', signIn, '--bench', bench];
    execFileSync(process.execPath, args, { env, input: `${password}\n` });
  }
  const child = spawn(process.execPath, ['--enable-source-maps', built, 'serve'], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const stop = async () => {
    await end(child);
    await rm(folder, { recursive: true, force: true });
  };
  try {
    return { origin: await addressOf(child), pid: child.pid!, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(
      () => reject(new Error(`The program did not start in 60 s. It said:\n${said}`)),
      60_000,
    );
    const hear = (chunk: Buffer) => {
      said += chunk;
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
      if (!address) return;
      clearTimeout(late);
      resolve(address[0]);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.on('exit', code => {
      clearTimeout(late);
      reject(new Error(`The program ended with ${code} before it served. It said:\n${said}`));
    });
  });
}

/** Asks it to close in order, and waits until it has. */
async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const over = new Promise<void>(resolve => child.once('exit', () => resolve()));
  child.kill('SIGTERM');
  const late = setTimeout(() => child.kill('SIGKILL'), 15_000);
  await over;
  clearTimeout(late);
}
