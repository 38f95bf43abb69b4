import { compareAttribute, lengthOf, type Rule, written } from '../judge.ts';

/** A cord thinner or thicker by a tenth moves the squeeze by several points (O-ring handbooks): another cord is another ring. */
const cord: Rule = (candidate, wanted) => {
  const [have, want] = [lengthOf(candidate, 'cs'), lengthOf(wanted, 'cs')];
  if (have === undefined || want === undefined)
    return { about: 'cs', severity: 'care', text: 'Cross-section is not known of both: measure the cord.' };
  const difference = have - want;
  if (Math.abs(difference) <= 0.035) return null;
  const amount = written(Math.abs(difference));
  return difference > 0
    ? { about: 'cs', severity: 'stops', text: `Cross-section ${amount} more: it is pinched in the groove.` }
    : { about: 'cs', severity: 'stops', text: `Cross-section ${amount} less: it does not seal.` };
};

/** A ring sits 2 to 5 % stretched in its groove (O-ring handbooks), so a little smaller still goes with care. */
const inside: Rule = (candidate, wanted) => {
  const [have, want] = [lengthOf(candidate, 'id'), lengthOf(wanted, 'id')];
  if (have === undefined || want === undefined)
    return {
      about: 'id',
      severity: 'care',
      text: 'Inside diameter is not known of both: measure the groove.',
    };
  const difference = have - want;
  if (Math.abs(difference) <= 0.035) return null;
  const amount = written(Math.abs(difference));
  if (difference > 0)
    return {
      about: 'id',
      severity: 'stops',
      text: `Inside diameter ${amount} more: it hangs loose in the groove.`,
    };
  return -difference / want <= 0.03
    ? { about: 'id', severity: 'care', text: `Inside diameter ${amount} less: a little more stretch.` }
    : {
        about: 'id',
        severity: 'stops',
        text: `Inside diameter ${amount} less: stretched too far, it goes thin.`,
      };
};

const material: Rule = compareAttribute({
  key: 'material',
  label: 'Material',
  open: 'is not stated of both: oils and cleaners swell the wrong rubber.',
  differs: () => ({ severity: 'care', text: 'mind the oil, the cleaner and the heat it meets.' }),
});

export const rules: readonly Rule[] = [cord, inside, material];
