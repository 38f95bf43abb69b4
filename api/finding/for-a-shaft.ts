import {
  type CategoryDefinition,
  type CategoryName,
  categories,
  type Dims,
  fit,
  type KnownSize,
  parseSize,
  writeSize,
} from '../../indexer/index.ts';
import { toMm } from '../../indexer/units/length.ts';
import type { NearSize } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { sizeHits } from './size-hits.ts';
import { sizesHere } from './sizes-here.ts';

const shaftWords = 'shaft|spindle|axle|journal|welle|achse|arbre|axe|albero|asse|eje|as|軸|シャフト';
const amount = String.raw`(\d+(?:[.,]\d+)?|\d+\/\d+)\s*(mm|"|in\b|inch\b)?`;
const asked = [
  new RegExp(`${amount}\\s*(?:${shaftWords})(?![\\p{L}])`, 'iu'),
  new RegExp(`(?:${shaftWords})(?:\\s+(?:of|dia|diameter|von|de))?\\s*[øØ=]?\\s*${amount}`, 'iu'),
];

/** What turns on a shaft, and the dimension that meets it. */
const onShafts: Partial<Record<CategoryName, string>> = {
  bearing: 'bore',
  bushing: 'id',
  seal: 'id',
  'roller-clutch': 'bore',
};

/** The diameter, in millimetres, of the shaft that something is sought for; null where the query is no such question. */
export function shaftAsked(
  query: string,
  category: string,
): { diameter: number; category: CategoryName; dimension: string } | null {
  const dimension = onShafts[category as CategoryName];
  if (!dimension || !/\b(for|on|für|auf|pour|per|su|para|voor|op)\b|用/iu.test(query)) return null;
  for (const form of asked) {
    const found = form.exec(query);
    if (!found) continue;
    const [whole, over] = found[1]!.replace(',', '.').split('/').map(Number);
    const printed = over === undefined ? whole! : whole! / over;
    const inches = over !== undefined || (found[2] !== undefined && found[2] !== 'mm');
    return {
      diameter: Math.round(printed * (inches ? 25_400 : 1000)) / 1000,
      category: category as CategoryName,
      dimension,
    };
  }
  return null;
}

/** How far a worn or badly measured shaft is from its nominal bore at most, in millimetres (common practice). */
const reach = 0.3;

/**
 * The sizes whose bore comes nearest to a measured shaft, published ones and those known here, each with the difference.
 * A bearing comes with how it sits there, loose or tight, the likeliest first. A measured diameter is never taken for the nominal one: a shaft that reads 4.98 is a 5 that is worn.
 */
export async function forAShaft(
  tx: Tx,
  { diameter, category, dimension }: NonNullable<ReturnType<typeof shaftAsked>>,
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
