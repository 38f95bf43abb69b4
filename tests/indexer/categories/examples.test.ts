import { describe, expect, test } from 'vitest';
import { categories, read } from '../../../indexer/index.ts';

/** Every category's own lines: what each must give, and the near-misses that must not be of the category. */
for (const [name, definition] of categories) {
  describe(name, () => {
    for (const [line, gives] of definition.examples) {
      test(line, () => {
        const reading = read(line);
        if (gives === undefined) {
          expect(reading.category).not.toBe(name);
          return;
        }
        expect(reading.category).toBe(name);
        if (typeof gives === 'string') expect(reading.size).toBe(gives);
        else {
          if (gives.size !== undefined) expect(reading.size).toBe(gives.size);
          if (gives.dims) expect(reading.dims).toMatchObject(gives.dims);
          if (gives.dims && Object.keys(gives.dims).length === 0) expect(reading.dims).toEqual({});
          if (gives.attrs) expect(reading.attrs).toMatchObject(gives.attrs);
          if (gives.qty !== undefined) expect(reading.qty).toBe(gives.qty);
        }
      });
    }
  });
}

test('every category has an example that gives a size or nothing, and the measured ones a near-miss or a size of each', () => {
  for (const [name, { examples, sizeDims }] of categories) {
    const sized = examples.filter(
      ([, gives]) => typeof gives === 'string' || (gives && typeof gives.size === 'string'),
    );
    expect(sized.length > 0, name).toBe(sizeDims.length > 0);
  }
});
