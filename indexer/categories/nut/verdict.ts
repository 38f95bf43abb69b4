import {
  compareAttribute,
  compareLength,
  handRule,
  materialRule,
  mustAgree,
  mustMatchText,
  type Rule,
} from '../judge.ts';

const kind: Rule = compareAttribute({
  key: 'type',
  label: 'Kind',
  open: 'is not stated of both: a locking nut is not replaced by a plain one.',
  differs: (_, want) =>
    want === 'lock'
      ? { severity: 'stops', text: 'nothing keeps it from turning loose.' }
      : { severity: 'care', text: 'check the room and what keeps it from turning.' },
});

export const rules: readonly Rule[] = [
  mustMatchText('thread', 'Thread', 'it does not screw on, or strips.'),
  mustAgree('pitch', 'Pitch', 'it binds after a turn or two.', 'it binds after a turn or two.'),
  compareLength({
    key: 'thickness',
    label: 'Height',
    more: { severity: 'care', text: 'check the room above and the thread that is left.' },
    less: { severity: 'care', text: 'fewer threads hold.' },
  }),
  kind,
  handRule,
  materialRule,
];
