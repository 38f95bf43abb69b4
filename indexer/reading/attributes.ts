import type { Claim } from './claim.ts';
import type { Line } from './line.ts';
import type { Attrs } from './reading.ts';
import type { StandardName } from './standards.ts';

/** Words that turn to what the part is for: the rest of their phrase is about something else. */
const purpose = /^(for|fur|fuer|zu|zum|zur|pour|para|voor|fits|holds|secures|attaches)$/;
const stops = /^[,;:()|[\]]$/;

/** Tokens that only say what the part is for. */
function aside(line: Line): Uint8Array {
  const out = new Uint8Array(line.tokens.length);
  let on = false;
  line.tokens.forEach(({ text, gap }, at) => {
    if (stops.test(text) || gap >= 9) on = false;
    if (purpose.test(text) && at > 0) on = true;
    if (on) out[at] = 1;
  });
  return out;
}

/**
 * Gathers the attributes that the line states for the claim's category: by its nouns, its modifiers, words of any category
 * (materials, hands), and its standard. Two materials are none; a standard that says otherwise than the words is a doubt.
 */
export function gatherAttrs(
  claim: Claim,
  line: Line,
  standards: Readonly<Record<string, Attrs>>,
  standard: StandardName | null,
): void {
  const out = aside(line);
  const materials = new Map<string, { start: number; end: number }>();
  const loose = new Set<string>();
  for (const hit of line.hits) {
    const own = hit.entries.filter(
      ({ meaning }) => meaning.kind === 'noun' && meaning.category === claim.category,
    );
    const said = hit.entries.filter(
      ({ meaning }) =>
        meaning.kind === 'modifier' && (meaning.category === claim.category || meaning.category === null),
    );
    const specific = said.filter(({ meaning }) => meaning.kind === 'modifier' && meaning.category !== null);
    const place = { start: line.tokens[hit.first]!.start, end: line.tokens[hit.last]!.end };
    if (out[hit.first] && own.length === 0 && !claimsPurpose(specific)) continue;
    for (const { meaning } of [...own, ...(specific.length > 0 ? specific : said)]) {
      if (meaning.kind !== 'noun' && meaning.kind !== 'modifier') continue;
      for (const [key, value] of Object.entries(meaning.attrs)) {
        if (key === 'material') materials.set(String(value), place);
        else if (meaning.kind === 'modifier' && hit.last > hit.first && loose.has(key)) {
          // "cap screw, hexagon head": two words that describe outweigh what the name alone suggests.
          claim.attrs[key] = value;
          claim.span(key, place);
        } else {
          if (meaning.kind === 'noun' && claim.attrs[key] === undefined) loose.add(key);
          claim.attr(key, value, place);
        }
      }
    }
  }
  if (materials.size === 1) for (const [value, place] of materials) claim.attr('material', value, place);
  const first = line.standards[0];
  if (first && (standard || claim.features.has('noun'))) claim.attr('standard', first.name, first);
  if (!standard) return;
  for (const [key, value] of Object.entries(standards[standard.name] ?? {})) {
    const stated = claim.attrs[key];
    if (stated !== undefined && stated !== value)
      claim.doubt(`${standard.name} is ${String(value)}, but the words say ${String(stated)}`);
    else claim.attr(key, value, standard);
  }
}

/** A phrase such as "for bore" is an attribute itself. */
const claimsPurpose = (entries: readonly unknown[]) => entries.length > 0;
