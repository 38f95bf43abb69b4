/** A doubt of one's own behind the readings: `4.98 ±0.01`, `4,98 +- 0,01`. */
const ownDoubt = /\s*(?:±|\+\/?-)\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*(?:mm)?\s*$/i;

/** The doubt that is typed behind the readings, in millimetres; undefined where there is none. */
export function readDoubt(typed: string): number | undefined {
  const found = ownDoubt.exec(typed)?.[1];
  return found === undefined ? undefined : Number(found.replace(',', '.'));
}

/**
 * Lengths as a person types them or a calliper sends them, in millimetres: `4.98`, `4,98`, `3/16`, `1 1/8"`, `0.1875"`,
 * `0.196 in`. A fraction is of an inch. Several readings of one place stand behind one another: `4.93 5.00`, `4,93; 5,00`;
 * a doubt of one's own (`±0.01`) may follow them all. Empty for nothing typed; null for what is no length.
 */
export function readLengths(typed: string): number[] | null {
  const text = typed
    .replace(ownDoubt, '')
    .trim()
    .replace(/[”″]|''/g, '"');
  if (text === '') return [];
  const readings: number[] = [];
  let rest = text;
  while (rest !== '') {
    const found = oneLength.exec(rest);
    if (!found) return null;
    const length = lengthOf(found);
    if (length === null) return null;
    readings.push(length);
    rest = rest.slice(found[0].length);
  }
  return readings;
}

/** A whole number may stand before a fraction; between readings stand spaces, semicolons or a dash. */
const oneLength =
  /^(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+))\s*("|in\b|inch\b|mm\b)?(?:\s*[;–—]\s*|\s+to\s+|\s+|$)/i;

function lengthOf([, whole, top, bottom, decimal, unit]: RegExpExecArray): number | null {
  const inches = top !== undefined || (unit !== undefined && unit.toLowerCase() !== 'mm');
  const value =
    top === undefined
      ? Number(decimal!.replace(',', '.'))
      : Number(whole ?? 0) + Number(top) / Number(bottom);
  if (!(value > 0) || !Number.isFinite(value)) return null;
  return Math.round(value * (inches ? 25_400 : 1000)) / 1000;
}
