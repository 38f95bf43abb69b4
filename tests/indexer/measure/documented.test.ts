import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fit } from '../../../indexer/fit.ts';
import { measurablesOf, measure, measuredCategories } from '../../../indexer/measure.ts';

const page = readFileSync(new URL('../../../docs/measure-and-fit.md', import.meta.url), 'utf8');

/** Each request of the page with the part of its answer that stands behind it. */
const examples = [...page.matchAll(/```json in (measure|fit)\n(.*?)```\n```json out\n(.*?)```/gs)].map(
  ([, verb, request, answer], at) => ({
    what: `${verb} ${at + 1}`,
    verb,
    request: JSON.parse(request!),
    answer: JSON.parse(answer!),
  }),
);

describe('docs/measure-and-fit.md', () => {
  test('has its examples', () => expect(examples.length).toBe(5));

  test.each(examples)('$what answers as it says', ({ verb, request, answer }) => {
    const given = verb === 'measure' ? measure(request) : fit(request);
    for (const [key, stated] of Object.entries(answer)) {
      const own = given[key as keyof typeof given] as unknown;
      // The first of a list are shown.
      const shown = Array.isArray(stated) && Array.isArray(own) ? own.slice(0, stated.length) : own;
      expect(shown, key).toMatchObject(stated as object);
    }
  });

  test('names every dimension of every category', () => {
    for (const category of measuredCategories) {
      const [, listed] = new RegExp(`^\\| [^|]*\\b${category}\\b[^|]* \\| ([^|]+) \\|$`, 'm').exec(page)!;
      expect(listed!.split(', '), category).toEqual(measurablesOf(category)!.map(each => each.key));
    }
  });
});
