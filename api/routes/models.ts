import { createRoute, z } from '@hono/zod-openapi';
import { dutyAnswer, id } from '../answers/common.ts';
import { dutyRequest, makers, model, models, modelTools as modelToolsAnswer } from '../answers/model.ts';
import { answerDuty } from '../duty/answer-duty.ts';
import { listMakers } from '../models/list-makers.ts';
import { modelPage } from '../models/model-page.ts';
import { modelSummaries } from '../models/model-refs.ts';
import { modelTools } from '../models/model-tools.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const params = z.object({ model: id });

/** Makers and their models. */
export const modelRoutes = ({ store }: Service) =>
  router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/makers',
        responses: { 200: jsonAnswer(makers, 'Every maker, by name.') },
      }),
      async c => c.json({ makers: await store.inWorkshop(c.get('workshop'), listMakers) }, 200),
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/models',
        responses: { 200: jsonAnswer(models, 'Every model, by maker and name.') },
      }),
      async c => c.json({ models: await store.inWorkshop(c.get('workshop'), tx => modelSummaries(tx)) }, 200),
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/models/{model}',
        request: { params },
        responses: { 200: jsonAnswer(model, 'The model, its lists and lines, and its bearing set.') },
      }),
      async c => {
        const { model: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => modelPage(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/models/{model}/tools',
        request: { params },
        responses: {
          200: jsonAnswer(modelToolsAnswer, 'The tools its parts take, and what the list leaves open.'),
        },
      }),
      async c => {
        const { model: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => modelTools(tx, asked)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'put',
        path: '/api/models/{model}/duty',
        request: { params, body: jsonBody(dutyRequest) },
        responses: { 200: jsonAnswer(dutyAnswer, 'What counts now. "not-stated" takes an answer back.') },
      }),
      async c => {
        const { model: asked } = c.req.valid('param');
        const { duty } = c.req.valid('json');
        const answer = await store.inWorkshop(c.get('workshop'), async tx => {
          await modelPage(tx, asked);
          return answerDuty(tx, { model: asked }, duty);
        });
        return c.json(answer, 200);
      },
    );
