/**
 * The text format of COPY, as the PostgreSQL manual writes it under "COPY, File Formats, Text Format": fields parted by
 * tabs, rows by newlines, NULL as \N, and backslash before what would be taken for one of these.
 */
export function copyLine(fields: readonly (string | null)[]): string {
  return `${fields.map(field => (field === null ? '\\N' : escapeField(field))).join('\t')}\n`;
}

const escapes: Record<string, string> = { '\\': '\\\\', '\n': '\\n', '\r': '\\r', '\t': '\\t' };

const escapeField = (field: string) => field.replace(/[\\\n\r\t]/g, character => escapes[character]!);

/**
 * Text that PostgreSQL can keep: it knows no NUL and no half of a surrogate pair, both of which a hostile document may
 * hold. Each becomes one U+FFFD, so that offsets into the text stay true.
 */
export const storableText = (text: string) => text.replace(/[\0\p{Surrogate}]/gu, '\uFFFD');

/** JSON that PostgreSQL can keep as jsonb: the same, within every string and key. */
export function storableJson(value: unknown): string {
  const json = JSON.stringify(value);
  // JSON writes both as escapes. Hardly any text has one, and looking through it is far quicker than cleaning it.
  return /\\u(0000|d[89a-f])/i.test(json) ? JSON.stringify(value, cleanJson) : json;
}

function cleanJson(_key: string, value: unknown): unknown {
  if (typeof value === 'string') return storableText(value);
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  if (Object.keys(value).every(key => storableText(key) === key)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [storableText(key), inner]));
}
