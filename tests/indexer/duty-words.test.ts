import { expect, test } from 'vitest';
import { foldNumber, proposeDuty } from '../../indexer/index.ts';

/** Words of design practice that make a model count as critical until a person says (common practice). */
test.each([
  ['HAND WINCH 500', 'load-holding'],
  ['PAWL', 'load-holding'],
  ['Sperrklinke', 'load-holding'],
  ['Seilwinde', 'load-holding'],
  ['Crochet de levage', 'load-holding'],
  ['Gancio', 'load-holding'],
  ['Trinquete', 'load-holding'],
  ['Takel', 'load-holding'],
  ['ウインチ', 'load-holding'],
  ['Front hub', 'brake-or-steering'],
  ['Bremshebel', 'brake-or-steering'],
  ['BRAKE PADS', 'brake-or-steering'],
  ['Lenkerbügel', 'brake-or-steering'],
  ['Frein', 'brake-or-steering'],
  ['ブレーキ', 'brake-or-steering'],
])('%s proposes %s', (text, duty) => {
  const proposed = proposeDuty(text);
  expect(proposed?.duty).toBe(duty);
  expect(text.slice(proposed!.start, proposed!.end)).toBe(proposed!.word);
});

test.each(['BALL BEARING 5X11X4', 'Gehäuse', 'Handle knob', 'shook', 'Hubbub', '', 'スプール'])(
  '%s proposes nothing',
  text => {
    expect(proposeDuty(text)).toBeNull();
  },
);

test('foldNumber keeps letters and digits alone, in capitals', () => {
  expect(foldNumber('70-0309 a')).toBe('700309A');
  expect(foldNumber('Ｗ５１８１４－０２')).toBe('W5181402');
  expect(foldNumber('—')).toBe('');
});
