import { toMm, type Um, writeMillimetres } from '../units/length.ts';
import type { FitOf } from './clearance.ts';
import type { Believed } from './seat.ts';

/** Both rings of a hand-assembled mechanism slip in by finger with up to this clearance, in millimetres (common practice). */
const byFinger = 0.025;

interface Fitted {
  readonly onShaft: FitOf | null;
  readonly inHousing: FitOf | null;
  readonly gap: { min: Um; max: Um } | null;
  readonly shaft: Believed | undefined;
  readonly housing: Believed | undefined;
  readonly bore: Um;
  readonly od: Um;
}

/** How a bearing goes together with its seats, and what is worn, in sentences. */
export function howItGoes({ onShaft, inHousing, gap, shaft, housing, bore, od }: Fitted): string[] {
  return [
    ...(onShaft ? [`On the shaft: ${sentence(onShaft)}`] : []),
    ...(shaft ? wornShaft(shaft, bore) : []),
    ...(inHousing ? [`In the housing: ${sentence(inHousing)}`] : []),
    ...(housing ? wornHousing(housing, od) : []),
    ...(gap ? width(gap) : []),
  ];
}

function sentence({ kind, clearanceMin, clearanceMax, interferenceMax, interferenceMin }: FitOf): string {
  if (kind === 'interference')
    return `a press fit of ${millimetres(interferenceMin)} to ${millimetres(interferenceMax)}; hand-assembled mechanisms want none: look for dirt, a bend, or the other system.`;
  if (kind === 'transition')
    return `clearance up to ${millimetres(clearanceMax)} or interference up to ${millimetres(interferenceMax)}; it slips on by finger or wants a light push.`;
  if (clearanceMin > byFinger)
    return `loose by ${millimetres(clearanceMin)} to ${millimetres(clearanceMax)}: the ring can creep.`;
  return `clearance ${millimetres(clearanceMin)} to ${millimetres(clearanceMax)}; it slips on by finger${clearanceMax > byFinger ? ', perhaps loosely' : ', as hand-assembled mechanisms want'}.`;
}

const millimetres = (value: number) => `${writeMillimetres(value)} mm`;

/** More than the loosest usual seat, f7, leaves: then it is wear, or another size. */
const worn = 30;

function wornShaft(shaft: Believed, bore: Um): string[] {
  const under = bore - shaft.max;
  return under <= worn
    ? []
    : [
        `The shaft is at least ${writeMillimetres(toMm(Math.round(under)))} mm under the bore: worn, or made for another size.`,
      ];
}

function wornHousing(housing: Believed, od: Um): string[] {
  const over = housing.min - od;
  return over <= worn + 10
    ? []
    : [
        `The housing is at least ${writeMillimetres(toMm(Math.round(over)))} mm over: worn, or made for another size.`,
      ];
}

function width({ min, max }: { min: Um; max: Um }): string[] {
  if (max < 0) return ['It is wider than its place: never force the cover.'];
  if (min < 0)
    return ['It may stand proud of its place: measure the bearing’s own width; never force the cover.'];
  return [];
}
