import { type Evidenced, readWithEvidence } from '../read.ts';
import type { LineContext, Reading } from '../reading/reading.ts';
import { dittoEnd, fillFromAbove, withoutDitto } from './dittos.ts';

import type { Language } from './language.ts';
import { aloneContext, type ListedLine } from './listed-line.ts';

/** Reads the lines of one document in their order, each with what the document taught. */
export class ReadTaught {
  readonly #taught: LineContext;
  readonly #language: Language | null;
  /** The line before, as it was read, with its words and those that its own ditto marks stood for. */
  #above: { reading: Reading; words: string } | null = null;

  constructor(taught: LineContext, language: Language | null) {
    this.#taught = taught;
    this.#language = language;
  }

  read(line: ListedLine): Reading {
    const end = this.#above ? dittoEnd(line.text) : 0;
    const reading = end > 0 ? this.#readDitto(line, end) : noted(this.#readUnder(line), line);
    const words = end > 0 ? this.#above!.words : line.text;
    this.#above = { reading, words };
    return reading;
  }

  /** A line that begins with ditto marks has the name of the line above, and what that states besides. */
  #readDitto(line: ListedLine, end: number): Reading {
    const { reading: above, words } = this.#above!;
    const text = withoutDitto(line.text, end);
    const { reading } = this.#readTaught({ ...line, text, under: words });
    return fillFromAbove(reading, above, text.trim() === '');
  }

  /** Bare sizes have the name of the part that their indent makes them belong to, where nothing else names them. */
  #readUnder(line: ListedLine): Evidenced {
    const read = this.#readTaught(line);
    if (!line.parent || !read.features.has('nothing-known')) return read;
    const under = this.#readTaught({ ...line, under: line.parent });
    return under.features.has('noun-from-heading')
      ? {
          ...under,
          reading: {
            ...under.reading,
            notes: [...under.reading.notes, `named by “${line.parent}”, to which it belongs`],
          },
        }
      : read;
  }

  /** With what the document taught, unless that turns a published size into one that nobody makes. */
  #readTaught(line: ListedLine): Evidenced {
    const context = aloneContext(line, this.#language);
    const taught = readWithEvidence(line.text, { ...context, ...this.#taught });
    if (!taught.line || taught.line.taught.length === 0 || taught.features.has('listed')) return taught;
    const { abbreviations } = this.#taught;
    const alone = readWithEvidence(line.text, { ...context, abbreviations });
    return alone.features.has('listed') ? alone : taught;
  }
}

/** Says so where a heading names what the line alone does not. */
const noted = ({ reading, features }: Evidenced, { under }: ListedLine): Reading =>
  features.has('noun-from-heading') && !reading.notes.some(note => note.startsWith('named by'))
    ? { ...reading, notes: [...reading.notes, `named by the heading “${under}”`] }
    : reading;
