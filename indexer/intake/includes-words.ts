import { any, begins } from './phrases.ts';

/** How lists of seven languages say which lines an assembly includes; common practice of printed lists. */
const refWord = String.raw`(?:(?:pos|positions?|items?|refs?|references?|key|keys|nos?|nrs?|n[°º]|parts?|teile?n?|rep|rep[èe]res?|rif|numeros?|nummers?)\b\.?(?:\s?(?:nos?|nrs?|n[°º])\b\.?)?\s*)?`;
const refToken = String.raw`\d{1,4}[A-Za-z]?`;
const through = String.raw`\s*(?:-|–|—|~|〜|～|から|\bto\b|\bthrough\b|\bthru\b|\bbis\b|\bau\b|à|\bal?\b|\btot\b|\bt\/m\b)\s*`;
const refRange = `${refToken}(?:${through}${refWord}${refToken})?`;
const and = String.raw`\s*(?:,|;|&|\+|、|\band\b|\bund\b|\bet\b|\be\b|\by\b|\ben\b)\s*(?:(?:and|und|et|y|en)\s+)?`;
const refList = `${refRange}(?:${and}${refWord}${refRange})*`;
export const rangePattern = new RegExp(`(${refToken})(?:${through}${refWord}(${refToken}))?`, 'giu');

const composed = any(
  'composed',
  String.raw`made\s+up`,
  'consisting',
  'formed',
  'assembly',
  'assy',
  'set',
  'kit',
);
const includeWords = any(
  String.raw`consists?\s+of`,
  String.raw`includ(?:es?|ing)`,
  String.raw`incl\.?`,
  'compris(?:es?|ing)',
  String.raw`contain(?:s|ing)(?:\s+only)?`,
  String.raw`${composed}\s+of`,
  String.raw`(?:supplied|sold|comes?|complete|furnished|together)\s+with`,
  String.raw`w/`,
  String.raw`besteh(?:t|end)\s+aus`,
  String.raw`(?:enth|beinh)[äa]lt(?:et|end)?(?:\s+die)?`,
  'umfasst',
  'umfassend',
  String.raw`ink(?:l|lusive)\.?`,
  String.raw`einschl(?:ie(?:ß|ss)lich)?\.?`,
  String.raw`komplett\s+mit`,
  String.raw`mit\s+(?=pos|teil|nr)`,
  String.raw`compr(?:end|enant)`,
  String.raw`compos[ée]e?s?\s+de(?:s)?`,
  String.raw`se\s+compose\s+de(?:s)?`,
  'inclu(?:t|ant|s)',
  'contient',
  'contenant',
  String.raw`(?:complet\s+)?avec\s+(?=rep|pos|n[°º])`,
  'comprende',
  String.raw`comprensiv[oa]\s+d(?:i|ei|elle)`,
  String.raw`compost[oa]\s+d(?:a|al|i)`,
  String.raw`(?:costituit|format)[oa]\s+d(?:a|ai|alle)`,
  String.raw`complet[oa]\s+(?:di|de|con)`,
  'include',
  'incluso',
  'contiene',
  String.raw`incluye(?:ndo)?`,
  String.raw`compuest[oa]\s+(?:de|por)`,
  String.raw`(?:formad|constituid|integrad)[oa]\s+(?:de|por)`,
  String.raw`consta\s+de`,
  String.raw`con\s+(?=pos|piezas?|\d+[A-Za-z]?\s+a\s+\d)`,
  String.raw`bestaa(?:t|nde)\s+uit`,
  'omvat',
  'omvattende',
  'bevat',
  'inclusief',
  String.raw`compleet\s+met`,
  '構成(?:部品)?[:：]?',
  '含む[:：]',
  '内訳[:：]?',
);
const includedJapanese =
  'を含む|を含みます|含む|から成る|からなる|で構成|を同梱|のセット|のアッセンブリー?|一式';
/** `Consists of 2-8`, `comprend 27-35`, `includes 12-18, 20`; a word after the list makes it a count, no list. */
export const includesPattern = new RegExp(
  `(?:${begins}${includeWords}\\s*:?\\s*${refWord}(${refList})(?![\\p{L}\\d]|\\s*[x×*]|\\s+\\p{L}{3})|(${refList})\\s*(?:${includedJapanese}))`,
  'giu',
);
/** `18〜21含む`, `20-23のセット` at the beginning of a text. */
export const includesJapanese = new RegExp(`^${refList}\\s*(?:${includedJapanese})`, 'iu');

/** How a remark that names what an assembly includes begins. */
export const includesBegin = `${includeWords}\\s*:?\\s*${refWord}(?=\\d)`;
