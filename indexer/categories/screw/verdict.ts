import { compareAttribute, handRule, materialRule, mustAgree, mustMatchText, type Rule } from '../judge.ts';

const flatSeated = (head: unknown) => head !== 'countersunk' && head !== 'raised-countersunk';

/** Flat under the head or a cone: the seat decides before anything else about a head. */
const head: Rule = compareAttribute({
  key: 'head',
  label: 'Head',
  open: 'is not stated of both: look at the seat and the room above it.',
  differs: (have, want) =>
    flatSeated(have) === flatSeated(want)
      ? { severity: 'care', text: 'check that it clears what moves above it.' }
      : { severity: 'stops', text: 'one sits flat, the other in a cone.' },
});

const drive: Rule = compareAttribute({
  key: 'drive',
  label: 'Drive',
  differs: () => ({ severity: 'care', text: 'it takes another driver.' }),
});

/** Thread-forming and wood screws hold by the thread they cut; a machine screw in their hole strips it. */
const kind: Rule = (candidate, wanted) => {
  const [have, want] = [candidate.attrs.type ?? 'machine', wanted.attrs.type ?? 'machine'];
  return have === want
    ? null
    : { about: 'type', severity: 'stops', text: `A ${have} screw for a ${want} screw: it strips the hole.` };
};

const grade: Rule = compareAttribute({
  key: 'grade',
  label: 'Grade',
  differs: () => ({ severity: 'care', text: 'a stronger one can break the casting instead of itself.' }),
});

const threadRules: readonly Rule[] = [
  mustMatchText('thread', 'Thread', 'it does not screw in, or strips.'),
  mustAgree('pitch', 'Pitch', 'it binds after a turn or two.', 'it binds after a turn or two.'),
];

/** Too long bottoms and clamps nothing, too short strips (common practice): another length is another screw. */
const lengthRule: Rule = mustAgree(
  'length',
  'Length',
  'it bottoms, clamps nothing and can crack the body.',
  'too few threads hold: it strips.',
);

export const rules: readonly Rule[] = [
  ...threadRules,
  mustAgree('dia', 'Diameter', 'it splits the boss.', 'it does not hold.'),
  lengthRule,
  kind,
  head,
  handRule,
  drive,
  grade,
  materialRule,
];
