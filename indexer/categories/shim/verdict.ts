import { compareLength, goesOn, materialRule, mustAgree, type Rule } from '../judge.ts';

/** A shim is there for its thickness; too wide a ring scrapes the one it must not touch. */
export const rules: readonly Rule[] = [
  goesOn,
  compareLength({
    key: 'od',
    label: 'Outside diameter',
    more: { severity: 'stops', text: 'it can scrape the other ring or the shield.' },
    less: { severity: 'care', text: 'less of it bears on the ring.' },
  }),
  mustAgree('thickness', 'Thickness', 'it takes away the play.', 'it leaves more play.'),
  materialRule,
];
