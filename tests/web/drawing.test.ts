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
    const { place, k } = layOut(plain(10, 10), { width: 400, height: 400 });
    expect(k).toBeCloseTo(5 * pixelsPerMm, 9);
    expect(place([3, 0])[0] - place([1, 0])[0]).toBeCloseTo(2 * k, 9);
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
    definition.drawing ? definition.sizes.slice(0, 200).map(size => ({ name, definition, size })) : [],
  );

  test('there are some', () => expect(drawn.length).toBeGreaterThan(10));

  test('within the room, with every dimension inside the picture and every figure a number', () => {
    for (const { name, definition, size } of drawn) {
      const dims = Object.fromEntries(
        Object.entries(size).map(([key, value]) => [key, typeof value === 'number' ? value / 1000 : value]),
      );
      const drawing = definition.drawing!(dims);
      const { width, height, dimensions, place, k } = layOut(drawing, { width: 420, height: 330 });
      const what = `${name} ${JSON.stringify(dims)}`;
      expect(Math.max(width / 420, height / 330), what).toBeLessThanOrEqual(1);
      expect(dimensions.length, what).toBeGreaterThan(0);
      for (const { laid } of dimensions) {
        expect(laid.box.x1, what).toBeGreaterThanOrEqual(-0.001);
        expect(laid.box.y1, what).toBeGreaterThanOrEqual(-0.001);
        expect(laid.box.x2, what).toBeLessThanOrEqual(width + 0.001);
        expect(laid.box.y2, what).toBeLessThanOrEqual(height + 0.001);
        expect(laid.text.words, what).not.toMatch(/NaN|undefined|null/);
      }
      for (const path of [...drawing.outlines, ...drawing.thin, ...drawing.hatch])
        expect(pathData(path, place, k), what).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});
