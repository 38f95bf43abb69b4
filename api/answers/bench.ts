import { z } from '@hono/zod-openapi';
import { id, instant } from './common.ts';
import { role } from './people.ts';

export const bench = z
  .object({
    id,
    name: z.string(),
    /** The demo bench, filled with invented makers. */
    demo: z.boolean(),
    createdAt: instant,
    openedAt: instant.nullable(),
    /** What you may do there; null where nobody signs in, and everybody may do everything. */
    role: role.nullable(),
  })
  .openapi('Bench');
export type Bench = z.infer<typeof bench>;

/** Every bench, last opened first; `current` answers reads that name none. */
export const benches = z.object({ benches: z.array(bench), current: id.nullable() }).openapi('Benches');
export type Benches = z.infer<typeof benches>;

export const newBench = z.object({ name: z.string().trim().min(1).max(80) }).openapi('NewBench');
export type NewBench = z.infer<typeof newBench>;
