import { any, begins } from './phrases.ts';

/** How lists of seven languages say for which serial numbers a line is; common practice of printed lists. */
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
  String.raw`serienr\.?`,
  String.raw`machine-?\s?(?:nr|nummer)\.?`,
  String.raw`numero\s*di\s*serie`,
  String.raw`n\s?\/\s?s\.?`,
  String.raw`(?<=(?:la|di|de la|van)\s)serie`,
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
  String.raw`(?:starting|beginning|effective)(?:\s+(?:with|at|from))?`,
  String.raw`used\s+(?:from|after)`,
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
const andBefore = any(
  String.raw`(?:and|&|or)\s*(?:below|earlier|before|prior|previous|lower|down)`,
  String.raw`und\s+(?:früher|davor|niedriger)`,
  String.raw`et\s+(?:avant|précédents?)`,
  String.raw`e\s+precedent[ie]`,
  String.raw`y\s+anteriores`,
  String.raw`en\s+(?:lager|eerder)`,
);
/** Serial ranges, most telling first. Named groups: `from`, `to` inclusive, `before`, `after` exclusive. */
export const serialPatterns: RegExp[] = [
  `${begins}(?:${startingAt}\\s*)?${serialWord}\\s*${number('from')}\\s*(?:-|–|~|〜|${upTo})\\s*(?:${serialWord}\\s*)?${number('to')}`,
  `${begins}${startingAt}\\s*(?:${serialWord}\\s*)?${number('from')}\\s*(?:-|–|~|〜|${upTo})\\s*(?:${serialWord}\\s*)?${number('to')}`,
  `${begins}${serialWord}\\s*${number('from')}\\s*${andOn}`,
  `${begins}${serialWord}\\s*${number('to')}\\s*${andBefore}`,
  `${begins}${serialWord}\\s*(?:≥|>=)\\s*${number('from')}`,
  `${begins}${serialWord}\\s*(?:≤|<=)\\s*${number('to')}`,
  `${begins}${serialWord}\\s*>\\s*${number('after')}`,
  `${begins}${serialWord}\\s*<\\s*${number('before')}`,
  `${begins}${upTo}\\s*${serialWord}\\s*${number('to')}`,
  `${begins}${startingAt}\\s*${serialWord}\\s*${number('from')}`,
  `${begins}${earlierThan}\\s*${serialWord}\\s*${number('before')}`,
  `${begins}${laterThan}\\s*${serialWord}\\s*${number('after')}`,
  `${begins}${upTo}\\s*(?=\\D{0,4}\\d{4})${number('to')}`,
  `${begins}${startingAt}\\s*(?=\\D{0,4}\\d{4})${number('from')}`,
  `${number('to')}\\s*(?:号機)?\\s*(?:まで|以前)`,
  `${number('from')}\\s*(?:号機)?\\s*(?:から|より|以降)`,
].map(source => new RegExp(source, 'iu'));

/** Words that mean a serial number and nothing else; in a description only these are believed. */
export const strongSerial =
  /(?<![\p{L}])(?:serial|s\s?\/\s?n|serien-?\s?(?:nr|nummer)|n[°ºo.]?\s*de\s*s[ée]rie|matricola|serienummer)|機番|製造番号|シリアル|号機/iu;

export const serialBegin = `${any(upTo, startingAt, earlierThan, laterThan)}\\s*${serialWord}`;
