/**
 * Blanks the mark-up of a list written as text: bullets, emphasis, headings, ticks, escapes, and where a link leads. What
 * a reader sees stays where it stands: every character keeps its offset.
 *
 * @param signed false where no sign of mark-up stands in the text, and only a bullet may
 */
export function blankMarkup(text: string, signed = true): string {
  const plain = signed && signs.test(text) ? blankSigns(text) : text;
  return bulleted.test(plain)
    ? plain.replace(bullet, found => ' '.repeat(found.length)).replace(inBrackets, asCount)
    : plain;
}

/** A quick look that spares most lines the rest. */
const signs = /[\\*`<&#~]|\]\(|:\/\/|[^\0-\u2602]/;

function blankSigns(text: string): string {
  let plain = text;
  if (plain.includes('\\'))
    plain = plain.replace(/\\\|/g, ` ${nothing}`).replace(/\\(?=[!-/:-@[-`{-~])/g, nothing);
  if (plain.includes('](')) plain = plain.replace(countedLink, '$1x').replace(link, blankLink);
  if (plain.includes('://')) plain = drop(plain, /<?\bhttps?:\/\/[^\s|<>")]{1,500}[>]?/gi);
  if (plain.includes('<'))
    plain = part(plain, /<\/?(?:br|b|i|u|em|strong|sub|sup|code|span|p|a)\b[^<>]{0,200}>/gi);
  if (plain.includes('&')) plain = part(plain, /&(?:nbsp|ensp|emsp|thinsp|#160);/gi);
  if (plain.includes('**') || plain.includes('~~') || plain.includes('`'))
    plain = drop(plain, /\*\*+|~~+|`+/g);
  if (plain.includes('*')) plain = plain.replace(stressed, blankStars);
  if (ticked.test(plain)) plain = drop(plain, ticks);
  return plain.includes('#') ? drop(plain, /^\s*#{1,6}(?=\s+\p{L})/gu) : plain;
}

/** Stands for no character, yet keeps the place of one. */
const nothing = '\u00ad';

const link = /!?\[([^[\]]{0,300})\]\(([^()\s]{0,500})\)/g;
/** A number before a link counts it: 2 [screw](screw.md). */
const countedLink = /^(\s*\d{1,3})\s(?=\[[^[\]]{0,300}\]\()/;
/** A link is read by its words; its target names a file or a page. */
const blankLink = (found: string, words: string) => {
  const at = found.indexOf('[') + 1;
  return `${nothing.repeat(at - 1)} ${words}${nothing.repeat(found.length - at - words.length)}`;
};

/** One star on each side of words: *not included*. A star beside figures is a times sign. */
const stressed = /(^|[\s|(])\*([^\s*|][^*|\n]{0,200})\*(?=[\s|).,;:]|$)/g;
const blankStars = (found: string, before: string, words: string) =>
  /\p{L}{3}/u.test(words) ? `${before}${nothing}${words}${nothing}` : found;

/** Ticks, boxes, stars and pictures, which say that a line is done or ordered. */
const ticks =
  /(?:[\u2605\u2606\u2610-\u2612\u2705\u2713\u2714\u274c\u274e\u2753-\u2755\u2b50]|[\u{1f300}-\u{1faff}])\ufe0f?/gu;
const ticked = new RegExp(ticks.source, 'u');

const bulleted = /^\s*[-*+•·–▪◦●○■►]\s|^\s*(?:\.\s){1,8}/;
const bullet = /^\s*(?:[-*+•·–▪◦●○■►]\s+(?:\[[ xX]?\]\s*)?|(?:\.\s){1,8})/;
/** Behind a bullet a number in brackets counts: - (4) flat washer. */
const inBrackets = /^(\s*)\((\d{1,3})\)(?=\s+\S)/;
const asCount = (_: string, before: string, count: string) => `${before} ${count}x`;

/** Takes away without a trace: a wide blank would part cells. */
const drop = (text: string, what: RegExp) => text.replace(what, found => nothing.repeat(found.length));
/** … or leaves one blank. */
const part = (text: string, what: RegExp) =>
  text.replace(what, found => ` ${nothing.repeat(found.length - 1)}`);
