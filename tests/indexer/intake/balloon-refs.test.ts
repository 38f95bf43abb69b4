import { expect, test } from 'vitest';
import { refsOfBalloon } from '../../../indexer/intake/balloon-refs.ts';

const list = ['1', '2', '12', '12A', '13', '14', '15', '21'];

test.each([
  ['12', ['12']],
  ['12a', ['12A']],
  ['12 A', ['12A']],
  ['(14)', ['14']],
  ['02', ['2']],
  ['12-14', ['12', '12A', '13', '14']],
  ['12–13', ['12', '12A', '13']],
  ['1, 2', ['1', '2']],
  ['2/21', ['2', '21']],
  ['99', []],
  ['14-99', ['14', '15', '21']],
])('a balloon "%s" stands for %j', (balloon, refs) => expect(refsOfBalloon(balloon, list)).toEqual(refs));
