import { boundedBody, onlyOurs, safeHeaders } from './edge/guard.ts';
import { letIn } from './edge/let-in.ts';
import { logRequests } from './edge/log-requests.ts';
import { documentOf } from './edge/openapi.ts';
import { pageOf } from './edge/page.ts';
import { nothingHere, problemsOf } from './edge/problems.ts';
import { identify } from './edge/request-id.ts';
import { backupRoutes } from './routes/backup.ts';
import { benchRoutes } from './routes/benches.ts';
import { correctionRoutes } from './routes/corrections.ts';
import { diagramRoutes } from './routes/diagrams.ts';
import { documentRoutes } from './routes/documents.ts';
import { drawingRoutes } from './routes/drawing.ts';
import { findingRoutes } from './routes/finding.ts';
import { healthRoutes } from './routes/health.ts';
import { jobRoutes } from './routes/jobs.ts';
import { keepingRoutes } from './routes/keeping.ts';
import { measureRoutes } from './routes/measure.ts';
import { modelRoutes } from './routes/models.ts';
import { orderRoutes } from './routes/order.ts';
import { partRoutes } from './routes/parts.ts';
import { peopleRoutes } from './routes/people.ts';
import { readRoutes } from './routes/read.ts';
import { sessionRoutes } from './routes/session.ts';
import type { Service } from './service.ts';
import { router } from './valid.ts';

/** Every route under one roof. What a request passes on its way in stands first, in order. */
export function createApp(service: Service) {
  const app = router();
  app.onError(problemsOf(service));
  app.use(identify, safeHeaders(service), onlyOurs(service));
  if (service.accounts) app.use('/api/*', logRequests(service));
  // A backup is as large as it is, and of every bench.
  if (service.keeping) app.route('/', keepingRoutes(service, service.keeping));
  app.use(boundedBody);
  app.use('/api/*', letIn(service));
  const routes = app
    .route('/', healthRoutes(service))
    .route('/', sessionRoutes(service))
    .route('/', benchRoutes(service))
    .route('/', readRoutes(service))
    .route('/', measureRoutes(service))
    .route('/', findingRoutes(service))
    .route('/', modelRoutes(service))
    .route('/', partRoutes(service))
    .route('/', diagramRoutes(service))
    .route('/', documentRoutes(service))
    .route('/', drawingRoutes(service))
    .route('/', correctionRoutes(service))
    .route('/', jobRoutes(service))
    .route('/', orderRoutes(service))
    .route('/', peopleRoutes(service))
    .route('/', backupRoutes(service));
  app.get('/api/openapi.json', c => c.json(documentOf(routes)));
  app.all('/api/*', nothingHere);
  if (service.pageFolder !== null) app.route('/', pageOf(service.pageFolder));
  app.notFound(nothingHere);
  return routes;
}

/** The service as its clients see it: `hc<AppType>` knows every path, request and answer. */
export type AppType = ReturnType<typeof createApp>;
