import { createRoute, z } from '@hono/zod-openapi';
import { order } from '../answers/order.ts';
import { gatherPool } from '../ordering/gather-pool.ts';
import { orderAnswer } from '../ordering/order-answer.ts';
import { orderCsv } from '../ordering/order-csv.ts';
import { orderText } from '../ordering/order-text.ts';
import { orderXlsx } from '../ordering/order-xlsx.ts';
import { poolNeeds } from '../ordering/pool.ts';
import type { Service } from '../service.ts';
import { jsonAnswer, router } from '../valid.ts';

const query = z.object({
  /** Ids of jobs, parted by commas; left out: every open job. */
  jobs: z
    .string()
    .regex(/^$|^[0-9a-f-]{36}(,[0-9a-f-]{36})*$/i, 'Should be ids of jobs, parted by commas')
    .optional(),
});

const workbook = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The needs of the chosen jobs as one list. */
export const orderRoutes = ({ store }: Service) => {
  const orderOf = (workshop: string, jobs: string | undefined) =>
    store.inWorkshop(workshop, async tx => {
      const pool = await gatherPool(tx, jobs ? jobs.split(',') : null);
      return orderAnswer(pool, poolNeeds(pool));
    });
  return router()
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/order',
        request: { query },
        responses: { 200: jsonAnswer(order, 'Lines by maker, with who needs how many and why.') },
      }),
      async c => c.json(await orderOf(c.get('workshop'), c.req.valid('query').jobs), 200),
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/order.csv',
        request: { query },
        responses: {
          200: {
            description: 'The same for a spreadsheet.',
            content: { 'text/csv': { schema: z.string() } },
          },
        },
      }),
      async c => {
        const csv = orderCsv(await orderOf(c.get('workshop'), c.req.valid('query').jobs));
        return c.body(csv, 200, {
          'Content-Type': 'text/csv; charset=utf-8',
          'Content-Disposition': 'attachment; filename="order.csv"',
        });
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/order.xlsx',
        request: { query },
        responses: {
          200: { description: 'The same as a workbook.', content: { [workbook]: { schema: z.string() } } },
        },
      }),
      async c => {
        const bytes = orderXlsx(await orderOf(c.get('workshop'), c.req.valid('query').jobs));
        return c.body(new Uint8Array(bytes), 200, {
          'Content-Type': workbook,
          'Content-Disposition': 'attachment; filename="order.xlsx"',
        });
      },
    )
    .openapi(
      createRoute({
        method: 'get',
        path: '/api/order.txt',
        request: { query },
        responses: {
          200: {
            description: 'The same to paste in a mail.',
            content: { 'text/plain': { schema: z.string() } },
          },
        },
      }),
      async c => c.text(orderText(await orderOf(c.get('workshop'), c.req.valid('query').jobs)), 200),
    );
};
