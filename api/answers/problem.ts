import { z } from '@hono/zod-openapi';

/** A refusal as RFC 9457 problem details, with the place it is about and what to do. */
export const problem = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.number().int(),
    detail: z.string(),
    code: z.string(),
    place: z.string(),
    remedy: z.string(),
    requestId: z.string(),
  })
  .openapi('Problem');
export type Problem = z.infer<typeof problem>;
