/**
 * What remarks say of how lines hang together, in seven languages; the words are common practice of printed lists.
 * Longer phrases stand before their beginnings.
 */
const any = (...phrases: string[]): string => `(?:${phrases.join('|')})`;

const refWord = String.raw`(?:(?:pos|positions?|items?|refs?|references?|key|keys|nos?|nrs?|n[°º]|parts?|teile?n?|rep|rep[èe]res?|rif|numeros?|nummers?)\b\.?(?:\s?(?:nos?|nrs?|n[°º])\b\.?)?\s*)?`;
const refToken = String.raw`\d{1,4}[A-Za-z]?`;
const through = String.raw`\s*(?:-|–|—|~|〜|～|\bto\b|\bthrough\b|\bthru\b|\bbis\b|\bau\b|à|\bal?\b|\btot\b|\bt\/m\b)\s*`;
const refRange = `${refToken}(?:${through}${refWord}${refToken})?`;
const and = String.raw`\s*(?:,|;|&|\+|、|\band\b|\bund\b|\bet\b|\be\b|\by\b|\ben\b)\s*(?:(?:and|und|et|y|en)\s+)?`;
const refList = `${refRange}(?:${and}${refWord}${refRange})*`;
export const rangePattern = new RegExp(`(${refToken})(?:${through}${refWord}(${refToken}))?`, 'giu');

const includeWords = any(
  String.raw`consists?\s+of`,
  String.raw`consisting\s+of`,
  'includ(?:es?|ing)',
  String.raw`incl\.?`,
  'compris(?:es?|ing)',
  'contain(?:s|ing)',
  String.raw`(?:made\s+up|composed)\s+of`,
  String.raw`(?:supplied|sold|comes?)\s+with`,
  String.raw`besteh(?:t|end)\s+aus`,
  'enthält',
  'enthaltend',
  'beinhaltet',
  'umfasst',
  String.raw`ink(?:l|lusive)\.?`,
  'einschl(?:ie(?:ß|ss)lich)?\\.?',
  'comprend',
  'comprenant',
  String.raw`compos[ée]e?s?\s+de(?:s)?`,
  'inclu(?:t|ant)',
  'contient',
  'comprende',
  String.raw`compost[oa]\s+d(?:a|al|i)`,
  'include',
  'incluye',
  String.raw`compuest[oa]\s+(?:de|por)`,
  String.raw`consta\s+de`,
  String.raw`bestaa(?:t|nde)\s+uit`,
  'omvat',
  'bevat',
  'inclusief',
  '構成[:：]?',
);
/** `Consists of 2-8`, `comprend 27-35`, `includes 12-18, 20`; a word after the list makes it a count, no list. */
export const includesPattern = new RegExp(
  `(?:(?<![\\p{L}])${includeWords}\\s*:?\\s*${refWord}(${refList})(?![\\p{L}\\d]|\\s*[x×*]|\\s+\\p{L}{3})|(${refList})\\s*(?:を含む|含む|から成る|で構成|を同梱))`,
  'giu',
);

/** Words that a successor's number follows; surely, and the ones that can mean something else. */
const succeededBy = any(
  String.raw`(?:replaced|superseded)\s+(?:by|with)`,
  String.raw`superseded?s?\s*[,;:]?\s*(?:use|now|to|see)`,
  String.raw`supersedes\s+to`,
  String.raw`(?:obsolete|discontinued|n\.?l\.?a\.?)\s*[,;:]\s*(?:use|order)`,
  String.raw`ersetzt\s+(?:durch|d\.)`,
  String.raw`ersatz\s+durch`,
  String.raw`remplac[ée]e?s?\s+par`,
  String.raw`sostituit[oaie]\s+(?:da|dal|con)`,
  String.raw`(?:sustituid|reemplazad)[oa]s?\s+por`,
  String.raw`vervangen\s+door`,
);
const mayBeSucceededBy = any(
  'use',
  'now',
  String.raw`order(?!\s+by)`,
  String.raw`chang(?:ed|es)\s+to`,
  'neu:?',
  'jetzt',
  'verwende[nt]?',
  'utiliser',
  'usare',
  'usar',
  'utilizar',
  'gebruik',
  '→',
  '⇒',
  '->',
  '=>',
  '代替[:：]?',
  '後継[:：]?',
  '新品番[:：]?',
  '統合先[:：]?',
);
const numberWord = String.raw`(?:(?:part|article|artikel|teile?|pi[èe]ce|codice|cod|c[óo]digo)?[ -]?(?:no|nr|number|n[°º]|nummer)?\b\.?:?\s*)`;
export const supersededPattern = new RegExp(
  `(?<![\\p{L}])(?:(?<sure>${succeededBy})|(?<weak>${mayBeSucceededBy}))\\s*${numberWord}(?<numbers>[A-Z0-9][^;,()]*)`,
  'iu',
);
export const supersededJapanese =
  /(?<numbers>[A-Z0-9][A-Z0-9 ./-]*[A-Z0-9])\s*(?:に|へ)\s*(?:変更|統合|置換|切替|移行)/iu;

const serialWord = any(
  String.raw`serial(?:\s*(?:nos?|numbers?|#))?\.?`,
  String.raw`ser\.?\s*(?:nos?|nr)\.?`,
  String.raw`s\s?\/\s?n\.?`,
  'sn',
  String.raw`serien-?\s?(?:nr|nummer)\.?`,
  String.raw`(?:masch(?:inen)?|fabr(?:ikations)?|fahrgestell|geräte)\.?-?\s?(?:nr|nummer)\.?`,
  String.raw`n[°ºo]\.?\s*de\s*s[ée]rie`,
  String.raw`num[ée]ro\s*(?:de\s*s[ée]rie)?`,
  String.raw`matr(?:icola|\.)`,
  String.raw`n\.?\s*(?:di\s*)?(?:serie|matr(?:icola|\.))`,
  String.raw`n[úu]mero(?:\s*de\s*serie)?`,
  'serienummers?',
  String.raw`n\.?[°º]\.?`,
  String.raw`nos?\.?`,
  String.raw`nr\.?`,
  String.raw`n\.`,
  '機番',
  '製造番号',
  'シリアル',
);
const serialNumber = String.raw`(?<NAME>[A-Z]{0,4}-?\d{2,}[A-Z0-9]*(?:-\d+)?)(?!\s?(?:mm|cm|in|nm|kg|g|%|°)\b|[.,]\d|\d)`;
const number = (name: string) => serialNumber.replace('NAME', name);
const upTo = any(
  String.raw`up\s+to(?:\s+and\s+including)?`,
  'until',
  'till?',
  'to',
  'thru',
  'through',
  String.raw`bis(?:\s+(?:einschl(?:ie(?:ß|ss)lich)?\.?|zur|zu))?`,
  String.raw`jusqu['’]?\s?(?:aux?|à)(?:\s+la)?`,
  String.raw`fino\s+a(?:l|lla)?`,
  'al(?:la)?',
  String.raw`sino\s+a(?:l|lla)?`,
  String.raw`hasta(?:\s+(?:el|la))?`,
  String.raw`tot(?:\s+en\s+met)?`,
  String.raw`t\/m`,
);
const startingAt = any(
  'from',
  'since',
  String.raw`as\s+of`,
  String.raw`(?:starting|beginning)\s+(?:with|at|from)`,
  'ab',
  'von',
  String.raw`[àa]\s+partir\s+d(?:u|e)(?:\s+la)?`,
  'depuis',
  'dès',
  'd[ue]',
  'da(?:l|lla)?',
  String.raw`desde(?:\s+(?:el|la))?`,
  String.raw`a\s+partir\s+de(?:l)?(?:\s+la)?`,
  'del',
  'vanaf',
);
const earlierThan = any(
  'before',
  String.raw`prior\s+to`,
  'vor',
  'avant(?:\\s+le)?',
  'prima\\s+del',
  'antes\\s+del?',
  'voor',
  'below',
);
const laterThan = any(
  'after',
  'above',
  'nach',
  'après(?:\\s+le)?',
  'dopo(?:\\s+il)?',
  'después\\s+del?',
  'na',
);
const andOn = any(
  String.raw`(?:and|&)\s*(?:up|on|later|above|after|subsequent|following)`,
  'onwards?',
  '(?:-|–)?up',
  String.raw`und\s+(?:höher|später|folgende)`,
  'ff\\.?',
  String.raw`et\s+(?:suivants?|plus)`,
  String.raw`e\s+(?:seguenti|successiv[ie])`,
  String.raw`y\s+(?:siguientes|posteriores)`,
  String.raw`en\s+(?:hoger|verder)`,
);
const b = '(?<![\\p{L}])';
/** Serial ranges, most telling first. Named groups: `from`, `to` inclusive, `before`, `after` exclusive. */
export const serialPatterns: RegExp[] = [
  `${b}(?:${startingAt}\\s*)?${serialWord}\\s*${number('from')}\\s*(?:-|–|~|〜|${upTo})\\s*(?:${serialWord}\\s*)?${number('to')}`,
  `${b}${startingAt}\\s*(?:${serialWord}\\s*)?${number('from')}\\s*(?:-|–|~|〜|${upTo})\\s*(?:${serialWord}\\s*)?${number('to')}`,
  `${b}${serialWord}\\s*${number('from')}\\s*${andOn}`,
  `${b}${upTo}\\s*${serialWord}\\s*${number('to')}`,
  `${b}${startingAt}\\s*${serialWord}\\s*${number('from')}`,
  `${b}${earlierThan}\\s*${serialWord}\\s*${number('before')}`,
  `${b}${laterThan}\\s*${serialWord}\\s*${number('after')}`,
  `${b}${upTo}\\s*(?=\\D{0,4}\\d{4})${number('to')}`,
  `${b}${startingAt}\\s*(?=\\D{0,4}\\d{4})${number('from')}`,
  `${number('to')}\\s*(?:号機)?\\s*(?:まで|以前)`,
  `${number('from')}\\s*(?:号機)?\\s*(?:から|より|以降)`,
].map(source => new RegExp(source, 'iu'));

/** Words that mean a serial number and nothing else; in a description only these are believed. */
export const strongSerial =
  /(?<![\p{L}])(?:serial|s\s?\/\s?n|serien-?\s?(?:nr|nummer)|n[°ºo.]?\s*de\s*s[ée]rie|matricola|serienummer)|機番|製造番号|号機/iu;

export const notSoldPattern = new RegExp(
  [
    String.raw`not\s+(?:sold|available|supplied|procurable|serviced|furnished|offered)(?:\s+(?:separately|individually|singly|alone))?`,
    String.raw`(?:available|sold|order)\s+(?:only\s+)?(?:as|in|with)\s+(?:an?\s+)?(?:complete\s+)?(?:assembly|assy|set|kit)(?:\s+only)?`,
    String.raw`nicht\s+einzeln(?:\s+(?:erhältlich|lieferbar|verkäuflich|verfügbar))?`,
    String.raw`nur\s+komplett(?:\s+(?:erhältlich|lieferbar))?`,
    String.raw`(?:ne\s+se\s+vend\s+pas|non\s+(?:vendue?s?|livrée?s?|disponibles?|fournie?s?))\s+(?:séparément|seule?s?|à\s+l'unité)`,
    String.raw`non\s+(?:vendut[oaie]|fornit[oaie]|fornibil[ei]|disponibil[ei])\s+(?:separatamente|singolarmente|sciolt[oaie])`,
    String.raw`no\s+(?:se\s+(?:vende|suministra)|disponibles?)\s+(?:por\s+separado|suelt[oa]s?)`,
    String.raw`niet\s+(?:los|apart|afzonderlijk)(?:\s+(?:verkrijgbaar|leverbaar|te\s+bestellen))?`,
    '単品(?:販売|供給|補給)?(?:不可|なし|無し)|単体(?:販売|供給)不可|個別販売なし|非売品',
  ].join('|'),
  'iu',
);
/** Letters for the same, each alone in its segment of the remarks. */
export const notSoldLetters = /^(?:N\.?S\.?S\.?|N\.?P\.?|n\.?\s?e\.?\s?l\.?|n\.?v\.?s\.?)$/i;
/** NS: not sold in one book, not shown in another. */
export const ambiguousLetters = /^N\.?\s?S\.?$/;
export const optionPattern =
  /(?<![\p{L}])(?:option(?:al|nel|nelle|eel|s)?|en\s+option|(?:sonder)?zubehör|wahlweise|auf\s+wunsch|opzional[ei]|a\s+richiesta|opcional(?:es)?|optie|accessor(?:y|ies)|accessoires?|accessori[oa]?|accesorios?|toebehoren)(?![\p{L}])|オプション|別売/iu;
export const asRequiredWords =
  /(?<![\p{L}])(?:as\s+re(?:quired|q'?d\.?)|as\s+needed|select(?:\s+(?:to\s+(?:fit|suit)|at\s+assembly|fit))?$|(?:je\s+)?nach\s+bedarf|bei\s+bedarf|selon\s+(?:les\s+)?besoins?|suivant\s+besoins?|au\s+besoin|quanto\s+basta|(?:secondo|a\s+seconda\s+del)\s+(?:necessit[àa]|bisogno)|al\s+bisogno|se\s+necessario|seg[úu]n\s+(?:se\s+requiera|necesidad|sea\s+necesario)|naar\s+behoefte|indien\s+nodig|zoveel\s+(?:als\s+)?nodig)(?![\p{L}])|適量|適宜|必要数|必要量|必要に応じて|選択使用/iu;
export const referenceOnlyWords =
  /(?<![\p{L}])(?:ref(?:erence)?\.?\s+only|for\s+reference|nur\s+(?:zur\s+)?(?:referenz|information)|pour\s+(?:référence|mémoire)|solo\s+(?:riferimento|referencia)|ter\s+referentie)(?![\p{L}])|参考(?:品|図)?/iu;
export const attachingWords =
  /attaching\s+(?:parts?|hardware)|mounting\s+(?:parts|hardware)|befestigungs(?:teile?|material)|pièces?\s+de\s+fixation|(?:pezzi|elementi|parti)\s+di\s+fissaggio|(?:piezas|elementos)\s+de\s+fijación|bevestigings(?:delen|materiaal|middelen)|取付(?:部品|け部品|用部品)/iu;

/** How remarks begin that say how lines hang together. */
const remarkStart = new RegExp(
  `^(?:${includeWords}|${succeededBy}|${mayBeSucceededBy}|(?:${upTo}|${startingAt}|${earlierThan}|${laterThan})\\s*${serialWord}|NSS|not|nicht|non|niet|no\\s+se|select|as\\s+required|nach\\s+bedarf|selon|naar\\s+behoefte|option|zubehör)(?![\\p{L}])`,
  'iu',
);
const starting = [
  notSoldPattern,
  optionPattern,
  asRequiredWords,
  referenceOnlyWords,
  strongSerial,
  supersededJapanese,
];

/** True for words that a remark of how lines hang together begins with. */
export const startsRemark = (text: string): boolean =>
  remarkStart.test(text) || starting.some(pattern => pattern.exec(text)?.index === 0);
