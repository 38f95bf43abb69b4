import type { Command } from './usage.ts';

/** Every command by its name; each loads its own code when it runs, so that `read` starts without a database driver. */
export const commands: Record<string, Command> = {
  serve: {
    summary:
      'Serves the page and the API on 127.0.0.1 (PORT, default 4180) from the data folder (FETTLE_DATA, default ./data), or for people who sign in from a PostgreSQL (DATABASE_URL).',
    arguments: [],
    options: {},
    async run() {
      const { serveFolder } = await import('./serve.ts');
      return serveFolder(process.env);
    },
  },
  ready: {
    summary: 'Says whether the program that serves on this machine (PORT) can do its work.',
    arguments: [],
    options: {},
    async run() {
      const { askReady } = await import('./ready.ts');
      return askReady();
    },
  },
  read: {
    summary:
      'Reads part-list lines from standard input: plain lines, or JSON lines with id, text, context and lang.',
    arguments: [],
    options: {},
    async run() {
      const { readLines } = await import('./read.ts');
      return readLines(process.stdin, process.stdout, process.stderr);
    },
  },
  measure: {
    summary:
      'Names parts from measurements: JSON lines with category, measurements and, if wanted, id, attrs, known.',
    arguments: [],
    options: {},
    async run() {
      const { measureLines } = await import('./measure.ts');
      return measureLines(process.stdin, process.stdout, process.stderr);
    },
  },
  fit: {
    summary: 'Says which bearings sit on measured seats: JSON lines with shaft, housing or both, and width.',
    arguments: [],
    options: {},
    async run() {
      const { fitLines } = await import('./fit.ts');
      return fitLines(process.stdin, process.stdout, process.stderr);
    },
  },
  rows: {
    summary:
      'Prints the rows, relations and faults of one document as JSON; of the pages named, where it has many.',
    arguments: ['file'],
    synopsis: '[--pages FROM-TO]',
    options: { pages: { type: 'string' } },
    async run([file], { pages }) {
      const { printRows } = await import('./rows.ts');
      return printRows(file!, process.stdout, process.stderr, pages);
    },
  },
  import: {
    summary: 'Takes one document in as a diagram of a model and waits until it is read.',
    arguments: ['file'],
    synopsis: '--maker NAME --model NAME [--duty DUTY] [--bench NAME]',
    options: {
      maker: { type: 'string' },
      model: { type: 'string' },
      duty: { type: 'string' },
      bench: { type: 'string' },
    },
    async run([file], options) {
      const { importFile } = await import('./import.ts');
      return importFile(file!, options);
    },
  },
  'person add': {
    summary:
      'Makes somebody an owner of a bench, old or new; the password is asked for, or read from the input.',
    arguments: ['sign-in'],
    synopsis: '--bench NAME',
    options: { bench: { type: 'string' } },
    async run([signIn], { bench }) {
      const { addOwner } = await import('./person.ts');
      return addOwner(signIn!, bench);
    },
  },
  'person link': {
    summary: 'Prints a link by which somebody sets a new password, once, within a day.',
    arguments: ['sign-in'],
    options: {},
    async run([signIn]) {
      const { linkFor } = await import('./person.ts');
      return linkFor(signIn!);
    },
  },
  'person erase': {
    summary: 'Takes somebody’s name out of everything and ends their sign-in; what they did stays.',
    arguments: ['sign-in'],
    options: {},
    async run([signIn]) {
      const { erase } = await import('./person.ts');
      return erase(signIn!);
    },
  },
  backup: {
    summary: 'Writes everything the benches remember into one file, or one bench’s work, while serving, too.',
    arguments: ['file'],
    synopsis: '[--bench NAME]',
    options: { bench: { type: 'string' } },
    async run([file], { bench }) {
      const { backupTo } = await import('./backup.ts');
      return backupTo(file!, bench);
    },
  },
  restore: {
    summary:
      'Puts a backup back: into an empty database, compared, then swapped in; a backup of one bench is added to those there are.',
    arguments: ['file'],
    synopsis: '[--owner SIGN-IN]',
    options: { owner: { type: 'string' } },
    async run([file], { owner }) {
      const { restoreFrom } = await import('./restore.ts');
      return restoreFrom(file!, owner);
    },
  },
};
