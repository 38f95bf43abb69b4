import type { DrawingAnswer } from '../../../api/answers/index.ts';

/** A reference number on a drawing, with the lines it stands for. */
export type Balloon = DrawingAnswer['balloons'][number];
