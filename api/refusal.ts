/** The status of each no that is not 422, "understood, and not possible as it stands". */
const statuses: Record<string, number> = {
  'bad-request': 400,
  'not-json': 400,
  'workshop-missing': 400,
  'idempotency-key-missing': 400,
  'key-wrong': 401,
  'not-signed-in': 401,
  'sign-in-wrong': 401,
  'host-not-ours': 403,
  'origin-not-ours': 403,
  'not-allowed': 403,
  'password-wrong': 403,
  'not-found': 404,
  'bench-not-found': 404,
  'route-not-found': 404,
  'nobody-signs-in': 404,
  'link-void': 404,
  'method-not-allowed': 405,
  'idempotency-key-reused': 409,
  'changed-meanwhile': 409,
  'already-there': 409,
  'in-use': 409,
  'last-owner': 409,
  'name-taken': 409,
  'too-large': 413,
  'wrong-media-type': 415,
  'too-often': 429,
  'disk-full': 507,
  'database-away': 503,
  closing: 503,
};

/** What a refusal is about, what is wrong, and what to do about it; each a plain sentence or phrase. */
export interface RefusalFacts {
  place: string;
  message: string;
  remedy: string;
  /** Seconds after which the same may go well. */
  wait?: number;
}

/**
 * A request that we can't meet, for a reason that a person can do something about. Its status follows from its
 * code. Anything else that is thrown is "internal".
 */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly code: string;
  readonly status: number;
  readonly place: string;
  readonly remedy: string;
  readonly wait: number | undefined;

  constructor(code: string, { place, message, remedy, wait }: RefusalFacts, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
    this.status = statuses[code] ?? 422;
    this.place = place;
    this.remedy = remedy;
    this.wait = wait;
  }
}

/** A refusal, to be thrown: `throw refuse('not-found', {…})`. `cause` goes to the log, never to the answer. */
export function refuse(code: string, facts: RefusalFacts, cause?: unknown): Refusal {
  return new Refusal(code, facts, cause === undefined ? undefined : { cause });
}

/** The refusal for an id that this workshop has nothing under, whether or not another has. */
export function notFound(what: string, id: string): Refusal {
  return refuse('not-found', {
    place: `${what} ${id}`,
    message: `There is no ${what} ${id} on this bench.`,
    remedy: `Open the list of ${what}s and choose one from it.`,
  });
}
