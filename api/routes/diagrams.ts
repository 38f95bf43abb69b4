import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { id } from '../answers/common.ts';
import {
  diagram,
  diagramColumns,
  diagramRows,
  diagrams,
  newColumns,
  newDiagramFile,
  newDiagramText,
  uploaded,
} from '../answers/diagram.ts';
import { diagramById, listDiagrams } from '../diagrams/list-diagrams.ts';
import { listRows } from '../diagrams/list-rows.ts';
import { readAgain } from '../diagrams/read-again.ts';
import { readRest } from '../diagrams/read-rest.ts';
import { removeDiagram, restoreDiagram } from '../diagrams/remove-diagram.ts';
import { columnsOf, setColumns } from '../diagrams/set-columns.ts';
import { type NewDiagram, sha256, uploadDiagram } from '../diagrams/upload-diagram.ts';
import type { AppEnv } from '../edge/bench.ts';
import { doOnce } from '../edge/once.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const params = z.object({ diagram: id });
const takenIn = {
  200: jsonAnswer(uploaded, 'The same document was here already; nothing was stored.'),
  201: jsonAnswer(uploaded, 'The diagram, which now waits to be read.'),
};

/** Diagrams: documents taken in, and what was read of them. */
export const diagramRoutes = (service: Service) => {
  const { store } = service;

  async function takeIn(c: Context<AppEnv>, given: NewDiagram) {
    const { bytes, ...about } = given;
    const answer = await doOnce(service, c, { ...about, sha256: sha256(bytes) }, tx =>
      uploadDiagram(tx, given),
    );
    service.wake();
    return answer;
  }

  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams',
        responses: { 200: jsonAnswer(diagrams, 'Every diagram, the newest first.') },
      }),
      async c => c.json({ diagrams: await store.inWorkshop(c.get('workshop'), tx => listDiagrams(tx)) }, 200),
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams',
        request: { body: { required: true, content: { 'multipart/form-data': { schema: newDiagramFile } } } },
        responses: takenIn,
      }),
      async c => {
        const { file, ...about } = c.req.valid('form');
        const bytes = new Uint8Array(await file.arrayBuffer());
        const name = file.name.slice(-200) || 'document';
        const mediaType = file.type.slice(0, 100) || 'application/octet-stream';
        const answer = await takeIn(c, { ...about, name, mediaType, bytes });
        return c.json(answer, answer.known ? 200 : 201);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams/text',
        request: { body: jsonBody(newDiagramText) },
        responses: takenIn,
      }),
      async c => {
        const { text, name = 'pasted text', ...about } = c.req.valid('json');
        const bytes = Buffer.from(text, 'utf8');
        const answer = await takeIn(c, { ...about, name, mediaType: 'text/plain', bytes });
        return c.json(answer, answer.known ? 200 : 201);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}',
        request: { params },
        responses: { 200: jsonAnswer(diagram, 'The diagram and the state of its reading.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => diagramById(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/rows',
        request: {
          params,
          query: z.object({
            first: z.literal('doubtful').optional(),
            offset: z
              .string()
              .regex(/^\d{1,9}$/)
              .optional(),
            limit: z
              .string()
              .regex(/^\d{1,4}$/)
              .optional(),
          }),
        },
        responses: {
          200: jsonAnswer(diagramRows, 'A page of rows, in printed order or doubtful ones first.'),
        },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const query = c.req.valid('query');
        const offset = Number(query.offset ?? 0);
        const limit = Math.min(Number(query.limit ?? 500), 2000);
        const doubtfulFirst = query.first === 'doubtful';
        const answer = await store.inWorkshop(c.get('workshop'), async tx => ({
          diagram: await diagramById(tx, asked),
          rows: await listRows(tx, asked, { doubtfulFirst, offset, limit: limit + 1 }),
        }));
        const next = answer.rows.length > limit ? offset + limit : null;
        return c.json({ ...answer, rows: answer.rows.slice(0, limit), next }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams/{diagram}/read-again',
        request: { params },
        responses: { 200: jsonAnswer(diagram, 'The diagram, which waits to be read again.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const answer = await doOnce(service, c, null, tx => readAgain(tx, asked));
        service.wake();
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams/{diagram}/read-rest',
        request: { params },
        responses: { 200: jsonAnswer(diagram, 'The diagram, whose further pages wait to be read.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const answer = await doOnce(service, c, null, tx => readRest(tx, asked));
        service.wake();
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/diagrams/{diagram}/columns',
        request: { params },
        responses: { 200: jsonAnswer(diagramColumns, 'Its tables and what their columns are taken for.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => columnsOf(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'put',
        path: '/api/diagrams/{diagram}/columns',
        request: { params, body: jsonBody(newColumns) },
        responses: { 200: jsonAnswer(diagramColumns, 'The diagram, which waits to be read so.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const { given } = c.req.valid('json');
        const answer = await store.inWorkshop(c.get('workshop'), tx => setColumns(tx, asked, given));
        service.wake();
        return c.json(answer, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/diagrams/{diagram}',
        request: { params },
        responses: { 200: jsonAnswer(diagram, 'What was taken off the bench, so that it can be put back.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => removeDiagram(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/diagrams/{diagram}/restore',
        request: { params },
        responses: { 200: jsonAnswer(diagram, 'The diagram, which waits to be read again.') },
      }),
      async c => {
        const { diagram: asked } = c.req.valid('param');
        const answer = await doOnce(service, c, null, tx => restoreDiagram(tx, asked));
        service.wake();
        return c.json(answer, 200);
      },
    );
};
