import type { FitOf } from '../../indexer/index.ts';

/** A length as a fit is told, in thousandths of a millimetre at most; below nought with its own sign. */
export const thousandths = (length: number): string =>
  String(Math.round(length * 1000) / 1000).replace('-', '−');

/** `clearance 0 to 0.014`, `press 0.001 to 0.009`, or from one to the other. */
export function fitWords({
  kind,
  clearanceMin,
  clearanceMax,
  interferenceMin,
  interferenceMax,
}: FitOf): string {
  if (kind === 'clearance')
    return `clearance ${thousandths(clearanceMin)} to ${thousandths(clearanceMax)} mm`;
  if (kind === 'interference')
    return `press of ${thousandths(interferenceMin)} to ${thousandths(interferenceMax)} mm`;
  return `from ${thousandths(interferenceMax)} mm press to ${thousandths(clearanceMax)} mm clearance`;
}
