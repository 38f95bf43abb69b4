import { z } from '@hono/zod-openapi';

export const health = z
  .object({ ok: z.literal(true), engine: z.enum(['postgres', 'meilisearch']) })
  .openapi('Health');
export type Health = z.infer<typeof health>;
