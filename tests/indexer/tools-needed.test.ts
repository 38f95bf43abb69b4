import { expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';
import { type PartOfMachine, toolsNeeded } from '../../indexer/tools-needed.ts';

const list = (...lines: string[]): PartOfMachine[] =>
  lines.map((text, at) => {
    const { category, dims, attrs } = read(text);
    return { ref: String(at + 1), category, dims, attrs };
  });

test('what the list settles is a tool with its references, kind by kind', () => {
  // ISO 4762: M3 takes a 2.5 key; ISO 4032: an M3 nut is 5.5 across flats.
  const { tools, either, unknown } = toolsNeeded(
    list(
      'nut M3 ISO 4032',
      'socket head cap screw M3x8',
      'socket head cap screw M3x20',
      'ball bearing 5x11x4',
    ),
  );
  expect(tools.map(({ kind, size, refs }) => [kind, size, refs])).toEqual([
    ['hex key', '2.5 mm', ['2', '3']],
    ['spanner', '5.5', ['1']],
  ]);
  expect(either).toEqual([]);
  expect(unknown).toEqual([]);
});

test('what it leaves open stands apart, with every tool that may be', () => {
  const { tools, either, unknown } = toolsNeeded(list('screw M3x8', 'screw M3x12', 'Screw', 'housing'));
  expect(tools).toEqual([]);
  expect(either).toHaveLength(1);
  expect(either[0]!.refs).toEqual(['1', '2']);
  expect(either[0]!.tools).toContainEqual({ kind: 'cross driver', size: 'PH1' });
  expect(either[0]!.tools).toContainEqual({ kind: 'hex key', size: '2.5 mm' });
  expect(unknown).toEqual(['3']);
});

test('left-hand threads, and how many lines do not tell', () => {
  const { leftHand, handNotStated } = toolsNeeded(
    list('hex nut M6 left-hand thread', 'hex nut M6', 'screw M3x8', 'spring, left hand'),
  );
  expect(leftHand).toEqual(['1']);
  expect(handNotStated).toBe(2);
});

test('no parts, no tools', () => {
  expect(toolsNeeded([])).toEqual({ tools: [], either: [], unknown: [], leftHand: [], handNotStated: 0 });
});
