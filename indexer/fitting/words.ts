import { toMm, type Um, writeMillimetres } from '../units/length.ts';
import type { FitOf } from './clearance.ts';
import type { Believed } from './seat.ts';

/** Both rings of a hand-assembled mechanism slip in by finger with up to this clearance, in millimetres (common practice). */
const byFinger = 0.025;

/** A chance from which it is said to be so. */
const likely = 0.9;

/** Interference that a light push takes, in millimetres (common practice). */
const lightPush = 0.004;

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

function sentence({
  kind,
  clearanceMin,
  clearanceMax,
  interferenceMax,
  clearanceProbability,
}: FitOf): string {
  if (kind === 'interference')
    return 'a press fit; hand-assembled mechanisms want none: look for dirt, a bend, or the other system.';
  if (kind === 'clearance' && clearanceMin > byFinger)
    return `loose by ${millimetres(clearanceMin)} at least: the ring can creep.`;
  if (kind === 'clearance')
    return `slips on by finger${clearanceMax > byFinger ? ', perhaps loosely' : ''}, as hand-assembled mechanisms want.`;
  if (clearanceProbability >= likely)
    return `most likely slips on by finger${clearanceMax > byFinger ? ', perhaps loosely' : ''}, as hand-assembled mechanisms want.`;
  if (clearanceProbability <= 1 - likely && interferenceMax > lightPush)
    return 'most likely wants a press; hand-assembled mechanisms want none: look for dirt, a bend, or the other system.';
  return 'slips on by finger or wants a light push.';
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
