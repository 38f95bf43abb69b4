import type { Attrs, Dims } from '../../reading/reading.ts';
import { inchBearings } from '../../standards/inch-bearings.ts';
import { deepGrooveBearings } from '../../standards/iso-15.ts';
import { bearingTolerances } from '../../standards/iso-492.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';
import { otherKinds } from './other-kinds.ts';

/** The rings are hard: a bore that spun on its shaft is larger by hundredths, a ring that spun in its seat smaller. */
const measurable: readonly Measurable[] = [
  {
    key: 'bore',
    label: 'bore',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 2 },
    range: [mm(0.6), mm(100)],
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 2 },
    range: [mm(2), mm(200)],
  },
  {
    key: 'width',
    label: 'width',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 2 },
    range: [mm(0.8), mm(60)],
  },
];

interface Outline {
  bore: Um;
  od: Um;
  width: Um;
}

/** A bearing made to the normal class of ISO 492; outside its tables to the widest of their rows. */
function candidate({ bore, od, width }: Outline, designations: readonly string[], common: number): Candidate {
  const under = bearingTolerances({ bore, od }) ?? { bore: -12, od: -13, width: -120 };
  return {
    dims: { bore: toMm(bore), od: toMm(od), width: toMm(width) },
    designations,
    common,
    made: {
      bore: about(bore, -under.bore, 0, 'ISO 492 normal'),
      od: about(od, -under.od, 0, 'ISO 492 normal'),
      width: about(width, -under.width, 0, 'ISO 492 normal'),
    },
  };
}

/** Each published outline once, with all its numbers; a number whose two forms differ in width is two outlines. */
function published(): Candidate[] {
  const outlines = new Map<string, { outline: Outline; numbers: string[]; inch: boolean }>();
  for (const bearing of [...deepGrooveBearings, ...inchBearings])
    for (const width of new Set([bearing.widthOpen, bearing.widthShielded])) {
      if (width === null) continue;
      const { bore, od, designation } = bearing;
      const key = `${bore}x${od}x${width}`;
      const entry = outlines.get(key) ?? { outline: { bore, od, width }, numbers: [], inch: false };
      entry.numbers.push(formOf(bearing, width, designation));
      outlines.set(key, { ...entry, inch: bearing.bore % 500 !== 0 });
    }
  return [...outlines.values()].map(({ outline, numbers, inch }) =>
    candidate(outline, numbers, inch ? 0.5 : 1),
  );
}

/** A number made in two widths says which of its forms has this one. */
function formOf(
  { widthOpen, widthShielded }: { widthOpen: Um | null; widthShielded: Um | null },
  width: Um,
  designation: string,
): string {
  if (widthOpen === null || widthShielded === null || widthOpen === widthShielded) return designation;
  return width === widthShielded ? `${designation} shielded` : `${designation} open`;
}

const sizes = [...published(), ...otherKinds];

/** Shields taken out and codes misread: a form that is seen speaks against the other, and does not rule it out. */
const otherForm = 0.05;

/** Nobody takes needles for balls who has them in hand: where no kind is said, the others are kept for what no ball bearing is. */
const otherKind = 0.005;

/** A seal that is seen goes with the shielded width, none with the open one; a kind that is seen with that kind alone. */
function suits({ designations, attrs: own }: Candidate, { type, seal }: Attrs): number {
  if (type !== undefined) return own?.type === type ? 1 : 0;
  if (own?.type !== undefined) return otherKind;
  if (seal === undefined || designations.length === 0) return 1;
  const other = seal === 'open' ? ' shielded' : ' open';
  return designations.every(name => name.endsWith(other)) ? otherForm : 1;
}

export const measuring: Measuring = {
  category: 'bearing',
  measurable,
  candidates: () => sizes,
  suits,
  known: (dims: Dims) => {
    const { bore, od, width } = dims;
    if (typeof bore !== 'number' || typeof od !== 'number' || typeof width !== 'number') return null;
    return candidate({ bore: mm(bore), od: mm(od), width: mm(width) }, [], 1);
  },
  ...plainSize('bore', 'od', 'width'),
};
