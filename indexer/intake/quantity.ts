import { narrow } from './clean.ts';

/** What a quantity cell says. */
export interface Quantity {
  /** Null where none is stated or it has to be worked out at assembly. */
  qty: number | null;
  /** "As required" in words or letters. */
  asRequired: boolean;
  /** "REF": the part is shown again and counted elsewhere. */
  referenceOnly: boolean;
  /** False when the cell holds something that is no quantity. */
  understood: boolean;
}

/** "As required", in the words and letters of printed lists (common practice), seven languages. */
const asRequiredPattern =
  /^(?:a\.?\s?\/?\s?r\.?|as\s+re(?:quired|q'?d?\.?)|as\s+need(?:ed|\.)?|if\s+(?:needed|required|necessary)|to\s+(?:fit|suit)|select(?:\s+(?:as\s+required|to\s+(?:fit|suit)|at\s+assembly|fit))?|n\.?\s?b\.?|nach\s+bed(?:arf|\.)|je\s+nach\s+bedarf|bei\s+bedarf|bedarf|s\.?\s?b\.?|selon\s+besoins?|suivant\s+besoins?|au\s+besoin|q\.?\s?b\.?|quanto\s+basta|(?:secondo|a\s+seconda\s+del|a)\s+(?:necessit[àa]|bisogno)|al\s+bisogno|se\s+necessario|a\.?\s?n\.?|seg[úu]n\s+(?:se\s+(?:requiera|necesite)|necesidad|sea\s+necesario)|s\.?\s?n\.?|lo\s+necesario|naar\s+behoefte|indien\s+nodig|zoals\s+nodig|zoveel\s+(?:als\s+)?nodig|適量|適宜|必要数|必要量|必要に応じて|現合|選択)$/i;

const referencePattern =
  /^(?:ref\.?|reference(?:\s+only)?|for\s+reference(?:\s+only)?|ref\.?\s+only|nur\s+(?:zur\s+)?(?:ref(?:erenz|\.)?|information)|siehe\s+pos\.?.*|pour\s+(?:r[ée]f[ée]rence|m[ée]moire)|per\s+riferimento|solo\s+riferimento|solo\s+referencia|ter\s+referentie|参照|参考)$/i;

const unit =
  'pcs?|pces?|prs?|units?|items?|nos|un|cad|stücke?|stuecke?|pieces?|ea|each|off|no|stk|st|stück|stck|pz|pezzi|uds?|unid|pièces?|stuks?|sets?|satz|jeu|kit|paar|pairs?|m|mm|ml|g|kg|個|本|枚|ヶ|ケ|コ|組|式|セット';
const number = new RegExp(`^[x×*]?\\s?(\\d{1,6}(?:[.,]\\d{1,3})?)\\s?(?:[x×*]|(?:${unit})\\.?)?$`, 'i');
const none = /^(?:[-–—.]+|none|nil|keine?|n\/?a|n\.a\.|なし|ー)?$/i;

/** Reads a quantity cell: `2`, `2 pcs`, `2x`, `x2`, `(2)`, `1,0`, `AR`, `s.b.`, `REF`, `-`; shape above. */
export function readQuantity(cell: string): Quantity {
  const text = narrow(cell)
    .trim()
    .replace(/^\((.*)\)$/, '$1')
    .trim();
  const said = { qty: null, asRequired: false, referenceOnly: false, understood: true };
  if (none.test(text)) return said;
  const counted = number.exec(text);
  if (counted) return { ...said, qty: Number(counted[1]!.replace(',', '.')) };
  if (asRequiredPattern.test(text)) return { ...said, asRequired: true };
  if (referencePattern.test(text)) return { ...said, referenceOnly: true };
  return { ...said, understood: false };
}
