import { setTimeout as sleep } from 'node:timers/promises';
import { createRoute, z } from '@hono/zod-openapi';
import { eq } from 'drizzle-orm';
import { streamSSE } from 'hono/streaming';
import { id } from '../answers/common.ts';
import type { Progress } from '../answers/diagram.ts';
import { diagram } from '../db/schema/index.ts';
import { notFound } from '../refusal.ts';
import type { Service } from '../service.ts';
import { router } from '../valid.ts';

const params = z.object({ diagram: id });
/** How often the state is looked at while a document is read, in milliseconds. */
const every = 300;

/** A diagram's document: how far its reading has come, and the file itself. */
export const documentRoutes = ({ store }: Service) => {
  async function progressOf(workshop: string, asked: string): Promise<Progress> {
    const [state] = await store.inWorkshop(workshop, tx =>
      tx
        .select({
          state: diagram.state,
          rowsDone: diagram.rowsDone,
          rowsTotal: diagram.rowsTotal,
          refusal: diagram.refusal,
        })
        .from(diagram)
        .where(eq(diagram.id, asked)),
    );
    if (!state) throw notFound('diagram', asked);
    return state;
  }

  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/progress',
        request: { params },
        responses: {
          200: {
            description: 'Server-sent events, each a Progress; the stream ends at ready or refused.',
            content: { 'text/event-stream': { schema: z.string() } },
          },
        },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const workshop = c.get('workshop');
        let progress = await progressOf(workshop, asked);
        return streamSSE(c, async stream => {
          for (let said = ''; !stream.aborted; ) {
            const data = JSON.stringify(progress);
            if (data !== said) await stream.writeSSE({ data });
            said = data;
            if (progress.state === 'ready' || progress.state === 'refused') return;
            await sleep(every);
            progress = await progressOf(workshop, asked);
          }
        });
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/file',
        request: { params },
        responses: {
          200: {
            description: 'The document as it came in.',
            content: { 'application/octet-stream': { schema: z.string().openapi({ format: 'binary' }) } },
          },
        },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const [document] = await store.inWorkshop(c.get('workshop'), tx =>
          tx.select({ name: diagram.name, bytes: diagram.bytes }).from(diagram).where(eq(diagram.id, asked)),
        );
        if (!document) throw notFound('diagram', asked);
        return c.body(new Uint8Array(document.bytes), 200, {
          'Content-Type': 'application/octet-stream',
          'Content-Disposition': `attachment; filename*=UTF-8''${fileName(document.name)}`,
        });
      },
    );
};

/** A file name as RFC 8187 writes it: without folders, everything unusual as percent-encoded UTF-8. */
const fileName = (name: string) =>
  encodeURIComponent(name.replace(/[/\\]/g, '_')).replace(
    /['()*]/g,
    character => `%${character.charCodeAt(0).toString(16).toUpperCase()}`,
  );
