import './marks.css';

/**
 * Marks by their shape. A square is a thing in its place, a circle a judgement, a line how we know, a triangle what
 * can hurt. Always drawn beside their word, so each is hidden from a reader of the words.
 */
const shapes = {
  'square-full': <rect x="2" y="2" width="12" height="12" className="full edge" />,
  'square-half': (
    <>
      <rect x="2" y="2" width="12" height="12" className="edge" />
      <rect x="2" y="9" width="12" height="5" className="full" />
    </>
  ),
  'square-empty': <rect x="2" y="2" width="12" height="12" className="edge" />,
  disc: <circle cx="8" cy="8" r="7" className="full" />,
  'half-disc': (
    <>
      <circle cx="8" cy="8" r="6" className="edge" />
      <path d="M8 2A6 6 0 0 0 8 14Z" className="full" />
    </>
  ),
  barred: (
    <>
      <circle cx="8" cy="8" r="6" className="edge" />
      <path d="M3.8 12.2L12.2 3.8" className="edge" />
    </>
  ),
} as const;

const lines = {
  dimension: (
    <>
      <path d="M1 0V10M29 0V10M1 5H29" className="edge thin" />
      <path d="M1.5 5L8.5 2.6V7.4ZM28.5 5L21.5 2.6V7.4Z" className="full" />
    </>
  ),
  thick: <path d="M0 5H30" className="edge heavy" />,
  thin: <path d="M0 5H30" className="edge thin" />,
  dashed: <path d="M0 5H30" className="edge medium dashed" />,
  chain: <path d="M0 5H30" className="edge medium chain" />,
  break: <path d="M0 5H8L11 1L16 9L19 5H30" className="edge medium" />,
} as const;

export type Shape = keyof typeof shapes;
export type Line = keyof typeof lines;

export function Mark({ shape }: { shape: Shape }) {
  return (
    <svg className="mark" viewBox="0 0 16 16" aria-hidden="true">
      {shapes[shape]}
    </svg>
  );
}

export function LineMark({ line }: { line: Line }) {
  return (
    <svg className="mark line" viewBox="0 0 30 10" aria-hidden="true">
      {lines[line]}
    </svg>
  );
}

/** The triangle: beside a caution's own words. */
export function Triangle() {
  return (
    <svg className="mark triangle" viewBox="0 0 26 24" aria-hidden="true">
      <path d="M13 2L24.5 22H1.5Z" className="edge" />
      <path d="M13 9V15.5M13 17.6V19.6" className="edge" />
    </svg>
  );
}

export function Cross() {
  return (
    <svg className="mark cross" viewBox="0 0 10 10" aria-hidden="true">
      <path d="M1 1L9 9M9 1L1 9" className="edge medium" />
    </svg>
  );
}
