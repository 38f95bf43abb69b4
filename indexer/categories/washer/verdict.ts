import {
  compareAttribute,
  compareLength,
  goesOn,
  materialRule,
  mustAgree,
  mustMatchText,
  type Rule,
} from '../judge.ts';

const kind: Rule = compareAttribute({
  key: 'type',
  label: 'Kind',
  differs: () => ({ severity: 'stops', text: 'a spring, lock, wave and flat washer do different work.' }),
});

/** In a stack the sum of thicknesses decides, so another thickness is another washer (common practice). */
export const rules: readonly Rule[] = [
  mustMatchText('thread', 'For thread', 'it was made for another screw.'),
  goesOn,
  compareLength({
    key: 'od',
    label: 'Outside diameter',
    more: { severity: 'stops', text: 'it can foul its seat or what turns beside it.' },
    less: { severity: 'care', text: 'less of it bears on the seat.' },
  }),
  mustAgree('thickness', 'Thickness', 'it makes the stack too long.', 'it leaves the stack loose.'),
  kind,
  materialRule,
];
