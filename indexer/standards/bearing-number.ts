import type { Um } from '../units/length.ts';

/** Bore in millimetres of the two-figure codes that are not a fifth of it (ISO 15). */
export const boreCodes: Readonly<Record<string, number>> = { '00': 10, '01': 12, '02': 15, '03': 17 };

/** Bore in micrometres that the figures of a bare number mean: 608 is 8, 6202 is 15, 62/22 is 22; MR and X forms spell it otherwise. */
export function boreMeant(designation: string): Um | null {
  const miniature = /^MR(\d+)(X?)$/.exec(designation);
  if (miniature) return miniature[2] ? null : Number(miniature[1]!.slice(-1)) * 1000;
  const slashed = /\/(\d+(?:\.\d+)?)$/.exec(designation);
  if (slashed) return Number(slashed[1]) * 1000;
  const figures = /^(\d{2})(\d)(X?)$/.exec(designation);
  if (figures) return Number(figures[2]) * 1000 + (figures[3] ? 500 : 0);
  const code = /^\d{2,3}(\d{2})$/.exec(designation)?.[1];
  return code ? (boreCodes[code] ?? Number(code) * 5) * 1000 : null;
}

/** ISO 15 diameter series that a bare number means: the figure after 6, or after the width figure of a five-figure number or of one as 628/4. */
export function diameterSeriesMeant(designation: string): string | null {
  return /^6(?:\d(?=\d{3}$|\d\/\d))?(\d)/.exec(designation)?.[1] ?? null;
}
