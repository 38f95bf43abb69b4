import { useId } from 'react';
import './drawing.css';
import type { Dims } from '../../indexer/index.ts';

/** Categories whose section is a rectangle between two radii, and the names of their numbers. */
const rings: Record<string, [inner: string, outer: string, wide: string]> = {
  bearing: ['bore', 'od', 'width'],
  'roller-clutch': ['bore', 'od', 'width'],
  bushing: ['id', 'od', 'length'],
  washer: ['id', 'od', 'thickness'],
  shim: ['id', 'od', 'thickness'],
  seal: ['id', 'od', 'thickness'],
};

/** True where the difference of two sizes shows in the section of a ring. */
export const canShowDifference = (category: string): boolean => category in rings;

interface Ring {
  inner: number;
  outer: number;
  wide: number;
}

function ringOf(category: string, dims: Dims): Ring | null {
  const names = rings[category];
  const [inner, outer, wide] = names?.map(name => dims[name]) ?? [];
  return typeof inner === 'number' && typeof outer === 'number' && typeof wide === 'number'
    ? { inner: inner / 2, outer: outer / 2, wide }
    : null;
}

/**
 * The upper half sections of two rings, one over the other, on their centre line; what differs is hatched. An empty place
 * where the two are no rings.
 */
export function Difference({ category, a, b }: { category: string; a: Dims; b: Dims }) {
  const pattern = useId();
  const [first, second] = [ringOf(category, a), ringOf(category, b)];
  if (!first || !second) return <span />;
  const wide = Math.max(first.wide, second.wide);
  const outer = Math.max(first.outer, second.outer);
  const inner = Math.min(first.inner, second.inner);
  // The rings are shown close to the centre line, so that the section itself can be seen.
  const k = Math.min(60 / wide, 44 / (outer - inner));
  const left = (84 - wide * k) / 2;
  const y = (radius: number) => 6 + (outer - radius) * k;
  const base = y(inner) + 14;
  const patches = [
    first.wide !== second.wide && {
      x: left + Math.min(first.wide, second.wide) * k,
      y: y(first.outer),
      width: Math.abs(first.wide - second.wide) * k,
      height: (first.outer - first.inner) * k,
    },
    first.outer !== second.outer && {
      x: left,
      y: y(outer),
      width: first.wide * k,
      height: Math.abs(first.outer - second.outer) * k,
    },
    first.inner !== second.inner && {
      x: left,
      y: y(Math.max(first.inner, second.inner)),
      width: first.wide * k,
      height: Math.abs(first.inner - second.inner) * k,
    },
  ].filter(patch => patch !== false);
  return (
    <svg
      className="difference"
      width="84"
      height={base + 6}
      viewBox={`0 0 84 ${base + 6}`}
      aria-hidden="true"
    >
      <defs>
        <pattern
          id={pattern}
          width="4"
          height="4"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line className="hatching" x1="0" y1="0" x2="0" y2="4" />
        </pattern>
      </defs>
      <rect
        className="outline"
        x={left}
        y={y(first.outer)}
        width={first.wide * k}
        height={(first.outer - first.inner) * k}
      />
      {patches.map(patch => (
        <rect key={`${patch.x} ${patch.y}`} className="patch" {...patch} fill={`url(#${pattern})`} />
      ))}
      <path className="axis" d={`M${left - 8} ${base}H${left + wide * k + 8}`} />
    </svg>
  );
}
