import { describe, expect, test } from 'vitest';
import { readWithEvidence } from '../../indexer/read.ts';
import { certaintyOf, evidence } from '../../indexer/reading/evidence.ts';
import { weights } from '../../indexer/reading/evidence-weights.ts';

const featuresOf = (line: string) => readWithEvidence(line).features;

describe('evidence', () => {
  test('each fitted weight is of something that is explained', () => {
    for (const name of Object.keys(weights)) expect(name === 'base' || name in evidence, name).toBe(true);
  });

  test('what is printed and not used speaks against a line, what is explained does not', () => {
    expect(featuresOf('spring 0.5x5x20 7').has('size-left')).toBe(true);
    expect(featuresOf('9  4  Hexagon head screws  Steel  0.030 kg').has('figure-left')).toBe(false);
    expect(featuresOf('33 Setscrew').has('size-left')).toBe(false);
    expect(featuresOf('bearing 608ZZ').has('complete')).toBe(true);
    expect(featuresOf('Circlip DIN 471 - 25 x 1.2').has('unknown-behind')).toBe(false);
  });

  test('more against a reading never makes it surer', () => {
    const good = certaintyOf(['noun', 'complete']);
    for (const against of ['size-left', 'figure-left', 'other-noun', 'unknown-word', 'review'])
      expect(certaintyOf(['noun', 'complete', against]), against).toBeLessThanOrEqual(good);
  });

  test('a plain line is sure, a doubtful one is not', () => {
    for (const line of ['M3x8 SHCS', 'bearing 5x11x4', 'Sicherungsring DIN 471 10x1', 'washer 3.2x7x0.5'])
      expect(readWithEvidence(line).reading.certainty, line).toBeGreaterThanOrEqual(0.95);
    for (const line of ['5x8', 'lock washer thing 4 zinc 7 12', 'M3xl2'])
      expect(readWithEvidence(line).reading.certainty, line).toBeLessThan(0.95);
  });
});
