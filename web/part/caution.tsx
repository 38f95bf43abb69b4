import type { ReactNode } from 'react';
import { Triangle } from '../ui/marks.tsx';
import './caution.css';

/** What can hurt someone, said at the spot. */
export function Caution({ title, children }: { title: string; children?: ReactNode }) {
  return (
    <div className="caution">
      <Triangle />
      <strong>{title}</strong>
      {children ? <div>{children}</div> : null}
    </div>
  );
}

interface MakersPartOnlyProps {
  /** Says first that an equal size is no approval: where sizes are what is looked at. */
  sameSize?: boolean;
  children?: ReactNode;
}

/** Where someone can be hurt, and agreement of sizes is no approval. */
export function MakersPartOnly({ sameSize = true, children }: MakersPartOnlyProps) {
  return (
    <Caution title={sameSize ? "Same size; not an approval: maker's part only." : "Maker's part only."}>
      {children}
      <p className="small">
        Follow the maker's instructions and the local code, and leave the work to a licensed person where one
        is required.
      </p>
    </Caution>
  );
}

/** What a line's words tell of a danger in taking it off. */
export interface Hazard {
  title: string;
  what: string;
}

const leftHand: Hazard = {
  title: 'Left-hand thread',
  what: 'Turn clockwise to undo.',
};
const underLoad: Hazard = {
  title: 'Springs and clips fly',
  what: 'Eye protection on, a cloth over the work, face out of line.',
};

/** The hazards of a part by what it is. The list tells of some left-hand threads, never of all. */
export function hazardsOf(category: string, attrs: Record<string, string | boolean>): Hazard[] {
  const hazards: Hazard[] = [];
  if (attrs.hand === 'left' && category !== 'spring') hazards.push(leftHand);
  if (category === 'spring' || category === 'retaining-ring') hazards.push(underLoad);
  return hazards;
}
