import { any } from './phrases.ts';

/** How lists of seven languages say whether and how a line can be had; common practice of printed lists. */

const apartEn = any(
  'separately',
  'individually',
  'singly',
  'alone',
  'loose',
  String.raw`as\s+(?:a\s+)?(?:spare|single)(?:\s+parts?)?`,
);
const apartDe = any('einzeln', 'separat', 'getrennt', 'lose', String.raw`als\s+(?:ersatz|einzel)teil`);
const toBeHadDe = any('erhältlich', 'lieferbar', 'verkäuflich', 'verfügbar', 'bestellbar');
const wholeDe = any(
  'komplett',
  String.raw`(?:als|im|in)\s+(?:baugruppe|satz|set|einheit|kompletter?)`,
  'zusammen',
);
const apartFr = any(
  'séparément',
  String.raw`séparement`,
  'seule?s?',
  String.raw`à\s+l['’]unité`,
  'isolément',
);
const wholeFr = any(String.raw`(?:en|comme)\s+ensemble`, 'complete?s?', 'complet', String.raw`en\s+kit`);
const apartIt = any('separatamente', 'singolarmente', 'sciolt[oaie]', String.raw`sfus[oaie]`);
const apartEs = any(String.raw`por\s+separado`, 'suelt[oa]s?', 'individualmente', 'separadamente');
const apartNl = any('los', 'apart', 'afzonderlijk', 'separaat');
const toBeHadNl = any('verkrijgbaar', 'leverbaar', String.raw`te\s+(?:bestellen|koop)`);

export const notSoldPattern = new RegExp(
  [
    String.raw`not\s+(?:sold|available|supplied|procurable|serviced|furnished|offered|stocked|listed)(?:\s+${apartEn})?`,
    String.raw`not\s+(?:a|an)\s+(?:spare|service|replacement)\s+part`,
    String.raw`(?:available|sold|supplied|order|serviced)\s+(?:only\s+)?(?:as|in|with)\s+(?:an?\s+|part\s+of\s+(?:an?\s+)?)?(?:complete\s+)?(?:assembly|assy|set|kit|unit)(?:\s+only)?`,
    String.raw`(?<![\p{L}])order\s+(?:complete\s+)?(?:assembly|assy)(?![\p{L}])`,
    String.raw`nicht\s+${apartDe}(?:\s+${toBeHadDe})?`,
    String.raw`${apartDe}\s+nicht\s+${toBeHadDe}`,
    String.raw`(?<![\p{L}])nur\s+${wholeDe}(?:\s+${toBeHadDe})?`,
    String.raw`kein(?:e)?\s+(?:ersatz|einzel)teile?`,
    String.raw`(?:ne\s+se\s+vend\s+pas|non|pas)\s*(?:vendue?s?|livrée?s?|livrables?|disponibles?|fournie?s?)?\s+${apartFr}`,
    String.raw`(?:ne\s+se\s+vend\s+qu['’]|(?:vendue?s?|livrée?s?|fournie?s?|disponibles?)\s+(?:uniquement|seulement)\s+)${wholeFr}`,
    String.raw`(?<![\p{L}])non\s+détaillée?s?(?![\p{L}])`,
    String.raw`non\s+(?:vendut[oaie]|vendibil[ei]|fornit[oaie]|fornibil[ei]|disponibil[ei]|ordinabil[ei])\s+${apartIt}`,
    String.raw`(?<![\p{L}])solo\s+(?:complet[oa]|in\s+(?:gruppo|assieme|kit)|come\s+(?:gruppo|assieme))`,
    String.raw`(?:fornit|vendut|disponibil)[oaie]?\s+solo\s+(?:in|come|con)\s+(?:gruppo|assieme|kit|set)`,
    String.raw`no\s+(?:se\s+(?:vende|suministra|sirve)|disponibles?|suministrable)\s+${apartEs}`,
    String.raw`(?<![\p{L}])s[óo]lo\s+(?:(?:se\s+)?(?:vende|suministra)\s+)?(?:en|como|con)\s+(?:conjunto|juego|kit)`,
    String.raw`niet\s+${apartNl}(?:\s+${toBeHadNl})?`,
    String.raw`(?<![\p{L}])(?:alleen|enkel|uitsluitend)\s+(?:compleet|als\s+(?:set|geheel|samenstelling))(?:\s+${toBeHadNl})?`,
    '単品(?:で)?(?:の)?(?:販売|供給|補給|出荷)?(?:不可|なし|無し|はして(?:おりません|いません))|(?:部品)?単体(?:で)?(?:の)?(?:販売|供給)?(?:不可|なし|無し)|個別(?:販売|供給)(?:なし|不可)|非売品|(?:アッセンブリー?|ASSY|セット|組立品?)(?:での)?(?:供給|販売|出荷)?(?:のみ|だけ)',
  ].join('|'),
  'iu',
);
/** Letters for the same, each alone in its segment of the remarks. */
export const notSoldLetters = /^(?:N\.?S\.?S\.?|N\.?P\.?|n\.?\s?e\.?\s?l\.?|n\.?v\.?s\.?)$/i;
/** NS: not sold in one book, not shown in another. */
export const ambiguousLetters = /^N[./]?\s?S\.?$/;
export const optionPattern =
  /(?<![\p{L}])(?:option(?:al|nel|nelle|eel|s)?|opt\.|en\s+option|facultati(?:f|ve)|if\s+(?:fitted|equipped)|extra(?=\s*$)|(?:sonder)?zubehör|wahlweise|auf\s+wunsch|opzional[ei]|opzion[ei]|(?:a|su)\s+richiesta|opcional(?:es)?|opci[óo]n|a\s+petici[óo]n|optie|accessor(?:y|ies)|accessoires?|accessori[oa]?|accesorios?|toebehoren)(?![\p{L}])|オプション|別売|別途(?:購入|販売)|選択(?:部品|品|$)/iu;
export const asRequiredWords =
  /(?<![\p{L}])(?:as\s+re(?:quired|q'?d\.?)|as\s+needed|a\/r|select(?:\s+(?:to\s+(?:fit|suit)|at\s+assembly|fit))?$|(?:je\s+)?nach\s+bed(?:arf|\.)|bei\s+bedarf|selon\s+(?:les\s+)?besoins?|suivant\s+besoins?|au\s+besoin|quanto\s+basta|(?:secondo|a\s+seconda\s+del|a)\s+(?:necessit[àa]|bisogno)|al\s+bisogno|se\s+necessario|seg[úu]n\s+(?:se\s+(?:requiera|necesite)|necesidad|sea\s+necesario)|naar\s+behoefte|indien\s+nodig|zoals\s+nodig|zoveel\s+(?:als\s+)?nodig)(?![\p{L}])|適量|適宜|必要数|必要量|必要に応じて|選択使用/iu;
export const referenceOnlyWords =
  /(?<![\p{L}])(?:ref(?:erence)?\.?\s+only|for\s+reference|nur\s+(?:zur\s+)?(?:referenz|information)|pour\s+(?:référence|mémoire)|solo\s+(?:riferimento|referencia)|ter\s+referentie)(?![\p{L}])|参考(?:品|図)?/iu;
export const attachingWords =
  /attaching\s+(?:parts?|hardware)|mounting\s+(?:parts|hardware)|befestigungs(?:teile?|material)|pièces?\s+de\s+fixation|(?:pezzi|elementi|parti)\s+di\s+fissaggio|(?:piezas|elementos)\s+de\s+fijación|bevestigings(?:delen|materiaal|middelen)|取付(?:部品|け部品|用部品)/iu;
