import { useId } from 'react';
import type { CandidateAnswer, MeasureAnswer } from '../../indexer/index.ts';

/** From where to where a picture of limits runs, in millimetres. */
export interface Span {
  from: number;
  to: number;
}

/** A span that shows every candidate's limits and the reading with its doubt, with some room round. */
export function spanOf(dimension: string, { candidates, taken }: MeasureAnswer, rows: number): Span | null {
  const read = readingOf(dimension, taken);
  if (!read) return null;
  const ends = [
    read.value - read.uncertainty,
    read.value + read.uncertainty,
    ...candidates
      .slice(0, rows)
      .flatMap(each => (each.limits[dimension] ?? []).flatMap(({ min, max }) => [min, max])),
  ];
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  const room = Math.max((to - from) * 0.12, 0.005);
  return { from: from - room, to: to + room };
}

export const readingOf = (dimension: string, taken: MeasureAnswer['taken']) =>
  taken.find(each => each.dimension === dimension && each.instrument !== 'pin');

const percent = (value: number, { from, to }: Span) => `${(100 * (value - from)) / (to - from)}%`;

/** Where a reading and its doubt stand against the limits that one size is made to. */
export function LimitsBar({
  candidate,
  dimension,
  span,
  read,
  told,
}: {
  candidate: CandidateAnswer;
  dimension: string;
  span: Span;
  read: { value: number; uncertainty: number };
  told: boolean;
}) {
  const pattern = useId();
  const low = percent(read.value - read.uncertainty, span);
  return (
    <svg className="limits" width="100%" height="32" aria-hidden="true">
      <defs>
        <pattern
          id={pattern}
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line className="hatch" x1="0" y1="0" x2="0" y2="5" />
        </pattern>
      </defs>
      <rect className="doubt" x={low} y="0" height="32" width={width(2 * read.uncertainty, span)} />
      {(candidate.limits[dimension] ?? []).map(({ min, max }) => (
        <rect
          key={`${min} ${max}`}
          className={told ? 'made told' : 'made'}
          x={percent(min, span)}
          y="10"
          height="12"
          width={width(Math.max(max - min, (span.to - span.from) / 200), span)}
          fill={told ? `url(#${pattern})` : 'none'}
        />
      ))}
      <line className="read" x1={percent(read.value, span)} x2={percent(read.value, span)} y1="0" y2="32" />
    </svg>
  );
}

const width = (length: number, { from, to }: Span) => `${(100 * length) / (to - from)}%`;

/** The rule over the bars: a few round figures. */
export function Scale({ span }: { span: Span }) {
  const step = stepOf((span.to - span.from) / 5);
  const ticks: number[] = [];
  for (let tick = Math.ceil(span.from / step) * step; tick <= span.to; tick += step) ticks.push(tick);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return (
    <svg className="limits scale" width="100%" height="26" aria-hidden="true">
      <line x1="0" x2="100%" y1="25" y2="25" />
      {ticks.map(tick => (
        <g key={tick}>
          <line x1={percent(tick, span)} x2={percent(tick, span)} y1="19" y2="25" />
          <text x={percent(tick, span)} y="14" textAnchor="middle">
            {tick.toFixed(decimals)}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** The least of 1, 2, 5 times a power of ten that is not under a length. */
function stepOf(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * (least <= power ? 1 : least <= 2 * power ? 2 : least <= 5 * power ? 5 : 10);
}
