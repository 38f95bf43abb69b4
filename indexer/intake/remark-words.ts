import { asRequiredWords, notSoldPattern, optionPattern, referenceOnlyWords } from './availability-words.ts';
import { includesBegin, includesJapanese } from './includes-words.ts';
import { serialBegin, strongSerial } from './serial-words.ts';
import { supersededBegin, supersededJapanese } from './superseded-words.ts';

/** How remarks begin that say how lines hang together. */
const remarkStart = new RegExp(
  `^(?:${includesBegin}|${supersededBegin}|(?:${serialBegin}|NSS|not|nicht|non|niet|no\\s+se|select|as\\s+required|nach\\s+bedarf|selon|naar\\s+behoefte|option|zubehör)(?![\\p{L}]))`,
  'iu',
);
const starting = [
  notSoldPattern,
  optionPattern,
  asRequiredWords,
  referenceOnlyWords,
  strongSerial,
  includesJapanese,
  supersededJapanese,
];

/** True for words that a remark of how lines hang together begins with. */
export const startsRemark = (text: string): boolean =>
  remarkStart.test(text) || starting.some(pattern => pattern.exec(text)?.index === 0);
