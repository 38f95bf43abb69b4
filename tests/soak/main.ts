// npm run soak [-- --rounds N]: kills application and database in the middle of work, 50 times unless said otherwise.
// npm run soak -- reading [--lines N]: a million random and mutated lines, then ten million printed ones with the memory they take.
import { execFileSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { soakReading } from './reading/soak.ts';
import { soak } from './soak.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { rounds: { type: 'string', default: '50' }, lines: { type: 'string', default: '10000000' } },
});
if (positionals[0] === 'reading') {
  const { grown } = await soakReading(Number(values.lines), line => console.log(line));
  process.exitCode = grown ? 1 : 0;
} else {
  execFileSync(process.execPath, ['build.mjs', '--if-stale', '--program'], { stdio: 'inherit' });
  const figures = await soak(Number(values.rounds), line => console.error(line));
  console.log(JSON.stringify(figures, null, 2));
  process.exitCode = figures.lost.length + figures.doubled.length === 0 ? 0 : 1;
}
