import type { Found } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import type { Engine } from '../search/engine.ts';
import { wordsOf } from '../search/entry.ts';
import { findModels } from './find-models.ts';
import { findPages } from './find-pages.ts';
import { findParts } from './find-parts.ts';
import { forAShaft, shaftAsked } from './for-a-shaft.ts';
import { knownSizes } from './known-sizes.ts';
import { asNear, type Near, nearestSizes } from './near-sizes.ts';
import { sizeHits } from './size-hits.ts';
import { understand } from './understand.ts';

/** How many near sizes are shown. */
const mostNear = 8;

/**
 * What one find box answers: a part number, a model, a size in any writing, a pasted line or "bearing for a 4.98
 * shaft". The query is read as a line of a list is. A size that differs never stands among those that are the same: it
 * is near, with the difference named.
 */
export async function find(tx: Tx, engine: Engine, query: string): Promise<Found> {
  const meaning = understand(query);
  const shaft = shaftAsked(query);
  const sizes = shaft ? [] : await knownSizes(tx, meaning);
  const like = shaft ? [] : await nearTo(tx, sizes, meaning.sizes);
  const hits = await sizeHits(tx, [...sizes, ...like.map(one => one.size)]);
  const near = shaft ? await forAShaft(tx, shaft, mostNear * 2) : asNear(like, hits);
  const rest = shaft ? '' : meaning.rest;
  const typed = wordsOf(rest);
  const { known: words, corrected } = await engine.correct(tx, typed);
  const parts = await findParts(tx, engine, { query: shaft ? '' : query, sizes, words });
  return {
    query,
    understood: meaning.understood,
    sizes: hits.filter(hit => sizes.includes(hit.size)),
    near,
    parts,
    models: await findModels(tx, typed, words),
    pages: shaft ? [] : await findPages(tx, query),
    corrected: sizes.length > 0 ? [] : corrected,
    engine: engine.name,
  };
}

/** Sizes near those found; near those that were meant where none was found. */
async function nearTo(tx: Tx, found: string[], meant: string[]): Promise<Near[]> {
  const near = new Map<string, Near>();
  for (const size of (found.length > 0 ? found : meant).slice(0, 3))
    for (const one of await nearestSizes(tx, size, mostNear))
      if (!found.includes(one.size) && !near.has(one.size)) near.set(one.size, one);
  return [...near.values()].slice(0, mostNear);
}
