// npm run soak [-- --rounds N]: kills application and database in the middle of work, 50 times unless said otherwise.
import { execFileSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { soak } from './soak.ts';

const { values } = parseArgs({ options: { rounds: { type: 'string', default: '50' } } });
execFileSync(process.execPath, ['build.mjs', '--if-stale', '--program'], { stdio: 'inherit' });
const figures = await soak(Number(values.rounds), line => console.error(line));
console.log(JSON.stringify(figures, null, 2));
process.exitCode = figures.lost.length + figures.doubled.length === 0 ? 0 : 1;
