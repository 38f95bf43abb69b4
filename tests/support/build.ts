import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Builds what the tests run as a program, where sources are newer: the program, and for browser tests the page too.
 * A build that fails leaves none behind, so the tests that start it fail, and the others still tell what they know.
 */
export default function setup(project: TestProject): void {
  const part = project.name === 'web' ? [] : ['--program'];
  try {
    execFileSync(process.execPath, ['build.mjs', '--if-stale', ...part], { cwd: root, stdio: 'pipe' });
  } catch (error) {
    rmSync(`${root}/dist`, { recursive: true, force: true });
    const said = String((error as { stderr?: Buffer }).stderr ?? error);
    console.error(
      `The build failed, so every test that starts the program will fail:\n${said.slice(0, 600)}`,
    );
  }
}
