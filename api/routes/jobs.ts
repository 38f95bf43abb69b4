import { createRoute, z } from '@hono/zod-openapi';
import { id } from '../answers/common.ts';
import { jobChange, jobPage, jobs, need, needChange, newJob, newNeed } from '../answers/job.ts';
import { doOnce } from '../edge/once.ts';
import { addNeed } from '../jobs/add-need.ts';
import { changeJob } from '../jobs/change-job.ts';
import { changeNeed, removeNeed } from '../jobs/change-need.ts';
import { jobPage as pageOf } from '../jobs/job-page.ts';
import { listJobs } from '../jobs/list-jobs.ts';
import { openJob } from '../jobs/open-job.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, jsonBody, router } from '../valid.ts';

const ofJob = z.object({ job: id });
const ofNeed = z.object({ need: id });

/** Jobs and what they want. */
export const jobRoutes = (service: Service) => {
  const { store } = service;
  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/jobs',
        request: { query: z.object({ state: z.enum(['open', 'closed', 'all']).optional() }) },
        responses: { 200: jsonAnswer(jobs, 'Jobs, the newest first; the open ones unless asked otherwise.') },
      }),
      async c => {
        const { state = 'open' } = c.req.valid('query');
        return c.json({ jobs: await store.inWorkshop(c.get('workshop'), tx => listJobs(tx, state)) }, 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/jobs',
        request: { body: jsonBody(newJob) },
        responses: { 201: jsonAnswer(jobPage, 'The job, under the next number.') },
      }),
      async c => {
        const given = c.req.valid('json');
        return c.json(await doOnce(service, c, given, tx => openJob(tx, given)), 201);
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/jobs/{job}',
        request: { params: ofJob },
        responses: { 200: jsonAnswer(jobPage, 'The job and what it wants.') },
      }),
      async c => {
        const { job } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => pageOf(tx, job)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'patch',
        path: '/api/jobs/{job}',
        request: { params: ofJob, body: jsonBody(jobChange) },
        responses: { 200: jsonAnswer(jobPage, 'The job as it stands now.') },
      }),
      async c => {
        const { job } = c.req.valid('param');
        const change = c.req.valid('json');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => changeJob(tx, job, change)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'post',
        path: '/api/jobs/{job}/needs',
        request: { params: ofJob, body: jsonBody(newNeed) },
        responses: { 201: jsonAnswer(need, 'The need.') },
      }),
      async c => {
        const { job } = c.req.valid('param');
        const given = c.req.valid('json');
        return c.json(await doOnce(service, c, given, tx => addNeed(tx, job, given)), 201);
      },
    )
    .openapi(
      createRoute({
        method: 'patch',
        path: '/api/needs/{need}',
        request: { params: ofNeed, body: jsonBody(needChange) },
        responses: { 200: jsonAnswer(need, 'The need as it stands now.') },
      }),
      async c => {
        const { need: asked } = c.req.valid('param');
        const change = c.req.valid('json');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => changeNeed(tx, asked, change)), 200);
      },
    )
    .openapi(
      createRoute({
        method: 'delete',
        path: '/api/needs/{need}',
        request: { params: ofNeed },
        responses: { 200: jsonAnswer(need, 'What was removed, so that it can be put back.') },
      }),
      async c => {
        const { need: asked } = c.req.valid('param');
        return c.json(await store.inWorkshop(c.get('workshop'), tx => removeNeed(tx, asked)), 200);
      },
    );
};
