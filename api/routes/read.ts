import { createRoute } from '@hono/zod-openapi';
import { paste, pasted } from '../answers/pasted.ts';
import { countSizes } from '../diagrams/count-sizes.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

/** The paste box: a list is answered with its rows and sizes, and nothing of it is kept. */
export const readRoutes = ({ readDocument }: Service) =>
  router().openapi(
    createRoute({
      method: 'post',
      path: '/api/read',
      request: { body: jsonBody(paste) },
      responses: { 200: jsonAnswer(pasted, 'What was read. Nothing is stored.') },
    }),
    async c => {
      const { text, name = 'pasted text', columns } = c.req.valid('json');
      const signal = c.req.raw.signal;
      const read = await readDocument(Buffer.from(text, 'utf8'), {
        name,
        mediaType: 'text/plain',
        columns,
        signal,
      });
      const lines = read.rows.flatMap(({ ref, qty, reading }) =>
        reading ? [{ ref, qty: qty ?? reading.qty, size: reading.size, category: reading.category }] : [],
      );
      return c.json({ ...read, sizes: countSizes(lines) }, 200);
    },
  );
