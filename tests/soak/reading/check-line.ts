import { categoryNames, parseSize, read, writeSize } from '../../../indexer/index.ts';

const known = new Set<string>([...categoryNames, 'not-a-part', 'unsure']);

/**
 * What must hold of the reading of any line: it is given, its category is one, its certainty a chance, its values numbers, its
 * spans lie in the text, a doubt is put to a person, and a size that is written is read back.
 * @throws with what does not
 */
export function checkLine(text: string): void {
  const reading = read(text);
  const { category, certainty, spans, dims, implied, size, item, review, notes } = reading;
  const must = (holds: boolean, what: string) => {
    if (!holds) throw new Error(`${JSON.stringify(text)}: ${what} in ${JSON.stringify(reading)}`);
  };
  must(known.has(category), 'an unknown category');
  must(certainty >= 0 && certainty <= 1, 'a certainty that is no chance');
  for (const { start, end } of spans)
    must(start >= 0 && start < end && end <= text.length, `a span from ${start} to ${end}`);
  for (const value of [...Object.values(dims), ...Object.values(implied)])
    must(typeof value === 'string' || Number.isFinite(value), 'a dimension that is no number');
  if (category !== 'not-a-part' && certainty < 0.7) must(review, 'a doubt that nobody is asked');
  if (review) must(notes.length > 0, 'a question without a reason');
  must((item === null) === (size === null), 'an item without a size');
  if (size !== null) {
    must(item!.startsWith(size), 'an item of another size');
    const parsed = parseSize(size);
    must(parsed !== null, 'a size that is not taken apart again');
    must(
      writeSize(parsed!.category, parsed!.dims, parsed!.implied) === size,
      'a size written otherwise again',
    );
    const again = read(size).size;
    // An inch thread's bare length so small is inches as a person writes it.
    const short = typeof dims['length'] === 'number' && dims['length'] < 1.5;
    must(again === size || short, `its size read back as ${again}`);
  }
}
