import type { Candidate, Made } from '../categories/measurable.ts';

/** Between which limits a bearing's dimension is made, in micrometres. */
export const limits = (candidate: Candidate, key: 'bore' | 'od' | 'width') => candidate.made[key] as Made;
