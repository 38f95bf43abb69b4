import type { Um } from '../units/length.ts';
import { groupBy, indexBy } from './table.ts';

/** Where a row comes from: makers' catalogues; one of them alone; memory of the standard, no text of it seen; or `mixed`, some cells of each. */
export type Basis = 'catalogue' | 'single' | 'memory' | 'mixed';

/** The form of a bearing that decides its width: open, or closed by shields or seals. */
export type BearingForm = 'open' | 'shielded';

/**
 * One basic number of a ball bearing. Lengths in micrometres. A width is null where the number is not made in that form;
 * a sealed bearing normally has the shielded width. The flange is that of the F, MF or FR form.
 */
export interface BallBearing {
  readonly designation: string;
  readonly bore: Um;
  readonly od: Um;
  readonly widthOpen: Um | null;
  readonly widthShielded: Um | null;
  readonly flangeOdOpen: Um | null;
  readonly flangeWidthOpen: Um | null;
  readonly flangeOdShielded: Um | null;
  readonly flangeWidthShielded: Um | null;
  readonly basis: Basis;
}

/** The width of a form, or, with no form stated, the one width both forms share; null where that does not settle it. */
export function widthOf(bearing: BallBearing, form?: BearingForm): Um | null {
  const { widthOpen, widthShielded } = bearing;
  if (form) return form === 'open' ? widthOpen : widthShielded;
  if (widthOpen === null || widthShielded === null) return widthOpen ?? widthShielded;
  return widthOpen === widthShielded ? widthOpen : null;
}

/** What can be asked of a list of ball bearings. */
export interface BearingLookup<B extends BallBearing> {
  /** The bearing of a bare number (no shield, seal, flange or material letters), in capitals. */
  byDesignation(designation: string): B | undefined;
  /** The bearings of a bore, outside diameter and, where given, width, in micrometres; with the forms that have that width. */
  byDims(bore: Um, od: Um, width?: Um): { bearing: B; forms: BearingForm[] }[];
  /** The bearings of a bore in micrometres, thinnest first. */
  byBore(bore: Um): readonly B[];
}

/** Builds the look-ups of a list once. `aliases` are other numbers of the same bearings. */
export function bearingLookup<B extends BallBearing>(
  bearings: readonly B[],
  aliases: ReadonlyMap<string, B> = new Map(),
): BearingLookup<B> {
  const designations = indexBy(bearings, bearing => bearing.designation);
  const bores = groupBy(bearings, bearing => bearing.bore);
  const outlines = groupBy(bearings, bearing => `${bearing.bore}x${bearing.od}`);
  const formsOf = (bearing: B, width?: Um) =>
    (['open', 'shielded'] as const).filter(form => {
      const made = widthOf(bearing, form);
      return made !== null && (width === undefined || made === width);
    });
  return {
    byDesignation: designation => designations.get(designation) ?? aliases.get(designation),
    byDims: (bore, od, width) =>
      (outlines.get(`${bore}x${od}`) ?? [])
        .map(bearing => ({ bearing, forms: formsOf(bearing, width) }))
        .filter(({ forms }) => forms.length > 0),
    byBore: bore => bores.get(bore) ?? [],
  };
}
