import { compareAttribute, compareLength, materialRule, mustAgree, type Rule } from '../judge.ts';

/** Needle, thrust, linear and the like: equal numbers do not make them alike, and no word means deep groove. */
const kind: Rule = (candidate, wanted) => {
  const [have, want] = [candidate.attrs.type ?? 'deep groove ball', wanted.attrs.type ?? 'deep groove ball'];
  return have === want
    ? null
    : {
        about: 'type',
        severity: 'stops',
        text: `A ${have} bearing for a ${want} one: it carries load another way.`,
      };
};

const flange: Rule = (candidate, wanted) => {
  const [have, want] = [candidate.attrs.flanged === true, wanted.attrs.flanged === true];
  if (have === want) return null;
  return have
    ? { about: 'flanged', severity: 'care', text: 'It has a flange: only where the housing has room for it.' }
    : { about: 'flanged', severity: 'stops', text: 'It lacks the flange that holds it in its seat.' };
};

const seals: Rule = compareAttribute({
  key: 'seal',
  label: 'Closed by',
  open: 'is not stated of both: look before you order, width and drag depend on it.',
  differs: (have, want) => ({ severity: 'care', text: closing(String(have), String(want)) }),
});

function closing(have: string, want: string): string {
  if (have.endsWith('-contact-seals') || have.endsWith('-contact-seal'))
    if (!have.includes('non-contact')) return 'contact seals rub; you feel it on a free-running shaft.';
  if (have === 'open') return `it keeps out no sand or salt, as ${want} did.`;
  return 'mind drag and dirt.';
}

/** C3 is looser than normal, MC3 is the normal of miniature bearings: they are not the same (trade practice, makers' handbooks). */
const clearance: Rule = compareAttribute({
  key: 'clearance',
  label: 'Clearance group',
  differs: () => ({ severity: 'care', text: 'more or less play inside the bearing.' }),
});

/**
 * Bore and outside diameter must be the seat's; a wider one never goes under the cover by force; a narrower one may
 * be shimmed on the ring that does not rub (common practice).
 */
export const rules: readonly Rule[] = [
  kind,
  mustAgree('bore', 'Bore', 'loose on the shaft.', 'it does not go on the shaft.'),
  mustAgree('od', 'Outside diameter', 'it does not enter the housing.', 'loose in the housing.'),
  compareLength({
    key: 'width',
    label: 'Width',
    more: { severity: 'stops', text: 'it stands proud and the cover presses on it. Never force the cover.' },
    less: { severity: 'care', text: 'fill the gap with a shim on the ring that does not rub.' },
  }),
  flange,
  seals,
  clearance,
  materialRule,
];
