/**
 * How well lines are read: `npm run eval [FILE.jsonl …]`. Scores by style and language, confusions, the picture of the
 * calibration, and the lines that fail, over the labelled lines in `lines/` or the files named.
 * `npm run eval -- measure [PARTS]` scores naming parts from measurements instead, `-- documents [PDFS]` reading printed
 * lists and drawings, `-- tables [LISTS]` tables of every layout and format.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Reading, read } from '../../indexer/index.ts';
import { calibrationPicture } from './calibration.ts';
import { type LabelledLine, type Score, score } from './score.ts';

interface Scored {
  line: LabelledLine;
  reading: Reading;
  score: Score;
}

const percent = (part: number, whole: number) =>
  whole === 0 ? '    –' : `${((100 * part) / whole).toFixed(1).padStart(5)}`;
const count = <T>(list: readonly T[], is: (one: T) => boolean) => list.filter(is).length;

function groupBy<T, K>(list: readonly T[], key: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

function files(): string[] {
  const named = process.argv.slice(2);
  if (named.length > 0) return named;
  const folder = fileURLToPath(new URL('./lines', import.meta.url));
  return readdirSync(folder)
    .filter(name => name.endsWith('.jsonl'))
    .sort()
    .map(name => join(folder, name));
}

function scored(): Scored[] {
  return files().flatMap(file =>
    readFileSync(file, 'utf8')
      .split('\n')
      .filter(Boolean)
      .map(text => {
        const line = JSON.parse(text) as LabelledLine;
        // The language is mostly not known where lines are read, so it is not told here either.
        const reading = read(line.text, { context: line.context });
        return { line, reading, score: score(line, reading) };
      }),
  );
}

const sum = (all: readonly Scored[], of: (score: Score) => number) =>
  all.reduce((total, s) => total + of(s.score), 0);

function summary(name: string, all: readonly Scored[]): string {
  const dims = all.filter(s => s.score.dims !== null);
  const qty = all.filter(s => s.score.qty !== null);
  return [
    name.padEnd(18),
    `n ${String(all.length).padStart(4)}`,
    `category ${percent(
      count(all, s => s.score.category),
      all.length,
    )}`,
    `dims ${percent(
      count(dims, s => s.score.dims === true),
      dims.length,
    )}`,
    `whole ${percent(
      count(all, s => s.score.whole),
      all.length,
    )}`,
    `attributes ${percent(
      sum(all, s => s.attrs.right),
      sum(all, s => s.attrs.asked),
    )}`,
    `quantity ${percent(
      count(qty, s => s.score.qty === true),
      qty.length,
    )}`,
  ].join('  ');
}

function by(key: 'style' | 'lang', all: readonly Scored[]): string[] {
  const groups = groupBy(all, s => s.line[key]);
  return [...groups].sort(([a], [b]) => a.localeCompare(b)).map(([name, some]) => summary(name, some));
}

function confusions(all: readonly Scored[]): string[] {
  const pairs = groupBy(
    all.filter(s => !s.score.category),
    s => `${s.line.expect.category} read as ${s.reading.category}`,
  );
  return [...pairs]
    .sort((a, b) => b[1].length - a[1].length)
    .map(([pair, some]) => `${some.length} × ${pair}`);
}

/** Lines that have a reading to be right or wrong. */
const judged = (all: readonly Scored[]) =>
  all
    .filter(s => !s.line.expect.review && s.line.expect.category !== 'unsure')
    .map(s => ({ certainty: s.reading.certainty, right: s.score.whole }));

function totals(all: readonly Scored[]): string[] {
  const review = all.filter(s => s.score.review !== null);
  const sure = all.filter(s => s.reading.certainty >= 0.95);
  const right = count(all, s => s.score.whole);
  return [
    summary('all', all),
    `doubtful lines put to a person ${percent(
      count(review, s => s.score.review === true),
      review.length,
    )}  lines read right and asked needlessly ${percent(
      count(all, s => s.score.askedNeedlessly),
      right,
    )}`,
    `given certainty 0.95 or more ${percent(sure.length, all.length)}  of those wrong ${percent(
      count(sure, s => !s.score.whole),
      sure.length,
    )}  values invented ${percent(
      sum(all, s => s.invented),
      sum(all, s => s.given),
    )}`,
  ];
}

function report(): void {
  const all = scored();
  const failing = all
    .filter(s => s.score.wrong.length > 0)
    .map(
      s =>
        `${s.line.id}  ${JSON.stringify(s.line.text)}  ${s.score.wrong.join('; ')}  (certainty ${s.reading.certainty})`,
    );
  const sections: [string, string[]][] = [
    ['By style', by('style', all)],
    ['By language', by('lang', all)],
    ['Confusions', confusions(all)],
    ['Calibration', calibrationPicture(judged(all))],
    ['Lines that fail', failing],
    ['Summary', totals(all)],
  ];
  for (const [title, lines] of sections) console.log(`\n${title}\n${lines.join('\n')}`);
}

if (process.argv[2] === 'documents')
  await (await import('./pdfs.ts')).evaluatePdfs(
    Number(process.argv[3] ?? 200),
    Number(process.argv[4] ?? 1000),
  );
else if (process.argv[2] === 'tables')
  (await import('./tables.ts')).evaluateTables(Number(process.argv[3] ?? 8), Number(process.argv[4] ?? 1000));
else if (process.argv[2] === 'measure')
  (await import('./measure.ts')).evaluate(Number(process.argv[3] ?? 300));
else report();
