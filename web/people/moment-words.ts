/** A moment as a person says it, where they are: 4 Dec 2026, 14:05. */
export const momentWords = (instant: string): string =>
  new Date(instant).toLocaleString('en-GB', {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  });

/** The day alone: 4 Dec 2026. */
export const dayOf = (instant: string): string =>
  new Date(instant).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
