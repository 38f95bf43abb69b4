const sampleLength = 262_144;
/** Kana, the common Chinese characters, their signs, letters of full width and kana of half width. */
const japanese = /[\u3000-\u30ff\u4e00-\u9fff\uff01-\uff9f]/g;
const japaneseWords = /[\u3000-\u30ff\u4e00-\u9fff\uff01-\uff9f]{2,}/g;
const kana = /[\u3041-\u30ff\uff66-\uff9f]/g;
/** Signs of JIS X 0208 that lists have beside Japanese words. */
const signs =
  /[\u00b0\u00b1\u00d7\u00f7\u2103\u2190-\u2193\u2212\u2460-\u2473\u25a0-\u25cf\u2605\u2606\u03a6\u03c6\u2300]/g;

/**
 * A sign alone beside Latin letters or digits, or a single kana of half width: so come accented letters of Europe, and
 * signs such as Ø and ±, out when they are decoded wrongly.
 */
const strewn =
  /(?<=[A-Za-z0-9])[\u3000-\u30ff\u4e00-\u9fff\uff01-\uff9f](?![\u3000-\uff9f])|(?<![\u3000-\uff9f])[\u3000-\u30ff\u4e00-\u9fff\uff01-\uff9f](?=[A-Za-z])|(?<![\u3000-\uff9f])[\uff61-\uff9f](?![\u3000-\uff9f])/g;

/**
 * True for text that is Japanese and was decoded rightly: hardly any other foreign sign, nothing broken, and most of its
 * signs stand together in words or alone in their cells, not strewn among Latin letters.
 */
export function looksJapanese(decoded: string): boolean {
  const text = decoded.slice(0, sampleLength);
  const foreign = count(text, /[^\x00-\x7f]/g) - count(text, signs);
  const own = count(text, japanese);
  if (own === 0 || own < 0.95 * foreign || count(text, /[\ufffd\ue000-\uf8ff]/g) > 0.01 * own) return false;
  const words = count(text, japaneseWords);
  return words > 2 * count(text, strewn) && (count(text, kana) > 0 || own >= 6);
}

function count(text: string, pattern: RegExp): number {
  return text.match(pattern)?.length ?? 0;
}
