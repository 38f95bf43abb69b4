import { compareAttribute, compareLength, materialRule, mustAgree, type Rule } from '../judge.ts';

const kind: Rule = compareAttribute({
  key: 'type',
  label: 'Kind',
  open: 'is not stated of both: for a shaft, for a bore, or an E-clip named by its groove.',
  differs: () => ({ severity: 'stops', text: 'it sits in another groove.' }),
});

/** Groove first, then thickness: the nominal size names the groove it was made for (DIN 471, 472, 6799). */
export const rules: readonly Rule[] = [
  mustAgree('dia', 'Nominal size', 'it sits in another groove.', 'it sits in another groove.'),
  compareLength({
    key: 'thickness',
    label: 'Thickness',
    more: { severity: 'stops', text: 'it does not enter the groove.' },
    less: { severity: 'care', text: 'the part it holds gains end float.' },
  }),
  kind,
  materialRule,
];
