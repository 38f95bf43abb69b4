import { compareAttribute, materialRule, mustAgree, mustMatchText, type Rule } from '../judge.ts';

/** Cup bites, flat slides, cone finds its dimple, dog enters its hole: a point is part of the joint. */
const point: Rule = compareAttribute({
  key: 'point',
  label: 'Point',
  open: 'is not stated of both: look at the mark it left on the shaft.',
  differs: () => ({ severity: 'stops', text: 'it holds the shaft in another way.' }),
});

const drive: Rule = compareAttribute({
  key: 'drive',
  label: 'Drive',
  differs: () => ({ severity: 'care', text: 'it takes another key.' }),
});

export const rules: readonly Rule[] = [
  mustMatchText('thread', 'Thread', 'it does not screw in, or strips.'),
  mustAgree('pitch', 'Pitch', 'it binds after a turn or two.', 'it binds after a turn or two.'),
  mustAgree('length', 'Length', 'it stands out of its hole.', 'it does not reach, or too few threads hold.'),
  point,
  drive,
  materialRule,
];
