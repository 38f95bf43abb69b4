import { describe, expect, it } from 'vitest';
import {
  hexKey,
  hexKeyOfHead,
  hexKeySizes,
  inchHexKey,
  keyLimits,
  lookAlikes,
  socketOf,
  threadsForKey,
} from '../../../indexer/standards/hex-keys.ts';
import {
  pointDiameter,
  setScrew,
  setScrewStandards,
  setScrews,
  setScrewsForKey,
} from '../../../indexer/standards/set-screws.ts';

const um = (mm: number) => Math.round(mm * 1000);

describe('hexKey', () => {
  // Keys in mm as fastener makers print them: ISO 4762, 7380-1 and 10642, 4026 to 4029.
  it.each<[string, string, number]>([
    ['DIN 912', 'M1.6', 1.5],
    ['DIN 912', 'M2', 1.5],
    ['DIN 912', 'M2.5', 2],
    ['ISO 4762', 'M3', 2.5],
    ['ISO 4762', 'M4', 3],
    ['ISO 4762', 'M5', 4],
    ['ISO 4762', 'M6', 5],
    ['ISO 4762', 'M8', 6],
    ['ISO 4762', 'M20', 17],
    ['DIN 912', 'M24', 19],
    ['DIN 7984', 'M16', 12],
    ['DIN 6912', 'M14', 12],
    ['ISO 7380-1', 'M16', 10],
    ['ISO 10642', 'M20', 12],
    ['ISO 4026', 'M16', 8],
    ['DIN 913', 'M24', 12],
    ['ISO 7380', 'M3', 2],
    ['ISO 7380-1', 'M4', 2.5],
    ['DIN 7991', 'M3', 2],
    ['ISO 10642', 'M5', 3],
    ['DIN 913', 'M1.6', 0.7],
    ['DIN 914', 'M2', 0.9],
    ['DIN 916', 'M2.5', 1.3],
    ['ISO 4029', 'M3', 1.5],
    ['ISO 4026', 'M4', 2],
    ['ISO 4028', 'M5', 2.5],
    ['ISO 4027', 'M6', 3],
  ])('of %s %s is %d', (standard, thread, key) => {
    expect(hexKey(standard, thread)).toBe(um(key));
  });

  it('parts M3 by head: cap 2.5, button and countersunk 2, set screw 1.5', () => {
    const keys = ['socket-cap', 'button', 'countersunk'].map(head => hexKeyOfHead(head, 'M3'));
    expect([...keys, setScrew('M3')!.key]).toEqual([2500, 2000, 2000, 1500]);
  });

  it('knows none for another standard, thread or head', () => {
    expect([hexKey('DIN 933', 'M3'), hexKey('DIN 912', 'M3.3'), hexKeyOfHead('pan', 'M3')]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('lists the keys of ISO 2936 from 0.7 to 36, none looser in its socket than its least size says', () => {
    expect(hexKeySizes).toHaveLength(34);
    expect([hexKeySizes[0], hexKeySizes.at(-1)]).toEqual([700, 36_000]);
    for (const size of hexKeySizes) {
      const socket = socketOf(size);
      // The socket of ISO 4028 M2 and M2.5 begins a hundredth under its key's size; the bars are under theirs by as much.
      if (socket) expect(keyLimits(size)!.min, `${size}`).toBeLessThan(socket.socketMin);
    }
  });

  it('does not fix the thread: 1.5 turns cap screws M1.6 and M2', () => {
    expect(threadsForKey('DIN 912', 1500)).toEqual(['M1.6', 'M2']);
    expect(threadsForKey('ISO 10642', 1500)).toEqual(['M2.5']);
  });
});

describe('sockets', () => {
  it('of ISO 4028 M8 reach 4.095: one library prints 4095', () => {
    expect(socketOf(4000)).toMatchObject({ socketMin: 4020, socketMax: 4095 });
  });

  it('take no key but their own', () => {
    for (const key of hexKeySizes.filter(size => socketOf(size))) {
      const next = hexKeySizes.find(size => size > key);
      if (next) expect(socketOf(key)!.socketMax, `${key}`).toBeLessThan(next);
    }
  });
});

describe('inch keys', () => {
  // ASME B18.3 as suppliers print it, in inches.
  it.each<['cap' | 'button' | 'flat' | 'set', string, number]>([
    ['cap', '4', 3 / 32],
    ['cap', '6', 7 / 64],
    ['cap', '8', 9 / 64],
    ['cap', '10', 5 / 32],
    ['cap', '1/4', 3 / 16],
    ['button', '6', 5 / 64],
    ['flat', '10', 1 / 8],
    ['set', '4', 0.05],
    ['set', '1/4', 1 / 8],
  ])('of a %s screw number %s is %d', (head, size, inches) => {
    expect(Math.abs(inchHexKey(head, size)! - inches * 25_400)).toBeLessThanOrEqual(0.5);
  });

  // Recomputed: 25.4 mm to the inch.
  it.each([
    [900, 889],
    [1300, 1270],
    [1500, 1588],
    [2000, 1984],
    [2500, 2381],
    [4000, 3969],
  ])('look like the metric key of %d µm at %d', (metric, inches) => {
    const near = lookAlikes(metric).map(({ key }) => key);
    expect(near.some(key => Math.abs(key - inches) <= 1)).toBe(true);
  });
});

describe('set screws', () => {
  it('of key 0.9 are M2 alone; key 0.7 turns M1.6 first, then the sizes outside the standards', () => {
    expect(setScrewsForKey(900).map(({ thread }) => thread)).toEqual(['M2']);
    expect(setScrewsForKey(700).map(({ thread }) => thread)).toEqual(['M1.6', 'M1.4', 'M1.8']);
  });

  it('have a cup smaller than the dog point from M2.5 up: some pages print the dog for both', () => {
    for (const screw of setScrews.filter(({ inStandard, key }) => inStandard && key >= 1300)) {
      expect(pointDiameter(screw, 'cup')!, screw.thread).toBeLessThan(pointDiameter(screw, 'dog')!);
    }
  });

  it('turn with one key, whatever the point', () => {
    for (const { thread, key } of setScrews) {
      for (const standard of Object.values(setScrewStandards).flat())
        expect(hexKey(standard, thread)).toBe(key);
    }
  });
});
