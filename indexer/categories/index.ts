import { type CategoryName, categoryNames } from '../reading/reading.ts';
import { ball } from './ball/index.ts';
import { bearing } from './bearing/index.ts';
import { bushing } from './bushing/index.ts';
import type { CategoryDefinition } from './definition.ts';
import { gear } from './gear.ts';
import { lubricant } from './lubricant.ts';
import { nut } from './nut/index.ts';
import { oRing } from './o-ring/index.ts';
import { pin } from './pin/index.ts';
import { plain } from './plain.ts';
import { retainingRing } from './retaining-ring/index.ts';
import { rollerClutch } from './roller-clutch.ts';
import { screw } from './screw/index.ts';
import { seal } from './seal.ts';
import { setScrew } from './set-screw/index.ts';
import { shaft } from './shaft.ts';
import { shim } from './shim/index.ts';
import { spring } from './spring/index.ts';
import { washer } from './washer/index.ts';

/** All categories. A new one is a folder and a line here. */
const definitions: readonly CategoryDefinition[] = [
  bearing,
  rollerClutch,
  bushing,
  screw,
  setScrew,
  nut,
  washer,
  shim,
  retainingRing,
  oRing,
  seal,
  pin,
  shaft,
  spring,
  ball,
  gear,
  lubricant,
  plain,
].map(inOneOrder);

/** Categories by name. */
export const categories: ReadonlyMap<CategoryName, CategoryDefinition> = register(definitions);

const dimKeys = new Map(definitions.map(({ name, dims }) => [name, dims.map(d => d.key)]));

/** The names of a category's dimensions, in the order of its size. */
export const dimKeysOf = (category: CategoryName): readonly string[] => dimKeys.get(category)!;

/** Which category a standard is of. */
export const standardsOf: ReadonlyMap<string, CategoryDefinition> = new Map(
  definitions.flatMap(d => Object.keys(d.standards).map(name => [name, d] as const)),
);

/** Categories whose designations may begin with a piece. */
export const stemsOf: ReadonlyMap<string, readonly CategoryDefinition[]> = gatherStems();

/** The same fields in the same order for all, so that the engine finds each field of every category at one place. */
function inOneOrder(of: CategoryDefinition): CategoryDefinition {
  const { name, title, plural, dims, itemAttrs, labels, words, standards, stems, designationAt, settle } = of;
  const { sizeDims, write, parse, sizes, designations, drawing, rules, tools, examples } = of;
  const front = {
    name,
    title,
    plural,
    dims,
    itemAttrs,
    labels,
    words,
    standards,
    stems,
    designationAt,
    settle,
  };
  return {
    ...front,
    sizeDims,
    write,
    parse,
    sizes,
    designations,
    drawing,
    rules,
    tools,
    examples,
  } as CategoryDefinition;
}

/** Checks each definition as it is registered: one that lacks something stops the program. */
function register(all: readonly CategoryDefinition[]): ReadonlyMap<CategoryName, CategoryDefinition> {
  const byName = new Map<CategoryName, CategoryDefinition>();
  for (const definition of all) {
    const { name } = definition;
    const lacks = (what: string) => {
      throw new Error(`Category ${name}: ${what}.`);
    };
    if (byName.has(name)) lacks('is registered twice');
    if (!definition.title || !definition.plural) lacks('has no title or plural');
    if (definition.examples.length < 3) lacks('has fewer than three examples');
    for (const dim of definition.dims) {
      if (dim.unit === 'mm' && !(dim.limits && dim.limits[0] < dim.limits[1]))
        lacks(`dimension ${dim.key} has no limits`);
    }
    const keys = new Set(definition.dims.map(d => d.key));
    if (keys.size !== definition.dims.length) lacks('names a dimension twice');
    for (const size of definition.sizes)
      for (const key of Object.keys(size))
        if (!keys.has(key)) lacks(`publishes a size with an unknown dimension ${key}`);
    if (definition.stems.length > 0 !== (definition.designationAt !== undefined))
      lacks('has stems without a reader of designations, or the reverse');
    byName.set(name, definition);
  }
  const missing = categoryNames.filter(name => !byName.has(name));
  if (missing.length > 0) throw new Error(`Categories without a definition: ${missing.join(', ')}.`);
  return byName;
}

function gatherStems(): ReadonlyMap<string, readonly CategoryDefinition[]> {
  const stems = new Map<string, CategoryDefinition[]>();
  for (const definition of definitions)
    for (const stem of definition.stems) stems.set(stem, [...(stems.get(stem) ?? []), definition]);
  return stems;
}
