import type { NewNeed } from '../../api/answers/index.ts';

/** What puts a need into the job, and whether it is at it. */
export interface PutProps {
  onPut: (need: NewNeed, what: string) => void;
  busy: boolean;
}
