import { createHash } from 'node:crypto';
import { and, eq, sql } from 'drizzle-orm';
import type { Duty } from '../../indexer/index.ts';
import type { GivenColumns } from '../../indexer/reading/column-meanings.ts';
import type { Uploaded } from '../answers/index.ts';
import { diagram, maker, model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { answerDuty } from '../duty/answer-duty.ts';
import { diagramById } from './list-diagrams.ts';
import { restoreDiagram } from './remove-diagram.ts';
import { bufferOf, piece, storeBytes } from './store-bytes.ts';

export interface NewDiagram {
  maker: string;
  model: string;
  duty?: Duty | undefined;
  name: string;
  mediaType: string;
  bytes: Uint8Array;
  /** What a person says that its columns hold. */
  columns?: GivenColumns | undefined;
}

export const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/**
 * Takes a document in as a diagram of a model, which with its maker is made where it is new. The same document of the
 * same model is answered with the diagram that is there. It then waits to be read.
 */
export async function uploadDiagram(tx: Tx, given: NewDiagram): Promise<Uploaded> {
  const modelId = await modelNamed(tx, await makerNamed(tx, given.maker), given.model);
  // Two that bring the same document at once: the second waits here and finds the first one's diagram.
  await tx.select({ id: model.id }).from(model).where(eq(model.id, modelId)).for('no key update');
  if (given.duty) await answerDuty(tx, { model: modelId }, given.duty);
  const sha = sha256(given.bytes);
  const [same] = await tx
    .select({ id: diagram.id, state: diagram.state })
    .from(diagram)
    .where(and(eq(diagram.model, modelId), eq(diagram.sha256, sha)));
  if (same?.state === 'removed') return { diagram: await restoreDiagram(tx, same.id), known: true };
  if (same) return { diagram: await diagramById(tx, same.id), known: true };
  const long = given.bytes.byteLength > piece;
  const [added] = await tx
    .insert(diagram)
    .values({
      workshop: thisWorkshop,
      model: modelId,
      name: given.name,
      mediaType: given.mediaType,
      bytes: long ? Buffer.alloc(0) : bufferOf(given.bytes),
      byteCount: given.bytes.byteLength,
      sha256: sha,
      columns: given.columns ?? null,
    })
    .returning({ id: diagram.id });
  if (long) await storeBytes(tx, added!.id, given.bytes);
  return { diagram: await diagramById(tx, added!.id), known: false };
}

/** The id of the maker of this name, capitals aside; made where there is none. */
async function makerNamed(tx: Tx, name: string): Promise<string> {
  await tx.insert(maker).values({ workshop: thisWorkshop, name }).onConflictDoNothing();
  const [found] = await tx
    .select({ id: maker.id })
    .from(maker)
    .where(eq(sql`lower(${maker.name})`, sql`lower(${name})`));
  return found!.id;
}

async function modelNamed(tx: Tx, makerId: string, name: string): Promise<string> {
  await tx.insert(model).values({ workshop: thisWorkshop, maker: makerId, name }).onConflictDoNothing();
  const [found] = await tx
    .select({ id: model.id })
    .from(model)
    .where(and(eq(model.maker, makerId), eq(sql`lower(${model.name})`, sql`lower(${name})`)));
  return found!.id;
}
