import { z } from 'zod';

/** The newest format that this program reads: 1 holds everything there is, 2 one bench. */
export const formatVersion = 2;

/**
 * The last member of a backup, `manifest.json`: what the others must be. A backup is a tar, gzipped, of members
 * `tables/<table>/<number>.copy`: some whole rows of the table, as COPY writes them in its text format.
 */
export const manifestShape = z.object({
  kind: z.literal('fettlebench backup'),
  format: z.number().int().positive(),
  madeAt: z.iso.datetime(),
  /** The one bench that it holds; left out, it holds everything. */
  bench: z.object({ id: z.uuid(), name: z.string() }).optional(),
  /** Every migration of the schema, in order; their number is its version. */
  schema: z.array(z.object({ name: z.string(), sha256: z.string() })).min(1),
  tables: z.array(
    z.object({
      name: z.string(),
      columns: z.array(z.string()).min(1),
      rows: z.number().int().nonnegative(),
      /** The sum of the rows' digests, whatever their order. */
      digest: z.string(),
    }),
  ),
  members: z.array(z.object({ name: z.string(), bytes: z.number().int(), sha256: z.string() })),
});

export type Manifest = z.infer<typeof manifestShape>;
export type TableEntry = Manifest['tables'][number];

export const manifestName = 'manifest.json';

/** The table that a member holds a piece of; null for a name that is none. */
export const tableOf = (member: string) => /^tables\/([a-z_]+)\/\d{6}\.copy$/.exec(member)?.[1] ?? null;
export const memberName = (table: string, number: number) =>
  `tables/${table}/${String(number).padStart(6, '0')}.copy`;
