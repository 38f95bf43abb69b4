import { handWords } from './sides.ts';

/** Sizes and standards as lists print them. */
const size =
  /\d\s?[x×*]\s?[.\d]|(?<![\p{L}\d])M\d|[Øø⌀]\s?\d|\d\s?(?:mm|in\.|")(?![\p{L}])|\d\/\d+\s?(?:"|in\b)|\b(?:DIN|ISO|JIS|AS568)\b/iu;
/** True for words that hold a part's size: no heading does. */
export const hasSize = (text: string): boolean => size.test(text);

/** Facts of the part itself: hand, size, standard, material, seals. Such a remark is read with the description. */
const facts = [
  size,
  /(?<![\p{L}])(?:stainless|s\.?s\.?t\.?|brass|bronze|copper|alumin(?:i)?um|titanium|nylon|p\.?o\.?m\.?|ptfe|nitrile|nbr|viton|fkm|silicone|felt|fibre|carbon|ceramic|leather|steel|rubber|edelstahl|rostfrei|messing|kupfer|titan|filz|leder|gummi|keramik|stahl|inox|laiton|cuivre|feutre|cuir|caoutchouc|acier|ottone|rame|feltro|cuoio|acciaio|gomma|latón|cobre|fieltro|cuero|acero|goma|messing|rvs|koper|vilt|leer|staal|rubber|A2|A4)(?![\p{L}])|ステンレス|真鍮|黄銅|樹脂|フェルト|ゴム/iu,
  /(?<![\p{L}\d])(?:2?RS1?|2RSH?|ZZ|2Z|shielded|sealed|open\s+type|abgedichtet|étanche|schermato|afgedicht)(?![\p{L}])/iu,
];
export const isFactOfPart = (remark: string): boolean =>
  remark.search(handWords) >= 0 || facts.some(pattern => pattern.test(remark));
