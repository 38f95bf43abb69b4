import type { FoundDesignation } from './find-designations.ts';
import type { Head } from './reading/head.ts';
import type { CategoryName, ReadAs } from './reading/reading.ts';

/** Which category a line is of, and why. */
export interface Choice {
  category: ReadAs;
  head: Head | null;
  designation: FoundDesignation | null;
  /** Every designation in the line. */
  designations: readonly FoundDesignation[];
  features: string[];
  notes: string[];
  others: CategoryName[];
  /** Words that no dictionary holds. */
  unknownWords: number;
}
