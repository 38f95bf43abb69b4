import { type ClientResponse, hc } from 'hono/client';
import type {
  BalloonChange,
  DiagramColumns,
  DutyRequest,
  JobChange,
  Joining,
  NeedChange,
  NewBalloon,
  NewBench,
  NewCorrection,
  NewDiagramText,
  NewJob,
  NewNeed,
  NewPerson,
  NewToken,
  PasswordByLink,
  PasswordChange,
  Paste,
  PersonChange,
  SignIn,
} from '../api/answers/index.ts';
import type { AppType } from '../api/app.ts';
import type { Duty } from '../indexer/index.ts';
import { Problem } from './problem.ts';
import { randomId } from './random.ts';

let shown: string | null = null;

/** Every request from now on names this bench. */
export function showBench(id: string | null): void {
  shown = id;
}

/** Asks with the bench named. A POST carries a key of its own, so that it may be tried again without being done twice. */
async function send(input: RequestInfo | URL, init: RequestInit = {}): Promise<Response> {
  const headers = new Headers(init.headers);
  if (shown) headers.set('Workshop', shown);
  if (init.method !== 'POST') return fetch(input, { ...init, headers });
  headers.set('Idempotency-Key', randomId());
  try {
    return await fetch(input, { ...init, headers });
  } catch {
    return fetch(input, { ...init, headers });
  }
}

const { api: service } = hc<AppType>('/', { fetch: send });

/** The answer itself; what the service refuses is thrown as a {@link Problem}. */
async function of<Answer>(asked: Promise<ClientResponse<Answer>>): Promise<Answer> {
  const response = await asked;
  if (!response.ok) throw await Problem.of(response as unknown as Response);
  return (await response.json()) as Answer;
}

const { benches, diagrams, jobs, models, needs, parts, people, sessions, tokens } = service;

/** A document to be taken in, and whose it is. */
export interface NewFile {
  file: File;
  maker: string;
  model: string;
  duty: Duty;
}

/** What the page asks of the service, one line a question. */
export const api = {
  session: () => of(service.session.$get()),
  signIn: (json: SignIn) => of(service.session.$post({ json })),
  signOut: () => of(service.session.$delete()),
  invitation: (link: string) => of(service.invitation.$post({ json: { link } })),
  join: (json: Joining) => of(service.invitation.join.$post({ json })),
  passwordByLink: (json: PasswordByLink) => of(service.password['by-link'].$post({ json })),
  changePassword: (json: PasswordChange) => of(service.password.$put({ json })),
  sessions: () => of(sessions.$get()),
  endSession: (session: string) => of(sessions[':session'].$delete({ param: { session } })),
  endOtherSessions: () => of(sessions.$delete()),
  eraseMe: (password: string) => of(service.person.erase.$post({ json: { password } })),

  eraseBench: (password: string) => of(service.bench.erase.$post({ json: { password } })),
  people: () => of(people.$get()),
  invite: (json: NewPerson) => of(people.$post({ json })),
  changePerson: (person: string, json: PersonChange) =>
    of(people[':person'].$patch({ param: { person }, json })),
  removePerson: (person: string) => of(people[':person'].$delete({ param: { person } })),
  linkFor: (person: string) => of(people[':person'].link.$post({ param: { person } })),
  erasePerson: (person: string) => of(people[':person'].erase.$post({ param: { person } })),
  tokens: () => of(tokens.$get()),
  newToken: (json: NewToken) => of(tokens.$post({ json })),
  revokeToken: (token: string) => of(tokens[':token'].$delete({ param: { token } })),
  trail: (before: string | null) => of(service.trail.$get({ query: before ? { before } : {} })),

  benches: () => of(benches.$get()),
  newBench: (json: NewBench) => of(benches.$post({ json })),
  openBench: (bench: string) => of(benches[':bench'].open.$post({ param: { bench } })),

  read: (json: Paste) => of(service.read.$post({ json })),
  find: (q: string) => of(service.find.$get({ query: { q } })),
  size: (size: string) => of(service.sizes[':size'].$get({ param: { size: encodeURIComponent(size) } })),
  uses: (size: string, from: number) =>
    of(
      service.sizes[':size'].uses.$get({
        param: { size: encodeURIComponent(size) },
        query: { from: String(from) },
      }),
    ),
  compare: (a: string, b: string) => of(service.compare.$get({ query: { a, b } })),
  knownSizes: () => of(service.sizes.$get()),
  part: (part: string) => of(parts[':part'].$get({ param: { part } })),
  interchange: (part: string) => of(parts[':part'].interchange.$get({ param: { part } })),
  partDuty: (part: string, json: DutyRequest) => of(parts[':part'].duty.$put({ param: { part }, json })),

  models: () => of(models.$get()),
  model: (model: string) => of(models[':model'].$get({ param: { model } })),
  modelTools: (model: string) => of(models[':model'].tools.$get({ param: { model } })),
  modelDuty: (model: string, json: DutyRequest) => of(models[':model'].duty.$put({ param: { model }, json })),

  diagrams: () => of(diagrams.$get()),
  keepText: (json: NewDiagramText) => of(diagrams.text.$post({ json })),
  keepFile: (form: NewFile) => of(diagrams.$post({ form })),
  rows: (diagram: string, offset: number) =>
    of(
      diagrams[':diagram'].rows.$get({
        param: { diagram },
        query: { first: 'doubtful', offset: String(offset), limit: '200' },
      }),
    ),
  readRest: (diagram: string) => of(diagrams[':diagram']['read-rest'].$post({ param: { diagram } })),
  written: (diagram: string, find: string) =>
    of(diagrams[':diagram'].written.$get({ param: { diagram }, query: { find } })),
  readAgain: (diagram: string) => of(diagrams[':diagram']['read-again'].$post({ param: { diagram } })),
  columns: (diagram: string) => of(diagrams[':diagram'].columns.$get({ param: { diagram } })),
  setColumns: (diagram: string, given: DiagramColumns['given']) =>
    of(diagrams[':diagram'].columns.$put({ param: { diagram }, json: { given } })),
  removeDiagram: (diagram: string) => of(diagrams[':diagram'].$delete({ param: { diagram } })),
  restoreDiagram: (diagram: string) => of(diagrams[':diagram'].restore.$post({ param: { diagram } })),
  correct: (diagram: string, row: string, json: NewCorrection) =>
    of(diagrams[':diagram'].rows[':row'].correction.$post({ param: { diagram, row }, json })),
  takeBack: (diagram: string, row: string) =>
    of(diagrams[':diagram'].rows[':row'].correction.$delete({ param: { diagram, row } })),

  drawing: (diagram: string) => of(diagrams[':diagram'].drawing.$get({ param: { diagram } })),
  placeBalloon: (diagram: string, json: NewBalloon) =>
    of(diagrams[':diagram'].balloons.$post({ param: { diagram }, json })),
  changeBalloon: (diagram: string, balloon: string, json: BalloonChange) =>
    of(diagrams[':diagram'].balloons[':balloon'].$patch({ param: { diagram, balloon }, json })),
  removeBalloon: (diagram: string, balloon: string) =>
    of(diagrams[':diagram'].balloons[':balloon'].$delete({ param: { diagram, balloon } })),
  undoBalloon: (diagram: string, correction: string) =>
    of(
      diagrams[':diagram']['balloon-corrections'][':correction'].$delete({ param: { diagram, correction } }),
    ),

  jobs: (state: 'open' | 'closed' | 'all') => of(jobs.$get({ query: { state } })),
  job: (job: string) => of(jobs[':job'].$get({ param: { job } })),
  newJob: (json: NewJob) => of(jobs.$post({ json })),
  changeJob: (job: string, json: JobChange) => of(jobs[':job'].$patch({ param: { job }, json })),
  addNeed: (job: string, json: NewNeed) => of(jobs[':job'].needs.$post({ param: { job }, json })),
  changeNeed: (need: string, json: NeedChange) => of(needs[':need'].$patch({ param: { need }, json })),
  removeNeed: (need: string) => of(needs[':need'].$delete({ param: { need } })),

  order: (chosen: string[]) => of(service.order.$get({ query: { jobs: chosen.join(',') } })),
};

/** What is fetched as it is, and no JSON. */
async function fetchWhole(path: string, init: RequestInit = {}): Promise<Response> {
  const response = await send(path, init);
  if (!response.ok) throw await Problem.of(response);
  return response;
}

/** The order as a file; fetched, since a plain link could not name the bench. */
export const orderFile = async (chosen: string[], kind: 'csv' | 'xlsx' | 'txt'): Promise<Blob> =>
  (await fetchWhole(`/api/order.${kind}?jobs=${chosen.join(',')}`)).blob();

/** The bench's work as one file. */
export const benchFile = async (): Promise<Blob> => (await fetchWhole('/api/backup')).blob();

/** A diagram's document as it came in. */
export const documentFile = async (diagram: string): Promise<Blob> =>
  (await fetchWhole(`/api/diagrams/${diagram}/file`)).blob();

/** A page of a diagram as a picture at least so many pixels wide, where there is one so fine. */
export const pagePicture = async (diagram: string, page: number, width: number): Promise<Blob> =>
  (await fetchWhole(`/api/diagrams/${diagram}/pages/${page}/picture?width=${width}`)).blob();

/** The stream that tells how far the reading of a diagram has come. */
export const follow = async (diagram: string, signal: AbortSignal): Promise<ReadableStream<Uint8Array>> =>
  (
    await fetchWhole(`/api/diagrams/${diagram}/progress`, {
      signal,
      headers: { Accept: 'text/event-stream' },
    })
  ).body!;
