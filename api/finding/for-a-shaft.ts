import {
  type CategoryDefinition,
  type CategoryName,
  categories,
  type Dims,
  fit,
  type KnownSize,
  parseSize,
  read,
  writeSize,
} from '../../indexer/index.ts';
import { toMm } from '../../indexer/units/length.ts';
import type { NearSize } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { sizeHits } from './size-hits.ts';
import { sizesHere } from './sizes-here.ts';

const shaftWords =
  'shaft|shafts|spindle|axle|journal|welle|achse|zapfen|arbre|axe|albero|asse|perno|eje|árbol|as|spil|軸|シャフト|スピンドル';
/** What may stand between the shaft and its diameter: `shaft of`, `Welle mit`, `albero da`, `as van`, `軸径`. */
const between =
  'of|that is|measuring|dia|diameter|with|mit|von|durchmesser|de|diamètre|da|diametro|diámetro|van|径|が';
const amount = String.raw`(\d+(?:[.,]\d+)?|\d+\/\d+)\s*(mm|"|in\b|inch\b)?`;
const asked = [
  new RegExp(`${amount}(?:\\s*の)?[\\s-]*(?:${shaftWords})(?!\\p{Script=Latin})`, 'iu'),
  new RegExp(`(?:${shaftWords})(?:\\s*(?:${between}))*\\s*[øØ⌀=:]?\\s*${amount}`, 'iu'),
];

/** What turns on a shaft, and the dimension that meets it. */
const onShafts: Partial<Record<CategoryName, string>> = {
  bearing: 'bore',
  bushing: 'id',
  seal: 'id',
  'roller-clutch': 'bore',
};

const wantsFor =
  /(?<!\p{L})(for|fits?|to fit|on|für|auf|passend|pour|sur|per|su|para|sobre|voor|op|met|à|a)(?!\p{L})|用|に合う/iu;

/** A shaft that something is sought for: its diameter in millimetres, the kind of part, and the dimension that meets it. */
export interface ShaftAsked {
  diameter: number;
  category: CategoryName;
  dimension: string;
}

/** The shaft that a query asks something for; null where it is no such question. */
export function shaftAsked(query: string): ShaftAsked | null {
  if (!wantsFor.test(query)) return null;
  for (const form of asked) {
    const found = form.exec(query);
    if (!found) continue;
    // What is sought stands in the words around the shaft.
    const category = read(query.replace(found[0], ' ').replace(wantsFor, ' ')).category as CategoryName;
    const dimension = onShafts[category];
    if (!dimension) return null;
    const [whole, over] = found[1]!.replace(',', '.').split('/').map(Number);
    const printed = over === undefined ? whole! : whole! / over;
    const inches = over !== undefined || (found[2] !== undefined && found[2] !== 'mm');
    return { diameter: Math.round(printed * (inches ? 25_400 : 1000)) / 1000, category, dimension };
  }
  return null;
}

/** How far a worn or badly measured shaft is from its nominal bore at most, in millimetres (common practice). */
const reach = 0.3;

/**
 * The sizes whose bore comes nearest to a measured shaft, published ones and those known here, each with the difference.
 * A bearing comes with how it sits there, loose or tight, the likeliest first. A measured diameter is never taken for the
 * nominal one: a shaft that reads 4.98 is a 5 that is worn.
 */
export async function forAShaft(
  tx: Tx,
  { diameter, category, dimension }: ShaftAsked,
  most: number,
): Promise<NearSize[]> {
  const definition = categories.get(category)!;
  const known = await sizesHere(tx, [category]);
  const fits = category === 'bearing' ? fit({ shaft: { value: diameter }, known }).candidates : [];
  const onShaft = new Map(fits.map(each => [each.size, each.onShaft]));
  const nearest = fits.length > 0 ? [...onShaft.keys()] : byDimension(definition, dimension, diameter, known);
  const hits = await sizeHits(tx, nearest.slice(0, most));
  const label = definition.dims.find(one => one.key === dimension)?.label ?? dimension;
  return hits.map(hit => {
    const bore = hit.dims[dimension] as number;
    const difference = Math.round((bore - diameter) * 1000) / 1000;
    return {
      ...hit,
      differences: [{ dimension, label, a: diameter, b: bore, difference }],
      confusable: true,
      onShaft: onShaft.get(hit.size) ?? null,
    };
  });
}

/** Sizes within reach, the nearest first; of those alike near, the ones that parts here have. */
function byDimension(
  { name, sizes }: CategoryDefinition,
  dimension: string,
  diameter: number,
  known: readonly KnownSize[],
): string[] {
  const here = new Set(known.map(each => each.size));
  const published = sizes.flatMap(size => writeSize(name, inMillimetres(size)) ?? []);
  const bores = [...new Set([...here, ...published])].flatMap(size => {
    const bore = parseSize(size)?.dims[dimension];
    return typeof bore === 'number' && Math.abs(bore - diameter) <= reach ? [{ size, bore }] : [];
  });
  return bores
    .sort(
      (a, b) =>
        Math.abs(a.bore - diameter) - Math.abs(b.bore - diameter) ||
        Number(here.has(b.size)) - Number(here.has(a.size)) ||
        (a.size < b.size ? -1 : 1),
    )
    .map(each => each.size);
}

const inMillimetres = (size: Readonly<Record<string, number | string>>): Dims =>
  Object.fromEntries(
    Object.entries(size).map(([name, value]) => [
      name,
      typeof value === 'number' ? toMm(value as never) : value,
    ]),
  );
