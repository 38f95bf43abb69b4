import type { Candidate } from '../../api/answers/index.ts';
import { Mark, type Shape } from '../ui/marks.tsx';

const judgements: Record<Candidate['verdict'], { shape: Shape; word: string }> = {
  fits: { shape: 'disc', word: 'fits' },
  'fits-with-care': { shape: 'half-disc', word: 'fits with care' },
  'does-not-fit': { shape: 'barred', word: 'does not fit' },
};

/** A judgement as its circle and its word. */
export function Verdict({ verdict }: { verdict: Candidate['verdict'] }) {
  const { shape, word } = judgements[verdict];
  return (
    <span className="marked verdict">
      <Mark shape={shape} />
      {word}
    </span>
  );
}
