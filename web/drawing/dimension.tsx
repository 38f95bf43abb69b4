import type { LaidDimension } from './lay-dimension.ts';

/** One dimension as lines, closed arrows and its figure. */
export function Dimension({ laid, focused }: { laid: LaidDimension; focused: boolean }) {
  const { lines, arrows, text } = laid;
  return (
    <g className={focused ? 'dimension focused' : 'dimension'}>
      {lines.map(line => (
        <line key={`${line.x1} ${line.y1} ${line.x2} ${line.y2}`} className="thin second" {...line} />
      ))}
      {arrows.map(({ x, y, turn }) => (
        <path
          key={`${x} ${y}`}
          className="arrow"
          d="M0 0L-9 1.7L-9 -1.7Z"
          transform={`translate(${x} ${y}) rotate(${turn})`}
        />
      ))}
      <text
        x={text.x}
        y={text.y}
        textAnchor={text.anchor}
        transform={text.turn === 0 ? undefined : `rotate(${text.turn} ${text.x} ${text.y})`}
      >
        {text.words}
      </text>
    </g>
  );
}
