import type { DimensionLine } from '../../indexer/index.ts';
import type { Place } from './path.ts';
import { pixelsPerMm } from './scale.ts';

/** Below this many pixels the arrows stand outside. */
const narrow = 26;
const letter = 7.8;

interface Line {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

/**
 * One dimension after ISO 129-1: extension lines from just off the outline, closed arrows, the figure above the line
 * and read from below or from the right. Lines run along or across the sheet.
 */
export function Dimension({ line, place, focused }: { line: DimensionLine; place: Place; focused: boolean }) {
  const [fromX, fromY] = place(line.from);
  const [toX, toY] = place(line.to);
  const off = line.offset * pixelsPerMm;
  const along = Math.abs(toX - fromX) >= Math.abs(toY - fromY);
  return (
    <g className={focused ? 'dimension focused' : 'dimension'}>
      {along ? (
        <Along
          x1={Math.min(fromX, toX)}
          x2={Math.max(fromX, toX)}
          y={off >= 0 ? Math.max(fromY, toY) + off : Math.min(fromY, toY) + off}
          start={fromX <= toX ? fromY : toY}
          end={fromX <= toX ? toY : fromY}
          text={line.text}
        />
      ) : (
        <Across
          y1={Math.min(fromY, toY)}
          y2={Math.max(fromY, toY)}
          x={off >= 0 ? Math.max(fromX, toX) + off : Math.min(fromX, toX) + off}
          start={fromY <= toY ? fromX : toX}
          end={fromY <= toY ? toX : fromX}
          text={line.text}
        />
      )}
    </g>
  );
}

interface AlongProps {
  x1: number;
  x2: number;
  /** Height of the dimension line. */
  y: number;
  /** Heights of the two points it measures between. */
  start: number;
  end: number;
  text: string;
}

function Along({ x1, x2, y, start, end, text }: AlongProps) {
  const width = text.length * letter;
  const small = x2 - x1 < narrow;
  const inside = width + 6 <= x2 - x1 || (small && width <= x2 - x1);
  const reach = inside ? 18 : 20 + width;
  const lines: Line[] = [
    extension(x1, start, y),
    extension(x2, end, y),
    small
      ? { x1: x1 - 18, y1: y, x2: x2 + reach, y2: y }
      : { x1, y1: y, x2: inside ? x2 : x2 + width + 10, y2: y },
  ];
  return (
    <>
      <Lines lines={lines} />
      <Arrow x={x1} y={y} turn={small ? 0 : 180} />
      <Arrow x={x2} y={y} turn={small ? 180 : 0} />
      {inside ? (
        <text x={(x1 + x2) / 2} y={y - 5} textAnchor="middle">
          {text}
        </text>
      ) : (
        <text x={x2 + (small ? 16 : 8)} y={y - 5}>
          {text}
        </text>
      )}
    </>
  );
}

interface AcrossProps {
  y1: number;
  y2: number;
  x: number;
  start: number;
  end: number;
  text: string;
}

function Across({ y1, y2, x, start, end, text }: AcrossProps) {
  const width = text.length * letter;
  const small = y2 - y1 < narrow;
  const inside = width <= y2 - y1;
  const sideways = (from: number, at: number): Line => {
    const side = x < from ? -1 : 1;
    return { x1: from + 2 * side, y1: at, x2: x + 5 * side, y2: at };
  };
  const lines: Line[] = [
    sideways(start, y1),
    sideways(end, y2),
    small
      ? { x1: x, y1: y1 - 18, x2: x, y2: y2 + (inside ? 18 : 20 + width) }
      : { x1: x, y1, x2: x, y2: inside ? y2 : y2 + width + 10 },
  ];
  const middle = (y1 + y2) / 2;
  const below = y2 + (small ? 16 : 8) + width;
  return (
    <>
      <Lines lines={lines} />
      <Arrow x={x} y={y1} turn={small ? 90 : -90} />
      <Arrow x={x} y={y2} turn={small ? -90 : 90} />
      <text
        x={x - 5}
        y={inside ? middle : below}
        textAnchor={inside ? 'middle' : 'start'}
        transform={`rotate(-90 ${x - 5} ${inside ? middle : below})`}
      >
        {text}
      </text>
    </>
  );
}

/** From just off the point to just past the dimension line. */
function extension(x: number, from: number, y: number): Line {
  const side = y < from ? -1 : 1;
  return { x1: x, y1: from + 2 * side, x2: x, y2: y + 5 * side };
}

function Lines({ lines }: { lines: Line[] }) {
  return lines.map(line => (
    <line key={`${line.x1} ${line.y1} ${line.x2} ${line.y2}`} className="thin second" {...line} />
  ));
}

/** A closed, filled arrow with its tip at x, y; unturned it points right. */
function Arrow({ x, y, turn }: { x: number; y: number; turn: number }) {
  return (
    <path className="arrow" d="M0 0L-9 1.7L-9 -1.7Z" transform={`translate(${x} ${y}) rotate(${turn})`} />
  );
}
