import { availableParallelism, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import type { Measured } from './measured.ts';

/** Every benchmark by its name. Each measures itself and a named baseline in the same run, in turns. */
const benches: Record<string, () => Promise<Measured[]>> = {
  reading: async () => (await import('./reading.ts')).benchReading(),
  measure: async () => (await import('./measure.ts')).benchMeasure(),
  documents: async () => (await import('./documents.ts')).benchDocuments(),
  indexing: async () => (await import('./indexing.ts')).benchIndexing(),
  find: async () =>
    (await import('./find.ts')).benchFind({ lines: Number(values.lines), folder: values.folder }),
};

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    /** Of finding: how many lines the bench has, and where it is kept to be used again. */
    lines: { type: 'string', default: '1000000' },
    folder: { type: 'string' },
  },
});
const wanted = positionals.length > 0 ? positionals : Object.keys(benches);
for (const name of wanted) {
  const bench = benches[name];
  if (!bench) {
    console.error(`There is no benchmark "${name}"; there are: ${Object.keys(benches).join(', ')}.`);
    process.exit(2);
  }
  console.log(`\n${name}`);
  for (const { what, perSecond, unit, note } of await bench())
    console.log(
      `  ${what.padEnd(52)} ${Math.round(perSecond).toLocaleString('en').padStart(12)} ${unit}/s  ${note ?? ''}`,
    );
}
// What else the machine did meanwhile: figures taken beside other work are lower, and large ways suffer most.
console.log(
  `\nload ${loadavg()[0]!.toFixed(1)} on ${availableParallelism()} processors, Node ${process.version}`,
);
process.exit(0);
