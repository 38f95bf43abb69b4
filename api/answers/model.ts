import { z } from '@hono/zod-openapi';
import { duty, dutyAnswer, id, modelRef, named } from './common.ts';
import { diagram } from './diagram.ts';
import { line } from './part.ts';
import { sizeCount } from './pasted.ts';

export const makers = z
  .object({ makers: z.array(named.extend({ models: z.number().int(), parts: z.number().int() })) })
  .openapi('Makers');
export type Makers = z.infer<typeof makers>;

export const modelSummary = modelRef
  .extend({ diagrams: z.number().int(), lines: z.number().int(), duty: dutyAnswer })
  .openapi('ModelSummary');
export type ModelSummary = z.infer<typeof modelSummary>;

export const models = z.object({ models: z.array(modelSummary) }).openapi('Models');
export type Models = z.infer<typeof models>;

/** A model with its lists, its lines, and the bearings that a full set for it takes. */
export const model = z
  .object({
    id,
    name: z.string(),
    maker: named,
    duty: dutyAnswer,
    lists: z.array(diagram),
    lines: z.array(line),
    bearings: z.array(sizeCount),
  })
  .openapi('Model');
export type ModelAnswer = z.infer<typeof model>;

/** The tools that a model's parts take; see `toolsNeeded` of the indexer. */
export const modelTools = z
  .object({
    tools: z.array(
      z.object({ kind: z.string(), size: z.string(), source: z.string(), refs: z.array(z.string()) }),
    ),
    /** Parts of which head, drive or type is not stated, with every tool that may be. */
    either: z.array(
      z.object({
        refs: z.array(z.string()),
        tools: z.array(z.object({ kind: z.string(), size: z.string() })),
      }),
    ),
    /** Fasteners and rings of which the size is not known. */
    unknown: z.array(z.string()),
    leftHand: z.array(z.string()),
    handNotStated: z.number().int(),
  })
  .openapi('ModelTools');
export type ModelToolsAnswer = z.infer<typeof modelTools>;

/** A person's answer. `not-stated` takes it back. */
export const dutyRequest = z.object({ duty }).openapi('DutyRequest');
export type DutyRequest = z.infer<typeof dutyRequest>;
