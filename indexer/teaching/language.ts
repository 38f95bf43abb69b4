export type Language = 'en' | 'de' | 'fr' | 'it' | 'es' | 'nl' | 'ja';

/** Words that parts lists of one language are full of and those of the others hardly hold; folded, whole words. */
const tell: Record<Exclude<Language, 'ja'>, string> = {
  en: `the of with for and left right screw bolt nut washer spring bearing shaft gear housing cover plate ring seal handle
       knob assembly assy pin body cap lever spacer bushing shim pinion spool drum qty quantity description name part remarks notes
       wheel clip frame bracket key item replaced superseded includes required hand main drive side rear front`,
  de: `der die das mit fur und aus links rechts schraube mutter scheibe unterlegscheibe feder lager kugellager welle zahnrad gehause
       deckel platte dichtung griff knopf stift hebel hulse buchse passscheibe ritzel trommel rad klammer halter bezeichnung
       benennung menge stuck anzahl bemerkung teilenr teile pos ersetzt komplett kurbel sicherungsring zylinderschraube senkschraube
       druckfeder gewindestift nach bedarf achse`,
  fr: `le la les de du des avec pour et gauche droite droit vis ecrou rondelle ressort roulement arbre pignon carter couvercle plaque
       joint bague poignee bouton goupille levier douille cale tambour roue clip support designation repere reference qte
       quantite observations remplace complet ensemble axe tete bille billes couronne non vendu`,
  it: `il lo gli con per e di del della sinistro destro sinistra destra vite dado rondella molla cuscinetto albero ingranaggio
       alloggiamento coperchio piastra guarnizione anello manopola perno leva boccola spessore pignone tamburo ruota descrizione codice
       quantita osservazioni sostituito completo assieme spina tappo sfere supporto`,
  es: `el la los las con para y del izquierdo derecho izquierda derecha tornillo tuerca arandela muelle resorte rodamiento eje
       engranaje carcasa tapa placa junta anillo mango perilla pasador palanca casquillo pinon tambor rueda descripcion codigo cantidad
       observaciones sustituido conjunto cojinete bolas soporte`,
  nl: `de het van met voor en links rechts schroef bout moer ring veer lager kogellager as tandwiel huis deksel plaat pakking handgreep
       knop pen hefboom bus vulring rondsel trommel wiel klem beugel omschrijving benaming aantal artikelnr onderdeelnr opmerking
       opmerkingen vervangen compleet borgring spil sluitring`,
};

const folded = (text: string): string[] =>
  text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .split(/[^\p{L}]+/u)
    .filter(Boolean);

const languagesOf: ReadonlyMap<string, Language[]> = (() => {
  const map = new Map<string, Language[]>();
  for (const [language, list] of Object.entries(tell) as [Language, string][])
    for (const word of list.split(/\s+/)) map.set(word, [...(map.get(word) ?? []), language]);
  return map;
})();

/** Ends that only compounds of one language have: German and Dutch write their parts' names together. */
const ends: [Language, RegExp][] = [
  [
    'de',
    /(?:schraube|scheibe|feder|lager|welle|ring|gehause|deckel|mutter|stift|hebel|platte|dichtung|rad|bolzen)n?$/,
  ],
  ['nl', /(?:schroef|veer|moer|ring|plaat|huis|deksel|pakking|wiel|bout)$/],
];

const anyLetter = /\p{L}/gu;
const japaneseLetter = /[\u3040-\u30ff\u4e00-\u9fff\uff66-\uff9f]/g;

/** The language of a document from words of its headers and descriptions; null where too little tells. */
export function findLanguage(headers: readonly string[], descriptions: readonly string[]): Language | null {
  const points = new Map<Language, number>();
  const add = (language: Language, by: number) => points.set(language, (points.get(language) ?? 0) + by);
  let letters = 0;
  let japanese = 0;
  const texts = [...headers, ...descriptions];
  for (const text of texts) {
    letters += text.match(anyLetter)?.length ?? 0;
    japanese += text.match(japaneseLetter)?.length ?? 0;
  }
  if (japanese > 2 && japanese > letters * 0.2) return 'ja';
  for (const text of texts)
    for (const word of folded(text)) {
      const languages = languagesOf.get(word);
      for (const language of languages ?? []) add(language, 1 / languages!.length);
      if (!languages && word.length > 6)
        for (const [language, end] of ends) if (end.test(word)) add(language, 0.7);
    }
  const ranked = [...points].sort((a, b) => b[1] - a[1]);
  const [first, second] = ranked;
  return first && first[1] >= 1 && first[1] > (second?.[1] ?? 0) ? first[0] : null;
}
