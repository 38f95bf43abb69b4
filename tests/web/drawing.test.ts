import { describe, expect, test } from 'vitest';
import { categories, type Drawing } from '../../indexer/index.ts';
import { layDimension } from '../../web/drawing/lay-dimension.ts';
import { layOut } from '../../web/drawing/lay-out.ts';
import { pathData } from '../../web/drawing/path.ts';
import { pixelsPerMm, scales } from '../../web/drawing/scale.ts';

const same = ([x, y]: readonly [number, number]) => [x, y] as const;
const plain = (width: number, height: number): Drawing => ({
  width,
  height,
  outlines: [],
  thin: [],
  hidden: [],
  centre: [],
  hatch: [],
  dimensions: [],
});

describe('scale', () => {
  // ISO 5455:1979: enlargement 50:1 20:1 10:1 5:1 2:1, full size 1:1, reduction 1:2 1:5 1:10 1:20 …
  test('only scales of ISO 5455 are used', () => {
    expect(scales.map(({ name }) => name)).toEqual('50:1 20:1 10:1 5:1 2:1 1:1 1:2 1:5 1:10 1:20'.split(' '));
    for (const { name, factor } of scales) {
      const [on, of] = name.split(':').map(Number) as [number, number];
      expect(factor).toBeCloseTo(on / of, 9);
    }
  });

  test.each([
    // width and height of the part in mm, room in px, scale: 24 px are kept for what overshoots
    [11, 11, 400, 320, '5:1'],
    [1, 1, 400, 320, '50:1'],
    [40, 11, 400, 320, '2:1'],
    [100, 30, 400, 320, '1:2'],
    [2000, 30, 400, 320, '1:20'],
    [90_000, 30, 400, 320, '1:20'],
  ])('%d × %d mm in %d × %d px is drawn at %s', (width, height, roomWidth, roomHeight, name) => {
    expect(layOut(plain(width, height), { width: roomWidth, height: roomHeight }).scale.name).toBe(name);
  });

  test('one millimetre of the part is the scale times 96/25.4 px', () => {
    const { views, k } = layOut(plain(10, 10), { width: 400, height: 400 });
    const { place } = views[0]!;
    expect(k).toBeCloseTo(5 * pixelsPerMm, 9);
    expect(place([3, 0])[0] - place([1, 0])[0]).toBeCloseTo(2 * k, 9);
  });
});

test('the face is left out only where it would more than halve the scale', () => {
  const face = plain(11, 11);
  const bearing = { ...plain(4, 11), face };
  expect(layOut(bearing, { width: 420, height: 330 })).toMatchObject({
    scale: { name: '5:1' },
    views: [{}, {}],
  });
  expect(layOut(bearing, { width: 300, height: 330 })).toMatchObject({ scale: { name: '5:1' }, views: [{}] });
  const washer = { ...plain(0.5, 7), face: plain(7, 7) };
  expect(layOut(washer, { width: 300, height: 330 })).toMatchObject({
    scale: { name: '5:1' },
    views: [{}, {}],
  });
});

describe('dimension', () => {
  const wide = { key: 'width', from: [0, 0], to: [100, 0], text: '4' } as const;

  test('a positive offset stands below and to the right, a negative one above and to the left', () => {
    const lineOf = (offset: number) => layDimension({ ...wide, offset }, same).lines[2]!;
    expect(lineOf(5).y1).toBeGreaterThan(0);
    expect(lineOf(-5).y1).toBeLessThan(0);
    const upright = (offset: number) =>
      layDimension({ key: 'od', from: [0, 0], to: [0, 100], offset, text: 'Ø11' }, same).lines[2]!;
    expect(upright(5).x1).toBeGreaterThan(0);
    expect(upright(-5).x1).toBeLessThan(0);
  });

  test('the figure stands above its line and reads from below or from the right (ISO 129-1)', () => {
    const { text, lines } = layDimension({ ...wide, offset: 5 }, same);
    expect(text.turn).toBe(0);
    expect(text.y).toBeLessThan(lines[2]!.y1);
    const upright = layDimension({ key: 'od', from: [0, 0], to: [0, 100], offset: -5, text: 'Ø11' }, same);
    expect(upright.text.turn).toBe(-90);
    expect(upright.text.x).toBeLessThan(upright.lines[2]!.x1);
  });

  test('extension lines begin off the outline and end past the dimension line', () => {
    const [left] = layDimension({ ...wide, offset: 5 }, same).lines;
    expect(left!.y1).toBe(2);
    expect(left!.y2).toBeCloseTo(5 * pixelsPerMm + 5, 9);
  });

  test('a gap too small for its arrows has them outside, pointing in', () => {
    const inside = layDimension({ ...wide, offset: 5 }, same).arrows.map(({ turn }) => turn);
    const outside = layDimension({ ...wide, to: [10, 0], offset: 5 }, same).arrows.map(({ turn }) => turn);
    expect(inside).toEqual([180, 0]);
    expect(outside).toEqual([0, 180]);
  });

  test('it does not matter which of its two points comes first', () => {
    const there = layDimension({ ...wide, offset: 5 }, same);
    const back = layDimension({ ...wide, from: wide.to, to: wide.from, offset: 5 }, same);
    expect(back).toEqual(there);
  });
});

test('pathData: strokes become SVG path data, a radius grows with the scale', () => {
  const data = pathData(
    [
      { to: 'move', at: [0, 0] },
      { to: 'line', at: [1, 0] },
      { to: 'arc', at: [2, 1], radius: 1, large: false, clockwise: true },
      { to: 'close' },
    ],
    ([x, y]) => [x * 10, y * 10],
    10,
  );
  expect(data).toBe('M0 0L10 0A10 10 0 0 1 20 10Z');
});

describe('every category that has sizes draws them', () => {
  const drawn = [...categories].flatMap(([name, definition]) =>
    definition.sizes.slice(0, 150).flatMap(size => {
      const dims = Object.fromEntries(
        Object.entries(size).map(([key, value]) => [key, typeof value === 'number' ? value / 1000 : value]),
      );
      const drawing = definition.drawing?.(dims);
      return drawing ? [{ name, dims, drawing }] : [];
    }),
  );

  test('they do', () => {
    const known = [...categories].filter(([, { sizes }]) => sizes.length > 0).map(([name]) => name);
    expect(new Set(drawn.map(({ name }) => name))).toEqual(new Set(known));
  });

  test.each([
    ['a desk', 440, 330],
    ['a phone', 358, 330],
    ['a form', 330, 230],
  ])(
    'in the room of %s, with every dimension inside the picture and every figure a number',
    (_, width, height) => {
      for (const { name, dims, drawing } of drawn) {
        const laid = layOut(drawing, { width, height });
        const what = `${name} ${JSON.stringify(dims)}`;
        expect(laid.width, what).toBeLessThanOrEqual(width);
        expect(laid.height, what).toBeLessThanOrEqual(height);
        expect(laid.dimensions.length, what).toBeGreaterThan(0);
        for (const { box, text } of laid.dimensions.map(each => each.laid)) {
          expect(Math.min(box.x1, box.y1), what).toBeGreaterThanOrEqual(-0.001);
          expect(box.x2, what).toBeLessThanOrEqual(laid.width + 0.001);
          expect(box.y2, what).toBeLessThanOrEqual(laid.height + 0.001);
          expect(text.words, what).not.toMatch(/NaN|undefined|null/);
        }
        for (const { view, place } of laid.views)
          for (const path of [view.outlines, view.thin, view.hidden, view.centre, view.hatch].flat())
            expect(pathData(path, place, laid.k), what).not.toMatch(/NaN|undefined|Infinity/);
      }
    },
  );

  test('dimensions of one drawing do not run through each other', () => {
    for (const { name, dims, drawing } of drawn) {
      const { dimensions } = layOut(drawing, { width: 440, height: 330 });
      const upright = dimensions.filter(({ laid }) => laid.text.turn === -90).map(({ laid }) => laid.text.x);
      for (const [i, x] of upright.entries())
        for (const other of upright.slice(i + 1))
          expect(Math.abs(x - other), `${name} ${JSON.stringify(dims)}`).toBeGreaterThanOrEqual(15);
    }
  });

  test('what is not known is not drawn', () => {
    for (const [name, { drawing }] of categories) expect(drawing?.({}) ?? null, name).toBeNull();
  });

  test('a number that is no size makes no drawing: a bore as wide as the outside', () => {
    expect(categories.get('bearing')!.drawing!({ bore: 11, od: 11, width: 4 })).toBeNull();
    expect(categories.get('washer')!.drawing!({ id: 8, od: 7, thickness: 1 })).toBeNull();
  });
});

/** The lengths between the ends of a dimension, and what is written at it. */
const written = (drawing: Drawing, key: string) => {
  const line = drawing.dimensions.find(each => each.key === key)!;
  return { length: Math.hypot(line.to[0] - line.from[0], line.to[1] - line.from[1]), text: line.text };
};

describe('drawn to scale from its numbers', () => {
  test.each([
    ['bearing', { bore: 5, od: 11, width: 4 }, { bore: [5, 'Ø5'], od: [11, 'Ø11'], width: [4, '4'] }],
    [
      'washer',
      { id: 3.2, od: 7, thickness: 0.5 },
      { id: [3.2, 'Ø3.2'], od: [7, 'Ø7'], thickness: [0.5, '0.5'] },
    ],
    ['o-ring', { id: 9.246, cs: 1.778 }, { id: [9.246, 'Ø9.246'], cs: [1.778, 'Ø1.778'] }],
    ['pin', { dia: 3, length: 12 }, { dia: [3, 'Ø3'], length: [12, '12'] }],
    ['screw', { thread: 'M3', pitch: 0.5, length: 8 }, { thread: [3, 'M3'], length: [8, '8'] }],
    // ASME B1.1: a number 6 thread is 0.1380 in over its crests
    ['screw', { thread: '6-32', length: 9.525 }, { thread: [3.505, '6-32'], length: [9.525, '9.525'] }],
    ['spring', { wire: 1.2, od: 8, length: 17 }, { wire: [1.2, 'Ø1.2'], od: [8, 'Ø8'], length: [17, '17'] }],
    // ISO 21771: reference diameter = module × teeth
    ['gear', { module: 1, teeth: 20 }, { module: [20, 'Ø20'] }],
  ] as const)('%s %o', (name, dims, expected) => {
    const drawing = categories.get(name)!.drawing!(dims)!;
    for (const [key, [length, text]] of Object.entries(expected) as [string, [number, string]][]) {
      expect(written(drawing, key).length, key).toBeCloseTo(length, 2);
      expect(written(drawing, key).text, key).toBe(text);
    }
  });

  test('a countersunk screw is measured overall, a pan head under the head', () => {
    const of = (head: string) =>
      categories.get('screw')!.drawing!({ thread: 'M3', pitch: 0.5, length: 8 }, { head })!;
    expect(of('countersunk').width).toBeCloseTo(8, 9);
    // ISO 7045: a pan head M3 is 2.4 high and 5.6 wide
    expect(of('pan').width).toBeCloseTo(8 + 2.4, 9);
    expect(written(of('pan'), 'headDiameter').text).toBe('Ø5.6');
  });

  test('a head is drawn as it was measured, also an unknown one', () => {
    const of = (dims: object, head: string) =>
      categories.get('screw')!.drawing!({ thread: 'M3', pitch: 0.5, length: 8, ...dims }, { head })!;
    const pan = of({ headDiameter: 5.45, headHeight: 2.3 }, 'pan');
    expect(written(pan, 'headDiameter').text).toBe('Ø5.45');
    expect(written(pan, 'headHeight').text).toBe('2.3');
    expect(pan.width).toBeCloseTo(8 + 2.3, 9);
    expect(written(of({ acrossFlats: 6 }, 'hex'), 'acrossFlats').length).toBeCloseTo(6, 9);
  });

  test('a head that the list does not state is dashed and has no dimension', () => {
    const open = categories.get('screw')!.drawing!({ thread: 'M3', pitch: 0.5, length: 8 })!;
    expect(open.hidden.length).toBeGreaterThan(0);
    expect(open.dimensions.map(({ key }) => key).toSorted()).toEqual(['length', 'thread']);
  });
});
