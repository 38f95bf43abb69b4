import type { Made, Measurable } from '../categories/measurable.ts';
import { mm, toMm, type Um } from '../units/length.ts';
import { believed, type Context, gained } from './doubt.ts';
import { wearOf } from './limits.ts';
import { listed, type NextMeasurement } from './next-measurement.ts';
import { observe } from './observe.ts';
import type { KnownSize } from './request.ts';

/** Pins to try: the tenths between the smallest and the largest possible bore, and the workshop's own. */
export function tryPin(measurable: Measurable, context: Context): NextMeasurement[] {
  const limits = context.possible.map(each => believed(each, measurable, context));
  if (limits.some(each => each === null)) return [];
  const bores = limits as Made[];
  const [least, most] = [Math.min(...bores.map(b => b.min)), Math.max(...bores.map(b => b.max))];
  if (most - least < 20) return [];
  const own = ownPins(context.known);
  const tenths: Um[] = [];
  for (let pin = Math.ceil(least / 100) * 100; pin <= most + 10 && tenths.length < 40; pin += 100)
    tenths.push(pin);
  const sizes = [...new Set([...tenths, ...own.map(each => each.dia)])].filter(
    pin => pin > least && pin <= most + 10,
  );
  const tests = sizes.map(pin => ({ pin, ...tried(pin, measurable, context, bores) }));
  const best = tests.sort((a, b) => b.settles - a.settles)[0];
  if (!best) return [];
  const value = toMm(best.pin);
  return [
    {
      dimension: measurable.key,
      instrument: 'pin',
      value,
      expect: best.expect,
      settles: best.settles,
      own: own.filter(each => Math.abs(each.dia - best.pin) <= 10).map(each => each.size),
      why: `Try ${sized(value)} mm pin or drill shank: ${listed(best.expect)}.`,
    },
  ];
}

/** `a 5.0`, `an 8.0`, `a 3.175`. */
function sized(value: number): string {
  const digits = value.toFixed(value * 10 === Math.round(value * 10) ? 1 : 3);
  return /^(?:8|11\.|18\.)/.test(digits) ? `an ${digits}` : `a ${digits}`;
}

function tried(pin: Um, measurable: Measurable, context: Context, bores: readonly Made[]) {
  const outcome = (goes: boolean) =>
    observe({ dimension: measurable.key, value: pin / 1000, instrument: 'pin', goes }, measurable, '');
  const [enters, refused] = [outcome(true), outcome(false)];
  const chances = bores.map(made => {
    const wear = wearOf(measurable, made, context.condition);
    return [enters.likelihood(made, wear), refused.likelihood(made, wear)] as const;
  });
  const joint = (which: 0 | 1) => chances.map((chance, at) => chance[which] * context.possible[at]!.share);
  return {
    settles: Math.max(0, gained(joint(0), context.possible) + gained(joint(1), context.possible)),
    expect: Object.fromEntries(
      context.possible.map(({ name }, at) => {
        const chance = chances[at]![0];
        return [name, chance > 0.8 ? 'goes in' : chance < 0.2 ? 'does not go in' : 'may go in'];
      }),
    ),
  };
}

/** Round parts of the workshop that would serve as a pin, with their diameters. */
function ownPins(known: readonly KnownSize[]): { size: string; dia: Um }[] {
  return known.flatMap(({ size }) => {
    const dia = /^(?:pin|shaft|ball) (\d+(?:\.\d+)?)(?:x|$)/.exec(size)?.[1];
    return dia === undefined ? [] : [{ size, dia: mm(Number(dia)) }];
  });
}
