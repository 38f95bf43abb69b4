import { type Refusal, refuse } from '../refusal.ts';

/** The code of a database or connection error, looked for through the causes it is wrapped in. */
export function errorCode(error: unknown): string | undefined {
  for (let at = error; at instanceof Error; at = at.cause) {
    if (at instanceof AggregateError && at.errors.length) return errorCode(at.errors[0]);
    const code = (at as { code?: unknown }).code;
    if (typeof code === 'string') return code;
  }
  return undefined;
}

/** No answer from PostgreSQL: not there, not there any more, or just starting or stopping. */
const awayCodes = new Set([
  'CONNECTION_CLOSED',
  'CONNECTION_ENDED',
  'CONNECTION_DESTROYED',
  'CONNECT_TIMEOUT',
  'ECONNREFUSED',
  'ECONNRESET',
  'ENOENT',
  'EPIPE',
  'ETIMEDOUT',
  'EHOSTUNREACH',
  'ENOTFOUND',
  'EAI_AGAIN',
  '08000',
  '08003',
  '08006',
  '57P01',
  '57P02',
  '57P03',
]);

export const isAway = (error: unknown) => awayCodes.has(errorCode(error) ?? '');

/** The database cannot be asked just now. */
export const databaseAway = (cause?: unknown): Refusal =>
  refuse(
    'database-away',
    {
      place: 'database',
      message: 'The database does not answer just now; nothing was changed.',
      remedy: 'Try again in a moment. If it lasts, look at the log of the program.',
    },
    cause,
  );

/** There is no room to keep new work safely. */
export const diskFull = (cause?: unknown): Refusal =>
  refuse(
    'disk-full',
    {
      place: 'data folder',
      message:
        'The disk is full, so nothing new can be kept. Everything kept before is safe and can be read.',
      remedy: 'Make room on the disk of the data folder; then go on, nothing needs a restart.',
    },
    cause,
  );

/**
 * An error of the database as a refusal where a person can do something about it; any other comes back as it is.
 * `readOnly` says that the transaction was opened for reading alone because room is short.
 */
export function refusalFor(error: unknown, readOnly: boolean): unknown {
  if (isAway(error)) return databaseAway(error);
  const code = errorCode(error);
  // 53100 disk_full; 25006 a write in a transaction that may only read.
  if (code === '53100' || (code === '25006' && readOnly)) return diskFull(error);
  return error;
}
