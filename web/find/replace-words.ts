/** What of a query a field came from; both null where a standard gave it. */
interface Where {
  start: number | null;
  end: number | null;
}

/**
 * The query with one field's characters replaced by others, or, for '', taken out with the sign that joined them: out of
 * `5x11x4`, without the 11, comes `5x4`. A field that no characters gave is added at the end.
 */
export function replaceWords(query: string, { start, end }: Where, words: string): string {
  if (start === null || end === null) return `${query} ${words}`.trim();
  let before = query.slice(0, start);
  let after = query.slice(end);
  if (words === '') {
    const joined = /\s*[x×*/]\s*$/i;
    if (joined.test(before)) before = before.replace(joined, '');
    else after = after.replace(/^\s*[x×*/]\s*/i, '');
  }
  return `${before}${words}${after}`.replace(/\s+/g, ' ').trim();
}
