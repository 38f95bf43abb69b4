/** What a search engine knows of one part: enough to find it by, nothing to answer with. */
export interface SearchEntry {
  id: string;
  workshop: string;
  maker: string;
  /** As printed, and folded to letters and digits alone. */
  number: string | null;
  numberKey: string;
  name: string;
  /** Models whose lists name it. */
  models: string[];
  size: string | null;
}

/** A text as the words it is found by: letters and digits alone, small, as parts' own words are kept. */
export function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
