import { describe, expect, test } from 'vitest';
import {
  centredOn,
  inPane,
  kept,
  nearest,
  onPage,
  wholePage,
  zoomed,
} from '../../web/diagrams/exploded/view.ts';

const pane = { width: 400, height: 300 };

describe('wholePage(page, pane)', () => {
  test('a landscape page fills the width', () =>
    expect(wholePage({ width: 800, height: 400 }, pane)).toEqual({ width: 400, height: 200 }));
  test('a portrait page fills the height', () =>
    expect(wholePage({ width: 300, height: 600 }, pane)).toEqual({ width: 150, height: 300 }));
});

describe('kept(view, whole, pane)', () => {
  const whole = { width: 400, height: 200 };
  test('a page smaller than its pane stands in the middle', () =>
    expect(kept({ x: -90, y: 70, zoom: 1 }, whole, pane)).toEqual({ x: 0, y: 50, zoom: 1 }));
  test('a larger one leaves no gap on either side', () => {
    expect(kept({ x: 50, y: 10, zoom: 2 }, whole, pane)).toEqual({ x: 0, y: 0, zoom: 2 });
    expect(kept({ x: -900, y: -900, zoom: 2 }, whole, pane)).toEqual({ x: -400, y: -100, zoom: 2 });
  });
  test('no smaller than whole, no larger than twelve times', () => {
    expect(kept({ x: 0, y: 0, zoom: 0.2 }, whole, pane).zoom).toBe(1);
    expect(kept({ x: 0, y: 0, zoom: 99 }, whole, pane).zoom).toBe(12);
  });
});

test('zoomed(view, factor, about) leaves the point of the page under the finger', () => {
  const whole = { width: 400, height: 200 };
  const about = { x: 120, y: 90 };
  const before = { x: -30, y: -20, zoom: 1.5 };
  const at = onPage(about, before, whole);
  const after = inPane(at, zoomed(before, 1.7, about), whole);
  expect(after.x).toBeCloseTo(about.x, 9);
  expect(after.y).toBeCloseTo(about.y, 9);
});

test('centredOn(spot, zoom, …) brings the spot into the middle, as far as the page reaches', () => {
  const whole = { width: 400, height: 300 };
  const view = centredOn({ x: 0.5, y: 0.5 }, 3, { x: 0, y: 0, zoom: 1 }, whole, pane);
  expect(inPane({ x: 0.5, y: 0.5 }, view, whole)).toEqual({ x: 200, y: 150 });
  const corner = centredOn({ x: 0, y: 0 }, 3, { x: 0, y: 0, zoom: 1 }, whole, pane);
  expect(corner).toEqual({ x: 0, y: 0, zoom: 3 });
});

describe('nearest(spots, point, view, whole)', () => {
  const whole = { width: 400, height: 300 };
  const view = { x: 0, y: 0, zoom: 1 };
  const spots = [
    { ref: '4', x: 0.25, y: 0.5 },
    { ref: '5', x: 0.3, y: 0.5 },
  ];
  test('the nearer of two within a fingertip', () => {
    expect(nearest(spots, { x: 106, y: 150 }, view, whole)?.ref).toBe('4');
    expect(nearest(spots, { x: 113, y: 150 }, view, whole)?.ref).toBe('5');
  });
  test('none beyond 22 pixels', () => {
    expect(nearest(spots, { x: 100, y: 172 }, view, whole)?.ref).toBe('4');
    expect(nearest(spots, { x: 100, y: 172.1 }, view, whole)).toBeNull();
  });
});
