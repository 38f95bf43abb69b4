import { narrow } from './clean.ts';

/** Page numbers and standing lines of a page, seven languages (common practice). */
const pageWord =
  'page|pg\\.?|sheet|seite|blatt|feuille|pagina|página|pág\\.?|pag\\.?|blad|bladzijde|blz\\.?|folio|hoja|foglio|ページ|頁';
const of = '(?:\\s*(?:/|of|von|de|di|van|sur|の)\\s*\\d{1,4})?';
/** A line that is a page number and nothing else. */
const pageNumber = new RegExp(
  `^\\s*(?:(?:${pageWord})\\s*:?\\s*\\d{1,4}${of}|[-–—]\\s*\\d{1,4}\\s*[-–—]|\\d{1,4}\\s*(?:/|of|von|sur|di|van)\\s*\\d{1,4}|\\d{1,4}\\s*(?:ページ|頁))\\s*$`,
  'iu',
);
const endsInPage = new RegExp(`(?:^|[\\s-])(?:${pageWord})\\s*:?\\s*\\d{1,4}${of}\\s*$`, 'iu');
const footerWords =
  /^(?:continued\b|cont(?:'d|\.)|fortsetzung|suite\b|segue\b|continúa|continua\b|vervolg\b|©|copyright|all rights reserved|alle rechte|tous droits|printed in|subject to change|specifications subject|technische änderungen|änderungen vorbehalten|sous réserve|con riserva|wijzigingen|続く|次頁|issue\s+\S+$|rev(?:ision)?\.?\s+\S+$|date\s*:)/iu;
const totalWords =
  /^(?:grand\s+|sub-?\s?)?(?:total|totals|sum|summe|gesamt|gesamtsumme|gesamtzahl|zwischensumme|somme|totale|suma|totaal|合計|総計|小計|計)\b|^(?:合計|総計|小計)/iu;
const rule = /^[\s|:+*._=~–—-]*[-=_*–—~]{3,}[\s|:+*._=~–—-]*$/;
const notUsed =
  /^(?:not used|unused|vacant|spare number|deleted|nicht belegt|entfällt|unbesetzt|non utilisé|non usato|no usado|no utilizado|niet gebruikt|vervallen|欠番|[-–—.\s]*)$/i;

/** A rule drawn in signs, of Markdown and typewriters. */
export const isRule = (text: string): boolean => rule.test(text);
/** A page number alone, which no row is. */
export const isPageNumber = (text: string): boolean => pageNumber.test(text);
/** A standing line of a page; "Instruction sheet 1" reads like one, so a line with a number of its own is asked first. */
export const isFooter = (text: string): boolean => endsInPage.test(text) || footerWords.test(text.trim());
export const isTotal = (text: string): boolean => totalWords.test(text.trim());
/** Words of a reference number that has no part. */
export const isUnused = (text: string): boolean => notUsed.test(text.trim());

/** A sentence to the reader rather than a part's name. */
export function isNote(text: string): boolean {
  const words = text.trim().split(/\s+/);
  return (
    (words.length >= 6 && /[.!:]$/.test(text.trim())) ||
    /^(?:\*|※|note\b|nb\b|n\.b\.|hinweis\b|remarque\b|nota\b|opmerking\b|注)/i.test(text.trim())
  );
}

const openEnd =
  /(?:[-,;/&+x×(]|\b(?:with|for|and|of|to|the|at|from|or|incl|mit|für|und|von|aus|zu|avec|pour|et|de|du|des|à|con|per|e|di|da|para|y|met|voor|en|van))$/i;

/** True when a text goes on from the description before it, as far as the words tell. */
export function continues(before: string, text: string): boolean {
  const start = text.trim();
  if (openEnd.test(before.trim())) return true;
  if ((before.match(/\(/g)?.length ?? 0) > (before.match(/\)/g)?.length ?? 0)) return true;
  return /^(?:\p{Ll}|[(,;/x×*&]|[MØø⌀]?\d[\d.,]*\s*[x×*]|\d[\d.,]*(?:\s?(?:mm|cm|°)|$)|[MØø⌀]\s?\d)/u.test(
    start,
  );
}

/** A wrapped word loses its hyphen, other lines are joined by a blank. */
export function joinWrapped(before: string, text: string): string {
  const head = before.trimEnd();
  const tail = text.trim();
  if (!head || !tail) return head || tail;
  return /\p{Ll}-$/u.test(head) && /^\p{Ll}/u.test(tail) ? head.slice(0, -1) + tail : `${head} ${tail}`;
}

/** What an empty number cell is written as: a dash, or words that say that there is none. */
export function numberOrWords(cell: string): { number: string; words: string } {
  const text = cell.trim();
  if (/^[-–—.*]+$/.test(text)) return { number: '', words: '' };
  if (/[\d�]/.test(narrow(text)) || /^[A-Z]{4,}$/.test(text)) return { number: text, words: '' };
  return { number: '', words: text };
}
