import { type Line, LineMark } from '../ui/marks.tsx';

/** How we know a size, as a line and its words. */
const kinds: Record<string, { line: Line; word: string }> = {
  corrected: { line: 'thick', word: 'checked by a person' },
  printed: { line: 'thick', word: 'printed' },
  designation: { line: 'thin', word: 'from its designation' },
  measured: { line: 'dimension', word: 'measured here' },
  successor: { line: 'chain', word: 'same as its successor' },
  stated: { line: 'dashed', word: 'stated by a supplier' },
  doubtful: { line: 'break', word: 'doubtful' },
};

interface EvidenceProps {
  kind: string;
  /** As printed, measured or said. */
  detail?: string;
}

export function Evidence({ kind, detail }: EvidenceProps) {
  const known = kinds[kind] ?? kinds.doubtful!;
  return (
    <span className="evidence">
      <span className="marked">
        <LineMark line={known.line} />
        {known.word}
      </span>
      {detail ? <span className="label evidence-detail">{detail}</span> : null}
    </span>
  );
}

/** A certainty as a person says it: sure, 98 in 100. */
export function certaintyWords(certainty: number): string {
  const inHundred = Math.min(99, Math.round(certainty * 100));
  if (certainty >= 0.9) return `sure, ${inHundred} in 100`;
  if (certainty >= 0.7) return `likely, ${inHundred} in 100`;
  if (certainty >= 0.005) return `unsure, ${Math.max(1, inHundred)} in 100`;
  return 'no';
}
