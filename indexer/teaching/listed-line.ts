import type { LineContext } from '../reading/reading.ts';
import type { Language } from './language.ts';

/** One line of a list with what it stands under. */
export interface ListedLine {
  text: string;
  /** The heading above it, or the names of its columns; '' where it has neither. */
  under: string;
  /** The words of the part that an indent makes it belong to; '' where none does. */
  parent: string;
}

/** What is known of a line where its document teaches nothing. */
export const aloneContext = ({ under }: ListedLine, language: Language | null): LineContext => ({
  lang: language ?? undefined,
  context: under || undefined,
});
