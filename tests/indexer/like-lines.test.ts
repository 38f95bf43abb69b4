import { describe, expect, test } from 'vitest';
import { learn, lessonOf, type Said } from '../../indexer/like-lines.ts';

const read: Said = { category: 'unsure', dims: {}, attrs: {} };
const washer = (id: number, od: number, thickness: number): Said => ({
  category: 'washer',
  dims: { id, od, thickness },
  attrs: {},
});

/** What a word on the first line makes of the second. */
function taught(line: string, said: Said, other: string, own: Said = read, was: Said = read): Said | null {
  const lesson = lessonOf(line, said, was);
  return lesson && learn(lesson, other, own);
}

describe('a line written like it is the same kind of part, its numbers in the same places', () => {
  test.each([
    ['WSHR DRAG 5 X 9 X 0.5', 'WSHR DRAG 6 X 11 X 0,8', washer(6, 11, 0.8)],
    ['WSHR,DRAG 5*9*0.5', 'Wshr, shaft 6 x 11 x 0.8', washer(6, 11, 0.8)],
    ['DRAG WSHR 5x9x0.5', 'SPOOL WSHR 6x11x0.8', washer(6, 11, 0.8)],
    ['Rdl. 5×9×0.5 (Stahl)', 'Rdl. 4,1×8×1 (Messing)', washer(4.1, 8, 1)],
    ['5x9x0.5 washer', '6x11x0.8 washer', washer(6, 11, 0.8)],
  ])('%s teaches %s', (line, other, made) => expect(taught(line, washer(5, 9, 0.5), other)).toEqual(made));

  test('whatever order they stand in', () =>
    expect(taught('SCH 0.5x5x9', washer(5, 9, 0.5), 'SCH 0.8x6x11')).toEqual(washer(6, 11, 0.8)));
  test('inches are millimetres times 25.4', () =>
    expect(
      taught('SPCR .250 x .500 x .032', { ...washer(6.35, 12.7, 0.813) }, 'SPCR .125 x .375 x .020'),
    ).toEqual(washer(3.175, 9.525, 0.508)));
  test('the name of a thread is made of its numbers', () => {
    const screw = { category: 'screw' as const, dims: { thread: 'M3', length: 8 }, attrs: {} };
    expect(taught('SCR PH M3 x 8', screw, 'SCR FH M2,5 x 12')?.dims).toEqual({ thread: 'M2.5', length: 12 });
    const inch = { category: 'screw' as const, dims: { thread: '6-32', length: 9.525 }, attrs: {} };
    expect(taught('SCR 6-32 x 3/8', inch, 'SCR 1/4-20 x 1/2')?.dims).toEqual({
      thread: '1/4-20',
      length: 12.7,
    });
  });
});

describe('nothing is taught', () => {
  test.each([
    ['another kind of part', 'BRG 5x11x4'],
    ['another number of numbers', 'WSHR 6 x 11'],
    ['other signs between them', 'WSHR 6 - 11 - 0.8'],
    ['an outside smaller than the inside', 'WSHR 11 x 6 x 0.8'],
    ['a thickness that none has', 'WSHR 6 x 11 x 800'],
  ])('to %s', (_, other) => expect(taught('WSHR 5 x 9 x 0.5', washer(5, 9, 0.5), other)).toBeNull());

  test('by a size whose numbers are not printed', () =>
    expect(lessonOf('WSHR 5.l x 9 x 0.5', washer(5.1, 9, 0.5), read)).toBeNull());
  test('by a word without numbers to lines with other words', () => {
    const plain: Said = { category: 'plain', dims: {}, attrs: {} };
    expect(taught('Kit A 12', plain, 'Kit B 14')).toBeNull();
    expect(taught('Kit A 12', plain, 'Kit A 14')).toEqual(plain);
  });
  test('by the number of a standard, which is no length', () =>
    expect(
      taught(
        'RING DIN 471 - 10',
        { category: 'retaining-ring', dims: { dia: 10 }, attrs: {} },
        'RING DIN 472 - 12',
      ),
    ).toBeNull());
});

describe('attributes', () => {
  const screw = (attrs: Said['attrs']): Said => ({
    category: 'screw',
    dims: { thread: 'M3', length: 8 },
    attrs,
  });
  test('that a person put right hold for lines with the same words', () => {
    const made = taught(
      'Vis TF M3x8',
      screw({ head: 'countersunk' }),
      'Vis TF M3x10',
      screw({ head: 'pan' }),
      screw({ head: 'pan' }),
    );
    expect(made?.attrs).toEqual({ head: 'countersunk' });
  });
  test('of a line with other words stay its own', () => {
    const made = taught(
      'Vis TF M3x8',
      screw({ head: 'countersunk' }),
      'Vis CL M3x10',
      screw({ head: 'cheese' }),
      screw({}),
    );
    expect(made?.attrs).toEqual({ head: 'cheese' });
  });
  test('that a person took out go from like lines', () => {
    const made = taught(
      'Vis L M3x8',
      screw({}),
      'Vis L M3x10',
      screw({ hand: 'left' }),
      screw({ hand: 'left' }),
    );
    expect(made?.attrs).toEqual({});
  });
});
