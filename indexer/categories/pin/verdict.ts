import { compareAttribute, compareLength, materialRule, mustAgree, type Rule } from '../judge.ts';

/** A spring pin wants a drilled hole, a dowel a reamed one, a cotter bends: they do not stand in for each other. */
const kind: Rule = compareAttribute({
  key: 'type',
  label: 'Kind',
  open: 'is not stated of both: solid, spring, split or tapered.',
  differs: () => ({ severity: 'stops', text: 'it holds in another kind of hole.' }),
});

export const rules: readonly Rule[] = [
  mustAgree('dia', 'Diameter', 'it does not enter the hole.', 'it falls out.'),
  compareLength({
    key: 'length',
    label: 'Length',
    more: { severity: 'stops', text: 'it stands out and fouls.' },
    less: { severity: 'care', text: 'it bears on less of the hole.' },
  }),
  kind,
  materialRule,
];
