import { z } from '@hono/zod-openapi';
import { id } from './common.ts';

/** A fraction of a page's width or height, from its top left. */
const fraction = z.number().min(0).max(1);
const ref = z.string().trim().min(1).max(20);

export const newBalloon = z
  .object({ page: z.number().int().positive(), ref, x: fraction, y: fraction })
  .openapi('NewBalloon');
export type NewBalloon = z.infer<typeof newBalloon>;

/** Where the balloon really is on its page, or what it really says. */
export const balloonChange = z
  .object({ ref, x: fraction, y: fraction })
  .partial()
  .refine(change => Object.keys(change).length > 0, 'Say what to change: ref, or x and y.')
  .refine(change => (change.x === undefined) === (change.y === undefined), 'x and y go together.')
  .openapi('BalloonChange');
export type BalloonChange = z.infer<typeof balloonChange>;

export const drawing = z
  .object({
    /** Width and height in points as the page is shown. Empty where the document is a list alone. */
    pages: z.array(z.object({ number: z.number().int(), width: z.number(), height: z.number() })),
    balloons: z.array(
      newBalloon.extend({
        id,
        by: z.enum(['reading', 'person']),
        /** The lines it stands for: of this diagram, else of the same model's other lists. */
        lines: z.array(z.object({ diagram: id, row: id })),
      }),
    ),
  })
  .openapi('Drawing');
export type DrawingAnswer = z.infer<typeof drawing>;

/** Where on a diagram's pages words are written, in reading order. */
export const writtenFound = z
  .object({
    places: z.array(
      z.object({
        page: z.number().int(),
        text: z.string(),
        left: fraction,
        top: fraction,
        right: fraction,
        bottom: fraction,
      }),
    ),
    /** There are more than are shown. */
    more: z.boolean(),
  })
  .openapi('WrittenFound');
export type WrittenFound = z.infer<typeof writtenFound>;

/** What a change left, and the correction by which it can be taken back. */
export const balloonChanged = z.object({ correction: id, drawing }).openapi('BalloonChanged');
export type BalloonChanged = z.infer<typeof balloonChanged>;
