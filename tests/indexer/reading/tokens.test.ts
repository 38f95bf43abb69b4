import { describe, expect, test } from 'vitest';
import { tokenise } from '../../../indexer/reading/tokens.ts';

const cut = (text: string) => tokenise(text).map(t => t.text);

describe('tokenise', () => {
  test('a leading point begins a number at the start, behind a blank and behind a times sign', () => {
    expect(cut('.035 wire')).toEqual(['.035', 'wire']);
    expect(cut('.1875x.5x.196')).toEqual(['.1875', '×', '.5', '×', '.196']);
    expect(cut('1/4 × .375')).toEqual(['1', '/', '4', '×', '.375']);
  });

  test('a point that ends a word or stands in a chain begins none', () => {
    expect(cut('No.8')).toEqual(['no', '.', '8']);
    expect(cut('1.2.3')).toEqual(['1', '.', '2', '.', '3']);
    expect(cut('box.5')).toEqual(['box', '.', '5']);
  });

  test('an x is a times sign between sizes, also in front of figures a scanner took for letters', () => {
    expect(cut('1.5mmx10mm')).toEqual(['1.5', 'mm', '×', '10', 'mm']);
    expect(cut('3xM4')).toEqual(['3', '×', 'm', '4']);
    expect(cut('M4xIO')).toEqual(['m', '4', '×', 'io']);
    expect(cut('M3х8')).toEqual(['m', '3', '×', '8']);
  });

  test('an X with a dash and a word is a letter', () => {
    expect(cut('X-ring')).toEqual(['x', '-', 'ring']);
    expect(cut('5x-3')).toEqual(['5', '×', '-', '3']);
  });
});
