// Builds the program (dist/*.js) and the page (dist/web) when their sources are newer than the build.
//   node build.mjs [--if-stale] [--program] [--dev]
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('.', import.meta.url));
const wants = flag => process.argv.includes(flag);

/** The newest change, in milliseconds, below the named files and folders. */
function newest(...names) {
  let latest = 0;
  const visit = path => {
    const stat = statSync(path);
    if (stat.isDirectory()) for (const name of readdirSync(path)) visit(join(path, name));
    else latest = Math.max(latest, stat.mtimeMs);
  };
  for (const name of names) if (existsSync(join(root, name))) visit(join(root, name));
  return latest;
}

/** True when `stamp` is missing or older than any of its sources. */
const stale = (stamp, ...sources) => !existsSync(stamp) || statSync(stamp).mtimeMs <= newest(...sources);

async function tool(name) {
  try {
    return await import(name);
  } catch {
    console.error(
      `Building needs ${name}, which is not installed: run "npm ci" (without --omit=dev) and try again.`,
    );
    process.exit(1);
  }
}

async function buildProgram() {
  const { build } = await tool('esbuild');
  await build({
    absWorkingDir: root,
    entryPoints: { fettle: 'api/cli/main.ts', worker: 'indexer/worker.ts', drawer: 'indexer/drawer.ts' },
    outdir: 'dist',
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    sourcemap: true,
    logLevel: 'warning',
  });
  writeFileSync(join(root, 'dist/.program'), '');
}

async function buildPage() {
  const { build } = await tool('vite');
  await build({ configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
  writeFileSync(join(root, 'dist/.page'), '');
}

const programStale = () =>
  stale(join(root, 'dist/.program'), 'api', 'indexer', 'migrations', 'build.mjs', 'package-lock.json');
const pageStale = () =>
  stale(join(root, 'dist/.page'), 'api', 'indexer', 'web', 'vite.config.ts', 'package-lock.json');

if (wants('--dev')) {
  // The page being developed is served by Vite on a port of its own, and must be allowed to write from there.
  const env = { ...process.env, FETTLE_PAGE_PORT: '4181' };
  const run = (command, ...args) => spawn(command, args, { cwd: root, env, stdio: 'inherit', shell: false });
  run('npx', 'tsx', 'watch', 'api/cli/main.ts', 'serve');
  run('npx', 'vite', '--config', 'vite.config.ts');
} else {
  if (!wants('--if-stale') && !wants('--program'))
    rmSync(join(root, 'dist'), { recursive: true, force: true });
  const always = !wants('--if-stale');
  if (always || programStale()) await buildProgram();
  if (!wants('--program') && (always || pageStale())) await buildPage();
}
