/**
 * What the service answers and takes, one file a resource. The page imports types from here and `AppType` from
 * `../app.ts`; nothing else of the service.
 *
 *   GET    /api/health                                              → Health
 *   GET    /api/ready                                               → Readiness (200, 503 where it cannot work)
 *   GET    /api/session                                             → Session
 *   POST   /api/session                        SignIn               → Session, and a cookie      (these and the rest
 *   DELETE /api/session                                             → signed out                  of people where
 *   GET    /api/sessions                                            → Sessions                    people sign in)
 *   DELETE /api/sessions, /api/sessions/:session                    → ended: all but this one, or that one
 *   PUT    /api/password                       PasswordChange       → every other session has ended
 *   POST   /api/password/by-link               PasswordByLink       → Session
 *   POST   /api/invitation                     { link }             → Invited
 *   POST   /api/invitation/join                Joining              → { bench }
 *   POST   /api/person/erase                   { password }         → signed out for good
 *   GET    /api/people                                              → People        (owner, as all below)
 *   POST   /api/people                         NewPerson            → PersonLink (201)
 *   PATCH  /api/people/:person                 PersonChange         → PersonHere
 *   DELETE /api/people/:person                                      → PersonHere, who has left
 *   POST   /api/people/:person/link                                 → PersonLink
 *   POST   /api/people/:person/erase                                → PersonHere without a name
 *   GET    /api/tokens                                              → Tokens
 *   POST   /api/tokens                         NewToken             → TokenMade (201)
 *   DELETE /api/tokens/:token                                       → TokenAnswer, revoked
 *   GET    /api/trail?before=                                       → Trail
 *   GET    /api/backup                                              → the bench as one file
 *   POST   /api/bench/erase                    { password }         → gone
 *   GET    /api/benches                                             → Benches
 *   POST   /api/benches                        NewBench             → Bench (201)
 *   POST   /api/benches/:bench/open                                 → Bench
 *   POST   /api/read                           Paste                → Pasted        (stores nothing, no key)
 *   POST   /api/measure                        MeasureRequest       → MeasureAnswer (stores nothing, no key)
 *   POST   /api/fit                            FitRequest           → FitAnswer     (stores nothing, no key)
 *   GET    /api/find?q=                                             → Found
 *   GET    /api/sizes                                              → SizesKnown
 *   GET    /api/sizes/:size                                         → SizeAnswer
 *   GET    /api/compare?a=&b=                                      → Comparison   (a part's id, or a size in any writing)
 *   GET    /api/makers                                              → Makers
 *   GET    /api/models                                              → Models
 *   GET    /api/models/:model                                       → ModelAnswer
 *   PUT    /api/models/:model/duty             DutyRequest          → DutyAnswer
 *   GET    /api/parts/:part                                         → PartAnswer
 *   GET    /api/parts/:part/interchange                             → Interchange
 *   PUT    /api/parts/:part/duty               DutyRequest          → DutyAnswer
 *   GET    /api/diagrams                                            → Diagrams
 *   POST   /api/diagrams/text                  NewDiagramText       → Uploaded (201, 200 where known)
 *   POST   /api/diagrams                       multipart: file, maker, model, duty?  → Uploaded
 *   GET    /api/diagrams/:diagram                                   → DiagramAnswer
 *   GET    /api/diagrams/:diagram/progress                          → text/event-stream, `data:` is a Progress
 *   GET    /api/diagrams/:diagram/rows?first=doubtful&offset=&limit= → DiagramRowsAnswer
 *   GET    /api/diagrams/:diagram/file                              → the bytes, as an attachment
 *   POST   /api/diagrams/:diagram/read-again                        → DiagramAnswer
 *   POST   /api/diagrams/:diagram/read-rest                         → DiagramAnswer
 *   GET    /api/diagrams/:diagram/written?find=                     → WrittenFound
 *   POST   /api/diagrams/:diagram/rows/:row/correction NewCorrection → DiagramRow
 *   DELETE /api/diagrams/:diagram/rows/:row/correction              → DiagramRow
 *   GET    /api/diagrams/:diagram/drawing                           → Drawing
 *   GET    /api/diagrams/:diagram/pages/:page/picture?width=        → image/webp, drawn once, then kept
 *   POST   /api/diagrams/:diagram/balloons     NewBalloon           → BalloonChanged
 *   PATCH  /api/diagrams/:diagram/balloons/:balloon  BalloonChange  → BalloonChanged
 *   DELETE /api/diagrams/:diagram/balloons/:balloon                 → BalloonChanged
 *   DELETE /api/diagrams/:diagram/balloon-corrections/:correction   → Drawing, as it stood before
 *   GET    /api/jobs?state=open|closed|all                          → Jobs
 *   POST   /api/jobs                           NewJob               → JobPage (201)
 *   GET    /api/jobs/:job                                           → JobPage
 *   PATCH  /api/jobs/:job                      JobChange            → JobPage
 *   POST   /api/jobs/:job/needs                NewNeed              → NeedAnswer (201)
 *   PATCH  /api/needs/:need                    NeedChange           → NeedAnswer
 *   DELETE /api/needs/:need                                         → NeedAnswer (what was there, to put back)
 *   GET    /api/order?jobs=id,id                                    → OrderAnswer
 *   GET    /api/order.csv?jobs=id,id                                → text/csv
 *   GET    /api/order.xlsx?jobs=id,id                               → a workbook
 *   GET    /api/order.txt?jobs=id,id                                → text/plain
 *   GET    /api/openapi.json
 *
 * Every request may carry `Workshop` (a bench's id), a writing one must; every POST that writes carries
 * `Idempotency-Key`. Every failure is a Problem, application/problem+json.
 */
export type * from './bench.ts';
export type { DifferenceAnswer, DutyAnswer, ModelRef, Named } from './common.ts';
export type * from './compare.ts';
export type * from './diagram.ts';
export type * from './drawing.ts';
export type * from './find.ts';
export type * from './health.ts';
export type * from './job.ts';
export type { FitRequestBody, MeasureRequestBody } from './measure.ts';
export type * from './model.ts';
export type * from './order.ts';
export type * from './part.ts';
export type * from './pasted.ts';
export type * from './people.ts';
export type * from './problem.ts';
export type * from './reading.ts';
