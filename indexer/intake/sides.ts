/** Words for a thread's or a spring's hand: facts of the part, and no side of the machine. */
export const handWords =
  /\b(?:l\.?\s?h\.?\s+thread(?:ed)?|left[- ]hand(?:ed)?\s+(?:thread(?:ed)?|screw|nut|bolt|wound)|linksgewinde|links(?:gewickelt|gängig)|filetage\s+(?:à\s+)?gauche|pas\s+à\s+gauche|filetto\s+sinistro|filettatura\s+sinistra|rosca\s+(?:a\s+)?izquierdas?|linkse\s+draad|linksdraad|r\.?\s?h\.?\s+thread|right[- ]hand\s+thread|rechtsgewinde|filetage\s+à\s+droite)\b|左ねじ|左ネジ|逆ねじ|逆ネジ/giu;

const left =
  /(?<![\p{L}\p{N}])(?:left(?:[- ]hand)?|l\.?h\.?|l|links|linker|linke|linkes|li\.?|gauche|g\.?|sinistr[oa]|sx\.?|sin\.?|izquierd[oa]|izq\.?|izda?\.?|左)(?![\p{L}\p{N}])|左/giu;
const right =
  /(?<![\p{L}\p{N}])(?:right(?:[- ]hand)?|r\.?h\.?|r|rechts|rechter|rechte|rechtes|re\.?|droite?|d\.?|destr[oa]|dx\.?|derech[oa]|der\.?|dcha?\.?|右)(?![\p{L}\p{N}])|右/giu;

/** A description's side of the machine, and the description without it; null where it names none, or both. */
export function sideOf(description: string): { side: 'left' | 'right'; rest: string } | null {
  const bare = description.replace(handWords, ' ');
  const isLeft = bare.search(left) >= 0;
  const isRight = bare.search(right) >= 0;
  if (isLeft === isRight) return null;
  const rest = bare
    .replace(isLeft ? left : right, ' ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .toLowerCase();
  return rest ? { side: isLeft ? 'left' : 'right', rest } : null;
}
