import { z } from '@hono/zod-openapi';

const engine = z.enum(['postgres', 'meilisearch']);

export const health = z.object({ ok: z.literal(true), engine }).openapi('Health');
export type Health = z.infer<typeof health>;

/** Whether the service can do its work, and what of it stands in the way. */
export const readiness = z
  .object({
    ready: z.boolean(),
    database: z.enum(['here', 'away']),
    /** `older`: not yet brought to what this process knows; `newer`: a newer program has brought it further. */
    schema: z.enum(['current', 'older', 'newer', 'unknown']),
    /** `behind` and `away` still find, more slowly or by the database. */
    search: z.object({ engine, state: z.enum(['here', 'behind', 'away']) }),
    /** `elsewhere`: the database's disk is not this machine's. */
    disk: z.enum(['room', 'short', 'elsewhere']),
  })
  .openapi('Readiness');
export type Readiness = z.infer<typeof readiness>;
